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
  unknown,
  writtenAt,
  type Figure,
  type Missing,
} from './figure';
import { connectorOf, connectorsBrought } from './cables';
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

/** Whether a drive plugs into a SATA port of the board. */
export function wantsPort({ at, part: { bus, shape }, label }: Drive): Belongs {
  if (at.slot.value !== undefined) return false;
  if (bus.value === undefined)
    return shape.value === 'M.2' || shape.value === 'card' ? false : [missing(bus, `bus of ${label}`)];
  if (bus.value !== 'SATA') return false;
  if (at.port.value !== undefined) return true;
  return shape.value === undefined
    ? [missing(shape, `shape of ${label}`)]
    : shape.value !== 'M.2' && shape.value !== 'card';
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

/** Whether a drive goes into a bay of this shape: the one its place names, or its own. */
export function inBay(shape: string): (drive: Drive) => Belongs {
  return (drive) => {
    const bay = drive.at.bay.value ?? drive.part.shape.value;
    if (bay !== undefined && bay !== shape) return false;
    return drive.at.bay.value === undefined ? housed(drive) : true;
  };
}

/** What says which bay a drive goes into. */
export const bayFact = ({ at: { bay }, part: { shape } }: Drive): Fact<unknown> => (bay.node ? bay : shape);

export const portDrives = memo((build: Build) => countDrives(build, 'drives on SATA ports', wantsPort));
export const housedDrives = memo((build: Build) =>
  countDrives(build, 'drives that want a SATA power connector', housed),
);

/** SATA ports that no filled slot switches off, on the board and on cards; undefined without a board. */
export const portsLeft = memo((build: Build): Figure | undefined => {
  const { board, cards } = build.parts;
  if (!board) return undefined;
  const brought = cards.map((card) =>
    times(counted(card.part['drive-ports'], `SATA ports of ${card.label}`), howMany(card)),
  );
  return total('SATA ports left', 'count', [boardPorts(build, board.part.ports, board.label), ...brought]);
});

function boardPorts(build: Build, ports: NonNullable<Build['parts']['board']>['part']['ports'], of: string): Figure {
  const label = `SATA ports of ${of}`;
  if (!ports.value)
    return copyWith(between(0, Infinity, 'count', label, { source: 'the board’s facts' }), {
      missing: [missing(ports, label)],
    });
  let [lo, hi] = [0, 0];
  const missingFacts: Missing[] = [];
  for (const port of ports.value.keys()) {
    const effects = effectsOn(build, port, 'takes-from');
    if (effects.some((effect) => effect.does)) continue;
    const open = effects.flatMap((effect) => effect.missingFacts);
    hi++;
    if (open.length === 0) lo++;
    missingFacts.push(...open);
  }
  return copyWith(between(lo, hi, 'count', label, { source: 'the board’s facts' }), {
    missing: uniqueMissing([{ missing: missingFacts }]),
    from: writtenAt(ports),
  });
}

/** SATA power connectors of supply and cables, less those that adapters take up; undefined without a supply. */
export const driveConnectors = (build: Build): Figure | undefined =>
  build.parts.supply && connectorsBrought(build).get('SATA power');

/** A count under a name in a map of counts. A map that is stated is complete: what it leaves out is none. */
export function countedIn(map: Fact<ReadonlyMap<string, Fact<number>>>, name: string, label: string): Figure {
  const one = map.value?.get(name);
  if (one) return counted(one, label);
  return map.value
    ? copyWith(number(0, label, 'not among those it lists'), { from: writtenAt(map) })
    : unknown('count', label, [missing(map, label)]);
}

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

/** SATA data cables in the boxes of board, case, cards and drives, and those bought beside. */
export const dataCables = memo((build: Build): Figure => {
  const boxes = build
    .of('board', 'drives', 'cards', 'case')
    .map((placed) => times(boxed(placed, 'SATA data cable'), howMany(placed)));
  return total('SATA data cables', 'count', [...boxes, ...boughtCables(build, 'SATA data')]);
});
