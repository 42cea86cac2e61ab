// The board’s size against the sizes the case’s tray takes, by name and by millimetres.
import type { Placed } from '../../build/build';
import { figure, missing } from '../../figures/figure';
import { boardDepth, sizeOf } from '../../figures/fit';
import { sentence } from '../../figures/sentence';
import { all, atMost, lacking, sure, type Truth } from '../../figures/truth';
import { caseTakesBoard } from '../../trade/forms';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'board-too-big',
  area: 'case',
  grade: 'stop',
  what: 'The case’s tray takes the board.',
  why:
    'A board larger than the tray meets the drive cage or the edge of the case, and its outer holes have ' +
    'nothing to stand on.',
  source:
    'microATX Motherboard Interface Specification 1.2; Mini-ITX Addendum 1.1; SSI Enterprise Electronics ' +
    'Bay Specification',
  limits: [
    'A size that no standard fixes is judged by its depth in millimetres alone; without it nothing is ' + 'decided.',
  ],
  examples: [
    {
      faulty: `
parts:
  board: { size: ATX }
# ^^^^^
  case: { board-sizes: [microATX, Mini-ITX] }
`,
      instead: 'Choose a microATX or Mini-ITX board, or a case that takes ATX.',
    },
  ],
  test({ parts: { board, case: box } }, report) {
    if (!board || !box) return;
    const byName = takenByName(board, box);
    const depth = boardDepth(board);
    const room = figure(box.part['board-depth'], `room for a board in ${box.label}`);
    const truth = byName ?? all(atMost(depth, room), sizeStated(board));
    report(
      outcome(at(board), truth, {
        broken: () =>
          byName
            ? sentence`The board is ${board.part.size}; the case takes ${namesOf(box)}.`
            : sentence`The board is ${depth} deep from its rear edge; the case takes boards up to ${room}.`,
        fixes: () => [swap(board), swap(box)],
      }),
    );
  },
});

const namesOf = (box: Placed<'case'>): string => box.part['board-sizes'].value!.map((name) => name.text).join(', ');

/** Decided by the standards’ sizes alone; undefined where only millimetres can tell. */
function takenByName(board: Placed<'board'>, box: Placed<'case'>): Truth | undefined {
  const size = sizeOf(board);
  const sizes = box.part['board-sizes'];
  if (!size) return undefined;
  if (!sizes.value) return lacking([missing(sizes, `board sizes of ${box.label}`)], board.part.size);
  const takes = caseTakesBoard(
    sizes.value.map((name) => name.value ?? ''),
    size,
  );
  return takes === undefined ? undefined : sure(takes, board.part.size, sizes);
}

/** A board whose size is not named may be of any width. */
function sizeStated(board: Placed<'board'>): Truth {
  const { size } = board.part;
  return size.value === undefined ? lacking([missing(size, `size of ${board.label}`)]) : sure(true, size);
}
