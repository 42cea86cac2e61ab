// Sizes that name boards of several depths, without millimetres.
import { say } from '../../figures/say';
import { any, fits } from '../../figures/truth';
import { isVagueBoardSize } from '../../trade/forms';
import { check } from '../check';
import { at, outcome } from '../kit';

export default check({
  id: 'board-size-vague',
  area: 'case',
  grade: 'unknown',
  what: 'A board of a size without a standard states its depth in millimetres.',
  why: 'Boards from 257 to 330 mm deep are sold as E-ATX: the name alone says nothing of fit or holes.',
  source: 'common practice; the ATX and microATX specifications know no such size',
  examples: [{
    faulty: `
parts:
  board: { size: E-ATX }
#                ^^^^^
`,
    instead: 'Measure the board, or read its depth in the handbook, and state `depth:`.',
  }],
  *test({ parts: { board } }) {
    if (!board) return;
    const { size, depth } = board.part;
    const clear = fits(size, `size of ${board.label}`, (name) => !isVagueBoardSize(name));
    yield outcome({ ...at(board, size), path: `${board.path}.size` }, depth.value ? any(clear, fits(depth, `depth of ${board.label}`, () => true)) : clear, {
      broken: () => say`${size} names boards of several depths; the depth of ${board.label} is not stated in millimetres.`,
    });
  },
});
