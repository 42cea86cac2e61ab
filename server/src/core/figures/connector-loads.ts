// Figures of what goes through cables: what those of the processor carry, and what one cable of a card has to.
import type { Build, Placed } from '../build/build';
import { CONNECTORS, type Connector } from '../trade/connectors';
import {
  copyWith,
  counted,
  decidedBy,
  derive,
  least,
  missing,
  times,
  total,
  type Figure,
  type Missing,
} from './figure';
import {
  connectorCount,
  connectorOf,
  connectorsBrought,
  connectorsOn,
  connectorsWanted,
  startOf,
  type Cable,
} from './cables';
import { cardDraw, connectorPower, connectorsOf, slotPower, type Card } from './card-power';
import { howMany, processorDraw } from './power';
import { wireCapacity, type CableRow } from './wires';
import { memo, memoOf } from './memo';

type Supply = Placed<'supply'>;

const epsKinds = ['EPS 8-pin', 'EPS 4-pin'] as const;
const isEps = (kind: string): kind is (typeof epsKinds)[number] => (epsKinds as readonly string[]).includes(kind);

/** Whether the board states its power connectors, and no EPS connector among them. */
export function isWithoutEps(build: Build): boolean {
  const { board } = build.parts;
  if (!board?.part['power-connectors'].value) return false;
  return epsKinds.every((kind) => connectorCount(board.part['power-connectors'], kind, board.label).hi === 0);
}

/** What the EPS cables between supply and board carry together: as many as the board has inlets for. */
export const epsCapacity = memo((build: Build): Figure => {
  const [wanted8, brought8] = [connectorsWanted(build, 'EPS 8-pin'), connectorsBrought(build, 'EPS 8-pin')];
  const eights = least('EPS 8-pin cables in use', [wanted8, brought8]);
  const fours = derive(
    'EPS 4-pin cables in use',
    'count',
    [connectorsWanted(build, 'EPS 4-pin'), connectorsBrought(build, 'EPS 4-pin'), brought8, wanted8],
    'those wanted, from those brought and from what is left of EPS 8-pin',
    (want4, have4, have8, want8) => Math.min(want4, have4 + Math.max(0, have8 - want8)),
  );
  const inUse = total(
    'EPS cables',
    'power',
    [times(connectorPower('EPS 8-pin'), eights), times(connectorPower('EPS 4-pin'), fours)],
    { unit: 'W' },
  );
  const limits = [epsRoots(build), epsWires(build)].filter((one) => one !== undefined);
  return limits.length === 0 ? inUse : least('EPS cables', [inUse, ...limits]);
});

/**
 * Where EPS connectors are split, no more comes out than goes in; undefined where none is. What an adapter from another
 * kind of connector carries is judged with the adapter.
 */
function epsRoots(build: Build): Figure | undefined {
  const { supply, cables } = build.parts;
  const eps = cables.flatMap((cable) => {
    const [connector, start] = [connectorOf(cable), startOf(cable)];
    if (!('kind' in connector) || !isEps(connector.kind)) return [];
    return [{ cable, kind: connector.kind, splits: 'connectors' in start && isEps(start.at) }];
  });
  if (!eps.some(({ splits }) => splits)) return undefined;
  const own = supply
    ? epsKinds.map((kind) =>
        times(
          connectorPower(kind),
          connectorCount(supply.part.connectors, kind, supply.label),
          `${kind} of the supply`,
        ),
      )
    : [];
  const beside = eps
    .filter(({ splits }) => !splits)
    .map(({ cable, kind }) => times(times(connectorPower(kind), connectorsOn(cable)), howMany(cable)));
  return total('what feeds the EPS connectors', 'power', [...own, ...beside], { unit: 'W' });
}

/** What the wires of the supply’s own EPS cables carry, where it lists them and no other is bought. */
function epsWires(build: Build): Figure | undefined {
  const { supply, cables } = build.parts;
  const rows = supply?.part['own-cables'].value?.filter(({ connector }) => isEps(connector.value ?? ''));
  if (!supply || !rows?.length || cables.some((cable) => !isPlainlyOther(cable))) return undefined;
  if (rows.some(({ count }) => count.value === undefined)) return undefined;
  return total(
    `EPS cables of ${supply.label}`,
    'power',
    rows.map((row) => times(wireCapacity(row), counted(row.count, `EPS cables of ${supply.label}`))),
    { unit: 'W' },
  );
}

function isPlainlyOther(cable: Cable): boolean {
  const connector = connectorOf(cable);
  return 'kind' in connector && !isEps(connector.kind);
}

/** One kind of the supply’s own cables that a card plugs into, with what one such cable has to carry. */
export interface CableLoad {
  readonly kind: Connector;
  readonly row: CableRow;
  readonly shared: number;
  readonly load: Figure;
}

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
    const whole = wholeOf(card, connectors);
    return connectors.flatMap(({ kind, count }) =>
      cables
        .value!.filter((row) => row.connector.value === kind)
        .map((row) => {
          const shared = connectorsOnOneCable(build, supply, kind, count, row);
          const { connector, count: cablesOf, connectors: each } = row;
          const load = decidedBy(loadOf(build, card, kind, shared, whole), connector, cablesOf, each);
          return { kind, row, shared, load };
        }),
    );
  },
);

/** What all connectors of a card are made for together. */
export const wholeOf = (card: Card, connectors: NonNullable<ReturnType<typeof connectorsOf>>): Figure =>
  total(
    `connectors of ${card.label}`,
    'power',
    connectors.map(({ kind, count }) => times(connectorPower(kind), count)),
  );

/** As many connectors of a card as a cable of a supply usually has at most. */
const usualMost = 2;

/**
 * The loads of cables that no file lists: of each kind as many connectors on one as usual cables have at most, and
 * none where the card has one alone.
 */
export const unlistedLoads = memoOf(
  (build: Build, card: Card): readonly { readonly kind: Connector; readonly load: Figure }[] => {
    const connectors = connectorsOf(card) ?? [];
    const whole = wholeOf(card, connectors);
    return connectors.map(({ kind, count }) => ({
      kind,
      load: loadOf(build, card, kind, Math.max(1, Math.min(usualMost, count.hi)), whole),
    }));
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
  if (cables === 0 || connectorsWanted(build, kind).hi <= cables) return 1;
  const must = Number.isFinite(count.hi) ? Math.ceil(count.hi / cables) : 1;
  return Math.max(1, Math.min(must, row.connectors.value!));
}

/**
 * The share of some connectors in what the card draws, the slot giving all it may or nothing; a card takes no more
 * through a connector than it is made for.
 */
export function loadOf(build: Build, card: Card, kind: Connector, shared: number, whole: Figure): Figure {
  const slot = copyWith(slotPower(card), { lo: 0 });
  const most = shared * CONNECTORS[kind].powerW.high;
  const part = most / Math.max(whole.hi, 1);
  return derive(
    `load of one ${kind} cable of ${card.label}`,
    'power',
    [cardDraw(build, card), slot],
    'share of the connectors on it × (sustained power − what the slot gives), at most what they are made for',
    (watts, fromSlot) => Math.min(most, Math.max(0, watts - fromSlot) * Math.min(1, part)),
    { unit: 'W' },
  );
}

/** The sustained power of a processor over each EPS cable in use. */
export function epsCableLoad(build: Build, processor: Placed<'processor'>): Figure {
  const used = least('EPS 8-pin cables in use', [
    connectorsWanted(build, 'EPS 8-pin'),
    connectorsBrought(build, 'EPS 8-pin'),
  ]);
  return derive(
    'load of one EPS 8-pin cable',
    'power',
    [processorDraw(processor), used],
    'processor power ÷ cables',
    (watts, cables) => watts / Math.max(1, cables),
    { unit: 'W' },
  );
}
