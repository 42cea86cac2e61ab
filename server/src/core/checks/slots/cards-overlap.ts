// Cards that cover the slot of another card.
import { bracketOpenings, firstOpening, lastOpening, openingsOver } from '../../figures/card-size';
import { lessThan, all, any, given, lacking, sure, type Truth } from '../../figures/truth';
import { derive, type Figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import type { Seat } from '../../figures/slots';
import { check } from '../check';
import { aspectOf, at, outcome, type FixIdea, type Reporter } from '../kit';
import { cardMoves, cardsInSlots, type Card } from './slots-kit';
import type { Build } from '../../build/build';

export default check({
  id: 'cards-overlap',
  area: 'slots',
  grade: 'stop',
  what: 'No card is so thick that it covers the slot in which another card sits.',
  why: 'Slots stand one opening apart; a card of three openings leaves the next two slots dead.',
  source: 'PCI Express Card Electromechanical Specification: slot pitch; common practice',
  limits: [
    'A card on a riser stands elsewhere and covers no slot.',
    'A cooler whose thickness nothing states may stand out past its bracket: a note where a card sits right there.',
  ],
  examples: [
    {
      faulty: `
parts:
  board: { slots: { PCIE_1: { kind: PCIe, position: 1 }, PCIE_2: { kind: PCIe, position: 3 } } }
  graphics: { openings: 3, slot: PCIE_1 }
#                                ^^^^^^
  cards:
    - { openings: 1, slot: PCIE_2 }
`,
      instead: 'Put the other card below, or choose a thinner one.',
    },
  ],
  test(build, report) {
    const cards = [...cardsInSlots(build)]
      .filter(({ card }) => !card.at.riser.entry)
      .map(({ card, seat }) => measure(build, card, seat));
    if (cards.length < 2) return;
    for (const own of cards) {
      const others = cards.filter((other) => other !== own).map((other) => ({ ...other, truth: clear(own, other) }));
      const hit = others.find(({ truth }) => truth.is === false);
      const place = at(own.card, own.card.at.slot);
      report(
        outcome(place, given(all(...others.map(({ truth }) => truth)), own.card.at.riser, own.card.part.edge), {
          broken: () =>
            sentence`${own.card.label} covers the openings ${own.first} to ${own.last}; ${hit!.card.label} in
              ${hit!.card.at.slot} is at ${hit!.first}.`,
          fixes: () => moves(build, hit!, own),
        }),
      );
      if (!isMeasured(own)) judgeAir(build, own, others, report);
    }
  },
});

/** A card right under one whose cooler may stand out past its bracket; nothing is said where all plainly sit apart. */
function judgeAir(build: Build, own: Measured, others: readonly Measured[], report: Reporter): void {
  const near = others.map((other) => ({ other, truth: apart(own, other) })).filter(({ truth }) => truth.is !== true);
  const hit = near.find(({ truth }) => truth.is === false);
  const beside = (hit ?? near[0])?.other;
  if (!beside) return;
  const truth = hit ? sure(false) : all(...near.map((one) => one.truth));
  const place = aspectOf(at(own.card, own.card.at.slot), 'air');
  report(
    outcome(place, given(truth, own.card.part.openings, ...[own, beside].flatMap(placing)), {
      grade: 'note',
      broken: () =>
        sentence`${beside.card.label} in ${beside.card.at.slot} sits right under ${own.card.label}, whose bracket
          ends at opening ${own.last}: a cooler thicker than its bracket does not fit, and its fans get little air.
          Measure the card’s thickness.`,
      open: () => sentence`Whether a card sits right under the cooler of ${own.card.label} cannot be decided.`,
      fixes: () => moves(build, beside, own),
    }),
  );
}

/** What says where a card sits. */
const placing = ({ card, seat }: Measured) => [card.at.slot, card.part.edge, seat.slot?.kind, seat.slot?.position];

function* moves(build: Build, hit: Measured, own: Measured): Iterable<FixIdea | undefined> {
  yield* cardMoves(build, hit.card);
  yield* cardMoves(build, own.card);
}

interface Measured {
  readonly card: Card;
  readonly seat: Seat;
  readonly first: Figure;
  readonly last: Figure;
}

function measure(build: Build, card: Card, seat: Seat): Measured {
  const first = firstOpening(build, seat, card.label);
  return { card, seat, first, last: lastOpening(`last opening of ${card.label}`, first, openingsOver(card)) };
}

/** A card is clear of one that sits before it, or past its last opening. */
function clear(own: Measured, other: Measured): Truth {
  const missingFacts = [...own.seat.missingFacts, ...other.seat.missingFacts];
  if (missingFacts.length > 0) return lacking(missingFacts);
  return any(lessThan(other.first, own.first), lessThan(own.last, other.first));
}

/** Whether a card has no cooler that could stand out past its bracket, or says how thick that is. */
const isMeasured = ({ card }: Measured): boolean =>
  card.part.thickness.value !== undefined || bracketOpenings(card).hi < 2;

const next = (last: Figure): Figure => derive('the next opening', 'count', [last], 'opening + 1', (at) => at + 1);

/** Whether another card sits elsewhere than in the next opening after a card’s bracket. */
function apart(own: Measured, other: Measured): Truth {
  const after = next(own.last);
  return any(lessThan(after, other.first), lessThan(other.first, after));
}
