// Figures of small things that are there and do not fit: a display cable with other ends, screws with another thread.
import type { Build } from '../build/build';
import type { Fact } from '../parts/fact';
import { displayCableEnd, screwThread, type BoxThing } from '../trade/box-things';
import { connectorsOf, outputs, reaches } from './display';

/** What a line must not be to count, and the facts by which that is told. */
export interface Fit {
  readonly serves: (line: string) => boolean;
  readonly decidedBy: readonly Fact<unknown>[];
}

const anything: Fit = { serves: () => true, decidedBy: [] };

/** Which lines of boxes, or things bought, serve as a thing of this build: what is not known to fail counts. */
export function fitOf(build: Build, thing: BoxThing): Fit {
  if (thing === 'display cable') return cableFit(build);
  return thing === 'drive screw' ? screwFit(build) : anything;
}

/** A plain cable has the same connector at both ends: a display has to take it, and an output to have it. */
function cableFit(build: Build): Fit {
  const { list, missingFacts } = outputs(build);
  const taken = build.parts.displays.map(connectorsOf);
  const displayMayTake = (end: string): boolean =>
    taken.some((one) => one.missingFacts.length > 0 || one.connectors.has(end));
  const outputMayHave = (end: string): boolean =>
    missingFacts.length > 0 ||
    list.length === 0 ||
    list.some(({ connector }) => connector === undefined || reaches(connector, end));
  return {
    serves: (line) => {
      const end = displayCableEnd(line);
      return end === undefined || (displayMayTake(end) && outputMayHave(end));
    },
    decidedBy: [...build.parts.displays.map(({ part }) => part.inputs), ...list.map(({ link }) => link)],
  };
}

/** The bays that drives of the build go into say which threads are wanted. */
function screwFit(build: Build): Fit {
  const threads = build.parts.case?.part['bay-thread'];
  const shapes = build.parts.drives.map(({ at, part }) => at.bay.value ?? part.shape.value);
  if (!threads?.value || shapes.includes(undefined)) return anything;
  const wanted = shapes.map((shape) => threads.value!.get(shape!)?.value);
  return {
    serves: (line) => {
      const thread = screwThread(line);
      return thread === undefined || wanted.includes(undefined) || wanted.includes(thread);
    },
    decidedBy: [threads],
  };
}
