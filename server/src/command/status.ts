// How a run that checks files ends.
import type { Grade } from '../core/manifest/house-file';
import type { Tally } from '../report/tally';
import type { RunTrouble } from '../session/run-trouble';
import type { Status } from './world';

export function statusOf(tally: Tally, troubles: readonly RunTrouble[], fails: Grade): Status {
  if (troubles.length > 0 || tally.cut > 0) return 2;
  return tally.reaches(fails) ? 1 : 0;
}
