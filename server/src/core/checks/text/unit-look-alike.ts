// Letters that only look like those of a unit.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'unit-look-alike',
  area: 'text',
  grade: 'note',
  what: 'Units are spelled in their own letters.',
  why: 'A letter of another alphabet looks the same and is found by no search.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
parts:
  cooler: { height: 158 мм }
#                       ^
`,
      mended: `
parts:
  cooler: { height: 158 mm }
`,
    },
  ],
  test: (file, report) => reportProblems(file, report, 'unit-look-alike'),
});
