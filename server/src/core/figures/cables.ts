// Figures of power connectors: how many of each kind the parts want, and how many supply and cables bring.
import type { Build, Placed } from '../build/build';
import type { Fact } from '../parts/fact';
import { CONNECTORS, isPowerConnector, type Connector } from '../trade/connectors';
import {
  copyWith,
  between,
  counted,
  decidedBy,
  derive,
  missing,
  most,
  number,
  times,
  total,
  unknown,
  type Figure,
  type Missing,
} from './figure';
import { boxed } from './box-contents';
import { isFedBySocket, wantedLevel } from './card-power';
import { memo, memoOf } from './memo';
import { howMany } from './power';
import { countedIn } from './lists';

export type Cable = Placed<'cables'>;
type ConnectorMap = Fact<ReadonlyMap<string, Fact<number>>>;

/** How many connectors of a kind a part states; a kind that its list leaves out is none. */
export const connectorCount = (fact: ConnectorMap, kind: Connector, of: string): Figure =>
  countedIn(fact, kind, of, { label: `${kind} of ${of}`, list: `${fact.key} of ${of}` });

/** Connectors of a kind that board and cards want; what drives take is counted with the drives. */
export const connectorsWanted = memoOf((build: Build, kind: Connector): Figure => {
  const { board, graphics, cards } = build.parts;
  const wants = board ? [connectorCount(board.part['power-connectors'], kind, board.label)] : [];
  for (const card of [...graphics, ...cards])
    if (!isFedBySocket(card)) wants.push(times(connectorCount(card.part.connectors, kind, card.label), howMany(card)));
  return total(`${kind} wanted`, 'count', wants);
});

/** What a cable connects: its part’s connector, or what the build says of it; or the fact that would tell. */
export function connectorOf(cable: Cable): { readonly kind: string } | { readonly missingFacts: Missing } {
  const kind = cable.part.connector.value ?? cable.at.kind.value;
  return kind === undefined ? { missingFacts: missing(cable.part.connector, `connector of ${cable.label}`) } : { kind };
}

/** Where a power cable starts: at the supply itself, at connectors of another kind, or not known. */
export function startOf(
  cable: Cable,
):
  | { readonly at: 'supply' }
  | { readonly at: string; readonly connectors: Figure }
  | { readonly missingFacts: Missing } {
  const { from, adapter, 'from-count': joined } = cable.part;
  if (from.value !== undefined)
    return { at: from.value, connectors: counted(joined, `connectors that ${cable.label} starts from`) };
  if (adapter.value === false) return { at: 'supply' };
  return {
    missingFacts:
      adapter.value === undefined
        ? missing(adapter, `whether ${cable.label} is an adapter`)
        : missing(from, `start of ${cable.label}`),
  };
}

/**
 * Connectors of a kind that the supply’s own cables and the cables bought beside them bring, less those that adapters
 * take up.
 */
export const connectorsBrought = memoOf((build: Build, kind: Connector): Figure => {
  const { supply, cables } = build.parts;
  const own = supply ? [connectorCount(supply.part.connectors, kind, supply.label)] : [];
  const given = total(`${kind} brought`, 'count', [...own, ...cables.flatMap((cable) => givenBy(cable, kind) ?? [])]);
  const taken = cables.flatMap((cable) => takenBy(cable, kind) ?? []);
  if (taken.length === 0) return given;
  return derive(
    `${kind} left`,
    'count',
    [given, total(`${kind} taken by adapters`, 'count', taken)],
    'brought − taken by adapters',
    (a, b) => Math.max(0, a - b),
  );
});

function givenBy(cable: Cable, kind: Connector): Figure | undefined {
  const connector = connectorOf(cable);
  if ('missingFacts' in connector) return unknown('count', `${kind} of ${cable.label}`, [connector.missingFacts]);
  return connector.kind === kind
    ? decidedBy(times(connectorsOn(cable), howMany(cable), `${kind} of ${cable.label}`), cable.part.connector)
    : undefined;
}

/** How many connectors of its kind one cable brings: at least one, and more where it splits. */
export function connectorsOn({ part: { connectors }, label }: Cable): Figure {
  const what = `connectors on ${label}`;
  return connectors.entry
    ? counted(connectors, what)
    : copyWith(between(1, Infinity, 'count', what, { source: 'common practice' }), {
        missing: [missing(connectors, what)],
      });
}

function takenBy(cable: Cable, kind: Connector): Figure | undefined {
  const connector = connectorOf(cable);
  if ('kind' in connector && !isPowerConnector(connector.kind)) return undefined;
  const start = startOf(cable);
  if ('missingFacts' in start)
    return unknown(
      'count',
      `${kind} taken by ${cable.label}`,
      'missingFacts' in connector ? [connector.missingFacts, start.missingFacts] : [start.missingFacts],
    );
  return 'connectors' in start && start.at === kind
    ? decidedBy(times(start.connectors, howMany(cable)), cable.part.from)
    : undefined;
}

/**
 * Adapters to a 16-pin connector that lie in the boxes of cards, and the PCIe 8-pin connectors that one of them
 * joins.
 */
export const boxedAdapters = memo((build: Build): { readonly count: Figure; readonly joins: Figure } => {
  const cards = [...build.parts.graphics, ...build.parts.cards].filter(
    (card) => connectorCount(card.part.connectors, '16-pin', card.label).hi > 0,
  );
  const count = total(
    '16-pin adapters in the boxes of cards',
    'count',
    cards.map((card) => times(adaptersIn(card), howMany(card))),
  );
  const joins =
    cards.length === 0
      ? number(0, 'PCIe 8-pin connectors of an adapter')
      : most(
          'PCIe 8-pin connectors that an adapter joins',
          cards.map((card) => joinedFor(build, card)),
        );
  return { count, joins };
});

type Card = Placed<'graphics'> | Placed<'cards'>;

const adaptersIn = (card: Card): Figure => {
  const found = boxed(card, '16-pin adapter');
  return copyWith(found, { hi: Math.min(found.hi, Math.max(found.lo, 1)) });
};

/** As many connectors of 150 W as bring the level that the card wants. */
function joinedFor(build: Build, card: Card): Figure {
  return derive(
    `PCIe 8-pin connectors of the adapter of ${card.label}`,
    'count',
    [wantedLevel(build, card)],
    'power level ÷ 150 W a connector, rounded up',
    (watts) => Math.ceil(watts / CONNECTORS['PCIe 8-pin'].powerW.low),
  );
}
