// The processor of a finished machine against the processor of its build.
import { identifierMissing, reportsAs } from '../../figures/built-names';
import { sentence } from '../../figures/sentence';
import { lacking, sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { namedOtherwise, notShown } from './built-kit';

export default check({
  id: 'built-processor-differs',
  area: 'built',
  grade: 'stop',
  what: 'The machine has the processor of the build.',
  why: 'Another processor draws, cools and computes otherwise than was worked out and paid for.',
  source: 'DMTF DSP0134, SMBIOS: type 4; common practice: the string holds the model’s name',
  examples: [
    {
      faulty: `
parts:
  processor: { maker: Calder, model: C7 840 }
# ^^^^^^^^^
`,
      instead: 'Read the print on the lid, and correct the build or exchange the processor.',
      beside: { 'example.asbuilt.yaml': '\nfrom: [lscpu]\nprocessor: { reports: Calder C7 620 @ 3.30GHz }\n' },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    const { machine } = build;
    const { processor } = build.parts;
    if (!processor) return;
    const { reports } = machine.processor;
    const words = {
      broken: () => sentence`The machine has the processor ${reports}, and not ${processor.label}.`,
      fixes: () => [swap(processor)],
    };
    if (reports.value === undefined) return report(notShown(at(processor), reports, 'which processor it is', words));
    const same = reportsAs(processor, reports);
    const { model, maker, 'identified-by': names } = processor.part;
    report(
      outcome(
        at(processor),
        same === 'open'
          ? lacking([identifierMissing(processor)], reports, model, maker)
          : sure(same === 'same', reports, names, model, maker),
        {
          ...words,
          open: () => namedOtherwise(processor, reports),
        },
      ),
    );
  },
});
