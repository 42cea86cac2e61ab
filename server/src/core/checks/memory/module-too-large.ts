// The capacity of one module against the largest that a slot takes.
import type { Placed } from '../../build/build';
import { copyWith, figure, type Figure } from '../../figures/figure';
import { moduleCapacity } from '../../figures/memory';
import { alike } from '../../figures/memory-sizes';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'module-too-large',
  area: 'memory',
  grade: 'stop',
  what: 'No module is larger than the board’s slots take.',
  why: 'A module beyond what the board’s firmware knows is not seen, or keeps the machine from starting.',
  source: 'common practice: the board’s handbook states the largest module',
  examples: [
    {
      faulty: `
parts:
  board: { memory: { largest-module: 48 GB } }
  memory: [{ capacity: 64 GB, count: 2 }]
#          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Choose modules of 48 GB or less, or a board that takes larger ones.',
    },
  ],
  test({ parts: { board, memory } }, report) {
    if (!board) return;
    for (const kit of memory) {
      const [size, most] = alike([moduleCapacity(kit), largestOf(board)]) as [
        ReturnType<typeof figure>,
        ReturnType<typeof figure>,
      ];
      report(
        outcome(at(kit), atMost(size, most), {
          broken: () => sentence`One module of ${kit.label} holds ${size}; a slot of ${board.label} takes ${most}.`,
          fixes: () => [swap(kit), swap(board)],
        }),
      );
    }
  },
});

/** Where no sheet says it, at least what fills the board’s slots to the most that it takes. */
function largestOf({ part: { memory }, label }: Placed<'board'>): Figure {
  const fact = memory['largest-module'];
  const stated = figure(fact, `largest module of ${label}`);
  const slots = memory.slots.value?.length ?? 0;
  if (fact.node || !memory.most.value || slots === 0) return stated;
  const source = 'what fills all slots to the most that the board takes';
  return copyWith(stated, { lo: memory.most.value.lo / slots, unit: memory.most.value.unit, source });
}
