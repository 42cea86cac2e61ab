// Anchors, aliases, merges and tags.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'alias-or-merge-used',
  area: 'text',
  grade: 'note',
  what: 'Values are written where they stand, without anchors, aliases, merges or tags.',
  why: 'What stands elsewhere is hard to review, and no fix is offered where a change could mean two things.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
build: &name Counter PC
purpose: *name
#        ^^^^^
`,
      instead: 'Write the value out.',
    },
  ],
  test: (file, report) => reportProblems(file, report, 'alias-or-merge-used', 'tag-used'),
});
