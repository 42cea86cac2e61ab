// Ids of checks that there are none of, in what is accepted and in the settings of the house.
import { referencesIn } from '../../build/references';
import { sentence } from '../../figures/sentence';
import { fileCheck } from '../check';
import { reportName } from './names-kit';

export default fileCheck({
  id: 'check-unknown',
  area: 'text',
  grade: 'shortfall',
  what: 'Every check that is accepted, or given another grade, is one that there is.',
  why: 'A setting for a misspelled check changes nothing, and nobody notices that it does not.',
  source: 'the format’s own rule',
  examples: [
    {
      file: 'fettle.yaml',
      faulty: `
grades: { cooler-to-tall: note }
#         ^^^^^^^^^^^^^^
`,
      mended: `
grades: { cooler-too-tall: note }
`,
    },
  ],
  test({ doc }, report) {
    for (const reference of referencesIn(doc))
      if (reference.to.includes('check'))
        reportName(doc, reference, report, sentence`There is no check called ${reference.fact}.`);
  },
});
