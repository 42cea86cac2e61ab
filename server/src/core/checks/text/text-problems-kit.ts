// Turns what is wrong with a text by itself into outcomes, one each; a text with none of that kind holds once.
import type { FileReading } from '../../build/inspect';
import type { TextProblem } from '../../build/text-problem';
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { outcome, target, type Reporter } from '../kit';
import { inPieces } from './text-pieces-kit';

/** The outcomes of a check that reports the problems of some codes. */
export function reportProblems(file: FileReading, report: Reporter, ...codes: readonly TextProblem['code'][]): void {
  const problems = file.problems.filter((problem) => codes.includes(problem.code));
  if (problems.length === 0)
    report(outcome(target('', file.doc, { start: 0, end: 0 }), sure(true), { broken: () => sentence`` }));
  for (const problem of problems) {
    report(
      outcome(target(problem.path, file.doc, problem.span), sure(false), {
        // Such a word is understood: it leaves open which of a few is meant, and what needs it waits for that.
        ...(problem.code === 'choice-open' ? { grade: 'note' as const } : {}),
        broken: () => inPieces(problem.message),
        fixes: () =>
          problem.mends.map((mend) => ({ type: 'text', title: mend.title, doc: file.doc, edits: mend.edits })),
      }),
    );
  }
}
