// What a judgement says of the finished machine alone.
import { addCounts, noCounts, type Judgement } from './finding';

export function ofTheMachine(judgement: Judgement): Judgement {
  const answers = judgement.answers.filter(({ check }) => check.area === 'built');
  const findings = judgement.findings.filter(({ check }) => check.area === 'built');
  const counts = { ...noCounts };
  for (const answer of answers) addCounts(counts, answer.counts);
  return {
    ...judgement,
    answers,
    findings,
    counts,
    failed: judgement.failed.filter(({ id }) => id.startsWith('built-')),
  };
}
