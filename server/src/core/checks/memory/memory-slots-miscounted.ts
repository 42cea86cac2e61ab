// The slots that a kit names against the number of its modules.
import { slotsNamed } from '../../figures/memory';
import { many, spoken } from '../../figures/lists';
import { howMany } from '../../figures/power';
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { at, change, outcome, putOn } from '../kit';
import { moveMemory } from './memory-kit';

export default check({
  id: 'memory-slots-miscounted',
  area: 'memory',
  grade: 'stop',
  what: 'A kit names as many memory slots as it has modules.',
  why: 'A slot too few or too many leaves open which slots are filled, and with them channels, speed and capacity.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
parts:
  memory: [{ capacity: 16 GB, count: 2, slots: [A2] }]
#                                              ^^^^
`,
      mended: `
parts:
  memory: [{ capacity: 16 GB, count: 1, slots: [A2] }]
`,
    },
  ],
  test(build, report) {
    for (const kit of build.parts.memory) {
      const named = slotsNamed(kit);
      if (!named) continue;
      const count = howMany(kit);
      if (!Number.isFinite(count.hi)) continue;
      report(
        outcome(at(kit, kit.at.slots), sure(named.length === count.hi, count, kit.at.slots), {
          broken: () => sentence`${kit.label} has ${many(count, 'module')}; the slots named for it: ${spoken(named)}.`,
          *fixes() {
            yield moveMemory(build);
            if (named.length === 0) return;
            const title = `Set the count to ${named.length}`;
            yield kit.at.count.node
              ? change(kit.at.count, named.length, title)
              : putOn(kit, 'count', named.length, title);
          },
        }),
      );
    }
  },
});
