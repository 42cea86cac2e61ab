// Figures of the way from an output to a display: through an adapter or hub, or through the display before it.
import type { Build, Placed } from '../build/build';
import type { Fact } from '../parts/fact';
import { missing, type Missing } from './figure';
import type { Display } from './display';

/** The adapter or hub that a display hangs on; undefined where it hangs on none. */
export const adapterOf = (build: Build, { at: { through } }: Display): Placed<'cables'> | undefined =>
  through.value === undefined
    ? undefined
    : build.parts.cables.find(({ at, part }) => at.name.value === through.value && part['display-adapter'].$.stated);

/** The display before it in a chain. */
const before = (build: Build, display: Display): Display | undefined =>
  display.at.through.value === undefined
    ? undefined
    : build.parts.displays.find((one) => one !== display && one.at.name.value === display.at.through.value);

/** The key that names the output at the beginning of a display’s chain. */
export function portOf(build: Build, display: Display): Fact<string> {
  const seen = new Set<Display>();
  let first = display;
  for (let next = before(build, first); next && !seen.has(next); next = before(build, first)) {
    seen.add(first);
    first = next;
  }
  return first.at.port;
}

/** Whether it takes its picture from another display. */
export const isChained = (build: Build, display: Display): boolean => before(build, display) !== undefined;

/** Whether it shares its output by its own account: in a chain, or on a hub. */
export const sharesOutput = (build: Build, display: Display): boolean =>
  isChained(build, display) || (adapterOf(build, display)?.part['display-adapter'].outputs.value ?? 1) > 1;

/** What says nothing of any adapter or display by the name that `through` gives. */
export const throughMissing = (build: Build, { at: { through }, label }: Display): readonly Missing[] => {
  const named = [...build.parts.cables, ...build.parts.displays].some(({ at }) => at.name.value === through.value);
  return [missing(through, named ? `from and to of ${through.value}` : `${through.value}, on which ${label} hangs`)];
};
