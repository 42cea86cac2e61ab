// References: where a file names what is named at a place; and which of its own places share a name under the cursor.
import type { Position } from '../core/text';
import type { Location, Range } from './shapes';
import { subjectAt, usesIn, type Named, type Subject } from './subject';

/** Every place of a file that names a subject; with `declares`, also where it is given its name. */
export function referencesTo(view: Named, subject: Subject, declares: boolean): Location[] {
  const { given, used } = usesIn(view, subject);
  const spans = [...(declares ? given : []), ...used.map(({ fact }) => fact.node.span)];
  const uri = view.uriOf(view.doc);
  return spans.sort((a, b) => a.start - b.start).map((span) => ({ uri, range: view.doc.lines.rangeOf(span) }));
}

/** The protocol’s numbers. */
const highlightKinds = { read: 2, write: 3 } as const;

export interface Highlight {
  readonly range: Range;
  readonly kind: 2 | 3;
}

/** The places of the file at hand that share the name at a position: where it is given, and where it is used. */
export function highlights(view: Named, position: Position): Highlight[] {
  const { lines } = view.doc;
  const subject = subjectAt(view, lines.offsetAt(position));
  if (!subject?.at) return [];
  const { given, used } = usesIn(view, subject);
  return [
    ...given.map((span) => ({ range: lines.rangeOf(span), kind: highlightKinds.write })),
    ...used.map(({ fact }) => ({ range: lines.rangeOf(fact.node.span), kind: highlightKinds.read })),
  ].sort((a, b) => a.range.start.line - b.range.start.line || a.range.start.character - b.range.start.character);
}
