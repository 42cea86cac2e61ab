// Lines of a data sheet in a part file, before they are facts.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'sheet-lines-not-facts',
  area: 'text',
  grade: 'stop',
  unread: true,
  what: 'A part file holds facts under the keys of its kind.',
  why:
    'Lines that were pasted out of a data sheet are read by no check. As facts, each with the sheet’s own words ' +
    'behind it, they are; what was not plain in them stays as a comment.',
  source: 'the format’s own rule',
  examples: [
    {
      file: 'parts/boreas/f92.part.yaml',
      faulty: `
Fan size: 92 x 92 x 25 mm
#^^^^^^^^^^^^^^^^^^^^^^^^
Fan speed: 2200 RPM
Airflow: 42 CFM
`,
      instead: 'Read these lines as facts: `size: 92 mm`, `speed: 2200 rpm`, `airflow: 42 CFM`.',
    },
  ],
  test: (file, report) => reportProblems(file, report, 'sheet-pasted'),
});
