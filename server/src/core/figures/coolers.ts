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

/** What may say so; of a pump and a radiator, what their sheets print. */
export const liquidFacts = ({ part: { pump, radiator, 'tube-length': tubes }, at }: Placed<'cooler'>) => [
  ...[pump.pins, pump.current, pump.level, radiator.class, radiator.length, radiator.thickness, radiator.fans],
  ...[tubes, at.mount, at.tubes, at.flow, at['pump-header']],
];
