// The class of the modules, plain or registered, against what the board drives; error correction that goes unused.
import { sentence } from '../../figures/sentence';
import { agree, all, any, fits, not, type Truth } from '../../figures/truth';
import type { Build } from '../../build/build';
import { moduleClassFits } from '../../trade/memory';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'memory-class-unsupported',
  area: 'memory',
  grade: 'stop',
  what:
    'The modules are of a class that the board drives; modules for error correction meet a board and ' +
    'processor that use it.',
  why: 'A board made for plain modules does not start with registered ones, nor the other way round.',
  source: 'common practice; JEDEC JESD323 for clocked modules, which go where plain ones go',
  examples: [
    {
      faulty: `
parts:
  board: { memory: { module: UDIMM } }
  memory: [{ class: RDIMM, ecc: false, count: 2 }]
#          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Choose unbuffered modules, or a board made for registered ones.',
    },
  ],
  test(build, report) {
    const { board, memory } = build.parts;
    if (!board) return;
    const takes = board.part.memory.module;
    for (const kit of memory) {
      const own = kit.part.class;
      report(
        outcome(
          at(kit),
          agree(own, `class of ${kit.label}`, takes, `class of module that ${board.label} takes`, moduleClassFits),
          {
            broken: () => sentence`${kit.label} is of class ${own}; ${board.label} takes ${takes}.`,
            fixes: () => [swap(kit), swap(board)],
          },
        ),
      );
      const unused = any(not(fits(kit.part.ecc, `error correction of ${kit.label}`, (ecc) => ecc)), corrects(build));
      report(
        outcome(at(kit, kit.part.ecc, 'ecc'), unused, {
          grade: 'note',
          broken: () =>
            sentence`${kit.label} carries bits for error correction, which this board or processor does not use.`,
          fixes: () => [swap(kit), swap(board)],
        }),
      );
    }
  },
});

/** Whether board and processor both correct errors; a build that has no processor yet asks the board alone. */
function corrects({ parts: { board, processor } }: Build): Truth {
  const does = ({ label, part }: NonNullable<typeof board | typeof processor>): Truth =>
    fits(part.memory.ecc, `error correction of ${label}`, (ecc) => ecc);
  return all(...(board ? [does(board)] : []), ...(processor ? [does(processor)] : []));
}
