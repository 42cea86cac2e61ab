// Figures of what a card or the processor takes through an adapter or a splitter.
import type { Build, Placed } from '../build/build';
import type { Connector } from '../trade/connectors';
import { connectorCount, connectorsBrought, connectorsOn, connectorsWanted, type Cable } from './cables';
import { cardDraw, connectorsOf, slotPower, type Card } from './card-power';
import { loadOf, wholeOf } from './connector-loads';
import { derive, least, missing, type Figure, type Missing } from './figure';
import { processorDraw } from './power';

export interface AdapterLoad {
  readonly card: Card | Placed<'processor'>;
  readonly load: Figure;
  /** Facts without which it is open whether anything hangs on the adapter at all. */
  readonly missing: readonly Missing[];
}

/** What each card, or the processor, takes through one adapter that ends in connectors of a kind. */
export function adapterLoads(build: Build, cable: Cable, kind: Connector): readonly AdapterLoad[] {
  if (kind.startsWith('EPS')) return processorLoad(build, cable, kind);
  return [...build.parts.graphics, ...build.parts.cards].flatMap((card) => {
    const connectors = connectorsOf(card);
    const count = connectorCount(card.part.connectors, kind, card.label);
    if (count.hi === 0) return [];
    if (!connectors)
      return [
        { card, load: cardDraw(build, card), missing: [missing(card.part.connectors, `connectors of ${card.label}`)] },
      ];
    return [{ card, load: cardLoad(build, card, cable, kind, count, connectors), missing: count.missing }];
  });
}

function cardLoad(
  build: Build,
  card: Card,
  cable: Cable,
  kind: Connector,
  count: Figure,
  connectors: NonNullable<ReturnType<typeof connectorsOf>>,
): Figure {
  // The level that a 16-pin adapter signals bounds what the card takes through it.
  if (kind === '16-pin')
    return derive(
      `power through the connector of ${card.label}`,
      'power',
      [cardDraw(build, card), slotPower(card)],
      'sustained power − slot',
      (watts, slot) => Math.max(0, watts - slot),
      { unit: 'W' },
    );
  return loadOf(build, card, kind, Math.max(1, Math.min(connectorsOn(cable).lo, count.hi)), wholeOf(card, connectors));
}

/** The processor’s power, shared among the EPS connectors in use. */
function processorLoad(build: Build, cable: Cable, kind: Connector): AdapterLoad[] {
  const { processor } = build.parts;
  const wanted = connectorsWanted(build, kind);
  if (!processor || wanted.hi === 0) return [];
  const used = least(`${kind} cables in use`, [wanted, connectorsBrought(build, kind)]);
  const load = derive(
    `processor power through ${cable.label}`,
    'power',
    [processorDraw(processor), used, connectorsOn(cable)],
    'processor power × connectors of the adapter ÷ connectors in use',
    (watts, cables, of) => watts * Math.min(1, of / Math.max(1, cables)),
    { unit: 'W' },
  );
  return [{ card: processor, load, missing: wanted.missing }];
}
