// Files that end as part files do and are another tool's.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'part-file-of-another-tool',
  area: 'text',
  grade: 'note',
  what: 'A file that ends in `.part.yaml` is a part file of Fettle’s.',
  why:
    'Other tools end their files so, too. One that names no kind of part, and whose keys are not those of a part, is ' +
    'left alone: nothing else in it is checked.',
  source: 'the format’s own rule',
  examples: [
    {
      file: 'parts/blinds.part.yaml',
      faulty: `
layers: [front, back]
#^^^^^
material: linen
`,
      instead: 'If it is meant to be a part file, write its `kind:`; else nothing is to be done.',
    },
  ],
  test: (file, report) => reportProblems(file, report, 'of-another-tool'),
});
