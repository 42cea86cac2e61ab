// Accepted findings that have got worse than what was weighed.
import type { Build } from '../../build/build';
import { amountPast, excessOf } from '../../figures/measure';
import { sentence, type Sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { acceptCheck, type FoundFinding } from '../check';
import { outcome } from '../kit';
import { acceptedAt, isThere, isWeighed } from './accepted-kit';

type Line = NonNullable<Build['file']['accept']['value']>[number];

export default acceptCheck({
  id: 'accepted-but-worse',
  area: 'text',
  grade: 'note',
  what: 'No accepted finding is worse than it was when it was weighed.',
  why:
    'Six millimetres too many may be bent out of the way, sixty may not: past the amount under `at-most` the finding ' +
    'counts again. What could hurt someone is accepted up to a stated amount only.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  cooler: { height: 231 mm }
  case: { cooler-height: 155 mm }
accept:
  - { finding: cooler-too-tall, at: parts.cooler, at-most: 6 mm, because: The panel bows by so much. }
#              ^^^^^^^^^^^^^^^
`,
      instead: 'Weigh the finding again: mend it, or set `at-most` anew with a reason that still holds.',
    },
  ],
  test(build, found, report) {
    for (const [i, line] of (build.file.accept.value ?? []).entries()) {
      const own = found.filter((one) => one.grade !== 'unknown' && isThere(line, [one]));
      const worse = own.filter((one) => !isWeighed(line, one)).sort((a, b) => pastOf(b) - pastOf(a))[0];
      if (own.length === 0) continue;
      report(
        outcome(acceptedAt(build, line, i, 'at-most'), sure(!worse, line['at-most']), {
          broken: () => words(line, worse!),
        }),
      );
    }
  },
});

const pastOf = ({ measure }: FoundFinding): number => (measure ? amountPast(measure) : 0);

function words(line: Line, { measure }: FoundFinding): Sentence {
  const atMost = line['at-most'];
  if (!measure)
    return sentence`No number decides ${line.finding}, so ${atMost} cannot be held against it; the finding counts.
      Take \`at-most\` out.`;
  const excess = excessOf(measure);
  if (atMost.node === undefined)
    return sentence`${line.finding} could hurt someone or ruin a part, and the line does not say up to what it was
      weighed; the finding counts. It is past its limit by ${excess}: weigh that, and write it under \`at-most\`.`;
  if (!atMost.value?.some(({ dimension }) => dimension === excess.dimension))
    return sentence`${line.finding} is past its limit by ${excess}, which cannot be held against ${atMost}; the finding
      counts.`;
  return sentence`${line.finding} was accepted up to ${atMost} past its limit and is ${excess} past it now; the finding
    counts again.`;
}
