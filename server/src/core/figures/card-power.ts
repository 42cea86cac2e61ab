// Figures of what a card may take: from its slot, through its connectors, and from both.
import type { Build, Placed } from '../build/build';
import { unreadNames } from '../parts/facts';
import {
  CONNECTORS,
  isPowerConnector,
  levelFor,
  SIXTEEN_PIN_LEVELS_W,
  SLOT_POWER,
  type Connector,
  type SlotLength,
} from '../trade/connectors';
import {
  between,
  copyWith,
  counted,
  decidedBy,
  figure,
  known,
  missing,
  times,
  total,
  unknown,
  type Figure,
} from './figure';
import { memoOf } from './memo';

export type Card = Placed<'graphics'> | Placed<'cards'>;

const slotSource = 'PCI Express Card Electromechanical Specification: power of a slot';

/** What one connector of a kind carries: undisputed up to its low end, too much above its high end. */
export function connectorPower(kind: Connector): Figure {
  const { powerW, source } = CONNECTORS[kind];
  return between(powerW.low, powerW.high, 'power', `${kind} connector`, { unit: 'W', source });
}

/** What a card may take from its slot; a graphics card with a x16 edge more than any other. */
export function slotPower(card: Card): Figure {
  const { edge } = card.part;
  const label = `slot of ${card.label}`;
  const length = edge.value;
  if (length === undefined || length === 'M.2') {
    return copyWith(
      between(SLOT_POWER.x1.powerW, SLOT_POWER.x16.powerW, 'power', label, { unit: 'W', source: slotSource }),
      { missing: [missing(edge, `edge of ${card.label}`)] },
    );
  }
  return decidedBy(edgePower(card, length, label), edge);
}

function edgePower(card: Card, length: SlotLength, label: string): Figure {
  const look = { unit: 'W', source: slotSource } as const;
  // A plain x1 card keeps to 10 W, one set up as high-power may take 25 W: which it is no file states.
  if (length === 'x1') return between(SLOT_POWER.x1.powerW, SLOT_POWER.x4.powerW, 'power', label, look);
  // Nor whether a card that is no graphics card is set up for the 75 W of the slot.
  if (length === 'x16' && card.role !== 'graphics')
    return between(SLOT_POWER.x4.powerW, SLOT_POWER.x16.powerW, 'power', label, look);
  return known(SLOT_POWER[length].powerW, 'power', label, look);
}

/** Whether all its power comes from its socket: of an M.2 module. Source: PCI Express M.2 Specification. */
export const isFedBySocket = ({ part: { edge, connectors } }: Card): boolean =>
  edge.value === 'M.2' && !connectors.node;

/** The kinds of connector a card wants with how many; undefined while it does not say, or names one nobody knows. */
export function connectorsOf(card: Card): readonly { readonly kind: Connector; readonly count: Figure }[] | undefined {
  const { connectors } = card.part;
  if (isFedBySocket(card)) return [];
  if (!connectors.value || unreadNames(connectors).length > 0) return undefined;
  return [...connectors.value].flatMap(([kind, count]) =>
    isPowerConnector(kind) && count.value !== 0 ? [{ kind, count: counted(count, `${kind} of ${card.label}`) }] : [],
  );
}

/** What a card’s slot and connectors carry together. */
export const cardCapacity = memoOf((_: Build, card: Card): Figure => {
  const connectors = connectorsOf(card);
  const label = `slot and connectors of ${card.label}`;
  if (!connectors) return unknown('power', label, [missing(card.part.connectors, `connectors of ${card.label}`)]);
  const carried = [slotPower(card), ...connectors.map(({ kind, count }) => times(connectorPower(kind), count))];
  return decidedBy(total(label, 'power', carried, { unit: 'W' }), card.part.connectors);
});

/** What a card draws for as long as it works: as stated, else at most what its slot and connectors carry. */
export const cardDraw = memoOf((build: Build, card: Card): Figure => {
  const { sustained } = card.part.power;
  const read = figure(sustained, `sustained power of ${card.label}`);
  if (sustained.value) return read;
  const most = cardCapacity(build, card);
  return copyWith(read, {
    lo: 0,
    hi: most.hi,
    unit: 'W',
    source: 'what its slot and connectors carry',
    missing: Number.isFinite(most.hi) ? read.missing : [...read.missing, ...most.missing],
  });
});

/** The level that a card wants signalled: as stated, else one that gives what its slot does not. */
export function wantedLevel(build: Build, card: Card): Figure {
  const stated = card.part['power-level'];
  const read = figure(stated, `power level that ${card.label} wants`);
  if (stated.value) return read;
  const beyond = cardDraw(build, card).lo - slotPower(card).hi;
  return copyWith(read, {
    lo: levelFor(Math.max(0, beyond)),
    hi: SIXTEEN_PIN_LEVELS_W[0],
    unit: 'W',
    source: 'ATX Version 3 design guide, doc. 336521, section 3.3, table 3-6',
  });
}
