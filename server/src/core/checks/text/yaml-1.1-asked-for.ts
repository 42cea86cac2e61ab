// Files that ask for the older YAML.
import { fileCheck } from '../check';
import { reportProblems } from './text-problems-kit';

export default fileCheck({
  id: 'yaml-1.1-asked-for',
  area: 'text',
  grade: 'note',
  what: 'No file asks for the rules of YAML 1.1.',
  why: 'By those rules `no`, `1:30` and `017` are no texts; Fettle reads by the rules of 1.2, so the two would differ.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
%YAML 1.1
#^^^^^^^^
---
build: Counter PC
`,
      instead: 'Take the line out.',
    },
  ],
  test: (file, report) => reportProblems(file, report, 'yaml-1.1-asked-for'),
});
