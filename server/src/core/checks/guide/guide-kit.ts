// Places and changes in a guide, for checks that judge them.
import type { Build } from '../../build/build';
import { statedSteps } from '../../figures/steps';
import type { Guide } from '../../guide/guide';
import type { Marker } from '../../guide/markers';
import { stepMoved } from '../../guide/step-blocks';
import { Doc } from '../../parts/doc';
import { applyEdits, type Edit, type Span } from '../../text';
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
        fixes: () => movesOf(guide, one),
        ...(one.open ? { open: one.open } : {}),
        ...(own ? { grade: own } : {}),
        ...(caution === undefined ? {} : { caution }),
      }),
    );
  }
}

/** What moves a step in a build that has the guide’s steps, as moves of their lines in the guide. */
function movesOf(guide: Guide, { fixes }: Outcome): TextFix[] {
  const found = new Map<string, TextFix>();
  for (const idea of fixes?.() ?? []) {
    if (idea?.type !== 'text') continue;
    const edits = moveOf(guide, idea);
    const key = JSON.stringify(edits);
    if (edits && !found.has(key)) found.set(key, { type: 'text', title: idea.title, doc: guide.doc, edits });
  }
  return [...found.values()];
}

function moveOf(guide: Guide, { doc, edits }: TextFix): readonly Edit[] | undefined {
  const made = guide.stepsBuild;
  if (!made || doc !== made.build.doc) return undefined;
  const after = made.build.withText(new Doc(doc.name, doc.kind, applyEdits(doc.text, edits)), ['steps']);
  const labels = (build: Build): Order => statedSteps(build).map(({ label }) => label);
  const [old, now] = [labels(made.build), labels(after)];
  const first = old.findIndex((label, i) => label !== now[i]);
  const last = old.findLastIndex((label, i) => label !== now[i]);
  if (first < 0 || old.length !== now.length) return undefined;
  const [a, b] = [made.steps[first]!, made.steps[last]!];
  if (isSame([old[last]!, ...old.slice(first, last)], now.slice(first, last + 1)))
    return stepMoved(guide, b, 'before', a);
  if (isSame([...old.slice(first + 1, last + 1), old[first]!], now.slice(first, last + 1)))
    return stepMoved(guide, a, 'behind', b);
  return undefined;
}

type Order = readonly string[];

const isSame = (a: Order, b: Order): boolean => a.every((label, i) => label === b[i]);
