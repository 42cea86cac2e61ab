// Watts through a card’s slot and connectors, through a cable that several connectors share, and through the EPS
// cables.
import type { Build } from '../../build/build';
import { figure } from '../../figures/figure';
import { memoOf } from '../../figures/memo';
import { cardCapacity, cardCableLoads, epsCapacity, wireCapacity, type Card } from '../../figures/connector-loads';
import { partDraw } from '../../figures/power';
import { sentence } from '../../figures/sentence';
import { all, atMost, given, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap, type Reporter } from '../kit';

export default check({
  id: 'cable-overloaded',
  area: 'power',
  grade: 'harm',
  what: 'No connector, and no cable that several connectors share, carries more than it is rated for.',
  why: 'Contacts and wires that carry too much get hot; connectors melt long before a supply notices.',
  source:
    'ATX Version 3 design guide, doc. 336521, table 3-5 and section 2.2.1; PCI Express Card ' +
    'Electromechanical Specification',
  caution: 'overloaded-supply',
  examples: [
    {
      faulty: `
parts:
  graphics: { edge: x16, connectors: { PCIe 8-pin: 1 }, power: { sustained: 240 W } }
#           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Hold the card to what its slot and its connector carry together, 225 W.',
    },
  ],
  test(build, report) {
    const { processor, board, supply, graphics, cards } = build.parts;
    for (const card of [...graphics, ...cards]) {
      if (card.part.edge.value === 'M.2') continue;
      const draw = figure(card.part.power.sustained, `sustained power of ${card.label}`);
      const carried = cardCapacity(build, card);
      report(
        outcome(at(card), atMost(draw, carried), {
          broken: () => sentence`${card.label} draws ${draw}; its slot and connectors carry ${carried}.`,
          fixes: () => [swap(card)],
        }),
      );
      if (supply) sharedCables(build, card, report);
    }
    if (!processor || !board || !supply) return;
    const draw = partDraw(processor)!;
    const carried = epsCapacity(build);
    report(
      outcome(at(processor), atMost(draw, carried), {
        broken: () => sentence`The processor draws ${draw}; the EPS cables in use carry ${carried}.`,
        fixes: () => [swap(supply), swap(processor)],
      }),
    );
  },
});

/** The loads of the cables that feed a card, each against what its wires carry. */
const judgedCables = memoOf((build: Build, card: Card) => {
  const loads = cardCableLoads(build, card);
  return 'missingFacts' in loads
    ? loads
    : loads.map(({ kind, row, load }) => {
        const wires = wireCapacity(row);
        return { kind, load, wires, truth: atMost(load, wires) };
      });
});

/** Cables of the supply on which more than one connector of the card hangs. */
function sharedCables(build: Build, card: Card, report: Reporter): void {
  const supply = build.parts.supply!;
  const loads = judgedCables(build, card);
  const place = at(card, undefined, 'connectors');
  if ('missingFacts' in loads) return report(outcome(place, lacking(loads.missingFacts), { broken: () => sentence`` }));
  if (loads.length === 0) return;
  report(
    outcome(place, given(all(...loads.map(({ truth }) => truth)), card.part.edge, card.part.connectors), {
      broken: () => {
        const { kind, load, wires } = loads.find(({ truth }) => truth.is === false)!;
        return sentence`One ${kind} cable of ${supply.label} carries ${load} for ${card.label}; its wires are good for
          ${wires}.`;
      },
      fixes: () => [swap(supply)],
    }),
  );
}
