// The power level that a 16-pin cable signals against the level the card wants.
import type { Build, Placed } from '../../build/build';
import { wantedLevel } from '../../figures/card-power';
import { copyWith, figure, known, least, missing, times, total, unknown, type Figure } from '../../figures/figure';
import { howMany } from '../../figures/power';
import { connectorCount, connectorOf } from '../../figures/cables';
import { sentence } from '../../figures/sentence';
import { any, atLeast, atMost, given, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap, type Reporter } from '../kit';

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
    together(build, supply, report);
    for (const card of graphics) {
      const connectors = connectorCount(card.part.connectors, '16-pin', card.label);
      if (connectors.hi === 0) continue;
      const signalled = signalledLevel(build, supply);
      // A supply without such a cable signals nothing: the adapter in the card’s box does, as the card wants it.
      if (!signalled) continue;
      const wanted = wantedLevel(build, card);
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

/** Several cards on one supply that states its level once: whether each cable has it, only the maker tells. */
function together(build: Build, supply: Placed<'supply'>, report: Reporter): void {
  const cards = build.parts.graphics.filter(
    (card) => connectorCount(card.part.connectors, '16-pin', card.label).lo > 0 && card.part['power-level'].value,
  );
  const count = cards.reduce((sum, card) => sum + howMany(card).lo, 0);
  const level = supply.part['sixteen-pin-level'];
  const one = ownLevel(supply);
  if (count < 2 || level.value === undefined || one === undefined) return;
  const wanted = total(
    'power levels wanted together',
    'power',
    cards.map((card) => times(wantedLevel(build, card), howMany(card))),
    { unit: 'W' },
  );
  const { rating } = supply.part;
  const truth = atMost(wanted, one);
  report(
    outcome(
      at(supply, level, 'sixteen-pin-level'),
      rating.value ? any(truth, atMost(wanted, figure(rating, `rating of ${supply.label}`))) : truth,
      {
        grade: 'note',
        broken: () =>
          sentence`The cards want ${wanted} signalled together; the supply states ${one} once. Ask its maker whether
            each of its 16-pin cables has that to itself.`,
        fixes: () => [swap(supply)],
      },
    ),
  );
}

/**
 * The level of a 16-pin cable bought beside, where there is one; else that of the supply’s own cable; undefined where
 * it has none.
 */
function signalledLevel(build: Build, supply: Placed<'supply'>): Figure | undefined {
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
  return ownLevel(supply);
}

/** The level that the supply’s own cable signals; undefined where it has none. */
function ownLevel(supply: Placed<'supply'>): Figure | undefined {
  const level = supply.part['sixteen-pin-level'];
  if (level.value === undefined && connectorCount(supply.part.connectors, '16-pin', supply.label).hi === 0)
    return undefined;
  const label = `level that ${supply.label} signals`;
  if (level.value === undefined || !level.node) return unknown('power', label, [missing(level, label)]);
  return copyWith(known(parseInt(level.value, 10), 'power', label, { unit: 'W', source: 'the supply’s own fact' }), {
    from: { doc: level.doc, span: level.node.span, path: level.path },
  });
}
