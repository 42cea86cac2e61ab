// Standoffs that stand under the board where it has no hole.
import { holesOf, outlineOf, standoffsSet } from '../../figures/fit';
import { sentence } from '../../figures/sentence';
import { lacking, sure } from '../../figures/truth';
import { standoffsOffHoles } from '../../trade/forms';
import { check } from '../check';
import { at, outcome } from '../kit';
import { grounds, named, setStandoffs } from './standoffs-kit';

export default check({
  id: 'standoff-under-bare-board',
  area: 'case',
  grade: 'harm',
  what: 'No standoff stands under the board where it has no hole.',
  why:
    'A standoff left from another pattern touches solder on the board’s underside and shorts it when the ' +
    'machine is first switched on.',
  source: 'microATX Motherboard Interface Specification 1.2, page 10',
  caution: 'board-on-metal',
  examples: [
    {
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
    },
  ],
  test({ parts: { board, case: box } }, report) {
    if (!board || !box) return;
    const holes = holesOf(board);
    const set = standoffsSet(box, board);
    const outline = outlineOf(board);
    const missingFacts = [holes, set, outline].flatMap((one) => ('missingFacts' in one ? [one.missingFacts] : []));
    const place = at(box, box.at['standoffs-at']);
    if ('missingFacts' in holes || 'missingFacts' in set || 'missingFacts' in outline)
      return report(outcome(place, lacking(missingFacts), { broken: () => sentence`` }));
    const under = standoffsOffHoles(set.holes, holes.holes, outline);
    report(
      outcome(place, sure(under.length === 0, ...grounds(board, box)), {
        broken: () =>
          sentence`The board has no hole above ${named('standoff', under)}; take
            ${under.length === 1 ? 'it' : 'them'} out.`,
        fixes: () => [setStandoffs(box, holes.holes)],
      }),
    );
  },
});
