// One seed for all generated tests, so that a run can be repeated; FETTLE_SEED sets another, FETTLE_RUNS asks for more.
const seed = Number(process.env.FETTLE_SEED ?? 20261125);
const times = Number(process.env.FETTLE_RUNS ?? 1);

/** How often a property is tried, from that seed. */
export const runs = (count: number): { numRuns: number; seed: number } => ({ numRuns: Math.ceil(count * times), seed });
