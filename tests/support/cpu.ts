// Time that work takes of the processor, for promises that name one.

/**
 * What a busy machine may cost: a promise names the processor time on a machine that does nothing else; where others
 * use the same caches and the same memory, the same work takes longer, measured so as well.
 */
export const busyFactor = 3;

/** Processor time in ms, of user and system, that this process spends until the work is done. */
export async function cpuMsOf(work: () => unknown): Promise<number> {
  const begun = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(begun);
  return (user + system) / 1_000;
}
