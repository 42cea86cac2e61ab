// Standoffs that stand under the board where it has no hole.
import { holesOf, outlineOf, standoffsSet } from '../../figures/fit';
import { say } from '../../figures/say';
import { lacking, sure } from '../../figures/truth';
import { standoffsOffHoles } from '../../trade/forms';
import { check } from '../check';
import { at, outcome } from '../kit';
import { named, setStandoffs } from './standoffs';

export default check({
  id: 'standoff-under-bare-board',
  area: 'case',
  grade: 'harm',
  what: 'No standoff stands under the board where it has no hole.',
  why: 'A standoff left from another pattern touches solder on the board’s underside and shorts it when the machine is first switched on.',
  source: 'microATX Motherboard Interface Specification 1.2, page 10',
  caution: 'board-on-metal',
  examples: [{
    faulty: `
parts:
  board: { size: ATX }
  case: { standoffs: { pattern: full, removable: true } }
# ^^^^
`,
    mended: `
parts:
  board: { size: ATX }
  case: { standoffs: { pattern: full, removable: true }, standoffs-at: [A, C, F, G, H, J, K, L, M] }
`,
  }],
  test({ parts: { board, case: box } }, tell) {
    if (!board || !box) return;
    const holes = holesOf(board);
    const set = standoffsSet(box);
    const outline = outlineOf(board);
    const lacks = [holes, set, outline].flatMap((one) => ('lacks' in one ? [one.lacks] : []));
    const place = at(box, box.at['standoffs-at']);
    if ('lacks' in holes || 'lacks' in set || 'lacks' in outline) return tell(outcome(place, lacking(lacks), { broken: () => say`` }));
    const under = standoffsOffHoles(set.holes, holes.holes, outline);
    tell(outcome(place, sure(under.length === 0, board.part.size, box.part.standoffs.pattern), {
      broken: () => say`The board has no hole above ${named('standoff', under)}.`,
      fixes: () => [setStandoffs(box, holes.holes)],
    }));
  },
});
