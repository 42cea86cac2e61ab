// The board of a finished machine against the board of its build.
import { identifierMissing, reportsAs } from '../../figures/built-names';
import { sentence } from '../../figures/sentence';
import { lacking, sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { namedOtherwise, notShown } from './built-kit';

export default check({
  id: 'built-board-differs',
  area: 'built',
  grade: 'stop',
  what: 'The machine has the board of the build.',
  why: 'All that was worked out of slots, lanes, memory and firmware holds for another board only by chance.',
  source: 'DMTF DSP0134, SMBIOS: types 1 and 2',
  limits: ['A board that reports an order code is known only where its part file lists that under `identified-by`.'],
  examples: [
    {
      faulty: `
parts:
  board: { model: B7 Forge, identified-by: [B7 FORGE] }
# ^^^^^
`,
      instead: 'Look at the print on the board: then correct the build, or order the right board.',
      beside: { 'example.asbuilt.yaml': '\nfrom: [dmidecode]\nboard: { reports: B5 QUAY }\n' },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    const { machine } = build;
    const { board } = build.parts;
    if (!board) return;
    const { reports } = machine.board;
    const words = {
      broken: () =>
        sentence`The machine has the board ${reports}, and not ${board.label}; read the print on the board.`,
    };
    if (reports.value === undefined) return report(notShown(at(board), reports, 'which board it is', words));
    const same = reportsAs(board, reports);
    const open = identifierMissing(board);
    const { maker, model, 'identified-by': names } = board.part;
    report(
      outcome(
        at(board),
        same === 'open' ? lacking([open], reports, model, maker) : sure(same === 'same', reports, names),
        {
          ...words,
          open: () => namedOtherwise(board, reports),
        },
      ),
    );
  },
});
