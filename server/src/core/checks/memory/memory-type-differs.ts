// The generation of the modules against what board and processor take.
import { among, spoken } from '../../figures/lists';
import { sentence } from '../../figures/sentence';
import { agree, all, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'memory-type-differs',
  area: 'memory',
  grade: 'stop',
  what: 'The memory is of the generation that board and processor take.',
  why:
    'DDR4 and DDR5 modules both have 288 contacts and do not interchange: notch and supply differ, and force ' +
    'ruins the slot.',
  source: 'JEDEC JESD79-4, JESD79-5: supply and module outline',
  examples: [
    {
      faulty: `
parts:
  board: { memory: { type: DDR5 } }
  memory: [{ type: DDR4, count: 2 }]
#          ^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Choose DDR5 modules, or a board for the DDR4 that is on hand.',
    },
  ],
  test({ parts: { board, processor, memory } }, report) {
    if (!board && !processor) return;
    for (const kit of memory) {
      const { type } = kit.part;
      const what = `memory type of ${kit.label}`;
      const onBoard: Truth[] = board
        ? [agree(type, what, board.part.memory.type, `memory type of ${board.label}`, (a, b) => a === b)]
        : [];
      const inProcessor = processor
        ? [among(processor.part.memory.types, `memory types of ${processor.label}`, type, what)]
        : [];
      report(
        outcome(at(kit), all(...onBoard, ...inProcessor), {
          broken: () =>
            board && onBoard[0]!.is === false
              ? sentence`${kit.label} is ${type}; ${board.label} takes ${board.part.memory.type}.`
              : sentence`${kit.label} is ${type}; ${processor!.label} takes
                ${spoken(processor!.part.memory.types.value ?? [])}.`,
          fixes: () => [swap(kit), ...(board ? [swap(board)] : [])],
        }),
      );
    }
  },
});
