// The power level that a 16-pin cable signals against the level the card wants.
import type { Build, Placed } from '../../build/build';
import { copyWith, figure, known, least, missing, unknown, type Figure } from '../../figures/figure';
import { connectorCount, connectorOf } from '../../figures/cables';
import { sentence } from '../../figures/sentence';
import { atLeast, given, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'sixteen-pin-power-level',
  area: 'power',
  grade: 'shortfall',
  what: 'Each 16-pin cable signals at least the power level that its card wants.',
  why: 'A card that is told a lower level holds itself to it, or does not start at all.',
  source: 'ATX Version 3 design guide, doc. 336521, section 3.3, table 3-6',
  examples: [
    {
      faulty: `
parts:
  graphics: { connectors: { 16-pin: 1 }, power-level: 450 W }
#           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
  supply: { sixteen-pin-level: 300 W }
`,
      instead: 'Choose a supply whose 16-pin cable signals 450 W or more.',
    },
  ],
  test(build, report) {
    const { supply, graphics } = build.parts;
    if (!supply) return;
    for (const card of graphics) {
      const connectors = connectorCount(card.part.connectors, '16-pin', card.label);
      if (connectors.hi === 0) continue;
      const wanted = figure(card.part['power-level'], `power level that ${card.label} wants`);
      const signalled = signalledLevel(build, supply);
      report(
        outcome(
          at(card),
          given(
            connectors.missing.length > 0 ? lacking(connectors.missing) : atLeast(signalled, wanted),
            card.part.connectors,
          ),
          {
            broken: () => sentence`${card.label} wants ${wanted} signalled; its 16-pin cable signals ${signalled}.`,
            fixes: () => [swap(supply)],
          },
        ),
      );
    }
  },
});

/** The level of a 16-pin cable bought beside, where there is one; else that of the supply’s own cable. */
function signalledLevel(build: Build, supply: Placed<'supply'>): Figure {
  const bought = build.parts.cables.filter((cable) => {
    const connector = connectorOf(cable);
    return 'missingFacts' in connector || connector.kind === '16-pin';
  });
  if (bought.length > 0)
    return least(
      'level signalled',
      bought.map((cable) => figure(cable.part['power-level'], `power level that ${cable.label} signals`)),
      { unit: 'W' },
    );
  const level = supply.part['sixteen-pin-level'];
  const label = `level that ${supply.label} signals`;
  if (level.value === undefined || !level.node) return unknown('power', label, [missing(level, label)]);
  return copyWith(known(parseInt(level.value, 10), 'power', label, { unit: 'W', source: 'the supply’s own fact' }), {
    from: { doc: level.doc, span: level.node.span, path: level.path },
  });
}
