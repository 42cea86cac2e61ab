// The day on which a board’s support list was read.
import { ageOf, isRecent } from '../../figures/dates';
import { sentence } from '../../figures/sentence';
import { check } from '../check';
import { at, outcome } from '../kit';
import { marginFigure } from '../../figures/margins';

export default check({
  id: 'firmware-fact-old',
  area: 'board',
  grade: 'note',
  what: 'The board’s facts were read not longer ago than the house allows.',
  why: 'Makers add processors to the list, and withdraw them, with every firmware.',
  source: 'common practice; the age is a house setting',
  examples: [
    {
      faulty: `
parts:
  board: { source: { title: Norrvik B7 Forge handbook, read: 2024-02-01 } }
#                                                            ^^^^^^^^^^
`,
      instead: 'Read the maker’s list again and set the day.',
    },
  ],
  test(build, report) {
    const { board } = build.parts;
    if (!board) return;
    const age = ageOf(build, board.part.source.read, `age of the facts of ${board.label}`);
    const most = marginFigure(build, 'fact-age', 'age at which facts are read again');
    report(
      outcome(at(board, board.part.source.read), isRecent(age, most), {
        broken: () =>
          age.hi < 0
            ? sentence`The facts of ${board.label} are dated ${board.part.source.read}, a day to come; note the day on
                which they were read.`
            : sentence`The facts of ${board.label} were read ${age} ago; the house reads them again after ${most}.`,
      }),
    );
  },
});
