// Turns what is wrong with a text by itself into outcomes, one each; a text with none of that kind holds once.
import type { FileReading, Trouble } from '../../build/inspect';
import { say } from '../../figures/say';
import { sure } from '../../figures/truth';
import { outcome, type Tell } from '../kit';

/** The outcomes of a check that reports the troubles of some codes. */
export function report(file: FileReading, tell: Tell, ...codes: readonly Trouble['code'][]): void {
  const troubles = file.troubles.filter((trouble) => codes.includes(trouble.code));
  if (troubles.length === 0) tell(outcome({ doc: file.doc, span: { start: 0, end: 0 }, path: '' }, sure(true), { broken: () => say`` }));
  for (const trouble of troubles) {
    const place = { doc: file.doc, span: trouble.span, path: trouble.path };
    tell(outcome(place, sure(false), {
      broken: () => say`${trouble.message}`,
      fixes: () => trouble.mends.map((mend) => ({ type: 'text', title: mend.title, doc: file.doc, edits: mend.edits })),
    }));
  }
}
