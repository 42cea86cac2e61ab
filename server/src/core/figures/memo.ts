// Figures are computed once for a build, and know which roles of the build they read.
import type { Build } from '../build/build';

interface Kept { readonly value: unknown; readonly mask: number }

/** Wraps a computation over a build: the first call works it out, later calls give the same result. */
export function memo<T>(work: (build: Build) => T): (build: Build) => T {
  return (build) => {
    let kept = build.memo.get(work) as Kept | undefined;
    if (!kept) {
      const outer = build.reads.mask;
      build.reads.mask = 0;
      kept = { value: work(build), mask: build.reads.mask };
      build.reads.mask = outer;
      build.memo.set(work, kept);
    }
    build.reads.mask |= kept.mask;
    return kept.value as T;
  };
}
