// Keys that stand twice in one map.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'key-twice',
  area: 'text',
  grade: 'stop',
  unread: true,
  what: 'A key stands once in its map.',
  why: 'Of two equal keys only one can count, and a reader cannot know which one was meant.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
parts:
  supply: { rating: 550 W }
  supply: { rating: 650 W }
# ^^^^^^
`,
      instead: 'Take one of the two lines out.',
    },
  ],
  test: (file, report) => reportProblems(file, report, 'key-twice'),
});
