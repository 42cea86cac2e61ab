// The class of the modules, plain or registered, against what the board drives; error correction that goes unused.
import type { Build, Placed } from '../../build/build';
import { missing } from '../../figures/figure';
import { spoken, valuesOf } from '../../figures/lists';
import type { Kit } from '../../figures/memory';
import { sentence, type Sentence } from '../../figures/sentence';
import { agree, all, any, fits, given, lacking, not, type Truth } from '../../figures/truth';
import { mayTakeToo, moduleClassFits } from '../../trade/memory';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

type Board = Placed<'board'>;

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
    for (const kit of memory) {
      const own = kit.part.class;
      report(
        outcome(at(kit), takenBy(board, kit), {
          broken: () => sentence`${kit.label} is of class ${own}; ${board.label} takes ${taken(board)}.`,
          fixes: () => [swap(kit), swap(board)],
          ...(!own.node && board.part.memory.module.value === 'UDIMM'
            ? { usual: () => `${kit.label} is plain memory, since its sheet names no class` }
            : {}),
        }),
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

/**
 * Whether the board drives modules of the kit’s class. A sheet that names one registered class may leave out others.
 */
function takenBy(board: Board, kit: Kit): Truth {
  const { module, 'module-classes': classes } = board.part.memory;
  const own = kit.part.class;
  const what = `class of ${kit.label}`;
  const all = valuesOf(classes);
  if (all)
    return given(
      fits(own, what, (is) => all.some((one) => moduleClassFits(is, one))),
      classes,
    );
  if (own.value && module.value && !moduleClassFits(own.value, module.value) && mayTakeToo(own.value, module.value))
    return lacking([missing(classes, `all classes of module that ${board.label} takes`)], own, module);
  return agree(own, what, module, `class of module that ${board.label} takes`, moduleClassFits);
}

/** The classes that the board takes, as its sheet says them. */
const taken = ({ part }: Board): Sentence => {
  const { module, 'module-classes': classes } = part.memory;
  return classes.value ? spoken(classes.value) : sentence`${module}`;
};

/** Whether board and processor both correct errors; a build that has no processor yet asks the board alone. */
function corrects({ parts: { board, processor } }: Build): Truth {
  const does = ({ label, part }: NonNullable<typeof board | typeof processor>): Truth =>
    fits(part.memory.ecc, `error correction of ${label}`, (ecc) => ecc);
  return all(...(board ? [does(board)] : []), ...(processor ? [does(processor)] : []));
}
