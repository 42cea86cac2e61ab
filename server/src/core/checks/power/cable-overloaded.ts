// Watts through a card’s slot and connectors, through a cable that several connectors share, and through the EPS cables.
import type { Build } from '../../build/build';
import { figure } from '../../figures/figure';
import { memoOf } from '../../figures/memo';
import { cardCapacity, cardCableLoads, epsCapacity, wireCapacity, type Card } from '../../figures/connector-loads';
import { partDraw } from '../../figures/power';
import { say } from '../../figures/say';
import { all, atMost, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap, type Tell } from '../kit';

export default check({
  id: 'cable-overloaded',
  area: 'power',
  grade: 'harm',
  what: 'No connector, and no cable that several connectors share, carries more than it is rated for.',
  why: 'Contacts and wires that carry too much get hot; connectors melt long before a supply notices.',
  source: 'ATX Version 3 design guide, doc. 336521, table 3-5 and section 2.2.1; PCI Express Card Electromechanical Specification',
  caution: 'overloaded-supply',
  examples: [{
    faulty: `
parts:
  graphics: { edge: x16, connectors: { PCIe 8-pin: 1 }, power: { sustained: 240 W } }
#           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
    instead: 'Hold the card to what its slot and its connector carry together, 225 W.',
  }],
  test(build, tell) {
    const { processor, board, supply, graphics, cards } = build.parts;
    for (const card of [...graphics, ...cards]) {
      if (card.part.edge.value === 'M.2') continue;
      const draw = figure(card.part.power.sustained, `sustained power of ${card.label}`);
      const carried = cardCapacity(build, card);
      tell(outcome(at(card), atMost(draw, carried), {
        broken: () => say`${card.label} draws ${draw}; its slot and connectors carry ${carried}.`,
        fixes: () => [swap(card)],
      }));
      if (supply) sharedCables(build, card, tell);
    }
    if (!processor || !board || !supply) return;
    const draw = partDraw(processor)!;
    const carried = epsCapacity(build);
    tell(outcome(at(processor), atMost(draw, carried), {
      broken: () => say`The processor draws ${draw}; the EPS cables in use carry ${carried}.`,
      fixes: () => [swap(supply), swap(processor)],
    }));
  },
});

/** The loads of the cables that feed a card, each against what its wires carry. */
const judgedCables = memoOf((build: Build, card: Card) => {
  const loads = cardCableLoads(build, card);
  return 'lacks' in loads ? loads : loads.map(({ kind, row, load }) => {
    const wires = wireCapacity(row);
    return { kind, load, wires, truth: atMost(load, wires) };
  });
});

/** Cables of the supply on which more than one connector of the card hangs. */
function sharedCables(build: Build, card: Card, tell: Tell): void {
  const supply = build.parts.supply!;
  const loads = judgedCables(build, card);
  const place = { ...at(card), path: `${card.path}.connectors` };
  if ('lacks' in loads) return tell(outcome(place, lacking(loads.lacks), { broken: () => say`` }));
  if (loads.length === 0) return;
  tell(outcome(place, all(...loads.map(({ truth }) => truth)), {
    broken: () => {
      const { kind, load, wires } = loads.find(({ truth }) => truth.is === false)!;
      return say`One ${kind} cable of ${supply.label} carries ${load} for ${card.label}; its wires are good for ${wires}.`;
    },
    fixes: () => [swap(supply)],
  }));
}
