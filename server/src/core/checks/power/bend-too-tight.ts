// Room between a card’s power plug and the side panel, and the straight run of its lead before the first bend.
import { figure, known, total } from '../../figures/figure';
import { plugCount } from '../../figures/leads';
import { plugsOf } from '../../figures/plug-loads';
import { missing } from '../../figures/figure';
import { say } from '../../figures/say';
import { atLeast, atMost, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn, swap } from '../kit';

/** Straight run from the plug’s back to the first bend that makers’ handbooks ask of a 16-pin lead. */
const straightMm = 35;

export default check({
  id: 'bend-too-tight',
  area: 'power',
  grade: 'harm',
  what: 'Card, plug and the bend of its lead have room under the side panel, and a 16-pin lead runs straight for a while.',
  why: 'A lead bent hard at its plug pulls contacts to one side: few of them then carry all the current, and melt.',
  source: 'common practice; makers’ handbooks of cards with a 16-pin plug',
  caution: 'adapter-fire',
  examples: [{
    faulty: `
parts:
  graphics: { plugs: { 16-pin: 1 }, height: 130 mm, plug-room: 35 mm }
#           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
  case: { card-height: 160 mm }
`,
    instead: 'Choose a wider case, or a lead with an angled plug of the card’s maker.',
  }],
  test({ parts: { graphics, cards, case: box } }, tell) {
    for (const card of [...graphics, ...cards]) {
      const plugs = plugsOf(card);
      const lacks = plugs ? [] : [missing(card.part.plugs, `plugs of ${card.label}`)];
      if (box && plugs?.length !== 0) {
        const need = total(`height of ${card.label} with plug and bend`, 'length', [figure(card.part.height, `height of ${card.label}`), figure(card.part['plug-room'], `plug room of ${card.label}`)], { unit: 'mm' });
        const room = figure(box.part['card-height'], `room for a card’s height in ${box.label}`);
        tell(outcome(at(card), plugs ? atMost(need, room) : lacking(lacks), {
          broken: () => say`${card.label} with plug and bend stands ${need} high; ${box.label} leaves ${room}.`,
          fixes: () => [swap(box), swap(card)],
        }));
      }
    }
    for (const card of graphics) {
      const { bend } = card.at;
      const sixteen = plugCount(card.part.plugs, '16-pin', card.label);
      if (!bend.entry || sixteen.hi === 0) continue;
      const straight = figure(bend, `straight run of the lead of ${card.label}`);
      const least = known(straightMm, 'length', 'straight run before the first bend', { unit: 'mm', source: 'common practice' });
      tell(outcome({ ...at(card, bend), path: `${card.path}.bend` }, sixteen.missing.length > 0 ? lacking(sixteen.missing) : atLeast(straight, least), {
        broken: () => say`The lead of ${card.label} bends ${straight} from its plug; it is to run straight for ${least}.`,
        fixes: () => [putOn(card, 'bend', `${straightMm} mm`, `Let the lead run straight for ${straightMm} mm`)],
      }));
    }
  },
});
