// Cautions as they are written into a build.
import type { Value } from '../../yaml';
import { CAUTIONS, type CautionId } from '../../trade/cautions';

/** One of the trade’s cautions as a value for `caution:`. */
export function writtenCaution(id: CautionId): Value {
  const { word, hazard, consequence, avoidance } = CAUTIONS[id];
  return { word, hazard, consequence, avoidance };
}
