// What the connectors of a supply and the slots of a board may carry, and what the 16-pin connector signals.
import type { Range } from './numbers';

export type Connector =
  | '24-pin'
  | 'EPS 8-pin'
  | 'EPS 4-pin'
  | 'PCIe 6-pin'
  | 'PCIe 8-pin'
  | '16-pin'
  | 'SATA power'
  | 'peripheral 4-pin'
  | '10-pin'
  | 'DC barrel';

export interface ConnectorRail {
  readonly voltageV: number;
  /** Contacts that carry this rail. */
  readonly contacts: number;
  /** What all of them together may carry; two ends where the source gives a span per contact. */
  readonly currentA: Range;
}

export interface ConnectorRating {
  readonly rails: readonly ConnectorRail[];
  /** Sustained power at 12 V; at the low end nobody disputes it, above the high end it is too much. */
  readonly powerW: Range;
  readonly source: string;
}

const GUIDE = 'ATX Version 3 Multi Rail Desktop Platform Power Supply Design Guide, doc. 336521';

/**
 * Current a contact on 18 AWG wire is asked to carry: 6 to 8 A.
 * Source: ATX Version 3 design guide, doc. 336521, section 2.2.1.
 */
export const CONTACT_18_AWG_A: Range = { low: 6, high: 8 };

/**
 * Current that each of the six 12 V contacts of a 16-pin connector carries: 55 A over six. Source: doc. 336521,
 * tables 3-5 and 5-7.
 */
export const SIXTEEN_PIN_CONTACT_A = 55 / 6;

const exactly = (value: number): Range => ({ low: value, high: value });

function byContact(voltageV: number, contacts: number): ConnectorRail {
  const { low, high } = CONTACT_18_AWG_A;
  return { voltageV, contacts, currentA: { low: contacts * low, high: contacts * high } };
}

/**
 * Sustained ratings, averaged over any second.
 * PCIe and 16-pin connectors: doc. 336521, table 3-5. EPS, 24-pin and peripheral connectors: contacts × the
 * 6 to 8 A of section 2.2.1 there, since no table states a power for them. SATA: three contacts a rail
 * of 1.5 A each, Serial ATA specification; 3.3 V is often left out of a cable (common practice).
 */
export const CONNECTORS: Readonly<Record<Connector, ConnectorRating>> = {
  '24-pin': {
    rails: [byContact(12, 2), byContact(5, 5), byContact(3.3, 4)],
    powerW: { low: 144, high: 192 },
    source: `${GUIDE}, table 5-1 and section 2.2.1`,
  },
  'EPS 8-pin': {
    rails: [byContact(12, 4)],
    powerW: { low: 288, high: 384 },
    source: `${GUIDE}, sections 2.2.1 and 5.2.2.5`,
  },
  'EPS 4-pin': {
    rails: [byContact(12, 2)],
    powerW: { low: 144, high: 192 },
    source: `${GUIDE}, section 2.2.1 and table 5-8`,
  },
  'PCIe 8-pin': {
    rails: [{ voltageV: 12, contacts: 3, currentA: exactly(13.5) }],
    powerW: exactly(150),
    source: `${GUIDE}, tables 3-5 and 5-5`,
  },
  'PCIe 6-pin': {
    rails: [{ voltageV: 12, contacts: 2, currentA: exactly(6.75) }],
    powerW: exactly(75),
    source: `${GUIDE}, table 3-5`,
  },
  '16-pin': {
    rails: [{ voltageV: 12, contacts: 6, currentA: exactly(55) }],
    powerW: exactly(600),
    source: `${GUIDE}, tables 3-5 and 5-7`,
  },
  'SATA power': {
    rails: [12, 5, 3.3].map((voltageV) => ({ voltageV, contacts: 3, currentA: exactly(4.5) })),
    powerW: exactly(54),
    source: 'Serial ATA specification, power connector: 1.5 A a contact',
  },
  'peripheral 4-pin': {
    rails: [byContact(12, 1), byContact(5, 1)],
    powerW: { low: 72, high: 96 },
    source: `${GUIDE}, section 2.2.1`,
  },
  '10-pin': {
    rails: [byContact(12, 3)],
    powerW: { low: 216, high: 288 },
    source: 'ATX12VO design guide, doc. 613768: three 12 V contacts; 6 to 8 A each, as in the guide for ATX',
  },
  'DC barrel': {
    rails: [{ voltageV: 12, contacts: 1, currentA: { low: 5, high: 12 } }],
    powerW: { low: 60, high: 240 },
    source: 'common practice: 5 A at 12 V to 12 A at 20 V',
  },
};

/** All kinds, in the order in which they are listed. */
export const CONNECTOR_KINDS = Object.keys(CONNECTORS) as readonly Connector[];

export const isPowerConnector = (kind: string): kind is Connector => Object.hasOwn(CONNECTORS, kind);

/**
 * Sustained levels a 16-pin connector can signal, watts, highest first. Source: doc. 336521, section 3.3, table 3-6.
 */
export const SIXTEEN_PIN_LEVELS_W = [600, 450, 300, 150] as const;

/** The least of these levels that gives a power, W; the highest where none does. */
export const levelFor = (powerW: number): number =>
  SIXTEEN_PIN_LEVELS_W.findLast((level) => level >= powerW) ?? SIXTEEN_PIN_LEVELS_W[0];

export type SlotLength = 'x1' | 'x4' | 'x8' | 'x16';

export interface SlotPower {
  readonly powerW: number;
  /** Of `powerW`, what may come over 3.3 V, as a current. */
  readonly at3V3A: number;
}

/**
 * Power a slot gives a card. `x1` is a plain card; one set up as high-power takes what `x4` takes.
 * `x16` is a full-height graphics card after set-up; another card in that slot keeps to what `x4` takes unless it is
 * set up for the same.
 * Source: PCI Express Card Electromechanical Specification, as quoted in a host adapter maker's manual
 * (section 9.8: 10, 25, 75 W; 3.3 V × 3 A + 12 V × 5.5 A).
 */
export const SLOT_POWER: Readonly<Record<SlotLength, SlotPower>> = {
  x1: { powerW: 10, at3V3A: 3 },
  x4: { powerW: 25, at3V3A: 3 },
  x8: { powerW: 25, at3V3A: 3 },
  x16: { powerW: 75, at3V3A: 3 },
};
