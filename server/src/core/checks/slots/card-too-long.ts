// The length of a card against the room in the case.
import { figure } from '../../figures/figure';
import { cardLengthRoom, frontRadiators } from '../../figures/rooms';
import { isUnwalled } from '../../figures/fit';
import { sentence } from '../../figures/sentence';
import { atMost, given } from '../../figures/truth';
import { check } from '../check';
import { elsewhere } from '../cooling/cooling-kit';
import { at, outcome, swap } from '../kit';
import { cardsOf } from './slots-kit';

export default check({
  id: 'card-too-long',
  area: 'slots',
  grade: 'stop',
  what: 'Each card is no longer than the room between the openings and the front of the case.',
  why: 'A card that meets the front fans or a bay goes in only after something else comes out.',
  source: 'PCI Express Card Electromechanical Specification: full length 312 mm; cards exceed it',
  limits: ['A radiator at the front takes its own thickness of the room, wherever the card stands beside it.'],
  examples: [
    {
      faulty: `
parts:
  graphics: { length: 336 mm }
#           ^^^^^^^^^^^^^^^^^^
  case: { card-length: 330 mm }
`,
      instead: 'Choose a card of 330 mm or shorter, or a deeper case.',
    },
  ],
  test(build, report) {
    const box = build.parts.case;
    if (!box || isUnwalled(box, box.part['card-length'])) return;
    const room = cardLengthRoom(build)!;
    const front = frontRadiators(build);
    for (const card of cardsOf(build)) {
      const length = figure(card.part.length, `length of ${card.label}`);
      report(
        outcome(at(card), given(atMost(length, room), card.part.edge), {
          broken: () =>
            sentence`${card.label} is ${length} long; ${box.label} leaves ${room}${
              front[0] ? ` behind ${front[0].label}` : ''
            }.`,
          fixes: () => [...front.flatMap((radiator) => [...elsewhere(build, radiator)]), swap(card), swap(box)],
        }),
      );
    }
  },
});
