// Watts through a card’s slot and plugs, through a lead that several plugs share, and through the EPS leads.
import type { Build } from '../../build/build';
import { figure } from '../../figures/figure';
import { memoOf } from '../../figures/memo';
import { cardCapacity, cardLeadLoads, epsCapacity, wireCapacity, type Card } from '../../figures/plug-loads';
import { partDraw } from '../../figures/power';
import { say } from '../../figures/say';
import { all, atMost, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap, type Tell } from '../kit';

export default check({
  id: 'lead-overloaded',
  area: 'power',
  grade: 'harm',
  what: 'No plug, and no lead that several plugs share, carries more than it is rated for.',
  why: 'Contacts and wires that carry too much get hot; plugs melt long before a supply notices.',
  source: 'ATX Version 3 design guide, doc. 336521, table 3-5 and section 2.2.1; PCI Express Card Electromechanical Specification',
  caution: 'overloaded-supply',
  examples: [{
    faulty: `
parts:
  graphics: { edge: x16, plugs: { PCIe 8-pin: 1 }, power: { sustained: 240 W } }
#           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
    instead: 'Hold the card to what its slot and its plug carry together, 225 W.',
  }],
  test(build, tell) {
    const { processor, board, supply, graphics, cards } = build.parts;
    for (const card of [...graphics, ...cards]) {
      if (card.part.edge.value === 'M.2') continue;
      const draw = figure(card.part.power.sustained, `sustained power of ${card.label}`);
      const carried = cardCapacity(build, card);
      tell(outcome(at(card), atMost(draw, carried), {
        broken: () => say`${card.label} draws ${draw}; its slot and plugs carry ${carried}.`,
        fixes: () => [swap(card)],
      }));
      if (supply) sharedLeads(build, card, tell);
    }
    if (!processor || !board || !supply) return;
    const draw = partDraw(processor)!;
    const carried = epsCapacity(build);
    tell(outcome(at(processor), atMost(draw, carried), {
      broken: () => say`The processor draws ${draw}; the EPS leads in use carry ${carried}.`,
      fixes: () => [swap(supply), swap(processor)],
    }));
  },
});

/** The loads of the leads that feed a card, each against what its wires carry. */
const judgedLeads = memoOf((build: Build, card: Card) => {
  const loads = cardLeadLoads(build, card);
  return 'lacks' in loads ? loads : loads.map(({ kind, row, load }) => {
    const wires = wireCapacity(row);
    return { kind, load, wires, truth: atMost(load, wires) };
  });
});

/** Leads of the supply on which more than one plug of the card hangs. */
function sharedLeads(build: Build, card: Card, tell: Tell): void {
  const supply = build.parts.supply!;
  const loads = judgedLeads(build, card);
  const place = { ...at(card), path: `${card.path}.plugs` };
  if ('lacks' in loads) return tell(outcome(place, lacking(loads.lacks), { broken: () => say`` }));
  if (loads.length === 0) return;
  tell(outcome(place, all(...loads.map(({ truth }) => truth)), {
    broken: () => {
      const { kind, load, wires } = loads.find(({ truth }) => truth.is === false)!;
      return say`One ${kind} lead of ${supply.label} carries ${load} for ${card.label}; its wires are good for ${wires}.`;
    },
    fixes: () => [swap(supply)],
  }));
}
