// Words outside a field’s list.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'choice-unknown',
  area: 'text',
  grade: 'stop',
  unread: true,
  what: 'A word is one of those that its field knows.',
  why: 'A word outside the list would be read by nobody, and checks that need it would stay open.',
  source: 'the format’s own rule',
  remarks: ['A word of data sheets that leaves open which of a few is meant is a note; what needs it waits for that.'],
  examples: [
    {
      faulty: `
parts:
  drives:
    - { name: scratch, bus: STAA }
#                           ^^^^
`,
      mended: `
parts:
  drives:
    - { name: scratch, bus: SATA }
`,
    },
  ],
  test: (file, report) => reportProblems(file, report, 'choice-unknown', 'kind-unknown', 'choice-open'),
});
