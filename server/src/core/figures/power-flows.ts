// Figures of how power flows: from the wall through the supply and its cables to the parts, and what is lost.
import type { Build, Placed } from '../build/build';
import { connectorsOf, type Card } from './card-power';
import { housed } from './drive-places';
import { derive, missing, total, type Figure, type Missing } from './figure';
import { allowed } from './guard';
import { efficiencyAtLoad } from './mains';
import { memo } from './memo';
import { partDraws, sustainedDraw } from './power';

/** By which of the supply’s cables parts are fed; a card with connectors takes from its slot as well. */
export type Feed = 'board' | 'processor' | 'cards' | 'drives' | 'not known';

export interface Flow {
  readonly feed: Feed;
  readonly parts: readonly { readonly placed: Placed; readonly draw: Figure }[];
  /** What all of them draw together. */
  readonly draw: Figure;
  /** What would tell which cables those are; only where that is not known. */
  readonly missing: readonly Missing[];
}

const feeds: readonly Feed[] = ['processor', 'cards', 'drives', 'board', 'not known'];

const feedLabels: Readonly<Record<Feed, string>> = {
  processor: 'draw through the cables of the processor',
  cards: 'draw of the cards with cables of their own',
  board: 'draw through the board',
  drives: 'draw through the cables of the drives',
  'not known': 'draw through cables not known',
};

/** The parts that draw, by the cables that feed them; together they are the sustained draw. */
export const powerFlows = memo((build: Build): readonly Flow[] => {
  const by = new Map<Feed, { placed: Placed; draw: Figure; lacks: readonly Missing[] }[]>();
  for (const [placed, draw] of partDraws(build)) {
    const { feed, lacks } = feedOf(placed);
    by.set(feed, [...(by.get(feed) ?? []), { placed, draw, lacks }]);
  }
  return feeds.flatMap((feed) => {
    const parts = by.get(feed);
    if (!parts) return [];
    const draw = together(
      feedLabels[feed],
      parts.map((one) => one.draw),
    );
    return [{ feed, parts, draw, missing: parts.flatMap(({ lacks }) => lacks) }];
  });
});

/** Power of several parts in one figure. */
export const together = (label: string, draws: readonly Figure[]): Figure =>
  total(label, 'power', draws, { unit: 'W' });

/** Memory, fans and whatever sits in a slot are fed through the board. Source: common practice. */
function feedOf(placed: Placed): { readonly feed: Feed; readonly lacks: readonly Missing[] } {
  switch (placed.role) {
    case 'processor':
      return { feed: 'processor', lacks: [] };
    case 'graphics':
    case 'cards': {
      const card = placed as Card;
      const connectors = connectorsOf(card);
      if (connectors) return { feed: connectors.length > 0 ? 'cards' : 'board', lacks: [] };
      return { feed: 'not known', lacks: [missing(card.part.connectors, `connectors of ${card.label}`)] };
    }
    case 'drives': {
      const apart = housed(placed as Placed<'drives'>);
      if (typeof apart === 'boolean') return { feed: apart ? 'drives' : 'board', lacks: [] };
      return { feed: 'not known', lacks: apart };
    }
    default:
      return { feed: 'board', lacks: [] };
  }
}

/** What the supply turns into heat itself while the parts draw what they draw for hours; undefined without one. */
export const supplyLoss = memo((build: Build): Figure | undefined => {
  const { supply } = build.parts;
  return (
    supply &&
    derive(
      `heat of ${supply.label}`,
      'power',
      [sustainedDraw(build), efficiencyAtLoad(build, supply)],
      'sustained draw ÷ efficiency − sustained draw',
      allowed((drawn, percent) => (drawn === 0 ? 0 : percent > 0 ? drawn * (100 / percent - 1) : NaN)),
      { unit: 'W' },
    )
  );
});
