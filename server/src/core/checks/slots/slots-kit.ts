// What checks of cards share: the cards themselves, their slots, and moves to free ones.
import type { Build, Placed } from '../../build/build';
import { figure, type Figure } from '../../figures/figure';
import { freeSlots, seatOf, type Slot } from '../../figures/slots';
import { atLeast } from '../../figures/truth';
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

/** Whether a rate plainly is all that a card states it needs. */
export function suffices({ part, label }: Card, rate: Figure): boolean {
  const need = part['rate-needed'];
  return need.value !== undefined && atLeast(rate, figure(need, `rate needed by ${label}`)).is === true;
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
