// What the checks of standoffs share: a list of holes in words, and the fix that sets them.
import type { Placed } from '../../build/build';
import type { Fact } from '../../parts/fact';
import { listed } from '../../text';
import type { Hole } from '../../trade/forms';
import { putOn, type FixIdea } from '../kit';

/** What decides where the board has holes and the tray standoffs. */
export const grounds = (
  { part: board }: Placed<'board'>,
  { part: box, at }: Placed<'case'>,
): readonly Fact<unknown>[] =>
  [board.size, board.width, board.depth, board.holes, box.standoffs.pattern, at['standoffs-at']].filter(
    (fact) => fact.node !== undefined,
  );

/** `standoff B`, `standoffs B, R and S`. */
export const named = (thing: string, holes: readonly Hole[]): string =>
  `${thing}${holes.length === 1 ? '' : 's'} ${listed(holes)}`;

/** Standoffs at the board’s own holes and nowhere else; not where single standoffs do not come out. */
export function setStandoffs(box: Placed<'case'>, holes: readonly Hole[]): FixIdea | undefined {
  if (box.part.standoffs.removable.value === false) return undefined;
  return putOn(box, 'standoffs-at', [...holes], `Set standoffs at ${listed(holes)} only`);
}
