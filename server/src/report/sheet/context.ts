// What the parts of a sheet are made from: the build, what was judged of it, and the findings by their numbers.
import type { Build } from '../../core/build/build';
import type { Finding, Judgement } from '../../core/judge/finding';
import type { ProvenFix } from '../../core/judge/prove';
import { Places } from './places';

export interface Context {
  readonly build: Build;
  readonly judgement: Judgement;
  /** What does not hold, worst first, what the build accepts last: numbered on the sheet in this order, from one. */
  readonly findings: readonly Finding[];
  readonly places: Places;
  /** Proven fixes, where they were looked for. */
  readonly fixes: ReadonlyMap<Finding, readonly Pick<ProvenFix, 'title' | 'givesWay'>[]>;
}

/** So many findings are printed in full, and so many are spoken of elsewhere on the sheet by their numbers. */
export const mostInFull = 100;

export function contextOf(build: Build, judgement: Judgement, fixes: Context['fixes'] = new Map()): Context {
  const broken = judgement.findings.filter(({ grade }) => grade !== 'unknown');
  const findings = [...broken.filter(({ accepted }) => !accepted), ...broken.filter(({ accepted }) => accepted)];
  return { build, judgement, findings, places: new Places(build, findings.slice(0, mostInFull)), fixes };
}
