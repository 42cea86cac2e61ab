// Drives of a shape against the case's bays for it.
import { bayFact, combinedBay, countDrives, inBay } from '../../figures/drive-places';
import { derive, number, total, type Figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import type { Drive } from '../../figures/storage';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn, swap, type FixIdea } from '../kit';
import { some } from './storage-kit';
import { countedIn } from '../../figures/lists';

export default check({
  id: 'bays-short',
  area: 'storage',
  grade: 'stop',
  what:
    'The case has a bay for each drive: of its own shape, combined, or the one that it names. A small ' +
    'drive that only a ' +
    'larger bay is left for wants a bracket: a note.',
  why: 'A drive without a bay hangs by its cables, or lies on the board’s solder.',
  source: 'SFF-8301 and SFF-8201: outlines; common practice',
  limits: ['A stated list of bays is complete: a shape that it leaves out is none.'],
  examples: [
    {
      faulty: `
parts:
  case: { bays: { 3.5 in: 1 } }
  drives:
    - { name: archive, bus: SATA, shape: 3.5 in }
    - { name: vault, bus: SATA, shape: 3.5 in }
#     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Choose a case with more bays, or larger drives and fewer of them.',
    },
  ],
  test(build, report) {
    const { case: box, drives } = build.parts;
    if (!box) return;
    const bays = (shape: string): Figure => {
      const label = `${shape} bays of ${box.label}`;
      return countedIn(box.part.bays, shape, box.label, { label, list: label });
    };
    const [large, small, either] = [bays('3.5 in'), bays('2.5 in'), bays(combinedBay)];
    for (const shape of ['3.5 in', '2.5 in'] as const) {
      const belongs = inBay(shape);
      const wanted = countDrives(build, `${shape} drives`, belongs, bayFact);
      const last = drives.findLast((drive) => belongs(drive) !== false);
      if (!wanted || !last) continue;
      const others = countDrives(build, '3.5 in drives', inBay('3.5 in'), bayFact) ?? number(0, '3.5 in drives');
      const left =
        shape === '3.5 in' ? together(shape, box.label, large, either) : leftForSmall(small, either, large, others);
      const bracket = shape === '2.5 in' ? lessOf(together(shape, box.label, large, small, either), others) : undefined;
      const onBracket = bracket !== undefined && atMost(wanted, bracket).is !== false;
      report(
        outcome(at(last, undefined, `bay ${shape}`), atMost(wanted, left), {
          ...(onBracket ? { grade: 'note' as const } : {}),
          broken: () =>
            onBracket
              ? sentence`${wanted} ${some(wanted, 'drive needs', 'drives need')} a 2.5 in bay; ${box.label} has ${left}.
                  A larger bay is free: fix one there, on a bracket.`
              : sentence`${wanted} ${some(wanted, 'drive needs', 'drives need')} a ${shape} bay; ${box.label} has
                  ${left}.`,
          fixes: () => [otherBay(last, shape), swap(box)],
        }),
      );
    }
  },
});

/** Bays of several kinds that a drive of a shape goes into; one kind alone stays as it is stated. */
function together(shape: string, of: string, ...kinds: readonly Figure[]): Figure {
  const some = kinds.filter(({ hi }) => hi > 0);
  return some.length <= 1 ? (some[0] ?? kinds[0]!) : total(`bays of ${of} for ${shape} drives`, 'count', some);
}

/** Small drives have bays of their own, and the combined ones that large drives leave. */
function leftForSmall(small: Figure, either: Figure, large: Figure, others: Figure): Figure {
  if (either.hi === 0) return small;
  return derive(
    'bays for 2.5 in drives',
    'count',
    [small, either, large, others],
    '2.5 in bays + combined bays that 3.5 in drives leave',
    (own, both, wide, wanted) => own + Math.max(0, both - Math.max(0, wanted - wide)),
  );
}

const lessOf = (bays: Figure, others: Figure): Figure =>
  derive('bays left, those for larger drives too', 'count', [bays, others], 'bays − drives in them', (a, b) => a - b);

/**
 * A small drive goes into a large bay on a bracket, and back into a bay of its own shape; a large one has no choice.
 */
function otherBay(drive: Drive, shape: string): FixIdea | undefined {
  if (shape === '2.5 in') return putOn(drive, 'bay', '3.5 in', `Fix ${drive.label} in a 3.5 in bay, on a bracket`);
  return drive.part.shape.value === '2.5 in'
    ? putOn(drive, 'bay', '2.5 in', `Fix ${drive.label} in a 2.5 in bay`)
    : undefined;
}
