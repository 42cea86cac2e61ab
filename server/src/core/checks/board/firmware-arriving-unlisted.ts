// The version a board is said to arrive with, against the board’s list.
import { arriving, versionList } from '../../figures/firmware';
import { missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { all, fits, lacking, sure } from '../../figures/truth';
import { nearest } from '../../text';
import { check } from '../check';
import { at, change, outcome } from '../kit';

export default check({
  id: 'firmware-arriving-unlisted',
  area: 'board',
  grade: 'note',
  what: 'The version that the board is said to arrive with is on the board’s list.',
  why:
    'A version outside the list is placed by its spelling alone: a slip of a digit makes an old board look ' +
    'new enough, or the other way round.',
  source: 'common practice: the board maker’s list of firmware versions',
  examples: [
    {
      faulty: `
parts:
  board: { firmware: { arriving: "1.1", versions: ["1.00", "1.08", "1.10"] } }
#                                ^^^^^
`,
      mended: `
parts:
  board: { firmware: { arriving: "1.10", versions: ["1.00", "1.08", "1.10"] } }
`,
    },
  ],
  test({ parts: { board } }, report) {
    if (!board) return;
    const version = arriving(board);
    const { versions } = board.part.firmware;
    const listed = versions.value
      ? sure(true, versions)
      : lacking([missing(versions, `firmware versions of ${board.label}`)], versions);
    const on = fits(
      version,
      `firmware ${board.label} arrives with`,
      (stated) => !versions.value || versionList(board).includes(stated),
    );
    report(
      outcome(at(board, version), all(listed, on), {
        broken: () =>
          sentence`${board.label} is said to arrive with firmware ${version}, which is not on its list of versions.`,
        fixes: () => {
          const near = nearest(version.value!, versionList(board));
          return near === undefined ? [] : [change(version, near, `Write ${near}`)];
        },
      }),
    );
  },
});
