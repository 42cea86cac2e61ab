// Values of another kind than the field’s.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'wrong-kind-of-value',
  area: 'text',
  grade: 'stop',
  unread: true,
  what: 'A value is of the kind that belongs at its place.',
  why: 'A text where a list belongs, or a word where a number belongs, states nothing that could be checked.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
parts:
  memory: { slots: A2 }
#                  ^^
`,
      mended: `
parts:
  memory: { slots: [A2] }
`,
    },
  ],
  test: (file, report) => reportProblems(file, report, 'wrong-kind-of-value', 'key-not-text'),
});
