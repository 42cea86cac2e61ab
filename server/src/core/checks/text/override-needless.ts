// Facts spelled out in a build that say what the part file says anyway.
import type { Placed } from '../../build/build';
import type { Fact } from '../../parts/fact';
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, takeOut } from '../kit';

export default check({
  id: 'override-needless',
  area: 'text',
  grade: 'note',
  what: 'What a build spells out over a part file differs from it.',
  why: 'A copy of a fact stays behind when the part file is corrected.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
parts:
  supply: { use: holm/s750, rating: 750 W }
#                                   ^^^^^
`,
      beside: {
        'parts/holm/s750.part.yaml': `
kind: supply
rating: 750 W
`,
      },
      mended: `
parts:
  supply: { use: holm/s750 }
`,
    },
  ],
  test(build, report) {
    for (const placed of build.all()) {
      if (!placed.used?.file) continue;
      for (const fact of spelledOut(placed)) {
        report(
          outcome(at(placed, fact, fact.key), sure(fact.text !== fact.replaced!.text, fact), {
            broken: () => sentence`The part file says ${fact} already.`,
            fixes: () => [takeOut(fact, `Take \`${fact.key}\` out`)],
          }),
        );
      }
    }
  },
});

function* spelledOut(placed: Placed): Iterable<Fact<unknown>> {
  const part = placed.part as unknown as Record<string, Fact<unknown> | undefined>;
  for (const { key } of placed.map?.entries ?? []) {
    const fact = part[key];
    if (fact?.type === 'fact' && fact.replaced) yield fact;
  }
}
