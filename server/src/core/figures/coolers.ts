// What kind of cooler stands in a build.
import type { Placed } from '../build/build';

/** A cooler of which its part file or the build says anything that only a liquid one has: radiator, pump, tubes. */
export function isLiquid({ part, at }: Placed<'cooler'>): boolean {
  return (
    part.radiator.$.stated ||
    part.pump.$.stated ||
    part['tube-length'].entry !== undefined ||
    [at.mount, at.tubes, at.flow, at['pump-header']].some((fact) => fact.entry !== undefined)
  );
}
