// Figures of what drives need beside a link: ports, connectors, bays and cables, and how many there are.
import { boxed } from './box-contents';
import type { Build, Placed } from '../build/build';
import type { Fact } from '../parts/fact';
import { uniqueMissing } from './missing-facts';
import {
  copyWith,
  between,
  counted,
  decidedBy,
  missing,
  number,
  times,
  total,
  writtenAt,
  type Figure,
  type Missing,
} from './figure';
import { connectorCount, connectorOf, connectorsBrought } from './cables';
import { memo } from './memo';
import { howMany } from './power';
import { effectsOn } from './slots';
import type { Drive } from './storage';

/** Whether a drive is one of those counted: it is, it is not, or these facts would tell. */
export type Belongs = boolean | readonly Missing[];

/** How many drives belong, of those that a build lists; a drive that only may belong widens the figure. */
export function countDrives(
  build: Build,
  label: string,
  belongs: (drive: Drive) => Belongs,
  by?: (drive: Drive) => Fact<unknown>,
): Figure | undefined {
  const each = build.parts.drives.flatMap((drive) => {
    const answer = belongs(drive);
    if (answer === false) return [];
    const many = decidedBy(howMany(drive), by?.(drive));
    return [
      answer === true
        ? many
        : copyWith(between(0, many.hi, 'count', many.label, { source: 'counted in the build' }), { missing: answer }),
    ];
  });
  return each.length === 0 ? undefined : total(label, 'count', each);
}

/** What a drive’s data cable goes to, by its bus. */
const portOfBus = { NVMe: 'U.2', SATA: 'SATA', SAS: 'SAS', USB: 'USB' } as const;
export type PortKind = (typeof portOfBus)[keyof typeof portOfBus];

/** Whether a port of a kind carries a bus: those of SAS take SATA drives as well. */
export const portTakes = (kind: PortKind, bus: keyof typeof portOfBus): boolean =>
  portOfBus[bus] === kind || (kind === 'SAS' && bus === 'SATA');

/** The card that a drive’s `port` names: a host adapter, to one of whose ports its cable goes. */
export function hostOf(build: Build, port: string | undefined): Placed<'cards'> | undefined {
  if (port === undefined || build.parts.board?.part.ports.value?.has(port)) return undefined;
  return build.parts.cards.find((card) => card.at.name.value === port);
}

/** Whether a drive plugs into a port for drives inside the case. */
export const wantsPort = (drive: Drive): Belongs => wantsPortOf(drive, 'SATA');

/** Whether a drive plugs into a port of a kind; modules and cards go into slots. */
export function wantsPortOf({ at, part: { bus, shape }, label }: Drive, kind: PortKind): Belongs {
  if (at.slot.value !== undefined) return false;
  const inSlot = shape.value === 'M.2' || shape.value === 'card';
  if (bus.value === undefined) return inSlot || kind !== 'SATA' ? false : [missing(bus, `bus of ${label}`)];
  if (portOfBus[bus.value] !== kind) return false;
  if (at.port.value !== undefined) return true;
  return shape.value === undefined && kind !== 'SAS' ? [missing(shape, `shape of ${label}`)] : !inSlot;
}

/** Whether a drive has a housing of its own, fed by a SATA power connector; one on USB stands outside. */
export function housed({ at, part: { bus, shape }, label }: Drive): Belongs {
  if (at.slot.value !== undefined || bus.value === 'USB') return false;
  if (shape.value === undefined) return [missing(shape, `shape of ${label}`)];
  if (shape.value === 'M.2' || shape.value === 'card') return false;
  return bus.value === undefined ? [missing(bus, `bus of ${label}`)] : true;
}

/** What a case states of its bays for a drive’s shape, in a map by shape; or what would tell. */
export function byShape<T>(
  map: Fact<ReadonlyMap<string, Fact<T>>>,
  { part: { shape }, label }: Drive,
  what: string,
): Fact<T> | { readonly missingFacts: Missing } {
  if (shape.value === undefined) return { missingFacts: missing(shape, `shape of ${label}`) };
  const stated = map.value?.get(shape.value);
  return stated?.value === undefined
    ? { missingFacts: { doc: map.doc, path: `${map.path}.${shape.value}`, fact: map, what } }
    : stated;
}

/** Whether a drive is screwed into its bay: not where it has none, or clips hold it. */
export function screwed(box: Placed<'case'>): (drive: Drive) => Belongs {
  return (drive) => {
    const belongs = housed(drive);
    if (belongs !== true) return belongs;
    const thread = byShape(box.part['bay-thread'], drive, `what holds a drive in its bay in ${box.label}`);
    return 'missingFacts' in thread ? [thread.missingFacts] : thread.value !== 'clips';
  };
}

/**
 * Whether a drive goes into a bay of this shape: the one its place names, or its own; a combined bay takes it by its
 * own.
 */
export function inBay(shape: string): (drive: Drive) => Belongs {
  return (drive) => {
    const { bay } = drive.at;
    const named = bay.value === combinedBay ? undefined : bay.value;
    const wants = named ?? drive.part.shape.value;
    if (wants !== undefined && wants !== shape) return false;
    return named === undefined ? housed(drive) : true;
  };
}

/** A bay that holds a drive of either shape. */
export const combinedBay = '3.5 or 2.5 in';

/** What says which bay a drive goes into. */
export const bayFact = ({ at: { bay }, part: { shape } }: Drive): Fact<unknown> => (bay.node ? bay : shape);

const busFact = ({ part: { bus } }: Drive): Fact<unknown> => bus;

export const portDrives = memo((build: Build) => countDrives(build, 'drives on SATA ports', wantsPort));
export const housedDrives = memo((build: Build) =>
  countDrives(build, 'drives that want a SATA power connector', housed),
);

/** What drives of a kind of port want, and what is left for them; undefined without a board, or without such drives. */
export interface Ports {
  readonly wanted: Figure;
  readonly left: Figure;
}

/** Ports that no filled slot switches off, on the board and on cards. SATA drives go to ports of SAS as well. */
export const portsFor = memo((build: Build): ReadonlyMap<PortKind, Ports> => {
  const found = new Map<PortKind, Ports>();
  if (!build.parts.board) return found;
  for (const kind of ['SATA', 'SAS', 'U.2'] as const) {
    const label = kind === 'SATA' ? 'drives on SATA ports' : `${kind} drives`;
    const wanted = countDrives(build, label, (drive) => wantsPortOf(drive, kind), busFact);
    if (!wanted) continue;
    const onSas =
      kind === 'SATA' ? countDrives(build, 'SAS drives', (drive) => wantsPortOf(drive, 'SAS'), busFact) : undefined;
    found.set(kind, {
      wanted: onSas ? total('drives on SATA and SAS ports', 'count', [wanted, onSas]) : wanted,
      left: total(`${kind} ports left`, 'count', portsOf(build, kind === 'SATA' ? ['SATA', 'SAS'] : [kind], wanted)),
    });
  }
  return found;
});

function portsOf(build: Build, kinds: readonly PortKind[], wanted: Figure): Figure[] {
  const { board, cards } = build.parts;
  const words = kinds[0]!;
  const own = boardPorts(build, board!.part.ports, kinds, board!.label);
  const brought = cards.flatMap((card) => {
    const { 'drive-ports': ports, 'port-kind': kind } = card.part;
    const label = `${words} ports of ${card.label}`;
    if (kind.value !== undefined && !kinds.includes(kind.value)) return [];
    // Nobody asks a network card for ports while those of the board may do.
    if (!ports.node && own.hi >= wanted.lo) return [];
    // A card whose ports are not said to be SATA may well be a host adapter for SAS; with none stated it brings some.
    if (kind.value === undefined && words !== 'SATA')
      return ports.value === undefined || ports.value === 0
        ? []
        : [
            copyWith(between(0, ports.value, 'count', label, { source: 'the card’s facts' }), {
              missing: [missing(kind, `kind of the ports of ${card.label}`)],
            }),
          ];
    return [times(counted(ports, label), howMany(card))];
  });
  return [own, ...brought];
}

function boardPorts(
  build: Build,
  ports: NonNullable<Build['parts']['board']>['part']['ports'],
  kinds: readonly PortKind[],
  of: string,
): Figure {
  const label = `${kinds[0]!} ports of ${of}`;
  if (!ports.value)
    return copyWith(between(0, Infinity, 'count', label, { source: 'the board’s facts' }), {
      missing: [missing(ports, label)],
    });
  let [lo, hi] = [0, 0];
  const missingFacts: Missing[] = [];
  for (const [name, port] of ports.value) {
    if (!kinds.includes(port.kind.value ?? 'SATA')) continue;
    const effects = effectsOn(build, name, 'takes-from');
    if (effects.some((effect) => effect.does)) continue;
    const open = effects.flatMap((effect) => effect.missingFacts);
    const many = port.drives.value ?? 1;
    hi += many;
    if (open.length === 0) lo += many;
    missingFacts.push(...open);
  }
  return copyWith(between(lo, hi, 'count', label, { source: 'the board’s facts' }), {
    missing: uniqueMissing([{ missing: missingFacts }]),
    from: writtenAt(ports),
  });
}

/**
 * SATA power connectors of supply and cables, less those that adapters take up; undefined without a supply. A board
 * that no 24-pin cable feeds makes 5 V itself, and powers drives by cables out of its own box.
 */
export const driveConnectors = memo((build: Build): Figure | undefined => {
  const { supply, board } = build.parts;
  const brought = supply && connectorsBrought(build, 'SATA power');
  const inlets = board?.part['power-connectors'];
  if (!brought || !board || !inlets?.value || connectorCount(inlets, '24-pin', board.label).hi > 0) return brought;
  const own = decidedBy(boxed(board, 'SATA power cable'), inlets);
  return total('SATA power connectors of supply, cables and board', 'count', [brought, own]);
});

/** Cables bought of a kind; one that does not say what it connects may be of it. */
function boughtCables(build: Build, kind: string): Figure[] {
  return build.parts.cables.flatMap((cable) => {
    const connector = connectorOf(cable);
    if ('missingFacts' in connector)
      return [
        copyWith(between(0, Infinity, 'count', `${kind} cables among ${cable.label}`, { source: 'not stated' }), {
          missing: [connector.missingFacts],
        }),
      ];
    if (connector.kind !== kind) return [];
    // A breakout cable has several ends for drives.
    const { connectors } = cable.part;
    const ends = connectors.node ? counted(connectors, `ends of ${cable.label}`) : number(1, 'ends of a cable');
    return [times(ends, howMany(cable))];
  });
}

/** Whether the box of a part may hold data cables at all: those of modules and of cards without ports hold none. */
function mayBringCable(placed: Placed): boolean {
  if (placed.role === 'drives') return (placed as Placed<'drives'>).part.shape.value !== 'M.2';
  return placed.role !== 'cards' || (placed as Placed<'cards'>).part['drive-ports'].entry !== undefined;
}

/** SATA data cables in the boxes of board, case, cards and drives, and those bought beside. */
export const dataCables = memo((build: Build): Figure => {
  const boxes = build
    .of('board', 'drives', 'cards', 'case')
    .filter((placed) => placed.part['in-the-box'].node || mayBringCable(placed))
    .flatMap((placed) => [
      times(boxed(placed, 'SATA data cable'), howMany(placed)),
      times(times(boxed(placed, 'breakout cable'), number(4, 'ends of a breakout cable')), howMany(placed)),
    ]);
  return total('SATA data cables', 'count', [...boxes, ...boughtCables(build, 'SATA data')]);
});
