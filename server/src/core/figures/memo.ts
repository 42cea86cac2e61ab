// Figures are computed once for a build, and know which roles of the build they read.
import type { Build, CacheEntry } from '../build/build';
import { Reads } from '../build/reads';

/** Wraps a computation over a build: the first call works it out, later calls give the same result. */
export function memo<T>(work: (build: Build) => T): (build: Build) => T {
  return (build) => read(build, build.memo, work, work) as T;
}

/** The same for a computation over a build and one thing in it, such as a slot or a part where it stands. */
export function memoOf<K, T>(work: (build: Build, of: K) => T): (build: Build, of: K) => T {
  return (build, of) => {
    let kept = build.memoOf.get(work);
    if (!kept) build.memoOf.set(work, (kept = new Map()));
    return read(build, kept, of, (view) => work(view, of)) as T;
  };
}

/** `work` sees the build through a view of its own; whoever asked is held to have read what it read. */
function read(build: Build, among: Map<unknown, CacheEntry>, key: unknown, work: (build: Build) => unknown): unknown {
  let kept = among.get(key);
  if (!kept) {
    const reads = new Reads();
    const value = work(build.viewedBy(reads));
    among.set(key, (kept = { value, roles: reads.roles }));
  }
  build.reads?.add(kept.roles);
  return kept.value;
}
