// Holes of the board that have no standoff under them.
import { holesOf, standoffsSet } from '../../figures/fit';
import { sentence } from '../../figures/sentence';
import { lacking, sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { grounds, named, setStandoffs } from './standoffs-kit';

export default check({
  id: 'standoff-missing',
  area: 'case',
  grade: 'shortfall',
  what: 'Every hole of the board has a standoff under it.',
  why: 'Without one the board bends where connectors and cards are pushed in, and loses a contact to the case.',
  source: 'microATX Motherboard Interface Specification 1.2, mounting holes; Mini-ITX Addendum 1.1',
  examples: [
    {
      faulty: `
parts:
  board: { size: microATX }
  case: { standoffs: { pattern: ATX, removable: true } }
# ^^^^
`,
      mended: `
parts:
  board: { size: microATX }
  case: { standoffs: { pattern: ATX, removable: true }, standoffs-at: [B, C, F, H, J, L, M, R, S] }
`,
    },
  ],
  test({ parts: { board, case: box } }, report) {
    if (!board || !box) return;
    const holes = holesOf(board);
    const set = standoffsSet(box, board);
    const missingFacts = [holes, set].flatMap((one) => ('missingFacts' in one ? [one.missingFacts] : []));
    const place = at(box, box.at['standoffs-at']);
    if ('missingFacts' in holes || 'missingFacts' in set)
      return report(outcome(place, lacking(missingFacts), { broken: () => sentence`` }));
    const without = holes.holes.filter((hole) => !set.holes.includes(hole));
    report(
      outcome(place, sure(without.length === 0, ...grounds(board, box)), {
        broken: () => sentence`The tray has no standoff under the board’s ${named('hole', without)}; screw one in.`,
        fixes: () => [setStandoffs(box, holes.holes)],
      }),
    );
  },
});
