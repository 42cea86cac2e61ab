// A heavy card left in its slot while the machine travels.
import type { Placed } from '../../build/build';
import { figure } from '../../figures/figure';
import { marginFigure } from '../../figures/margins';
import { sentence } from '../../figures/sentence';
import { any, atMost, sure } from '../../figures/truth';
import { check } from '../check';
import { at, change, outcome, put } from '../kit';

export default check({
  id: 'shipped-with-heavy-card',
  area: 'work',
  grade: 'harm',
  caution: 'card-in-transit',
  what: 'Cards heavier than the house lets hang are taken out when a machine travels by carrier or by car.',
  why: 'A parcel falls: at each fall the card’s mass pulls at its slot many times over, support or not.',
  source: 'common practice; the limit is the house’s',
  examples: [
    {
      faulty: `
parts:
  graphics: [{ mass: 1.6 kg }]
#            ^^^^^^^^^^^^^^^^
hand-over: { transport: by carrier, cards: fitted }
`,
      mended: `
parts:
  graphics: [{ mass: 1.6 kg }]
hand-over: { transport: by carrier, cards: taken out }
`,
    },
  ],
  test(build, report) {
    const { transport, cards } = build.file['hand-over'];
    if (transport.value !== 'by carrier' && transport.value !== 'by car') return;
    const limit = marginFigure(build, 'hanging-card', 'heaviest card that may hang in its slot');
    for (const card of [...build.parts.graphics, ...build.parts.cards] as readonly Placed<'cards'>[]) {
      const mass = figure(card.part.mass, `mass of ${card.label}`);
      // Whoever packs it does what is written down: a card of which nothing is said stays where it is.
      const out = sure(cards.value === 'taken out', cards);
      report(
        outcome(at(card), any(out, atMost(mass, limit)), {
          broken: () =>
            cards.node
              ? sentence`${card.label} weighs ${mass} and travels ${transport} in its slot; above ${limit} take it out.`
              : sentence`${card.label} weighs ${mass} and travels ${transport}, and nothing says that it is taken out;
                  above ${limit} take it out.`,
          ...(transport.value === 'by car' ? { grade: 'note' as const } : {}),
          fixes: () => [
            cards.node
              ? change(cards, 'taken out', 'Take cards out for transport')
              : put(build.doc, ['hand-over', 'cards'], 'taken out', 'Take cards out for transport'),
          ],
        }),
      );
    }
  },
});
