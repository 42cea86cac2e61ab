// Room between a card’s power connector and the side panel, and the straight run of its cable before the first bend.
import type { Placed } from '../../build/build';
import { copyWith, decidedBy, figure, known, missing, total, type Figure } from '../../figures/figure';
import { connectorCount } from '../../figures/cables';
import { connectorsOf, type Card } from '../../figures/card-power';
import { cardRoom, isUnwalled } from '../../figures/fit';
import { sentence } from '../../figures/sentence';
import { atLeast, atMost, given, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn, swap } from '../kit';

/** Straight run from the connector’s back to the first bend that makers’ handbooks ask of a 16-pin cable. */
const straightMm = 35;
/** Room for connector and bend that makers ask at most, for a stiff cable and others. Source: common practice. */
const usualRoomMm = { sixteenPin: 40, other: 30 } as const;

export default check({
  id: 'bend-too-tight',
  area: 'power',
  grade: 'harm',
  what:
    'Card, connector and the bend of its cable have room under the side panel, and a 16-pin cable runs ' +
    'straight for a while.',
  why:
    'A cable bent hard at its connector pulls contacts to one side: few of them then carry all the current, ' +
    'and melt.',
  source: 'common practice; makers’ handbooks of cards with a 16-pin connector',
  caution: 'adapter-fire',
  examples: [
    {
      faulty: `
parts:
  graphics: { connectors: { 16-pin: 1 }, height: 130 mm, connector-room: 35 mm }
#           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
  case: { card-height: 160 mm }
`,
      instead: 'Choose a wider case, or a cable with an angled connector of the card’s maker.',
    },
  ],
  test({ parts: { graphics, cards, case: box } }, report) {
    for (const card of [...graphics, ...cards]) {
      const connectors = connectorsOf(card);
      const missingFacts = connectors ? [] : [missing(card.part.connectors, `connectors of ${card.label}`)];
      // On a riser it stands with its face to the panel, and its connector elsewhere.
      if (box && !isFree(card, box) && connectors?.length !== 0) {
        const need = total(
          `height of ${card.label} with connector and bend`,
          'length',
          [figure(card.part.height, `height of ${card.label}`), connectorRoom(card)],
          { unit: 'mm' },
        );
        const room = cardRoom(box);
        report(
          outcome(at(card), given(connectors ? atMost(need, room) : lacking(missingFacts), card.part.connectors), {
            broken: () =>
              sentence`${card.label} with connector and bend stands ${need} high; ${box.label} leaves ${room}.`,
            fixes: () => [swap(box), swap(card)],
          }),
        );
      }
    }
    for (const card of graphics) {
      const { bend } = card.at;
      const sixteen = connectorCount(card.part.connectors, '16-pin', card.label);
      if (!bend.entry || sixteen.hi === 0) continue;
      const straight = figure(bend, `straight run of the cable of ${card.label}`);
      const least = known(straightMm, 'length', 'straight run before the first bend', {
        unit: 'mm',
        source: 'common practice',
      });
      report(
        outcome(
          at(card, bend),
          given(sixteen.missing.length > 0 ? lacking(sixteen.missing) : atLeast(straight, least), card.part.connectors),
          {
            broken: () =>
              sentence`The cable of ${card.label} bends ${straight} from its connector; let it run straight for ${least}
            first.`,
            fixes: () => [putOn(card, 'bend', `${straightMm} mm`, `Let the cable run straight for ${straightMm} mm`)],
          },
        ),
      );
    }
  },
});

/** Whether no side panel stands over the card’s connector. */
const isFree = (card: Card, box: Placed<'case'>): boolean =>
  card.at.riser.entry !== undefined || isUnwalled(box, box.part['card-height']);

/** Room for connector and bend: as stated, else at most what makers usually ask. */
function connectorRoom({ part, label }: Card): Figure {
  const stated = part['connector-room'];
  const read = figure(stated, `connector room of ${label}`);
  if (stated.value) return read;
  const sixteen = connectorCount(part.connectors, '16-pin', label);
  const hi = sixteen.hi === 0 ? usualRoomMm.other : usualRoomMm.sixteenPin;
  const source = `common practice: at most ${hi} mm`;
  return decidedBy(copyWith(read, { lo: 0, hi, unit: 'mm', source }), part.connectors);
}
