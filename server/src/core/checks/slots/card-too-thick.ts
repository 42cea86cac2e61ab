// The openings a card covers against those of the case.
import { copyWith, between, counted, derive, type Figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { seatOf } from '../../figures/slots';
import { atMost, given } from '../../figures/truth';
import type { Build } from '../../build/build';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { cardMoves, cardsOf, type Card } from './slots-kit';

export default check({
  id: 'card-too-thick',
  area: 'slots',
  grade: 'stop',
  what: 'Each card’s bracket and cooler end within the case’s expansion openings.',
  why: 'A card of three openings in the lowest slot meets the supply’s cover or the case’s floor.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  board: { slots: { PCIE_2: { kind: PCIe, position: 3 } } }
  graphics: { openings: 3, slot: PCIE_2 }
#                                ^^^^^^
  case: { openings: 4 }
`,
      instead: 'Put the card into a higher slot, or choose a case with more openings.',
    },
  ],
  test(build, report) {
    const box = build.parts.case;
    if (!box) return;
    const has = counted(box.part.openings, `openings of ${box.label}`);
    for (const card of cardsOf(build)) {
      const last = lastOpening(build, card);
      report(
        outcome(at(card, card.at.slot), given(atMost(last, has), card.part.edge), {
          broken: () =>
            last.lo === last.hi
              ? sentence`${card.label} reaches to opening ${last}; ${box.label} has ${has}.`
              : sentence`${card.label} is ${counted(card.part.openings, 'openings')} openings thick; ${box.label} has
                ${has}.`,
          *fixes() {
            yield* cardMoves(build, card);
            yield swap(box);
          },
        }),
      );
    }
  },
});

/** The lowest opening that a card covers; without its slot, at least as many as it is thick. */
function lastOpening(build: Build, card: Card): Figure {
  const { name, slot, missingFacts } = seatOf(build, card);
  const first = slot
    ? counted(slot.position, `position of ${name}`)
    : copyWith(between(1, Infinity, 'count', `position of ${card.label}`, { source: 'not stated' }), {
        missing: missingFacts,
      });
  const openings = counted(card.part.openings, `openings of ${card.label}`);
  return derive(
    `last opening of ${card.label}`,
    'count',
    [copyWith(first, { lo: Math.max(1, first.lo) }), copyWith(openings, { lo: Math.max(1, openings.lo) })],
    'position + openings − 1',
    (at, n) => at + n - 1,
  );
}
