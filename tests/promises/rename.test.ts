// A rename changes names and nothing else: over the whole sample workspace every name is renamed in all files, which
// leaves every finding as it was, and renamed back, which gives every text as it was.
import { expect, test } from 'vitest';
import { Build } from '../../server/src/core/build/build';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { Doc } from '../../server/src/core/parts/doc';
import { partNameAt } from '../../server/src/core/parts/part-name';
import { applyEdits } from '../../server/src/core/text';
import type { Node } from '../../server/src/core/yaml';
import { renamedAt, renameEdits } from '../../server/src/features/rename';
import { wholeFile, type Named, type Subject } from '../../server/src/features/subject';
import { findIn, readSamples, type Samples } from '../support/samples';

const samples = readSamples();
type Docs = ReadonlyMap<string, Doc>;

function named(docs: Docs, doc: Doc): Named {
  const build =
    doc.kind === 'build' ? new Build(doc, findIn(docs), samples.house, samples.builds[0]!.today) : undefined;
  const partName = doc.kind === 'part' ? partNameAt('parts', doc.name) : undefined;
  return {
    doc,
    ...(build ? { build } : {}),
    ...(partName === undefined ? {} : { partName }),
    uriOf: ({ name }) => name,
    versionOf: () => null,
  };
}

/** Every place where a name may stand: keys and values. */
function offsetsIn(root: Node | undefined): number[] {
  const offsets: number[] = [];
  const waiting = root ? [root] : [];
  for (let node = waiting.pop(); node; node = waiting.pop()) {
    if (node.type === 'map')
      for (const { keySpan, value } of node.entries) {
        offsets.push(keySpan.start);
        waiting.push(value);
      }
    else if (node.type === 'list') waiting.push(...node.items);
    else offsets.push(node.span.start);
  }
  return offsets;
}

/** What can be renamed in the samples: each thing once, with the file in which it was met. */
function subjects({ docs }: Samples): { subject: Subject; home: string }[] {
  const found = new Map<string, { subject: Subject; home: string }>();
  for (const doc of docs.values()) {
    const view = named(docs, doc);
    for (const offset of offsetsIn(doc.parsed.root)) {
      const subject = renamedAt(view, offset);
      const key = subject && [subject.kinds[0], subject.name, subject.part ?? doc.name].join(' ');
      if (key && !found.has(key)) found.set(key, { subject, home: doc.name });
    }
  }
  return [...found.values()];
}

/** All files with a subject renamed; one that only its home knows is renamed there. */
function renamed(docs: Docs, subject: Subject, home: string, to: string): Map<string, Doc> {
  const result = new Map<string, Doc>();
  for (const doc of docs.values()) {
    const isAsked = subject.part !== undefined || subject.isOwnStep || doc.name === home;
    const edits = isAsked ? renameEdits(named(docs, doc), subject, to) : [];
    expect(edits, `${subject.name} in ${doc.name}`).toBeDefined();
    const isMoved = subject.kinds.includes('part file') && doc.name === `parts/${subject.name}.part.yaml`;
    const name = isMoved ? `parts/${to}.part.yaml` : doc.name;
    const stays = edits!.length === 0 && !isMoved;
    result.set(name, stays ? doc : new Doc(name, doc.kind, applyEdits(doc.text, edits!)));
  }
  return result;
}

/** How often each check found something of a grade; the words may name what was renamed. */
function findings(docs: Docs, name: string): string[] {
  const { build } = named(docs, docs.get(name)!);
  return judgeBuild(build!, { throwOn: true })
    .findings.map(({ id, grade }) => `${id} ${grade}`)
    .sort();
}

const all = subjects(samples);
/** Judging takes longest: of every so many names, one is judged; all are renamed there and back. */
const judgedOf = 8;

test('every name of the samples is renamed there and back, in all files', () => {
  expect(all.length).toBeGreaterThan(150);
  const kinds = new Set(all.flatMap(({ subject }) => subject.kinds));
  for (const kind of ['part file', 'slot', 'port', 'header', 'drive', 'firmware version', 'memory slot'] as const)
    expect(kinds).toContain(kind);
  for (const { subject, home } of all) {
    const to = subject.kinds.includes('part file') ? 'renamed/otherwise' : `${subject.name}-X`;
    const there = renamed(samples.docs, subject, home, to);
    const texts = [...there.values()].map(({ text }) => text);
    expect(texts, subject.name).not.toEqual([...samples.docs.values()].map(({ text }) => text));
    const same = subject.kinds.includes('part file') ? wholeFile(to) : { ...subject, name: to };
    const back = renamed(there, subject.part === subject.name ? same : moved(same, there), home, subject.name);
    expect(
      [...back.values()].map(({ text }) => text),
      subject.name,
    ).toEqual([...samples.docs.values()].map(({ text }) => text));
  }
}, 120_000);

/** A subject of a build stands at the same place of the changed text, where its name was changed only behind it. */
function moved(subject: Subject, docs: Docs): Subject {
  if (subject.part !== undefined || subject.isOwnStep) return subject;
  const places = subject.places.flatMap(({ doc }) => {
    const at = docs.get(doc.name)!;
    const view = named(docs, at);
    const offsets = offsetsIn(at.parsed.root);
    const met = offsets.flatMap((offset) => renamedAt(view, offset) ?? []);
    return met.find(({ name }) => name === subject.name)?.places ?? [];
  });
  return { ...subject, places };
}

test('a rename leaves every finding as it was', () => {
  const before = new Map(samples.builds.map(({ doc }) => [doc.name, findings(samples.docs, doc.name)]));
  for (const { subject, home } of all.filter((_, i) => i % judgedOf === 0)) {
    // A version’s place in its list counts, and a part is known by what it is: both stay what they are.
    const to = subject.kinds.includes('part file') ? `${subject.name}-x` : `${subject.name}x`;
    const there = renamed(samples.docs, subject, home, to);
    for (const { doc } of samples.builds) {
      if (there.get(doc.name) === doc) continue;
      expect(findings(there, doc.name), `${subject.kinds[0]} ${subject.name} in ${doc.name}`).toEqual(
        before.get(doc.name),
      );
    }
  }
}, 240_000);
