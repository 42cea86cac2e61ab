// Keys that no table of fields knows.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'unknown-key',
  area: 'text',
  grade: 'stop',
  what: 'Every key is one that the format knows at its place.',
  why: 'A misspelled key is a fact or a promise that nobody checks. Nothing is ignored silently.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
format: 1
build: Counter PC
parts:
  cooler: { hieght: 158 mm }
#           ^^^^^^
`,
      mended: `
format: 1
build: Counter PC
parts:
  cooler: { height: 158 mm }
`,
    },
  ],
  test: (file, report) => reportProblems(file, report, 'unknown-key'),
});
