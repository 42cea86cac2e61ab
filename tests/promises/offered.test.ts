// Whatever the server offers of the samples: every fix is applied and judged again; what is preferred settles nothing
// anew, hangs on nobody’s safety, and is one at most for a finding; titles fit one line; no change is offered twice.
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { Build } from '../../server/src/core/build/build';
import { kindOfPart } from '../../server/src/core/build/placed';
import { judgeBuild, judgeFile } from '../../server/src/core/judge/judge';
import type { Finding } from '../../server/src/core/judge/finding';
import { newIn, type Candidates } from '../../server/src/core/judge/swaps';
import { Doc } from '../../server/src/core/parts/doc';
import { applyEdits } from '../../server/src/core/text';
import type { CodeAction } from '../../server/src/features/code-actions';
import { diagnosticsOf } from '../../server/src/features/diagnostics';
import type { View } from '../../server/src/features/shapes';
import { today } from '../support/bench';
import { codeActions } from '../support/code-actions';
import { findIn, readSamples } from '../support/samples';
import { worseOnes } from './support/hold-fix';

const { docs, house } = readSamples();
const parts = [...docs.values()].filter(({ kind }) => kind === 'part');
const candidates: Candidates = (kind) =>
  parts
    .filter((doc) => kindOfPart(doc) === kind)
    .map((doc) => ({ name: doc.name.replace(/^parts\/|\.part\.yaml$/g, ''), doc }));

function viewOf(doc: Doc): View {
  const shape = { doc, uriOf: (of: Doc) => of.name, versionOf: () => 1 };
  if (doc.kind !== 'build') return { ...shape, judgement: judgeFile(doc, { throwOn: true }) };
  const build = new Build(doc, findIn(docs), house, today);
  return { ...shape, build, judgement: judgeBuild(build, { throwOn: true }) };
}

/** The file that an action changes, and its text afterwards. */
function applied(view: View, { edit }: CodeAction): { readonly changed: Doc; readonly text: string } {
  const [one, ...others] = edit!.documentChanges;
  expect(others).toEqual([]);
  const changed = one!.textDocument.uri === view.doc.name ? view.doc : docs.get(one!.textDocument.uri)!;
  const edits = one!.edits.map(({ range, newText }) => ({
    span: { start: changed.lines.offsetAt(range.start), end: changed.lines.offsetAt(range.end) },
    text: newText,
  }));
  return { changed, text: applyEdits(changed.text, edits) };
}

function judgedAfter(view: View, changed: Doc, text: string): readonly Finding[] {
  const after = new Doc(changed.name, changed.kind, text);
  if (!view.build || changed === view.doc) return viewOf(after).judgement.findings;
  return judgeBuild(new Build(view.doc, findIn(docs, after), house, today), { throwOn: true }).findings;
}

interface Bought {
  readonly use?: string;
  readonly count?: number;
}
/** What a build settles, read by another parser than ours. */
function settled(text: string): unknown {
  const file = parse(text) as { expect?: unknown; accept?: unknown; parts?: Record<string, Bought | Bought[]> };
  const bought = Object.entries(file.parts ?? {}).map(([role, held]) => [
    role,
    [held].flat().map(({ use, count }) => [use, count]),
  ]);
  return [file.expect, file.accept, bought];
}

/** What a cable joins and a screw is for, by the part’s own file. */
const purposeOf = (name: string): unknown => {
  const doc = docs.get(`parts/${name}.part.yaml`);
  const { connector, item } = (doc ? parse(doc.text) : {}) as { connector?: string; item?: string };
  return connector ?? item;
};

const isFix = ({ edit, title }: CodeAction): boolean =>
  edit !== undefined && !title.startsWith('Accept') && !title.endsWith('to be filled in');

function holdPreferred(view: View, action: CodeAction, finding: Finding, text: string): void {
  const say = `${action.title} of ${finding.id}`;
  expect(finding.grade, say).not.toBe('harm');
  expect(finding.caution, say).toBeUndefined();
  expect(finding.check.area, say).not.toBe('handling');
  if (view.build) expect(settled(text), say).toEqual(settled(view.doc.text));
}

function holdPurpose(view: View, { title }: CodeAction, finding: Finding): void {
  const [, name, kind] = /^Use (\S+) as (\S+?)[;,]?(?: |$)/.exec(title) ?? [];
  if (name === undefined) return;
  const placed = view.build!.all().find(({ path }) => finding.subject.startsWith(path));
  expect(kindOfPart(docs.get(`parts/${name}.part.yaml`)!), title).toBe(kind);
  expect(kind, title).not.toBe('card');
  if (placed && placed.kind === kind && (kind === 'cable' || kind === 'fixing'))
    expect(purposeOf(name), title).toBe(purposeOf(placed.used!.name));
}

let tried = 0;
let preferred = 0;

describe('what is offered of', () => {
  it.each([...docs.values()].map((doc) => [doc.name, doc] as const))(
    '%s',
    (_, doc) => {
      const view = viewOf(doc);
      const shown = diagnosticsOf(view, { from: 'note', related: false });
      for (const finding of view.judgement.findings) {
        if (finding.grade === 'unknown' || finding.accepted || finding.underline.doc !== doc) continue;
        const range = doc.lines.rangeOf(finding.underline.span);
        const own = shown.filter(({ data }) => data?.check === finding.id && data.subject === finding.subject);
        const all = codeActions(view, range, { candidates, only: ['quickfix'], diagnostics: own });
        const changes = all.map(({ edit, command }) => JSON.stringify([edit, command]));
        expect(new Set(changes).size, finding.id).toBe(changes.length);
        const mending = all.filter((action) => isFix(action) && action.diagnostics?.includes(own[0]!));
        expect(mending.filter(({ isPreferred }) => isPreferred).length, finding.id).toBeLessThanOrEqual(1);
        for (const action of mending) {
          tried++;
          expect(action.title).toMatch(/^.{3,160}$/);
          const { changed, text } = applied(view, action);
          const after = judgedAfter(view, changed, text);
          const isLeft = after.some(({ id, subject }) => id === finding.id && subject === finding.subject);
          expect(isLeft, `${action.title} leaves ${finding.id} of ${finding.subject}`).toBe(false);
          const worse = worseOnes(view.judgement.findings, after, finding.grade);
          expect(worse, `${action.title} of ${finding.id}`).toEqual([]);
          expect(newIn(view.judgement.findings, after).length).toBeGreaterThan(0);
          holdPurpose(view, action, finding);
          if (!action.isPreferred) continue;
          preferred++;
          holdPreferred(view, action, finding, text);
        }
      }
    },
    240_000,
  );

  it('is enough to say so', () => {
    expect(tried).toBeGreaterThan(40);
    expect(preferred).toBeGreaterThan(5);
  });
});
