// Voltage lost in the leads that feed cards and processor.
import { derive, known, missing, type Figure, type Missing } from '../../figures/figure';
import { memo, memoOf } from '../../figures/memo';
import { cardLeadLoads, epsLeadLoad, leadDrop, type Card } from '../../figures/plug-loads';
import { say } from '../../figures/say';
import { all, atMost, lacking } from '../../figures/truth';
import type { Build, Placed } from '../../build/build';
import { CARD_PLUG_TOLERANCE_PERCENT, RAIL_TOLERANCE_PERCENT } from '../../trade/power';
import { check } from '../check';
import { at, outcome, swap, type Tell } from '../kit';

interface Drop { readonly kind: string; readonly drop: Figure }

export default check({
  id: 'voltage-drop-high',
  area: 'power',
  grade: 'note',
  what: 'Leads lose no more voltage at their load than stands between the supply’s tolerance and the card’s.',
  why: 'A long, thin or shared lead eats the tolerance that card and board count on, and warms up with what it loses.',
  source: 'ATX Version 3 design guide, doc. 336521, table 3-5: 12 V −8 % at the card; ATX12V Power Supply Design Guide: ±5 % at the supply',
  examples: [{
    faulty: `
parts:
  graphics: { edge: x16, plugs: { PCIe 8-pin: 1 }, power: { sustained: 225 W } }
#           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
  supply: { own-leads: [{ plug: PCIe 8-pin, count: 1, plugs: 1, length: 1500 mm, gauge: 20, pairs: 3 }] }
`,
    instead: 'Use a shorter or thicker lead, or one lead a plug.',
  }],
  test(build, tell) {
    const { supply, processor, graphics, cards, board } = build.parts;
    if (!supply) return;
    for (const card of [...graphics, ...cards]) {
      const drops = cardDrops(build, card);
      if ('lacks' in drops) tell(outcome(at(card), lacking(drops.lacks), { broken: () => say`` }));
      else judged(supply, card, drops, tell);
    }
    if (!processor || !board) return;
    const leads = supply.part['own-leads'];
    if (!leads.value) tell(outcome(at(processor), lacking([missing(leads, `leads of ${supply.label}`)]), { broken: () => say`` }));
    else judged(supply, processor, epsDrops(build), tell);
  },
});

const cardDrops = memoOf((build: Build, card: Card): readonly Drop[] | { readonly lacks: readonly Missing[] } => {
  const loads = cardLeadLoads(build, card);
  return 'lacks' in loads ? loads : loads.map(({ kind, row, load }) => ({ kind, drop: leadDrop(row, load) }));
});

const epsDrops = memo((build: Build): readonly Drop[] =>
  (build.parts.supply!.part['own-leads'].value ?? []).filter((row) => row.plug.value === 'EPS 8-pin').map((row) => ({ kind: 'EPS 8-pin', drop: leadDrop(row, epsLeadLoad(build, build.parts.processor!)) })));

const span = known(CARD_PLUG_TOLERANCE_PERCENT.under - RAIL_TOLERANCE_PERCENT, 'percent', 'what is left between both tolerances', { unit: '%', source: 'ATX Version 3 design guide, doc. 336521, table 3-5' });
const limit = derive('drop allowed in a lead', 'voltage', [span], '12 V × what is left between both tolerances', (of) => 12 * of! / 100, { unit: 'mV' });

function judged(supply: Placed<'supply'>, fed: Placed, drops: readonly Drop[], tell: Tell): void {
  if (drops.length === 0) return;
  const truths = drops.map(({ drop }) => atMost(drop, limit));
  tell(outcome(at(fed), all(...truths), {
    broken: () => {
      const { kind, drop } = drops[truths.findIndex((truth) => truth.is === false)]!;
      return say`The ${kind} lead to ${fed.label} loses ${drop}; ${limit} are left for it.`;
    },
    fixes: () => [swap(supply)],
  }));
}
