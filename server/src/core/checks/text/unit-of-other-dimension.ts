// Units of another dimension, or of none.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'unit-of-other-dimension',
  area: 'text',
  grade: 'stop',
  unread: true,
  what: 'A unit measures what its field asks for, and is spelled in one way only.',
  why: 'Watts for a length is a slip of the line; `Gb/s` for `GB/s` is an eightfold one.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
expect:
  drives: { scratch: { read: 5 gb/s } }
#                              ^^^^
`,
      mended: `
expect:
  drives: { scratch: { read: 5 GB/s } }
`,
    },
  ],
  test: (file, report) => reportProblems(file, report, 'unit-of-other-dimension', 'unit-unknown'),
});
