// Judged files as features see them, made from texts in memory; `|` in a text marks the place that is asked about.
import { judgeBuild, judgeFile } from '../../server/src/core/judge/judge';
import { applyEdits, Lines } from '../../server/src/core/text';
import type { Position, TextEdit, View, WorkspaceEdit } from '../../server/src/features/shapes';
import type { Candidates } from '../../server/src/core/judge/swaps';
import { bench } from './bench';

export interface Marked {
  readonly view: View;
  readonly position: Position;
  readonly text: string;
  readonly candidates: Candidates;
}

/** Judges the marked file among others. The first `¦` is taken out and gives the position. */
export function view(
  marked: string,
  others: Readonly<Record<string, string>> = {},
  name = 'desk.pcbuild.yaml',
): Marked {
  const offset = marked.indexOf('¦');
  const text = marked.replace('¦', '');
  const all = [{ name, text }, ...Object.entries(others).map(([other, its]) => ({ name: other, text: its }))];
  const { docs, build, candidates } = bench(all);
  const doc = docs.get(name)!;
  const own = doc.kind === 'build' ? build! : undefined;
  return {
    view: {
      doc,
      ...(own ? { build: own } : {}),
      judgement: own ? judgeBuild(own, { throwOn: true }) : judgeFile(doc, { throwOn: true }),
      uriOf: (of) => `file:///ws/${of.name}`,
      versionOf: (of) => (of === doc ? 3 : null),
    },
    position: new Lines(text).positionAt(Math.max(offset, 0)),
    text,
    candidates,
  };
}

/** The text that edits of the protocol cable to. */
export function edited(text: string, edits: readonly TextEdit[]): string {
  const lines = new Lines(text);
  return applyEdits(
    text,
    edits.map(({ range, newText }) => ({
      span: { start: lines.offsetAt(range.start), end: lines.offsetAt(range.end) },
      text: newText,
    })),
  );
}

export function editedFile(text: string, edit: WorkspaceEdit | undefined, uri: string): string {
  return edited(
    text,
    (edit?.documentChanges ?? []).filter(({ textDocument }) => textDocument.uri === uri).flatMap(({ edits }) => edits),
  );
}
