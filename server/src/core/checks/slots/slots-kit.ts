// What checks of cards share: the cards themselves, their slots, and moves to free ones.
import type { Build, Placed } from '../../build/build';
import { figure, least, type Figure } from '../../figures/figure';
import type { End } from '../../figures/processor-slots';
import { endOf, linkRate, reached, riserOf, sourceGeneration, wiringOf } from '../../figures/lanes';
import { sentence, type Sentence } from '../../figures/sentence';
import { freeSlots, seatOf, type Slot } from '../../figures/slots';
import { atLeast, atMost } from '../../figures/truth';
import { putOn, type FixIdea } from '../kit';

export type Card = Placed<'graphics'> | Placed<'cards'>;

/** Graphics and other cards; those that are M.2 modules are judged as modules. */
export function cardsOf(build: Build): readonly Card[] {
  return [...build.parts.graphics, ...build.parts.cards].filter((card) => card.part.edge.value !== 'M.2');
}

/** Cards that are M.2 modules. */
export function modulesAmong(build: Build): readonly Card[] {
  return build.parts.cards.filter((card) => card.part.edge.value === 'M.2');
}

/** Cards that name a slot which is not plainly an M.2 socket, with that slot where the board has it. */
export function* cardsInSlots(
  build: Build,
): Iterable<{ readonly card: Card; readonly seat: ReturnType<typeof seatOf> }> {
  if (!build.parts.board) return;
  for (const card of cardsOf(build)) {
    const seat = seatOf(build, card);
    if (seat.name !== undefined && seat.slot?.kind.value !== 'M.2') yield { card, seat };
  }
}

/** A card's link in its slot: what each end can, and what comes of it with all that stands in between. */
export interface CardLink {
  readonly own: End;
  readonly wired: End;
  /** The generation that slot and processor run. */
  readonly runs: Figure;
  readonly reached: Figure;
  /** What keeps the card from a rate that it needs; undefined where nothing plainly does. */
  readonly blamed: 'lanes' | 'generation' | 'riser' | 'own' | undefined;
}

/** The one account of a card's link; checks of lanes, generation and riser each tell their part of it. */
export function linkInSlot(build: Build, card: Card, name: string, slot: Slot): CardLink {
  const own = endOf(card.part.link, card.label);
  const wired = wiringOf(build, slot);
  const source = sourceGeneration(build, slot, name);
  const runs = source ? least(`generation in ${name}`, [wired.generation, source]) : wired.generation;
  const link = reached(build, card).link;
  return { own, wired, runs, reached: link, blamed: blamed(card, { own, wired, runs, reached: link }) };
}

function blamed(card: Card, { own, wired, runs, reached }: Omit<CardLink, 'blamed'>): CardLink['blamed'] {
  if (meets(card, reached) !== false) return undefined;
  const label = `link of ${card.label}`;
  if (meets(card, linkRate(label, [own])) === false) return 'own';
  if (meets(card, linkRate(label, [own, { lanes: wired.lanes }])) === false) return 'lanes';
  if (meets(card, linkRate(label, [own, { lanes: wired.lanes, generation: runs }])) === false)
    return atMost(own.generation, runs).is === false ? 'generation' : 'lanes';
  const riser = riserOf(card);
  return riser && meets(card, linkRate(label, [own, wired, { generation: runs }, { generation: riser }])) === false
    ? 'riser'
    : 'own';
}

/** Whether a rate is all that a card states it needs; undefined where it states no need, or that cannot be said. */
export function meets({ part, label }: Card, rate: Figure): boolean | undefined {
  const need = part['rate-needed'];
  return need.value && atLeast(rate, figure(need, `rate needed by ${label}`)).is;
}

/** What a card's link comes to, beside what it needs where it says so. */
export function linkComesTo(card: Card, { own, reached }: CardLink): Sentence {
  const need = card.part['rate-needed'];
  return need.value
    ? sentence`${reached}, and it needs ${figure(need, `rate needed by ${card.label}`)}`
    : sentence`${reached} of ${linkRate(`link of ${card.label}`, [own])}`;
}

/** Moves into free PCIe slots that suit, in the board’s order. */
export function* cardMoves(
  build: Build,
  card: Card | Placed<'drives'>,
  suits: (slot: Slot) => boolean = () => true,
): Iterable<FixIdea | undefined> {
  for (const [name, slot] of freeSlots(build)) {
    if (slot.kind.value === 'PCIe' && suits(slot)) yield putOn(card, 'slot', name, `Move ${card.label} to ${name}`);
  }
}
