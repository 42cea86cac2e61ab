// Numbers with two readings.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'number-odd',
  area: 'text',
  grade: 'stop',
  unread: true,
  what: 'A number can be read in one way only.',
  why: 'A comma may part decimals or thousands; a range may have been written backwards.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
parts:
  paste: { bond-line: "0,5 mm" }
#                     ^^^^^^^^
`,
      mended: `
parts:
  paste: { bond-line: "0.5 mm" }
`,
    },
  ],
  test: (file, report) => reportProblems(file, report, 'number-odd', 'range-reversed'),
});
