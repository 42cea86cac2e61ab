// What a build comes to in figures that people compare: power, temperatures, rates, memory, displays, room, noise
// and price.
import type { Build, Placed } from '../core/build/build';
import { caseTemperature } from '../core/figures/air';
import { statedCost } from '../core/figures/cost';
import { displayLinks } from '../core/figures/display-links';
import { derive, type Figure } from '../core/figures/figure';
import { processorTemperature } from '../core/figures/heat';
import { linkRows } from '../core/figures/link-rows';
import { wallPower } from '../core/figures/mains';
import { memoryCapacity } from '../core/figures/memory';
import { memoryBandwidth, memorySpeed } from '../core/figures/memory-speed';
import { noiseLevel } from '../core/figures/noise';
import { tightestPeaks } from '../core/figures/peaks';
import { sustainedDraw } from '../core/figures/power';
import { rooms } from '../core/figures/rooms';
import { show } from '../core/figures/sentence';
import { driveRate } from '../core/figures/storage';
import { ratingOf } from '../core/figures/supply-rating';
import { identities } from './fingerprint';

export interface Quantity {
  readonly what: string;
  /** By what it is found on the other side: by its name, else by what it is. */
  readonly keys: readonly [string, string];
  readonly figure: Figure;
  readonly better?: 'less' | 'more';
}

type Better = Quantity['better'];

/** All of them that a build has, in the order in which a technician asks. */
export function quantitiesOf(build: Build): readonly Quantity[] {
  const tokens = identities(build);
  const whole = (what: string, figure: Figure | undefined, better?: Better): Quantity[] =>
    figure ? [{ what, keys: [what, what], figure, ...(better ? { better } : {}) }] : [];
  const of = (placed: Placed, what: string, figure: Figure, better: Better): Quantity => ({
    what: `${what} of ${placed.label}`,
    keys: [`${what}\n${placed.path}`, `${what}\n${tokens.get(placed) ?? ''}`],
    figure,
    ...(better ? { better } : {}),
  });
  const { processor, cooler, drives, memory, board } = build.parts;
  return [
    ...powers(build, whole),
    ...whole(
      'temperature of the processor',
      processor && cooler && processorTemperature(build, processor, cooler),
      'less',
    ),
    ...(build.parts.case ? whole('air in the case', caseTemperature(build), 'less') : []),
    ...drives.flatMap((drive) => [
      of(drive, 'read rate', driveRate(build, drive, 'read'), 'more'),
      of(drive, 'write rate', driveRate(build, drive, 'write'), 'more'),
    ]),
    ...linkRows(build)
      .filter(({ placed }) => placed.role !== 'drives')
      .map(({ placed, reached }) => of(placed, 'link rate', reached, 'more')),
    ...(memory.length > 0 || board ? whole('memory capacity', memoryCapacity(build), 'more') : []),
    ...whole('memory speed', memorySpeed(build), 'more'),
    ...whole('memory bandwidth', memoryBandwidth(build), 'more'),
    ...displays(build),
    ...rooms(build).map(({ kind, placed, gap }) => of(placed, `room left, ${kind}`, gap, 'more')),
    ...whole('noise', noiseLevel(build), 'less'),
    ...whole('price', statedCost(build), 'less'),
  ];
}

function powers(
  build: Build,
  whole: (what: string, figure: Figure | undefined, better?: Better) => Quantity[],
): Quantity[] {
  const { supply } = build.parts;
  const draw = sustainedDraw(build);
  if (!supply) return whole('sustained draw', draw, 'less');
  const left = derive(
    'headroom of the supply',
    'power',
    [ratingOf(build, supply), draw],
    'rating − sustained draw',
    (rating, drawn) => rating - drawn,
    { unit: 'W' },
  );
  return [
    ...whole('power at the wall', wallPower(build), 'less'),
    ...whole('sustained draw', draw, 'less'),
    ...whole('headroom of the supply', left, 'more'),
    ...tightestPeaks(build, supply, 1).flatMap(({ lasts, drawn }) =>
      whole(`peak draw, for ${show(lasts)}`, drawn, 'less').map((one) => ({ ...one, keys: ['peak', 'peak'] as const })),
    ),
  ];
}

/** What goes through to each display, and what its mode needs. */
function displays(build: Build): Quantity[] {
  return displayLinks(build).flatMap(({ promise, output, carried, needed }, i): Quantity[] => {
    const mode = promise?.mode.text;
    const at = output?.name ?? promise?.port.text ?? `display ${i + 1}`;
    const one = (what: string, figure: Figure, better: Better): Quantity => ({
      what: `${what} ${at}${mode ? `, ${mode}` : ''}`,
      keys: [`${what}\n${at}\n${mode ?? ''}`, `${what}\n${i}`],
      figure,
      ...(better ? { better } : {}),
    });
    return [
      one('display rate through', carried, 'more'),
      ...(needed ? [one('display rate needed at', needed, undefined)] : []),
    ];
  });
}
