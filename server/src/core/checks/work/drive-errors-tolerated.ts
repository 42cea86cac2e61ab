// A test of the drives that lets failed sectors pass.
import { counted, number } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { atFact, change, outcome, target } from '../kit';

const none = number(0, 'failed sectors of a sound drive', 'common practice');

export default check({
  id: 'drive-errors-tolerated',
  area: 'work',
  grade: 'shortfall',
  what: 'No test of a drive lets a reallocated, pending or uncorrectable sector pass.',
  why:
    'A new drive has no failed sector; one that shows some before the hand-over has begun to fail, and is sent ' +
    'back while that is easy.',
  source: 'common practice; attributes 5, 187, 197 and 198 of drives’ own records',
  examples: [
    {
      faulty: `
acceptance:
  drive-tests: [{ test: long self-test, failed-sectors: 8 }]
#                                                       ^
`,
      mended: `
acceptance:
  drive-tests: [{ test: long self-test, failed-sectors: 0 }]
`,
    },
  ],
  test(build, report) {
    const tests = build.file.acceptance['drive-tests'].value ?? [];
    tests.forEach((test, i) => {
      const fact = test['failed-sectors'];
      const subject = `acceptance.drive-tests[${i}].failed-sectors`;
      const failed = counted(fact, `failed sectors let pass by test ${i + 1} of the drives`);
      report(
        outcome(fact.node ? atFact(fact) : target(subject, build.doc, test.$.span), atMost(failed, none), {
          broken: () =>
            sentence`The test lets ${failed} failed ${failed.lo === 1 ? 'sector' : 'sectors'} pass; a sound drive has
              ${none}. Let none pass, and send the drive back.`,
          fixes: () => [change(fact, 0, 'Let no failed sector pass')],
        }),
      );
    });
  },
});
