// Files past a limit of reading.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'limits-reached',
  area: 'text',
  grade: 'stop',
  unread: true,
  what: 'A file stays within the published limits of size, depth and number.',
  why: 'Past a limit a file is not read, and nothing that it says is checked.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
accept: ${'['.repeat(65)}${']'.repeat(65)}
#                                                                       ^
`,
      instead: 'Make the file flatter or split it.',
    },
  ],
  test: (file, report) => reportProblems(file, report, 'limits-reached'),
});
