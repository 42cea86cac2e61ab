// Runs a check’s example as the tests do: what it finds, and the title of the fix that leads to the mended text.
import { Build } from '../../src/core/build/build';
import { kindOfPart } from '../../src/core/build/placed';
import { WorkspaceConfig } from '../../src/core/build/workspace-config';
import type { Check, Example } from '../../src/core/checks/check';
import { unmarked, withoutFirstBreak } from '../../src/core/checks/page';
import { Guide } from '../../src/core/guide/guide';
import { judgeBuild, judgeFile, judgeGuide } from '../../src/core/judge/judge';
import { provenFileFixes, provenFixes, provenGuideFixes } from '../../src/core/judge/prove';
import { recordOf } from '../../src/core/machine/as-built';
import { Doc, kindOfFile } from '../../src/core/parts/doc';
import { applyEdits } from '../../src/core/text';

export interface ExampleRun {
  readonly messages: readonly string[];
  readonly fix?: string;
}

/** The day on which examples take place; their findings must not change with the calendar. */
const exampleDay = '2026-11-25';

export function runExample(check: Check, example: Example): ExampleRun {
  const name = example.file ?? 'example.pcbuild.yaml';
  const doc = new Doc(name, kindOfFile(name) ?? 'build', unmarked(withoutFirstBreak(example.faulty)));
  const beside = new Map(
    Object.entries(example.beside ?? {}).map(([path, text]) => [
      path,
      new Doc(path, kindOfFile(path) ?? 'part', withoutFirstBreak(text)),
    ]),
  );
  const find = (part: string): Doc | undefined => beside.get(`parts/${part}.part.yaml`);
  const house = new WorkspaceConfig(beside.get('fettle.yaml'));
  const record = [...beside.values()].find((one) => one.kind === 'asbuilt');
  const guide = doc.kind === 'guide' ? new Guide(doc, find, house, exampleDay) : undefined;
  const build = doc.kind === 'build' ? new Build(doc, find, house, exampleDay, record && recordOf(record)) : undefined;
  const judgement = guide ? judgeGuide(guide) : build ? judgeBuild(build) : judgeFile(doc, { today: exampleDay });
  const own = judgement.findings.filter((finding) => finding.id === check.id);
  const candidates = [...beside.values()]
    .filter((part) => part.kind === 'part')
    .map((part) => ({ name: part.name.replace(/^parts\/|\.part\.yaml$/g, ''), doc: part }));
  const fixes = own.flatMap((finding) =>
    guide
      ? provenGuideFixes(guide, judgement, finding)
      : build
        ? provenFixes(build, judgement, finding, (kind) => candidates.filter((part) => kindOfPart(part.doc) === kind))
        : provenFileFixes(doc, judgement, finding),
  );
  const fix = fixes.find(
    (one) => example.mended !== undefined && applyEdits(doc.text, one.edits) === withoutFirstBreak(example.mended),
  )?.title;
  return { messages: own.map((finding) => finding.said.text), ...(fix ? { fix } : {}) };
}
