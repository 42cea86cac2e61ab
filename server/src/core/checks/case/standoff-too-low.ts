// The standoffs’ height against what stands out below the board.
import { figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { lessThan } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'standoff-too-low',
  area: 'case',
  grade: 'harm',
  what: 'The standoffs are higher than pins and parts stand out below the board.',
  why:
    'A pin that reaches the tray shorts the board when the machine is first switched on, or when the case is ' +
    'leant on.',
  source:
    'microATX Motherboard Interface Specification 1.2, section 2.4.2: the underside has a height of its ' +
    'own; common practice',
  limits: [
    'The standards state no height that every board keeps to: it is held against the board’s own ' +
      '`underside` only.',
  ],
  caution: 'board-on-metal',
  examples: [
    {
      faulty: `
parts:
  board: { underside: 5 mm }
  case: { standoffs: { height: 4.5 mm } }
#                              ^^^^^^
`,
      instead: 'Use standoffs that are higher than the board’s underside needs.',
    },
  ],
  test({ parts: { board, case: box } }, report) {
    if (!board || !box) return;
    const below = figure(board.part.underside, `underside of ${board.label}`);
    const height = figure(box.part.standoffs.height, `height of the standoffs of ${box.label}`);
    report(
      outcome(at(box, box.part.standoffs.height, 'standoffs.height'), lessThan(below, height), {
        broken: () => sentence`Pins stand out ${below} below the board; the standoffs are ${height} high.`,
        fixes: () => [swap(box)],
        ...(board.part.underside.node || box.part.standoffs.height.node
          ? {}
          : { usual: () => `the standoffs of ${box.label} are higher than what stands out below ${board.label}` }),
      }),
    );
  },
});
