// The figures of a build that a guide can mark: one published table of names.
import type { Build, Placed } from '../build/build';
import { caseTemperature, inletTemperature } from '../figures/air';
import { statedCost } from '../figures/cost';
import type { Figure } from '../figures/figure';
import { clearances } from '../figures/rooms';
import { processorTemperature } from '../figures/heat';
import { wallPower, yearlyCost } from '../figures/mains';
import { memoryCapacity } from '../figures/memory';
import { memoryBandwidth, memorySpeed } from '../figures/memory-speed';
import { noiseLevel } from '../figures/noise';
import { drawFor, peakTimes } from '../figures/peaks';
import { sustainedDraw } from '../figures/power';
import { driveCapacity, driveRate } from '../figures/storage';

/** One name, or one pattern of names: what it means, and the figures of a build that go by it. */
export interface FigureName {
  readonly name: string;
  readonly what: string;
  /** A value of its kind. */
  readonly example: string;
  readonly of: (build: Build) => readonly NamedFigure[];
}

export interface NamedFigure {
  readonly name: string;
  readonly figure: Figure;
}

const one = (name: string, what: string, example: string, work: (build: Build) => Figure | undefined): FigureName => ({
  name,
  what,
  example,
  of: (build) => {
    const figure = work(build);
    return figure ? [{ name, figure }] : [];
  },
});

const perDrive = (fact: string, what: string, example: string, work: DriveFigure): FigureName => ({
  name: `drives.NAME.${fact}`,
  what,
  example,
  of: (build) =>
    build.parts.drives.map((drive, i) => ({
      name: `drives.${drive.at.name.value ?? i + 1}.${fact}`,
      figure: work(build, drive),
    })),
});

type DriveFigure = (build: Build, drive: Build['parts']['drives'][number]) => Figure;

/** All names of figures. */
export const figureNames: readonly FigureName[] = [
  one('power.wall', 'Power from the wall under sustained load.', '412 W', wallPower),
  one('power.draw', 'What all parts draw from the supply under sustained load.', '371 W', (build) =>
    build.all().length > 0 ? sustainedDraw(build) : undefined,
  ),
  one('power.peak', 'What all parts draw together at their shortest stated peak.', '540 W', (build) => {
    const shortest = peakTimes(build).times[0];
    return shortest && drawFor(build, shortest.lo);
  }),
  one('power.cost', 'What a year of its stated use costs at the wall.', '96 EUR', (build) => {
    const wall = build.file.place.mains['hours-per-day'].node ? wallPower(build) : undefined;
    return wall && yearlyCost(build, wall);
  }),
  one('memory.capacity', 'Memory in all modules.', '64 GiB', (build) =>
    build.parts.memory.length > 0 ? memoryCapacity(build) : undefined,
  ),
  one('memory.rate', 'The rate at which the memory runs.', '6000 MT/s', memorySpeed),
  one('memory.bandwidth', 'What the memory moves over all of its channels.', '96 GB/s', memoryBandwidth),
  perDrive('capacity', 'Capacity of one drive.', '2 TB', (_, drive) => driveCapacity(drive)),
  perDrive('rate', 'The rate at which one drive is read where it sits.', '7 GB/s', (build, drive) =>
    driveRate(build, drive, 'read'),
  ),
  perDrive('write', 'The rate at which one drive is written where it sits.', '6.5 GB/s', (build, drive) =>
    driveRate(build, drive, 'write'),
  ),
  one('price', 'What all parts cost.', '1840 EUR', statedCost),
  one('noise', 'Level of all parts at the promised distance.', '31 dBA', noiseLevel),
  one('temperature.inlet', 'Air that goes into the case.', '31 °C', (build) =>
    build.parts.case ? inletTemperature(build) : undefined,
  ),
  one('temperature.case', 'Air in the case under sustained load.', '38 °C', (build) =>
    build.parts.case ? caseTemperature(build) : undefined,
  ),
  one('temperature.processor', 'The processor under sustained load.', '84 °C', (build) => {
    const { processor, cooler } = build.parts;
    return processor && cooler && processorTemperature(build, processor, cooler);
  }),
  {
    name: 'clearance.PART.SIDE',
    what: 'Room that is left beside a part: its height, length or depth.',
    example: '12 mm',
    of: (build) =>
      clearances(build).map(({ placed, side, gap }) => ({
        name: `clearance.${ownName(build, placed)}.${side}`,
        figure: gap,
      })),
  },
];

/** A part by its role, numbered where there are several. */
function ownName(build: Build, { role, index }: Placed): string {
  return build.of(role).length > 1 ? `${role}.${index + 1}` : role;
}

/** All figures of a build by name; worked out as they are asked for. */
export function figuresOf(build: Build): ReadonlyMap<string, Figure> {
  return new Map(figureNames.flatMap(({ of }) => of(build)).map(({ name, figure }) => [name, figure]));
}

/** What a name means, whether or not a build has such a figure. */
export function meaningOfName(name: string): FigureName | undefined {
  const words = name.split('.');
  return figureNames.find((known) => {
    const pattern = known.name.split('.');
    const [first, last] = [pattern[0], pattern.at(-1)];
    if (pattern.length < 3) return known.name === name;
    return words.length >= 3 && words[0] === first && (last === 'SIDE' || words.at(-1) === last);
  });
}
