// One seed for all generated tests, so that a run can be repeated; FETTLE_SEED sets another, FETTLE_RUNS asks for more.
import fc from 'fast-check';

const seed = Number(process.env.FETTLE_SEED ?? 20261125);
const times = Number(process.env.FETTLE_RUNS ?? 1);

fc.configureGlobal({ seed });

/** How often a property is tried. */
export const runs = (count: number): { numRuns: number } => ({ numRuns: Math.ceil(count * times) });
