// Accepted findings of grade harm that nobody answers for.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { acceptCheck } from '../check';
import { outcome } from '../kit';
import { acceptedAt, isThere } from './accepted-kit';

export default acceptCheck({
  id: 'accepted-harm-without-name',
  area: 'text',
  grade: 'shortfall',
  what: 'Whoever accepts a finding of grade harm is named.',
  why:
    'What could hurt someone is not accepted by a file but by a person or a workshop; until one is named the ' +
    'finding stays.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  processor: { power: { sustained: 253 W } }
  supply: { rating: 200 W }
accept:
  - { finding: supply-overloaded, at: parts.supply, because: Bench test only. }
#              ^^^^^^^^^^^^^^^^^
`,
      instead: 'Write under `by:` who accepts it.',
    },
  ],
  test(build, found, report) {
    for (const [i, line] of (build.file.accept.value ?? []).entries()) {
      const harm = isThere(
        line,
        found.filter((one) => one.grade === 'harm'),
      );
      if (!harm) continue;
      report(
        outcome(acceptedAt(build, line, i, 'by'), sure(!!line.by.value, line.by), {
          broken: () =>
            sentence`${line.finding} could hurt someone or ruin a part; the line does not say who accepts it.`,
        }),
      );
    }
  },
});
