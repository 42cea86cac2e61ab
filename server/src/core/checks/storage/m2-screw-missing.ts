// Something must hold an M.2 module down: the board's latch or post, or a screw from one of the boxes.
import { boxWord } from '../../trade/box-things';
import { boxed } from '../../figures/box-contents';
import type { Build } from '../../build/build';
import { uniqueMissing } from '../../figures/missing-facts';
import { missing, type Missing } from '../../figures/figure';
import { memo } from '../../figures/memo';
import { sentence } from '../../figures/sentence';
import { any, fits, lacking, sure, type Truth } from '../../figures/truth';
import { check } from '../check';
import { addToList } from '../costs/costs-kit';
import { at, outcome } from '../kit';
import { modulesOf } from './storage-kit';

export default check({
  id: 'm2-screw-missing',
  area: 'storage',
  grade: 'stop',
  what: 'Each M.2 module is held down by what the board brings or by a screw from a box or the list.',
  why: 'A module that nothing holds down lifts off its contacts; the screw is too small to be found in a drawer.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  board:
    in-the-box: [SATA data cable x2]
    slots: { M2_1: { kind: M.2, fixing: none } }
  drives:
    - { name: scratch, shape: M.2, slot: M2_1, in-the-box: [] }
#                                        ^^^^
`,
      mended: `
parts:
  board:
    in-the-box: [SATA data cable x2]
    slots: { M2_1: { kind: M.2, fixing: none } }
  drives:
    - { name: scratch, shape: M.2, slot: M2_1, in-the-box: [] }
  fixings:
    - { item: M.2 screw, count: 1 }
`,
    },
  ],
  test(build, report) {
    let wanting = none;
    for (const {
      placed,
      seat: { name, slot, missingFacts },
    } of modulesOf(build)) {
      const holds = slot
        ? fits(slot.fixing, `fixing of ${name}`, (fixing) => fixing !== 'none')
        : lacking(missingFacts);
      wanting = withOne(wanting, holds);
      report(
        outcome(at(placed, placed.at.slot), holds.is === true ? holds : any(holds, screwFor(build, wanting)), {
          broken: () =>
            sentence`Nothing holds ${placed.label} down: ${placed.at.slot} brings no post or latch, and no box has an
              M.2 screw left for it.`,
          fixes: () => [addToList(build, 'fixings', { item: 'M.2 screw', count: 1 }, 'Buy an M.2 screw')],
          ...(slot && !slot.fixing.node && !build.parts.board!.part['in-the-box'].node
            ? { usual: () => `${build.parts.board!.label} brings what holds a module down in ${name!}` }
            : {}),
        }),
      );
    }
  },
});

interface Screws {
  readonly count: number;
  readonly missingFacts: readonly Missing[];
}

/** M.2 screws in all boxes and bought beside them, and the boxes whose contents nobody states. */
const screws = memo((build: Build): Screws => {
  let count = 0;
  const missingFacts: Missing[] = [];
  for (const placed of build.of('board', 'drives', 'case')) {
    const found = boxed(placed, 'M.2 screw');
    count += found.lo;
    missingFacts.push(...found.missing);
  }
  for (const bought of build.parts.fixings) {
    const { item } = bought.part;
    const word = item.value === undefined ? undefined : boxWord(item.value);
    if (word === undefined) missingFacts.push(missing(item, `what ${bought.label} is`));
    else if (word === 'M.2 screw') count += bought.at.count.value ?? 1;
  }
  return { count, missingFacts: uniqueMissing([{ missing: missingFacts }]) };
});

/** How many modules so far want a screw: those for certain, those that may, and what tells of the others. */
interface Wanting {
  readonly least: number;
  readonly most: number;
  readonly missingFacts: readonly Missing[];
}

const none: Wanting = { least: 0, most: 0, missingFacts: [] };

const withOne = ({ least, most, missingFacts }: Wanting, holds: Truth): Wanting => ({
  least: least + (holds.is === false ? 1 : 0),
  most: most + (holds.is === true ? 0 : 1),
  missingFacts: [...missingFacts, ...holds.missing],
});

/** Whether the boxes hold as many as the modules so far want. */
function screwFor(build: Build, { least, most, missingFacts: fixings }: Wanting): Truth {
  const { count, missingFacts } = screws(build);
  if (count >= most) return sure(true);
  if (count < least && missingFacts.length === 0) return sure(false);
  return lacking(uniqueMissing([{ missing: missingFacts }, { missing: count < least ? [] : fixings }]));
}
