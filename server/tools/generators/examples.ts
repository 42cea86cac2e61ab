// Runs a check’s example as the tests do: what it finds, and the title of the fix that leads to the mended text.
import { Build, kindOfPart } from '../../src/core/build/build';
import { House } from '../../src/core/build/house';
import type { Check, Example } from '../../src/core/checks/check';
import { judgeBuild, judgeFile } from '../../src/core/judge/judge';
import { provenFileFixes, provenFixes } from '../../src/core/judge/prove';
import { Doc, kindOfFile } from '../../src/core/parts/doc';
import { applyEdits } from '../../src/core/text';

export interface ExampleRun { readonly messages: readonly string[]; readonly fix?: string }

/** The day on which examples take place; their findings must not change with the calendar. */
const exampleDay = '2026-11-25';

const unmarked = (text: string): string => text.replace(/^\n/, '').split('\n').filter((line) => !/^\s*#\s*\^+\s*$/.test(line)).join('\n');

export function runExample(check: Check, example: Example): ExampleRun {
  const name = example.file ?? 'example.pcbuild.yaml';
  const doc = new Doc(name, kindOfFile(name) ?? 'build', unmarked(example.faulty));
  const beside = new Map(Object.entries(example.beside ?? {}).map(([path, text]) => [path, new Doc(path, kindOfFile(path) ?? 'part', text.replace(/^\n/, ''))]));
  const build = doc.kind === 'build' ? new Build(doc, (part) => beside.get(`parts/${part}.part.yaml`), new House(beside.get('fettle.yaml')), exampleDay) : undefined;
  const judgement = build ? judgeBuild(build) : judgeFile(doc);
  const own = judgement.findings.filter((finding) => finding.id === check.id);
  const candidates = [...beside.values()].filter((part) => part.kind === 'part').map((part) => ({ name: part.name.replace(/^parts\/|\.part\.yaml$/g, ''), doc: part }));
  const fixes = own.flatMap((finding) => build ? provenFixes(build, judgement, finding, (kind) => candidates.filter((part) => kindOfPart(part.doc) === kind)) : provenFileFixes(doc, judgement, finding));
  const fix = fixes.find((one) => applyEdits(doc.text, one.edits) === example.mended?.replace(/^\n/, ''))?.title;
  return { messages: own.map((finding) => finding.said.text), ...(fix ? { fix } : {}) };
}
