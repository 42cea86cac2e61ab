// All pictures of a build, in the order in which they are shown.
import type { Build } from '../../../core/build/build';
import type { Finding } from '../../../core/judge/finding';
import { Kept } from '../kept';
import { toldOf } from './marks';
import type { Drawer, Picture } from './picture';
import { clearance } from './clearance';
import { displays } from './displays';
import { heat } from './heat';
import { lanes } from './lanes';
import { power } from './power';

const drawers: readonly Drawer[] = [power, lanes, clearance, heat, displays];

/** Draws what the build has to show, with the findings that belong there; those that are as they were are kept. */
export function pictures(
  build: Build,
  findings: readonly Finding[],
  kept = new Kept().begin(build),
): readonly Picture[] {
  return drawers.flatMap((drawer, i) => {
    const told = toldOf(findings, drawer.belongs);
    return kept.part(`picture ${i}`, told, (view) => drawer.draw(view, findings, kept)) ?? [];
  });
}
