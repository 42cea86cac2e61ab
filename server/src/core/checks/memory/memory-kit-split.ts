// Modules listed against the kits that they are sold in.
import { many } from '../../figures/lists';
import { uniqueMissing } from '../../figures/missing-facts';
import { counted, total } from '../../figures/figure';
import { howMany } from '../../figures/power';
import { sentence } from '../../figures/sentence';
import { lacking, sure } from '../../figures/truth';
import { check } from '../check';
import { aspectOf, at, change, outcome, putOn } from '../kit';
import { byPart } from './memory-kit';

export default check({
  id: 'memory-kit-split',
  area: 'memory',
  grade: 'note',
  what: 'The build lists whole kits of memory: as many modules as come in the box.',
  why:
    'A kit of two that is listed as one counts half its capacity and one channel; a module taken out of a ' +
    'kit leaves its twin in a drawer.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  memory: [{ maker: Lumen, model: D5-32, modules-in-kit: 2 }]
#          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      mended: `
parts:
  memory: [{ maker: Lumen, model: D5-32, modules-in-kit: 2, count: 2 }]
`,
    },
  ],
  test({ parts: { memory } }, report) {
    for (const alike of byPart(memory)) {
      const kit = alike[0]!;
      const count = total(
        `modules of ${kit.label}`,
        'count',
        alike.map((one) => howMany(one)),
      );
      const inKit = counted(kit.part['modules-in-kit'], `modules in one kit of ${kit.label}`);
      const missingFacts = uniqueMissing([count, inKit]);
      report(
        outcome(
          aspectOf(at(kit), 'kit'),
          missingFacts.length > 0 ? lacking(missingFacts, count, inKit) : sure(count.lo % inKit.lo === 0, count, inKit),
          {
            broken: () =>
              sentence`The build lists ${many(count, 'module')} of ${kit.label}; they are sold in kits of ${inKit}.`,
            fixes: () => {
              if (alike.length > 1) return [];
              const whole = Math.ceil(count.lo / inKit.lo) * inKit.lo;
              const title = `Set the count to ${whole}`;
              return [kit.at.count.node ? change(kit.at.count, whole, title) : putOn(kit, 'count', whole, title)];
            },
          },
        ),
      );
    }
  },
});
