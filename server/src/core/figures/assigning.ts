// Which places each part could take: the slots, ports and headers of the board that are of its kind.
import type { Build, Placed } from '../build/build';
import type { RoleName } from '../manifest/places';
import type { Fact } from '../parts/fact';
import { missing, type Missing } from './figure';
import { memoOf } from './memo';

/** A part that wants a place, the key that names it, and the places of the right kind. */
export interface Seeker {
  readonly placed: Placed;
  readonly key: 'slot' | 'port' | 'header';
  readonly stated: Fact<string>;
  readonly choices: readonly string[];
  /** Facts without which it is not known which kind of place the part wants. */
  readonly missingFacts: readonly Missing[];
}

type Board = NonNullable<Build['parts']['board']>;

/**
 * The parts of some roles that want one place each. Several of one kind under a `count` are left to whoever places
 * them.
 */
export const partsToPlace = (build: Build, roles: readonly RoleName[]): readonly Seeker[] =>
  roles.flatMap((role) => seekersIn(build, role));

const seekersIn = memoOf((build: Build, role: RoleName): readonly Seeker[] => {
  const { board } = build.parts;
  return board ? build.of(role).flatMap((placed) => seekerOf(board, placed) ?? []) : [];
});

function seekerOf(board: Board, placed: Placed): Seeker | undefined {
  const count = (placed as Placed<'drives'>).at.count;
  if (count?.value !== undefined && count.value > 1) return undefined;
  switch (placed.role) {
    case 'drives':
      return driveSeeker(board, placed as Placed<'drives'>);
    case 'graphics':
    case 'cards':
      return slotSeeker(board, placed as Placed<'cards'>, 'PCIe');
    case 'fans':
      return headerSeeker(board, placed as Placed<'fans'>);
    default:
      return undefined;
  }
}

function driveSeeker(board: Board, drive: Placed<'drives'>): Seeker | undefined {
  const { shape, bus } = drive.part;
  const stated = drive.at.port.value === undefined ? drive.at.slot : drive.at.port;
  const plain: Seeker = { placed: drive, key: 'slot', stated, choices: [], missingFacts: [] };
  if (shape.value === undefined) return { ...plain, missingFacts: [missing(shape, `shape of ${drive.label}`)] };
  if (shape.value === 'M.2') return slotSeeker(board, drive, 'M.2');
  if (shape.value === 'card') return slotSeeker(board, drive, 'PCIe');
  if (bus.value === undefined) return { ...plain, missingFacts: [missing(bus, `bus of ${drive.label}`)] };
  if (bus.value !== 'SATA') return undefined;
  const { ports } = board.part;
  return {
    placed: drive,
    key: 'port',
    stated: drive.at.port,
    choices: [...(ports.value?.keys() ?? [])],
    missingFacts: [],
  };
}

function slotSeeker(
  board: Board,
  placed: Placed<'drives'> | Placed<'cards'> | Placed<'graphics'>,
  kind: 'M.2' | 'PCIe',
): Seeker {
  const slots = [...(board.part.slots.value ?? [])].filter(
    ([, slot]) => slot.kind.value === kind && slot.key.value !== 'E' && slot.key.value !== 'A',
  );
  return { placed, key: 'slot', stated: placed.at.slot, choices: slots.map(([name]) => name), missingFacts: [] };
}

function headerSeeker(board: Board, fan: Placed<'fans'>): Seeker {
  const headers = [...(board.part.headers.value ?? [])].filter(([, header]) => header.kind.value === 'fan');
  return {
    placed: fan,
    key: 'header',
    stated: fan.at.header,
    choices: headers.map(([name]) => name),
    missingFacts: [],
  };
}
