// Figures of the wires in a supply’s cables: what they carry by count and gauge, and what they lose.
import type { Placed } from '../build/build';
import {
  CONNECTORS,
  CONTACT_18_AWG_A,
  isPowerConnector,
  SIXTEEN_PIN_CONTACT_A,
  type Connector,
  type ConnectorRail,
} from '../trade/connectors';
import { awgMilliohmPerM, AWG_FINEST, cableDropMv, gaugeCurrentShare } from '../trade/wire';
import { between, counted, decidedBy, derive, figure, known, missing, number, unknown, type Figure } from './figure';
import { allowed } from './guard';
import type { Range } from '../trade/numbers';

export type CableRow = NonNullable<Placed<'supply'>['part']['own-cables']['value']>[number];

/** Gauges that the currents of a contact are stated for. */
const usualGauge = 18;
const sixteenPinGauge = 16;

/** What a connector has at 12 V: every kind has some. */
const twelveVolt = (kind: Connector): ConnectorRail => CONNECTORS[kind].rails.find(({ voltageV }) => voltageV === 12)!;

/** Current of one contact at 12 V, on wire of its usual gauge. */
const contactCurrent = (kind: string): Range =>
  kind === '16-pin' ? { low: SIXTEEN_PIN_CONTACT_A, high: SIXTEEN_PIN_CONTACT_A } : CONTACT_18_AWG_A;

/** Pairs of wires in a cable: as stated, else one for each 12 V contact of its connector. */
function pairsOf({ pairs, connector }: CableRow): Figure {
  const label = `pairs of a ${connector.text} cable`;
  const kind = connector.value ?? '';
  if (pairs.value !== undefined || !isPowerConnector(kind)) return counted(pairs, label);
  return decidedBy(number(twelveVolt(kind).contacts, label, CONNECTORS[kind].source), connector);
}

/** Current of one wire: that of its contact, and less through a thinner wire. */
function wireCurrent({ connector, gauge }: CableRow): Figure {
  const isSixteen = connector.value === '16-pin';
  const awg = gauge.value;
  const least = isSixteen ? sixteenPinGauge : usualGauge;
  const share = awg === undefined || awg > AWG_FINEST ? 1 : gaugeCurrentShare(awg, least);
  const { low, high } = contactCurrent(connector.value ?? '');
  const source = isSixteen
    ? 'ATX Version 3 design guide, doc. 336521, tables 3-5 and 5-7'
    : 'ATX Version 3 design guide, doc. 336521, section 2.2.1';
  const what = isSixteen ? 'current of a 16-pin contact' : 'current of a contact';
  return decidedBy(
    between(low * share, high * share, 'current', share === 1 ? what : `${what} on AWG ${awg} wire`, {
      unit: 'A',
      source: share === 1 ? source : `${source}; a thinner wire, as much heat a metre`,
    }),
    gauge,
  );
}

/** What the wires of a cable carry: its pairs × 12 V × the current of a wire. */
export function wireCapacity(row: CableRow): Figure {
  return derive(
    `wires of a ${row.connector.text} cable`,
    'power',
    [pairsOf(row), wireCurrent(row)],
    'pairs × 12 V × current of a wire',
    (n, amps) => n * 12 * amps,
    { unit: 'W' },
  );
}

/** Voltage lost in a cable, out and back, at 12 V; contacts not counted. */
export function cableDrop(row: CableRow, load: Figure): Figure {
  const { length, gauge, connector } = row;
  const label = `drop in a ${connector.text} cable`;
  const awg = gauge.value;
  if (awg === undefined || awg > AWG_FINEST)
    return unknown('voltage', label, [missing(gauge, `gauge of a ${connector.text} cable`)]);
  const copper = { unit: 'mΩ', source: 'ASTM B258 diameters; IEC 60028 copper, 1/58 Ω·mm²/m' } as const;
  const ohm = decidedBy(
    known(awgMilliohmPerM(awg) / 1000, 'resistance', `resistance of a metre of AWG ${awg} wire`, copper),
    gauge,
  );
  const inputs = [figure(length, `length of a ${connector.text} cable`), ohm, pairsOf(row), load];
  return derive(
    label,
    'voltage',
    inputs,
    '2 × length × resistance a metre ÷ pairs × load ÷ 12 V',
    allowed((mm, _each, n, watts) => cableDropMv({ gauge: awg, lengthM: mm / 1000, pairs: n }, watts, 12) / 1000),
    { unit: 'mV' },
  );
}

/** As long as a cable of a supply usually is at most, mm. Source: common practice. */
const usualLengthMm = 1000;

/** What the wires of a cable carry that no file lists: one of the usual gauge for each contact. */
export function usualWires(kind: Connector): Figure {
  const { contacts } = twelveVolt(kind);
  const { low, high } = contactCurrent(kind);
  return between(contacts * 12 * low, contacts * 12 * high, 'power', `wires of a ${kind} cable`, {
    unit: 'W',
    source: 'ATX Version 3 design guide, doc. 336521, sections 2.2.1 and 5.2.2',
  });
}

/** What such a cable loses: up to the usual length, of the usual gauge. */
export function usualDrop(kind: Connector, load: Figure): Figure {
  const { contacts } = twelveVolt(kind);
  const gauge = kind === '16-pin' ? sixteenPinGauge : usualGauge;
  const length = between(0, usualLengthMm, 'length', `length of a ${kind} cable`, {
    unit: 'mm',
    source: 'common practice: at most 1 m',
  });
  return derive(
    `drop in a ${kind} cable`,
    'voltage',
    [length, load],
    `2 × length × resistance a metre of AWG ${gauge} ÷ pairs × load ÷ 12 V`,
    allowed((mm, watts) => cableDropMv({ gauge, lengthM: mm / 1000, pairs: contacts }, watts, 12) / 1000),
    { unit: 'mV' },
  );
}
