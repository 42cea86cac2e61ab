// The capacity of one module against the largest that a slot takes.
import { figure } from '../../figures/figure';
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
      const [size, most] = alike([
        moduleCapacity(kit),
        figure(board.part.memory['largest-module'], `largest module of ${board.label}`),
      ]) as [ReturnType<typeof figure>, ReturnType<typeof figure>];
      report(
        outcome(at(kit), atMost(size, most), {
          broken: () => sentence`One module of ${kit.label} holds ${size}; a slot of ${board.label} takes ${most}.`,
          fixes: () => [swap(kit), swap(board)],
        }),
      );
    }
  },
});
