// The I/O shield: fixed to the board, or in its box.
import { boxHas } from '../../figures/box-contents';
import { sentence } from '../../figures/sentence';
import { any, fits } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'shield-missing',
  area: 'case',
  grade: 'shortfall',
  what: 'The board brings its I/O shield.',
  why:
    'Without it the case’s rear opening stays open: dust and fingers get in, and the ports lose their earth ' +
    'contact.',
  source: 'ATX Specification 2.2, I/O aperture; common practice',
  examples: [
    {
      faulty: `
parts:
  board: { shield-fitted: false, in-the-box: [SATA data cable x2] }
# ^^^^^
  case: { maker: Tarn }
`,
      instead: 'Ask the board’s maker for its shield: shields of other boards have other openings.',
    },
  ],
  test({ parts: { board, case: box } }, report) {
    if (!board || !box) return;
    const fitted = fits(board.part['shield-fitted'], `whether the I/O shield is fixed to ${board.label}`, (is) => is);
    const packed = boxHas(board, 'I/O shield');
    report(
      outcome(at(board), any(fitted, packed), {
        broken: () => sentence`${board.label} has no I/O shield fixed to it, and its box holds none.`,
        fixes: () => [swap(board)],
        ...(board.part['in-the-box'].node ? {} : { usual: () => `${board.label} brings its I/O shield` }),
      }),
    );
  },
});
