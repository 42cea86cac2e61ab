// Files past a limit of reading.
import { limits } from '../../parts/limits';
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'limits-reached',
  area: 'text',
  grade: 'stop',
  unread: true,
  what:
    `A file stays within 2,000,000 bytes, 64 levels, ${limits.partsOfRole} parts of a role and ` +
    `${limits.items} entries of a list.`,
  why: 'Past a limit a file, or what it lists past it, is not read, and nothing said there is checked.',
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
