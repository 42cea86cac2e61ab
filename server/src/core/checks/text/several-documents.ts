// Files with more than one document.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'several-documents',
  area: 'text',
  grade: 'stop',
  unread: true,
  what: 'A file holds one document.',
  why: 'Only the first document of a file is read; the others would be checked by nobody.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
build: Counter PC
---
#^^
build: Survey desk
`,
      instead: 'Give the second document a file of its own.',
    },
  ],
  test: (file, report) => reportProblems(file, report, 'several-documents'),
});
