// Steps in words of the writer's own.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'step-own-words',
  area: 'text',
  grade: 'note',
  what: 'A step is said in the words of the list, or it is known that its order is not judged.',
  why: 'A step in words of its own keeps its place as it stands: no rule says what has to come before it.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
steps:
  - equalise
  - fit fans
  - fit fanz
#   ^^^^^^^^
`,
      mended: `
steps:
  - equalise
  - fit fans
  - fit fans
`,
    },
  ],
  test: (file, report) => reportProblems(file, report, 'own-words'),
});
