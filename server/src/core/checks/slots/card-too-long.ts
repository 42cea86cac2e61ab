// The length of a card against the room in the case.
import { derive, figure, type Figure } from '../../figures/figure';
import { notNegative } from '../../figures/guard';
import { radiators, type Radiator } from '../../figures/radiators';
import { sentence } from '../../figures/sentence';
import { atMost, given } from '../../figures/truth';
import { check } from '../check';
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
    if (!box) return;
    const stated = figure(box.part['card-length'], `room for a card in ${box.label}`);
    const front = radiators(build).filter(({ mount }) => mount.value === 'front');
    const room = front.length === 0 ? stated : behind(stated, front);
    for (const card of cardsOf(build)) {
      const length = figure(card.part.length, `length of ${card.label}`);
      report(
        outcome(at(card), given(atMost(length, room), card.part.edge, ...front.map(({ mount }) => mount)), {
          broken: () =>
            sentence`${card.label} is ${length} long; ${box.label} leaves ${room}${
              front[0] ? ` behind ${front[0].label}` : ''
            }.`,
          fixes: () => [swap(card), swap(box)],
        }),
      );
    }
  },
});

/** The room that is stated with front fans in place, less the radiators that come between them and the card. */
const behind = (room: Figure, front: readonly Radiator[]): Figure =>
  derive(
    `${room.label} behind the front radiator`,
    'length',
    [room, ...front.map(({ facts, label }) => notNegative(figure(facts.thickness, `thickness of ${label}`)))],
    'room − thickness of the radiator',
    (all, ...thicknesses) => all - thicknesses.reduce((sum, one) => sum + one, 0),
    { unit: 'mm' },
  );
