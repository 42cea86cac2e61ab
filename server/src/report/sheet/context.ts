// What the parts of a sheet are made from: the build, what was judged of it, and the findings by their numbers.
import type { Build } from '../../core/build/build';
import type { Finding, Judgement } from '../../core/judge/finding';
import type { ProvenFix } from '../../core/judge/prove';
import { english } from '../../core/words/languages';
import { findingsIn } from './in-language';
import { Kept } from './kept';
import { Places } from './places';

export interface Context {
  readonly build: Build;
  readonly judgement: Judgement;
  /** What does not hold, worst first, what the build accepts last: numbered on the sheet in this order, from one. */
  readonly findings: readonly Finding[];
  /** Answers that stay open though no fact is missing: a range lies on both sides of its limit. */
  readonly open: readonly Finding[];
  readonly places: Places;
  /** Proven fixes, where they were looked for. */
  readonly fixes: ReadonlyMap<Finding, readonly Pick<ProvenFix, 'title' | 'givesWay'>[]>;
  readonly kept: Kept;
}

/** So many findings are printed in full, and so many are spoken of elsewhere on the sheet by their numbers. */
export const mostInFull = 100;

export function contextOf(
  build: Build,
  judgement: Judgement,
  fixes: Context['fixes'] = new Map(),
  kept = new Kept(),
  language = english(),
): Context {
  const broken = judgement.findings.filter(({ grade }) => grade !== 'unknown');
  const own = [...broken.filter(({ accepted }) => !accepted), ...broken.filter(({ accepted }) => accepted)];
  const findings = findingsIn(language, own);
  const places = Places.of(build, findings.slice(0, mostInFull));
  const mends = new Map(own.flatMap((one, i) => (fixes.has(one) ? [[findings[i]!, fixes.get(one)!] as const] : [])));
  const open = judgement.findings.filter(({ grade, missing }) => grade === 'unknown' && missing.length === 0);
  return {
    build,
    judgement,
    findings,
    open: findingsIn(language, open),
    places,
    fixes: mends,
    kept: kept.begin(build),
  };
}

/** A part of the sheet that depends on the build, on which findings there are, and on what it is told; see `Kept`. */
export function part<T>(
  context: Context,
  name: string,
  told: readonly (string | object)[],
  make: (context: Context) => T,
  roles?: number,
): T {
  const { kept, places } = context;
  return kept.part(
    name,
    [places.told, ...told],
    (build) => make({ ...context, build, places: places.seenIn(build) }),
    roles,
  );
}
