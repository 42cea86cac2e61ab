// The places that a build’s parts take: slots, ports, headers, memory slots, bays and mounts, with what offers them.
import type { Build, Placed } from '../build/build';
import type { Fact } from '../parts/fact';
import { missing, type Missing } from './figure';
import { memo, memoOf } from './memo';

export type PlaceKind =
  | 'slot'
  | 'port'
  | 'header'
  | 'memory slot'
  | 'fan place'
  | 'radiator place'
  | 'bay'
  | 'display output';

/** One place that a part names. */
export interface NamedPlace {
  readonly placed: Placed;
  readonly kind: PlaceKind;
  readonly name: string;
  /** The fact of the build that names it. */
  readonly fact: Fact<string>;
}

/** Every place that the build names, in the order of the parts. */
export const takenPlaces = memo((build: Build): readonly NamedPlace[] =>
  build
    .of('cooler', 'memory', 'drives', 'graphics', 'cards', 'fans', 'radiators', 'displays', 'cables')
    .flatMap((placed) => placesOf(placed)),
);

function placesOf(placed: Placed): NamedPlace[] {
  const named = (kind: PlaceKind, fact: Fact<string>): NamedPlace[] =>
    fact.value === undefined ? [] : [{ placed, kind, name: fact.value, fact }];
  switch (placed.role) {
    case 'memory':
      return ((placed as Placed<'memory'>).at.slots.value ?? []).flatMap((fact) => named('memory slot', fact));
    case 'drives': {
      const { slot, port, bay } = (placed as Placed<'drives'>).at;
      return [...named('slot', slot), ...named('port', port), ...named('bay', bay)];
    }
    case 'graphics':
    case 'cards':
      return named('slot', (placed as Placed<'cards'>).at.slot);
    case 'fans': {
      const { header, mount } = (placed as Placed<'fans'>).at;
      return [...named('header', header), ...named('fan place', mount)];
    }
    case 'cooler': {
      const { header, mount } = (placed as Placed<'cooler'>).at;
      return [
        ...named('header', header),
        ...named('header', (placed as Placed<'cooler'>).at['pump-header']),
        ...named('radiator place', mount),
      ];
    }
    case 'cables':
      return named('header', (placed as Placed<'cables'>).at.header);
    case 'radiators':
      return named('radiator place', (placed as Placed<'radiators'>).at.mount);
    case 'displays':
      return named('display output', (placed as Placed<'displays'>).at.port);
    default:
      return [];
  }
}

interface Offer {
  readonly by: Placed;
  readonly fact: Fact<unknown>;
  readonly names?: readonly string[];
}

/**
 * What offers places of a kind: the fact that lists them, and their names where it is stated. Undefined where the
 * build has no such part.
 */
export const offered = memoOf((build: Build, kind: PlaceKind): Offer | undefined => {
  const { board, case: box } = build.parts;
  switch (kind) {
    case 'slot':
      return board && { by: board, ...keysOf(board.part.slots) };
    case 'port':
      return board && { by: board, ...keysOf(board.part.ports) };
    case 'header':
      return board && { by: board, ...keysOf(board.part.headers) };
    case 'memory slot':
      return board && { by: board, fact: board.part.memory.slots, ...namesIn(board.part.memory.slots) };
    case 'fan place':
      return box && { by: box, ...keysOf(box.part['fan-places']) };
    case 'radiator place':
      return box && { by: box, ...keysOf(box.part['radiator-places']) };
    case 'bay':
      return box && { by: box, ...keysOf(box.part.bays) };
    case 'display output':
      return undefined; // cards and board offer those together: see outputsOffered
  }
});

/** The display outputs of board and cards together, and what would tell of more; undefined where neither is there. */
export const outputsOffered = memo(
  ({
    parts: { board, graphics },
  }: Build):
    | { readonly by: readonly Placed[]; readonly names: readonly string[]; readonly missingFacts: readonly Missing[] }
    | undefined => {
    const homes = [
      ...graphics.map((by) => ({ by: by as Placed, fact: by.part.outputs as Fact<ReadonlyMap<string, unknown>> })),
      ...(board
        ? [{ by: board as Placed, fact: board.part['display-outputs'] as Fact<ReadonlyMap<string, unknown>> }]
        : []),
    ];
    if (homes.length === 0) return undefined;
    const missingFacts = homes.flatMap(({ by, fact }) =>
      fact.value ? [] : [missing(fact, `display outputs of ${by.label}`)],
    );
    return {
      by: homes.map(({ by }) => by),
      names: homes.flatMap(({ fact }) => [...(fact.value?.keys() ?? [])]),
      missingFacts,
    };
  },
);

function keysOf(fact: Fact<ReadonlyMap<string, unknown>>): { fact: Fact<unknown>; names?: readonly string[] } {
  return fact.value ? { fact, names: [...fact.value.keys()] } : { fact };
}

function namesIn(fact: Fact<readonly Fact<string>[]>): { names?: readonly string[] } {
  return fact.value ? { names: fact.value.flatMap((one) => one.value ?? []) } : {};
}
