// The modules against the board’s memory slots.
import { boardSlots, modules } from '../../figures/memory';
import { many } from '../../figures/lists';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { change, outcome, swap } from '../kit';
import { atMemory } from './memory-kit';

export default check({
  id: 'memory-slots-short',
  area: 'memory',
  grade: 'stop',
  what: 'The board has a memory slot for each module.',
  why: 'A module without a slot is money in a drawer, and the capacity it was bought for is missing.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  board: { memory: { slots: [A1, B1] } }
  memory: [{ capacity: 16 GB, count: 4 }]
# ^^^^^^
`,
      mended: `
parts:
  board: { memory: { slots: [A1, B1] } }
  memory: [{ capacity: 16 GB, count: 2 }]
`,
    },
  ],
  test(build, report) {
    const { board, memory } = build.parts;
    if (!board || memory.length === 0) return;
    const fitted = modules(build);
    const slots = boardSlots(board);
    report(
      outcome(atMemory(build), atMost(fitted, slots), {
        broken: () =>
          sentence`The build lists ${many(fitted, 'memory module')}; ${board.label} has ${many(slots, 'memory slot')}.`,
        *fixes() {
          const [kit] = memory;
          if (memory.length === 1 && slots.lo >= 1)
            yield change(kit!.at.count, slots.lo, `Set the count to ${slots.lo}`);
          yield swap(board);
        },
      }),
    );
  },
});
