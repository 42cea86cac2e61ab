// Text that is no YAML.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'yaml-syntax',
  area: 'text',
  grade: 'stop',
  unread: true,
  what: 'The text can be read as YAML.',
  why: 'What stands after such a place may be read otherwise than it was meant.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
parts:
  cooler: { height: 158 mm } }
#                            ^
`,
      instead: 'Take the second closing brace out.',
    },
  ],
  test: (file, report) => reportProblems(file, report, 'yaml-syntax', 'alias-unknown'),
});
