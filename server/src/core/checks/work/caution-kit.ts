// Cautions as they are written into a build.
import type { Value } from '../../yaml';
import { CAUTIONS, type CautionId } from '../../trade/cautions';
import { STEP_CAUTIONS, type StepKind } from '../../trade/steps';

/** One of the trade’s cautions as a value for `caution:`. */
export function writtenCaution(id: CautionId): Value {
  const { word, hazard, consequence, avoidance } = CAUTIONS[id];
  return { word, hazard, consequence, avoidance };
}

/**
 * The trade’s own caution for a kind of step, shown with a finding about what the build says there; none for a step
 * that has none.
 */
export function ownCaution(kind: StepKind | undefined): { readonly caution?: CautionId } {
  const first = kind === undefined ? undefined : STEP_CAUTIONS[kind]?.[0];
  return first === undefined ? {} : { caution: first };
}
