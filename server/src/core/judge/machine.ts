// What a judgement says of the finished machine alone.
import type { Judgement } from './finding';

export function ofTheMachine(judgement: Judgement): Judgement {
  const answers = judgement.answers.filter(({ check }) => check.area === 'built');
  const findings = judgement.findings.filter(({ check }) => check.area === 'built');
  const counts = { held: 0, broken: 0, unknown: 0, unasked: 0 };
  for (const { outcome, finding } of answers.flatMap(({ taken }) => taken)) {
    if (!finding) counts[outcome.truth.is === true ? 'held' : 'unasked']++;
    else counts[outcome.truth.is === undefined ? 'unknown' : 'broken']++;
  }
  return {
    ...judgement,
    answers,
    findings,
    counts,
    failed: judgement.failed.filter(({ id }) => id.startsWith('built-')),
  };
}
