// Part files used in a role that is for another kind of part.
import { kindOfPart } from '../../build/placed';
import { missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { lacking, sure } from '../../figures/truth';
import { check } from '../check';
import { at, change, outcome, swap } from '../kit';

export default check({
  id: 'part-kind-wrong-here',
  area: 'text',
  grade: 'stop',
  unread: true,
  what: 'A part stands in the role that its kind is for.',
  why: 'A cooler listed as a fan is checked as a fan: its facts are read by the wrong table.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
parts:
  cooler: { use: boreas/low-48, kind: fan }
#                                     ^^^
`,
      mended: `
parts:
  cooler: { use: boreas/low-48, kind: cooler }
`,
    },
  ],
  test(build, report) {
    for (const placed of build.all()) {
      const file = placed.used?.file;
      const stated = placed.part.kind.value ?? (file && kindOfPart(file));
      // A cable says in its `kind` what it connects.
      if (placed.role === 'cables' && placed.part.kind.doc === build.doc) continue;
      if (stated === undefined && !file) continue;
      const truth =
        stated === undefined
          ? lacking([missing(placed.part.kind, `kind of ${placed.label}`)])
          : sure(stated === placed.kind, placed.part.kind);
      report(
        outcome(at(placed, placed.part.kind), truth, {
          broken: () =>
            sentence`${placed.label} is of kind ${stated ?? ''}; a part of kind ${placed.kind} belongs here.`,
          fixes: () => [
            placed.part.kind.doc === build.doc
              ? change(placed.part.kind, placed.kind, `Set the kind to ${placed.kind}`)
              : swap(placed),
          ],
        }),
      );
    }
  },
});
