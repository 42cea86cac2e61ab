// A memory test that lets errors pass.
import { counted, number } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome } from '../kit';
import { atGroup } from './acceptance-kit';

const none = number(0, 'errors of sound memory', 'common practice');

export default check({
  id: 'memory-errors-tolerated',
  area: 'work',
  grade: 'shortfall',
  what: 'The memory test lets no error pass.',
  why:
    'One error in a full pass means more in use: in a file, in a file system, in a result. Memory that errs ' +
    'is set slower or replaced.',
  source: 'common practice; memory test programs’ handbooks',
  examples: [
    {
      faulty: `
acceptance:
  memory-test: { passes: 1, errors: 1 }
#                                   ^
`,
      mended: `
acceptance:
  memory-test: { passes: 1, errors: 0 }
`,
    },
  ],
  test(build, report) {
    const test = build.file.acceptance['memory-test'];
    if (!test.$.stated) return;
    const errors = counted(test.errors, 'errors that the memory test lets pass');
    report(
      outcome(
        test.errors.node ? atKey(build, test.errors) : atGroup(build, test, test.errors.path),
        atMost(errors, none),
        {
          broken: () =>
            sentence`The memory test lets ${errors} ${errors.lo === 1 ? 'error' : 'errors'} pass; sound memory has
              ${none}, so let none pass.`,
          fixes: () => [change(test.errors, 0, 'Let no error pass')],
        },
      ),
    );
  },
});
