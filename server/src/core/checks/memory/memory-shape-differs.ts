// The shape of the modules against the board’s memory slots.
import { sentence } from '../../figures/sentence';
import { agree, sure } from '../../figures/truth';
import { SO_DIMM_MM } from '../../trade/memory';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'memory-shape-differs',
  area: 'memory',
  grade: 'stop',
  what: 'The modules have the shape of the board’s memory slots.',
  why: 'A SO-DIMM does not reach across a DIMM slot, and a CAMM2 module goes into no slot at all: it is screwed down.',
  source: 'JEDEC module outlines: DIMM, SO-DIMM, CAMM2',
  examples: [
    {
      faulty: `
parts:
  board: { memory: { shape: DIMM } }
  memory: [{ shape: SO-DIMM, count: 2 }]
#          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Choose modules in the shape of the board’s slots.',
    },
  ],
  test({ parts: { board, memory } }, report) {
    if (!board) return;
    const slots = board.part.memory.shape;
    for (const kit of memory) {
      const { shape } = kit.part;
      report(
        outcome(
          at(kit),
          !shape.node && slots.value === 'DIMM' && (kit.part.height.value?.lo ?? 0) > SO_DIMM_MM
            ? sure(true, kit.part.height, slots)
            : agree(
                shape,
                `shape of ${kit.label}`,
                slots,
                `shape of the memory slots of ${board.label}`,
                (a, b) => a === b,
              ),
          {
            broken: () =>
              sentence`${kit.label} comes as ${shape}; the memory slots of ${board.label} are for ${slots}.`,
            fixes: () => [swap(kit), swap(board)],
          },
        ),
      );
    }
  },
});
