// Figures are computed once for a build, and know which roles of the build they read.
import type { Build, CacheEntry } from '../build/build';

/** Wraps a computation over a build: the first call works it out, later calls give the same result. */
export function memo<T>(work: (build: Build) => T): (build: Build) => T {
  return (build) => read(build, build.memo, work, work, undefined) as T;
}

/** The same for a computation over a build and one thing in it, such as a slot or a part where it stands. */
export function memoOf<K, T>(work: (build: Build, of: K) => T): (build: Build, of: K) => T {
  return (build, of) => {
    let kept = build.memoOf.get(work);
    if (!kept) build.memoOf.set(work, (kept = new Map()));
    return read(build, kept, of, work, of) as T;
  };
}

function read<K>(
  build: Build,
  among: Map<unknown, CacheEntry>,
  key: unknown,
  work: (build: Build, of: K) => unknown,
  of: K,
): unknown {
  const { reads } = build;
  let kept = among.get(key);
  if (!kept) {
    const outer = reads.mask;
    reads.mask = 0;
    kept = { value: work(build, of), mask: reads.mask };
    reads.mask = outer;
    among.set(key, kept);
  }
  reads.mask |= kept.mask;
  return kept.value;
}
