// What is kept between edits is never stale: findings and answers, and the bench sheet byte for byte, are those of that
// text from anew.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { Build } from '../../server/src/core/build/build';
import type { Target } from '../../server/src/core/checks/kit';
import { judgeAgain, type Judged } from '../../server/src/core/judge/again';
import { relatedTo, type Judgement } from '../../server/src/core/judge/finding';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { Doc } from '../../server/src/core/parts/doc';
import { applyEdits } from '../../server/src/core/text';
import { removeEntry, type Entry, type MapNode, type Node } from '../../server/src/core/yaml';
import { printed, sheetBlocks, type HtmlBlock } from '../../server/src/report/sheet/html';
import { Kept } from '../../server/src/report/sheet/kept';
import { pictureBlocks, sheetOf } from '../../server/src/report/sheet/sheet';
import { today } from '../support/bench';
import { findIn, readSamples } from '../support/samples';

const { docs, house, builds } = readSamples();
const names = builds.map(({ doc }) => doc.name);

/** Every entry of a text with the map that it stands in. */
function* entriesIn(node: Node | undefined): Iterable<readonly [MapNode, Entry]> {
  if (node?.type === 'list') for (const item of node.items) yield* entriesIn(item);
  if (node?.type !== 'map') return;
  for (const entry of node.entries) {
    yield [node, entry];
    yield* entriesIn(entry.value);
  }
}

/** An edit such as someone makes: an entry taken out, another digit, another word, a line that says nothing. */
interface Edit {
  readonly kind: 'remove' | 'digit' | 'word' | 'comment' | 'back';
  readonly at: number;
  /** In the build’s own text, or in the file of one of its parts. */
  readonly inPart: boolean;
}

const edits = fc.record({
  kind: fc.constantFrom<Edit['kind']>('remove', 'digit', 'digit', 'digit', 'word', 'comment', 'back'),
  at: fc.nat({ max: 100_000 }),
  inPart: fc.boolean(),
});

function edited(doc: Doc, { kind, at }: Edit): string {
  const { text, parsed } = doc;
  const all = [...entriesIn(parsed.root)];
  if (kind === 'comment' || all.length === 0) return `# ${at}\n${text}`;
  const [map, entry] = all[at % all.length]!;
  if (kind === 'remove') return applyEdits(text, removeEntry(parsed, map, entry.key) ?? []);
  const scalars = all.filter(([, { value }]) => value.type === 'scalar' && (kind === 'word' || /\d/.test(value.text)));
  if (scalars.length === 0) return text;
  const { start, end } = scalars[at % scalars.length]![1].value.span;
  const own = text.slice(start, end);
  const other = kind === 'word' ? 'other' : own.replace(/\d/, (digit) => String((Number(digit) + 1 + (at % 8)) % 10));
  return text.slice(0, start) + other + text.slice(end);
}

/** A workspace in which files change. */
class Bench {
  private readonly docs = new Map(docs);

  constructor(private readonly name: string) {}

  get build(): Build {
    const now = new Map(this.docs);
    return new Build(now.get(this.name)!, findIn(now), house, today);
  }

  /** The file that an edit is made in, with its text afterwards. */
  change(edit: Edit): void {
    const used = this.build.all().flatMap((placed) => placed.used?.file ?? []);
    const { name } = edit.inPart && used.length > 0 ? used[edit.at % used.length]! : this.build.doc;
    const doc = this.docs.get(name)!;
    this.docs.set(name, edit.kind === 'back' ? docs.get(name)! : new Doc(name, doc.kind, edited(doc, edit)));
  }
}

const blocksOf = ({ build, judgement }: Judged, kept: Kept): readonly HtmlBlock[] =>
  sheetBlocks(sheetOf(build, judgement, { date: today, fileName: build.doc.name, kept }), kept);

/** Someone asked for the pictures, and for nothing else of this text. */
const picturesOf = ({ build, judgement }: Judged, kept: Kept): readonly HtmlBlock[] =>
  printed(pictureBlocks(build, judgement, kept), kept);

const place = ({ subject, underline: { doc, span } }: Target): string =>
  `${subject} ${doc.name} ${span.start}-${span.end}`;

/** All that a judgement says, and where. */
const told = ({ findings, answers, counts, off, failed }: Judgement): unknown => ({
  findings: findings.map((one) => [
    one.id,
    one.grade,
    one.said.text,
    place(one),
    relatedTo(one).map(({ span }) => span),
  ]),
  answers: answers.map(({ check, taken, counts: own }) => [
    check.id,
    own,
    taken.map(({ outcome }) => [outcome.truth.is, place(outcome)]),
  ]),
  counts,
  off,
  failed,
});

const judged = (build: Build): Judged => ({ build, judgement: judgeBuild(build, { throwOn: true }) });

it('is what the text says, whatever was edited before', () => {
  fc.assert(
    fc.property(fc.constantFrom(...names), fc.array(edits, { minLength: 4, maxLength: 8 }), (name, chain) => {
      const bench = new Bench(name);
      const kept = new Kept();
      let before = judged(bench.build);
      blocksOf(before, kept);
      for (const edit of chain) {
        bench.change(edit);
        const { build } = bench;
        const [again, anew] = [{ build, judgement: judgeAgain(build, before) }, judged(bench.build)];
        const of = edit.at % 3 === 0 ? picturesOf : blocksOf;
        expect(of(again, kept), JSON.stringify(edit)).toEqual(of(anew, new Kept()));
        if (edit.at % 4 === 0) expect(told(again.judgement), JSON.stringify(edit)).toEqual(told(anew.judgement));
        before = again;
      }
    }),
    { numRuns: Number(process.env.FETTLE_KEPT ?? 6) },
  );
}, 900_000);

/** The blocks of a sheet that are still the same ones after an edit of its build. */
function keptAfter(name: string, edit: (text: string) => string): string[] {
  const doc = docs.get(name)!;
  const kept = new Kept();
  const sheet = (text: string): ReturnType<typeof sheetOf> => {
    const build = new Build(new Doc(doc.name, 'build', text), findIn(docs), house, today);
    return sheetOf(build, judgeBuild(build), { date: today, fileName: doc.name, kept });
  };
  const [before, after] = [sheet(doc.text), sheet(edit(doc.text))];
  expect(after).not.toEqual(before);
  return after.blocks.filter((block) => before.blocks.includes(block)).map(({ id }) => id);
}

it('keeps pictures that an edit leaves alone', () => {
  const same = keptAfter('flood-gauge.pcbuild.yaml', (text) => text.replace(/ambient: \d+/, 'ambient: 17'));
  expect(same).toEqual(expect.arrayContaining(['picture-lanes', 'picture-clearance', 'hand-over']));
  expect(same).not.toContain('picture-heat');
});

it('tells the room from the mains: what reads the one stands where the other is changed', () => {
  const room = keptAfter('survey-desk.pcbuild.yaml', (text) => text.replace(/ambient: \d+/, 'ambient: 17'));
  const mains = keptAfter('survey-desk.pcbuild.yaml', (text) => text.replace(/circuit: \d+/, 'circuit: 7'));
  const both = ['work', 'at-hand', 'first-start', 'tests', 'promises', 'unchecked'];
  expect(room).toEqual(expect.arrayContaining([...both, 'picture-power']));
  expect(room).not.toContain('picture-heat');
  expect(mains).toEqual(expect.arrayContaining([...both, 'picture-heat']));
  expect(mains).not.toContain('picture-power');
});

it('tells promises apart: what is promised of one drive is no matter for the rest', () => {
  const same = keptAfter('survey-desk.pcbuild.yaml', (text) => text.replace(/years: \d+/, 'years: 6'));
  expect(same).toEqual(expect.arrayContaining(['picture-power', 'picture-heat', 'picture-displays', 'work', 'tests']));
  expect(same).not.toContain('promises');
});

it.each([
  ['promise-uncheckable', 'scratch: { read', 'scrath: { read'],
  ['promise-uncheckable', 'depth: 10 bit, port: DP_1', 'depth: 10 bit, port: DP_9'],
  ['place-unknown', 'slot: M2_2', 'slot: M2_9'],
])('finds by %s that a name stands for nothing, in a build that was judged before', (id, name, other) => {
  const doc = docs.get('survey-desk.pcbuild.yaml')!;
  const before = judged(new Build(doc, findIn(docs), house, today));
  const build = new Build(new Doc(doc.name, 'build', doc.text.replace(name, other)), findIn(docs), house, today);
  const again = judgeAgain(build, before);
  expect(before.judgement.findings.map((one) => one.id)).not.toContain(id);
  expect(again.findings.map((one) => one.id)).toContain(id);
  expect(told(again)).toEqual(told(judged(build).judgement));
});
