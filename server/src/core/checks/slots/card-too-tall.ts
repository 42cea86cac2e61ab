// The height of a card against the room to the side panel.
import { figure } from '../../figures/figure';
import { cardRoom, isUnwalled } from '../../figures/fit';
import { sentence } from '../../figures/sentence';
import { atMost, given } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { cardsOf } from './slots-kit';

export default check({
  id: 'card-too-tall',
  area: 'slots',
  grade: 'stop',
  what: 'Each card stands no higher over its slot than the side panel allows, its power connector not counted.',
  why: 'A card that meets the side panel keeps the case from closing.',
  source: 'PCI Express Card Electromechanical Specification: full height 111.15 mm; cards exceed it',
  limits: ['A card on a riser stands another way, and is not judged.'],
  remarks: ['The room for the power connector and its bend is judged by `bend-too-tight`.'],
  examples: [
    {
      faulty: `
parts:
  graphics: { height: 141 mm }
#           ^^^^^^^^^^^^^^^^^^
  case: { card-height: 140 mm }
`,
      instead: 'Choose a lower card, or a wider case.',
    },
  ],
  test(build, report) {
    const box = build.parts.case;
    if (!box || isUnwalled(box, box.part['card-height'])) return;
    const room = cardRoom(box);
    for (const card of cardsOf(build)) {
      // On a riser it stands with its face to the panel.
      if (card.at.riser.entry) continue;
      const height = figure(card.part.height, `height of ${card.label}`);
      report(
        outcome(at(card), given(atMost(height, room), card.part.edge), {
          broken: () => sentence`${card.label} stands ${height} high; ${box.label} leaves ${room}.`,
          fixes: () => [swap(box), swap(card)],
        }),
      );
    }
  },
});
