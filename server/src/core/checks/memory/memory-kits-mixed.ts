// Modules that were not sold and tested together.
import type { Fact } from '../../parts/fact';
import { many } from '../../figures/lists';
import { counted, number, total } from '../../figures/figure';
import type { Kit } from '../../figures/memory';
import { howMany } from '../../figures/power';
import { sentence } from '../../figures/sentence';
import { agree, all, any, atMost, given, sure, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn } from '../kit';
import { byPart } from './memory-kit';

export default check({
  id: 'memory-kits-mixed',
  area: 'memory',
  grade: 'note',
  what: 'All modules are of one part, out of one kit.',
  why:
    'Modules of different parts, or of two kits, were never tested together: they may train at a lower speed ' +
    'or fail now and then.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  memory:
    - { maker: Lumen, model: D5-32, count: 2, modules-in-kit: 2 }
    - { maker: Lumen, model: D5-16, count: 2, modules-in-kit: 2 }
#     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Take one kit that holds all modules, or test the mix for a whole night.',
    },
  ],
  test({ parts: { memory } }, report) {
    const [first, ...others] = memory;
    for (const kit of others) {
      report(
        outcome(at(kit), samePart(first!, kit), {
          broken: () => sentence`Memory of different parts is mixed: ${first!.label} and ${kit.label}.`,
          fixes: () => [
            first!.used ? putOn(kit, 'use', first!.used.name, `Use ${first!.used.name} as memory`) : undefined,
          ],
        }),
      );
    }
    for (const alike of byPart(memory)) {
      const kit = alike[0]!;
      if (alike.length === 1 && !kit.at.count.node) continue;
      const count = total(
        `modules of ${kit.label}`,
        'count',
        alike.map((one) => howMany(one)),
      );
      const inKit = counted(kit.part['modules-in-kit'], `modules in one kit of ${kit.label}`);
      // Modules sold singly are all of one bin; nobody sells them tested together. Source: common practice.
      const singly = atMost(inKit, number(1, 'one module', 'common practice'));
      // A kit is of two at least: two modules are singles or one kit, whichever it is.
      const pair = atMost(count, number(2, 'the smallest kit', 'common practice'));
      report(
        outcome(at(kit, kit.at.count), any(pair, atMost(count, inKit), singly), {
          broken: () =>
            sentence`${many(count, 'module')} of ${kit.label} come from kits of ${inKit} that were not tested together;
              take one kit of them all.`,
        }),
      );
    }
  },
});

/** One part file is one part; where a part is spelled out, maker and model tell. */
function samePart(a: Kit, b: Kit): Truth {
  if (a.used && b.used) return given(sure(a.used.name === b.used.name), a.at.use, b.at.use);
  const same = (key: 'maker' | 'model'): Truth =>
    agree(
      a.part[key] as Fact<string>,
      `${key} of ${a.label}`,
      b.part[key] as Fact<string>,
      `${key} of ${b.label}`,
      (x, y) => x === y,
    );
  return all(same('maker'), same('model'));
}
