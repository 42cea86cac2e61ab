// How often a promise is tried; the seed is the whole suite's (`tests/support/seed.ts`). FETTLE_RUNS asks for more.
const times = Number(process.env.FETTLE_RUNS ?? 1);

export const runs = (count: number): { numRuns: number } => ({ numRuns: Math.ceil(count * times) });
