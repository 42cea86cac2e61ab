// Arrays: enough drives for their kind, the room they leave, and how many drives may fail.
import type { Build } from '../../build/build';
import { counted, decidedBy, figure, known, missing, number, type Figure } from '../../figures/figure';
import { many } from '../../figures/lists';
import { sentence } from '../../figures/sentence';
import { arrayCapacity, arrayDrives, arrayMakes, type ArrayDrives } from '../../figures/storage';
import { atLeast, given, lacking, sure } from '../../figures/truth';
import { ARRAY_KINDS, arrayNeeds, arraySurvives, levelOfKind, type ArrayKind } from '../../trade/arrays';
import { check } from '../check';
import { atKey, change, outcome, type FixIdea, type Outcome, type Reporter } from '../kit';
import { floorSize, some } from './storage-kit';

export default check({
  id: 'array-capacity-short',
  area: 'storage',
  grade: 'shortfall',
  what: 'Each array has the drives its kind needs, holds what is promised, and survives as many failures as promised.',
  why:
    'Mirrors and parity cost room, and the smallest drive counts for all; what the list of drives adds up to ' +
    'is not what the array holds.',
  source: 'SNIA Common RAID Disk Drive Format (DDF)',
  examples: [
    {
      faulty: `
parts:
  drives:
    - { name: archive, capacity: 12 TB, count: 3 }
expect:
  arrays: { vault: { kind: single parity, drives: [archive], capacity: 36 TB } }
#                                                                      ^^^^^
`,
      mended: `
parts:
  drives:
    - { name: archive, capacity: 12 TB, count: 3 }
expect:
  arrays: { vault: { kind: single parity, drives: [archive], capacity: 24 TB } }
`,
    },
  ],
  test(build, report) {
    for (const [name, array] of build.file.expect.arrays.value ?? []) {
      const kind = array.kind.value as ArrayKind | undefined;
      const names = array.drives.value?.map((item) => item.value ?? '');
      const drives = names && arrayDrives(build, names);
      const missingFacts = [
        ...(kind ? [] : [missing(array.kind, `kind of ${name}`)]),
        ...(drives ? [] : [missing(array.drives, `drives of ${name}`)]),
      ];
      if (kind && drives) judge(build, name, array, kind, drives, report);
      else report(outcome(atKey(build, array.capacity), lacking(missingFacts), { broken: () => sentence`` }));
    }
  },
});

type Promised =
  NonNullable<Build['file']['expect']['arrays']['value']> extends ReadonlyMap<string, infer A> ? A : never;

function judge(
  build: Build,
  name: string,
  array: Promised,
  kind: ArrayKind,
  drives: ArrayDrives,
  report: Reporter,
): void {
  const have = joined(name, array, drives);
  const makes = arrayMakes(kind, drives.count);
  const { least, even } = arrayNeeds(kind);
  const need = known(least, 'count', `drives that a ${kind} needs`, { source: `SNIA DDF: ${levelOfKind(kind)}` });
  report(
    outcome(atKey(build, array.kind), sure(makes, have, need), {
      broken: () =>
        sentence`${name} has ${many(have, 'drive')}; as ${array.kind} it needs ${even ? 'an even number, ' : ''}${need}
          or more.`,
      fixes: () => kinds(array, drives.count, survivesAtLeast(kind)),
    }),
  );
  if (!makes) return;
  if (array.capacity.node) report(capacity(build, name, array, kind, drives));
  if (array.survives.entry) {
    const wanted = counted(array.survives, `failures promised of ${name}`);
    const survives = known(arraySurvives(kind, drives.count), 'count', `failures that ${name} survives`, {
      source: `SNIA DDF: ${levelOfKind(kind)}`,
    });
    report(
      outcome(atKey(build, array.survives), given(atLeast(survives, wanted), have, array.kind), {
        broken: () =>
          sentence`${name} is to survive ${wanted} failed ${some(wanted, 'drive', 'drives')};
            as ${array.kind} of ${have}
            it survives ${survives}.`,
        fixes: () => kinds(array, drives.count, Math.max(wanted.hi, survivesAtLeast(kind))),
      }),
    );
  }
}

/** How many drives an array joins: those that it names. */
const joined = (name: string, { drives }: Promised, { entries, count }: ArrayDrives): Figure =>
  decidedBy(number(count, `drives of ${name}`), drives, ...entries.flatMap(({ at }) => [at.name, at.count]));

function capacity(build: Build, name: string, array: Promised, kind: ArrayKind, drives: ArrayDrives): Outcome {
  const wanted = figure(array.capacity, `capacity promised of ${name}`);
  const held = arrayCapacity(name, kind, drives);
  const have = joined(name, array, drives);
  return outcome(atKey(build, array.capacity), given(atLeast(held, wanted), have, array.kind), {
    broken: () =>
      sentence`${name} is to hold ${wanted}; as ${array.kind} of ${have} drives it
        holds ${held}.`,
    fixes: () =>
      held.lo > 0 ? [change(array.capacity, floorSize(held.lo), `Lower the promise to ${floorSize(held.lo)}`)] : [],
  });
}

/** What a kind survives with the fewest drives that make it: no other kind that is offered survives less. */
const survivesAtLeast = (kind: ArrayKind): number => arraySurvives(kind, arrayNeeds(kind).least);

/** Other kinds that so many drives make and that survive so many failures. */
function* kinds(array: Promised, drives: number, survive: number): Iterable<FixIdea | undefined> {
  for (const kind of ARRAY_KINDS) {
    if (kind === array.kind.value) continue;
    if (arrayMakes(kind, drives) && arraySurvives(kind, drives) >= survive)
      yield change(array.kind, kind, `Join them as ${kind}`);
  }
}
