// Voltage lost in the cables that feed cards and processor.
import { derive, known, missing, type Figure, type Missing } from '../../figures/figure';
import { memo, memoOf } from '../../figures/memo';
import type { Card } from '../../figures/card-power';
import { cardCableLoads, epsCableLoad, isWithoutEps, unlistedLoads } from '../../figures/connector-loads';
import { cableDrop, usualDrop } from '../../figures/wires';
import { sentence } from '../../figures/sentence';
import { all, atMost, lacking, type Truth } from '../../figures/truth';
import type { Build, Placed } from '../../build/build';
import { CARD_CONNECTOR_TOLERANCE_PERCENT, RAIL_TOLERANCE_PERCENT } from '../../trade/power';
import type { Connector } from '../../trade/connectors';
import { check } from '../check';
import { at, outcome, swap, type Reporter } from '../kit';

interface Drop {
  readonly kind: string;
  readonly drop: Figure;
}

export default check({
  id: 'voltage-drop-high',
  area: 'power',
  grade: 'note',
  what: 'Cables lose no more voltage at their load than stands between the supply’s tolerance and the card’s.',
  why: 'A long, thin or shared cable eats the tolerance that card and board count on, and warms up with what it loses.',
  source:
    'ATX Version 3 design guide, doc. 336521, table 3-5: 12 V −8 % at the card; ATX12V Power Supply Design ' +
    'Guide: ±5 % at the supply',
  examples: [
    {
      faulty: `
parts:
  graphics: { edge: x16, connectors: { PCIe 8-pin: 1 }, power: { sustained: 225 W } }
#           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
  supply: { own-cables: [{ connector: PCIe 8-pin, count: 1, connectors: 1, length: 1500 mm, gauge: 20, pairs: 3 }] }
`,
      instead: 'Use a shorter or thicker cable, or one cable a connector.',
    },
  ],
  test(build, report) {
    const { supply, processor, graphics, cards, board } = build.parts;
    if (!supply) return;
    for (const card of [...graphics, ...cards]) {
      const drops = cardDrops(build, card);
      if ('missingFacts' in drops)
        report(
          outcome(
            at(card),
            unlisted(supply.part['own-cables'].value ? [] : unlistedLoads(build, card), drops.missingFacts),
            { broken: () => sentence`` },
          ),
        );
      else judged(supply, card, drops, report);
    }
    // A board fed by a barrel or by the 24-pin connector alone has no EPS cable to judge.
    if (!processor || !board || isWithoutEps(build)) return;
    const cables = supply.part['own-cables'];
    if (!cables.value)
      report(
        outcome(
          at(processor),
          unlisted(
            [{ kind: 'EPS 8-pin', load: epsCableLoad(build, processor) }],
            [missing(cables, `cables of ${supply.label}`)],
          ),
          { broken: () => sentence`` },
        ),
      );
    else judged(supply, processor, epsDrops(build), report);
  },
});

/** Cables that no file lists: they do where the longest and thinnest usual ones would; else the list is needed. */
function unlisted(
  loads: readonly { readonly kind: Connector; readonly load: Figure }[],
  missingFacts: readonly Missing[],
): Truth {
  const usual = loads.map(({ kind, load }) => atMost(usualDrop(kind, load), limit));
  return loads.length > 0 && usual.every(({ is }) => is) ? all(...usual) : lacking(missingFacts);
}

const cardDrops = memoOf(
  (build: Build, card: Card): readonly Drop[] | { readonly missingFacts: readonly Missing[] } => {
    const loads = cardCableLoads(build, card);
    return 'missingFacts' in loads ? loads : loads.map(({ kind, row, load }) => ({ kind, drop: cableDrop(row, load) }));
  },
);

const epsDrops = memo((build: Build): readonly Drop[] =>
  (build.parts.supply!.part['own-cables'].value ?? [])
    .filter((row) => row.connector.value === 'EPS 8-pin')
    .map((row) => ({ kind: 'EPS 8-pin', drop: cableDrop(row, epsCableLoad(build, build.parts.processor!)) })),
);

const span = known(
  CARD_CONNECTOR_TOLERANCE_PERCENT.under - RAIL_TOLERANCE_PERCENT,
  'percent',
  'what is left between both tolerances',
  { unit: '%', source: 'ATX Version 3 design guide, doc. 336521, table 3-5' },
);
const limit = derive(
  'drop allowed in a cable',
  'voltage',
  [span],
  '12 V × what is left between both tolerances',
  (of) => (12 * of) / 100,
  { unit: 'mV' },
);

function judged(supply: Placed<'supply'>, fed: Placed, drops: readonly Drop[], report: Reporter): void {
  if (drops.length === 0) return;
  const truths = drops.map(({ drop }) => atMost(drop, limit));
  report(
    outcome(at(fed), all(...truths), {
      broken: () => {
        const { kind, drop } = drops[truths.findIndex((truth) => truth.is === false)]!;
        return sentence`The ${kind} cable to ${fed.label} loses ${drop}; it may lose ${limit}. Use a shorter or
          thicker one.`;
      },
      fixes: () => [swap(supply)],
    }),
  );
}
