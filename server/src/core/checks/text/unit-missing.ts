// Bare numbers where a unit belongs.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'unit-missing',
  area: 'text',
  grade: 'stop',
  unread: true,
  what: 'Every quantity carries its unit.',
  why: 'A bare number is read differently by everyone: 158 may be millimetres, inches or watts.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
parts:
  cooler: { height: 158 }
#                   ^^^
`,
      mended: `
parts:
  cooler: { height: 158 mm }
`,
    },
  ],
  test: (file, report) => reportProblems(file, report, 'unit-missing'),
});
