// Numbers that no machine and no room can have.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'number-out-of-range',
  area: 'text',
  grade: 'stop',
  what: 'A number lies within what its field can be.',
  why: 'A slip of a sign or a digit is found where it stands; until it is mended the fact counts as not stated.',
  source: 'common practice',
  examples: [
    {
      faulty: `
place: { humidity: -40 % }
#                  ^^^^^
`,
      instead: 'Write the number as it was measured or printed.',
    },
  ],
  test: (file, report) => reportProblems(file, report, 'number-out-of-range'),
});
