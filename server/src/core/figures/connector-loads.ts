// Figures of what goes through connectors and cables: what slot and connectors may carry, and what one cable has to.
import type { Build, Placed } from '../build/build';
import { unreadNames } from '../parts/facts';
import { CONTACT_18_AWG_A, CONNECTORS, SIXTEEN_PIN_CONTACT_A, SLOT_POWER, type Connector } from '../trade/connectors';
import { awgMilliohmPerM, AWG_FINEST, cableDropMv } from '../trade/wire';
import {
  copyWith,
  between,
  counted,
  decidedBy,
  derive,
  figure,
  known,
  least,
  missing,
  times,
  total,
  unknown,
  type Figure,
  type Missing,
} from './figure';
import { allowed } from './guard';
import { isPowerConnector, connectorsBrought, connectorsWanted } from './cables';
import { partDraw } from './power';
import { memo, memoOf } from './memo';

export type Card = Placed<'graphics'> | Placed<'cards'>;
type Supply = Placed<'supply'>;

const slotSource = 'PCI Express Card Electromechanical Specification: power of a slot';

/** What one connector of a kind carries: undisputed up to its low end, too much above its high end. */
export function connectorPower(kind: Connector): Figure {
  const { powerW, source } = CONNECTORS[kind];
  return between(powerW.low, powerW.high, 'power', `${kind} connector`, { unit: 'W', source });
}

/** What a card may take from its slot; a graphics card with a x16 edge more than any other. */
export function slotPower(card: Card): Figure {
  const { edge } = card.part;
  const label = `slot of ${card.label}`;
  const length = edge.value;
  if (length === undefined || length === 'M.2') {
    return copyWith(
      between(SLOT_POWER.x1.powerW, SLOT_POWER.x16.powerW, 'power', label, { unit: 'W', source: slotSource }),
      { missing: [missing(edge, `edge of ${card.label}`)] },
    );
  }
  return decidedBy(edgePower(card, length, label), edge);
}

function edgePower(
  card: Card,
  length: Exclude<NonNullable<Card['part']['edge']['value']>, 'M.2'>,
  label: string,
): Figure {
  // A plain x1 card keeps to 10 W, one set up as high-power may take 25 W: which it is no file states.
  if (length === 'x1')
    return between(SLOT_POWER.x1.powerW, SLOT_POWER.x4.powerW, 'power', label, { unit: 'W', source: slotSource });
  const row = length === 'x16' && card.role !== 'graphics' ? SLOT_POWER.x4 : SLOT_POWER[length];
  return known(row.powerW, 'power', label, { unit: 'W', source: slotSource });
}

/** The kinds of connector a card wants with how many; undefined while it does not say, or names one nobody knows. */
export function connectorsOf(card: Card): readonly { readonly kind: Connector; readonly count: Figure }[] | undefined {
  const { connectors } = card.part;
  if (!connectors.value || unreadNames(connectors).length > 0) return undefined;
  return [...connectors.value].flatMap(([kind, count]) =>
    isPowerConnector(kind) && count.value !== 0 ? [{ kind, count: counted(count, `${kind} of ${card.label}`) }] : [],
  );
}

/** What a card’s slot and connectors carry together. */
export const cardCapacity = memoOf((_: Build, card: Card): Figure => {
  const connectors = connectorsOf(card);
  const label = `slot and connectors of ${card.label}`;
  if (!connectors) return unknown('power', label, [missing(card.part.connectors, `connectors of ${card.label}`)]);
  const carried = [slotPower(card), ...connectors.map(({ kind, count }) => times(connectorPower(kind), count))];
  return decidedBy(total(label, 'power', carried, { unit: 'W' }), card.part.connectors);
});

/** What the EPS cables between supply and board carry together: as many as the board has inlets for. */
export const epsCapacity = memo((build: Build): Figure => {
  const wanted = connectorsWanted(build);
  const brought = connectorsBrought(build);
  const eights = least('EPS 8-pin cables in use', [wanted.get('EPS 8-pin')!, brought.get('EPS 8-pin')!]);
  const fours = derive(
    'EPS 4-pin cables in use',
    'count',
    (
      [
        ['EPS 4-pin', wanted],
        ['EPS 4-pin', brought],
        ['EPS 8-pin', brought],
        ['EPS 8-pin', wanted],
      ] as const
    ).map(([kind, of]) => of.get(kind)!),
    'those wanted, from those brought and from what is left of EPS 8-pin',
    (want4, have4, have8, want8) => Math.min(want4, have4 + Math.max(0, have8 - want8)),
  );
  return total(
    'EPS cables',
    'power',
    [times(connectorPower('EPS 8-pin'), eights), times(connectorPower('EPS 4-pin'), fours)],
    { unit: 'W' },
  );
});

/** One kind of the supply’s own cables that a card plugs into, with what one such cable has to carry. */
export interface CableLoad {
  readonly kind: Connector;
  readonly row: CableRow;
  readonly shared: number;
  readonly load: Figure;
}
export type CableRow = NonNullable<Supply['part']['own-cables']['value']>[number];

/** The loads of the cables of the build’s supply that feed a card; or the facts that are lacking. */
export const cardCableLoads = memoOf(
  (build: Build, card: Card): readonly CableLoad[] | { readonly missingFacts: readonly Missing[] } => {
    const supply = build.parts.supply!;
    const connectors = connectorsOf(card);
    if (!connectors) return { missingFacts: [missing(card.part.connectors, `connectors of ${card.label}`)] };
    if (connectors.length === 0) return [];
    const cables = supply.part['own-cables'];
    if (!cables.value) return { missingFacts: [missing(cables, `cables of ${supply.label}`)] };
    const missingFacts = rowLacks(
      supply,
      connectors.map(({ kind }) => kind),
    );
    if (missingFacts.length > 0) return { missingFacts };
    const whole = total(
      `connectors of ${card.label}`,
      'power',
      connectors.map(({ kind, count }) => times(connectorPower(kind), count)),
    );
    return connectors.flatMap(({ kind, count }) =>
      cables
        .value!.filter((row) => row.connector.value === kind)
        .map((row) => {
          const shared = connectorsOnOneCable(build, supply, kind, count, row);
          const { connector, count: cablesOf, connectors: each } = row;
          const load = decidedBy(loadOf(card, kind, shared, whole), connector, cablesOf, each);
          return { kind, row, shared, load };
        }),
    );
  },
);

/**
 * Rows of the supply’s cables that may be of these kinds and do not say what, how many, or with how many connectors.
 */
function rowLacks(supply: Supply, kinds: readonly Connector[]): Missing[] {
  return (supply.part['own-cables'].value ?? []).flatMap(({ connector, count, connectors }) => {
    if (connector.value === undefined) return [missing(connector, `connector of a cable of ${supply.label}`)];
    if (!(kinds as readonly string[]).includes(connector.value)) return [];
    return [
      ...(count.value === undefined ? [missing(count, `number of ${connector.value} cables of ${supply.label}`)] : []),
      ...(connectors.value === undefined
        ? [missing(connectors, `connectors on a ${connector.value} cable of ${supply.label}`)]
        : []),
    ];
  });
}

/** How many connectors of a card hang on one cable: one while there are cables enough, else as many as must. */
function connectorsOnOneCable(build: Build, supply: Supply, kind: Connector, count: Figure, row: CableRow): number {
  const cables = supply.part['own-cables']
    .value!.filter((one) => one.connector.value === kind)
    .reduce((sum, one) => sum + one.count.value!, 0);
  if (cables === 0 || connectorsWanted(build).get(kind)!.hi <= cables) return 1;
  const must = Number.isFinite(count.hi) ? Math.ceil(count.hi / cables) : 1;
  return Math.max(1, Math.min(must, row.connectors.value!));
}

/** A connector’s share of what the card draws, the slot giving all it may or nothing. */
function loadOf(card: Card, kind: Connector, shared: number, whole: Figure): Figure {
  const draw = figure(card.part.power.sustained, `sustained power of ${card.label}`);
  const slot = copyWith(slotPower(card), { lo: 0 });
  const part = (shared * CONNECTORS[kind].powerW.high) / Math.max(whole.hi, 1);
  return derive(
    `load of one ${kind} cable of ${card.label}`,
    'power',
    [draw, slot],
    'share of the connectors on it × (sustained power − what the slot gives)',
    (watts, fromSlot) => Math.max(0, watts - fromSlot) * Math.min(1, part),
    { unit: 'W' },
  );
}

/** The sustained power of a processor over each EPS cable in use. */
export function epsCableLoad(build: Build, processor: Placed<'processor'>): Figure {
  const count = connectorsBrought(build).get('EPS 8-pin')!;
  const used = least('EPS 8-pin cables in use', [connectorsWanted(build).get('EPS 8-pin')!, count]);
  return derive(
    'load of one EPS 8-pin cable',
    'power',
    [partDraw(processor)!, used],
    'processor power ÷ cables',
    (watts, cables) => watts / Math.max(1, cables),
    { unit: 'W' },
  );
}

/** What the wires of a cable carry: its pairs × 12 V × the current of a contact. */
export function wireCapacity({ pairs, connector }: CableRow): Figure {
  const contact =
    connector.value === '16-pin'
      ? known(SIXTEEN_PIN_CONTACT_A, 'current', 'current of a 16-pin contact', {
          unit: 'A',
          source: 'ATX Version 3 design guide, doc. 336521, tables 3-5 and 5-7',
        })
      : between(CONTACT_18_AWG_A.low, CONTACT_18_AWG_A.high, 'current', 'current of a contact', {
          unit: 'A',
          source: 'ATX Version 3 design guide, doc. 336521, section 2.2.1',
        });
  return derive(
    `wires of a ${connector.text} cable`,
    'power',
    [counted(pairs, `pairs of a ${connector.text} cable`), contact],
    'pairs × 12 V × current of a contact',
    (n, amps) => n * 12 * amps,
    { unit: 'W' },
  );
}

/** Voltage lost in a cable, out and back, at 12 V; contacts not counted. */
export function cableDrop({ length, gauge, pairs, connector }: CableRow, load: Figure): Figure {
  const label = `drop in a ${connector.text} cable`;
  const awg = gauge.value;
  if (awg === undefined || awg > AWG_FINEST)
    return unknown('voltage', label, [missing(gauge, `gauge of a ${connector.text} cable`)]);
  const copper = { unit: 'mΩ', source: 'ASTM B258 diameters; IEC 60028 copper, 1/58 Ω·mm²/m' } as const;
  const ohm = decidedBy(
    known(awgMilliohmPerM(awg) / 1000, 'resistance', `resistance of a metre of AWG ${awg} wire`, copper),
    gauge,
  );
  const inputs = [
    figure(length, `length of a ${connector.text} cable`),
    ohm,
    counted(pairs, `pairs of a ${connector.text} cable`),
    load,
  ];
  return derive(
    label,
    'voltage',
    inputs,
    '2 × length × resistance a metre ÷ pairs × load ÷ 12 V',
    allowed((mm, _each, n, watts) => cableDropMv({ gauge: awg, lengthM: mm / 1000, pairs: n }, watts, 12) / 1000),
    { unit: 'mV' },
  );
}
