// Places and changes in a guide, for checks that judge them.
import type { Guide } from '../../guide/guide';
import type { Marker } from '../../guide/markers';
import type { Doc } from '../../parts/doc';
import type { Span } from '../../text';
import { outcome, target, type Outcome, type Reporter, type Target, type TextFix, type Words } from '../kit';

/** A place of the guide; what it speaks of, told from others of its name by number. */
export const inGuide = ({ doc }: Guide, subject: string, span: Span): Target => target(subject, doc, span);

/** Counts what bears one name: `values.power.wall`, then `values.power.wall (2)`. */
export function numbered(): (name: string) => string {
  const counts = new Map<string, number>();
  return (name) => {
    const count = (counts.get(name) ?? 0) + 1;
    counts.set(name, count);
    return count > 1 ? `${name} (${count})` : name;
  };
}

/** Writes other words in the place of some; none where they could end a comment or begin another line. */
export function rewrite(doc: Doc, span: Span, text: string, title: string): TextFix | undefined {
  if (/[\r\n]|--|[<>|\\`*_]/.test(text)) return undefined;
  return { type: 'text', title, doc, edits: [{ span, text }] };
}

/** The words of a marker; all of it where it has none. */
export const wordsOf = ({ words, span }: Marker): Span => (words.end > words.start ? words : span);

/** Tells what a check of builds answered of the guide’s steps, each at its marker. */
export function tellOfSteps(
  guide: Guide,
  answers: readonly Outcome[],
  report: Reporter,
  grade: (one: Outcome) => Pick<Words, 'grade' | 'caution'>,
): void {
  for (const one of answers) {
    const step = guide.stepAt(one.underline);
    if (!step) continue;
    const { grade: own, caution } = grade(one);
    report(
      outcome(inGuide(guide, one.subject, step.span), one.truth, {
        broken: one.broken,
        ...(one.open ? { open: one.open } : {}),
        ...(own ? { grade: own } : {}),
        ...(caution === undefined ? {} : { caution }),
      }),
    );
  }
}
