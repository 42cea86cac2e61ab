// Findings keep their fingerprints through refactorings that change no meaning: moved lines, other order of keys, other
// layout, other names of parts and drives, other line ends. What changes order or layout alone compares as empty.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { Build } from '../../server/src/core/build/build';
import type { Finding, Judgement } from '../../server/src/core/judge/finding';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { Doc } from '../../server/src/core/parts/doc';
import type { Node } from '../../server/src/core/yaml';
import { compareFile } from '../../server/src/review/compare';
import { alters } from '../../server/src/review/comparison';
import { fingerprints, nameOf } from '../../server/src/review/fingerprint';
import { findIn, readSamples } from '../support/samples';

const samples = readSamples();
const runs = 350;

interface State {
  /** The build’s text. */
  text: string;
  /** New names of part files, by the old ones. */
  readonly parts: Map<string, string>;
}

/** A text printed anew from its nodes: blocks everywhere, keys in an order of its own. */
function printed(node: Node, order: (keys: readonly string[]) => readonly string[], indent = ''): string {
  if (node.type === 'scalar') return node.style === 'empty' ? ' \n' : ` ${JSON.stringify(node.text)}\n`;
  if (node.type === 'list') {
    if (node.items.length === 0) return ' []\n';
    return `\n${node.items.map((item) => `${indent}-${printed(item, order, `${indent}  `)}`).join('')}`;
  }
  const keys = order(node.entries.map(({ key }) => key));
  if (keys.length === 0) return ' {}\n';
  const lines = keys.map(
    (key) => `${indent}${JSON.stringify(key)}:${printed(node.get(key)!.value, order, `${indent}  `)}`,
  );
  return `\n${lines.join('')}`;
}

/** Scalars are read by their text: quoted they mean the same. */
const root = (text: string): Node => new Doc('x.pcbuild.yaml', 'build', text).parsed.root!;

const sortedBy =
  (seed: number) =>
  (keys: readonly string[]): readonly string[] =>
    [...keys].sort((a, b) => mixed(a, seed) - mixed(b, seed));
const mixed = (key: string, seed: number): number =>
  [...key].reduce((sum, character) => Math.imul(sum ^ character.charCodeAt(0), 0x01000193), seed) >>> 0;

const layout: Record<string, (state: State, seed: number, build: Build) => void> = {
  'keys in another order': (state, seed) => void (state.text = printed(root(state.text), sortedBy(seed)).trimStart()),
  'another layout': (state) => void (state.text = printed(root(state.text), (keys) => keys).trimStart()),
  'lines moved down': (state, seed) => {
    const lines = state.text.split('\n');
    const top = lines.flatMap((line, i) => (/^["\w]/.test(line) ? [i] : []));
    lines.splice(top[seed % top.length]!, 0, '# Moved down.', '', '# And down.', '');
    state.text = lines.join('\n');
  },
  CRLF: (state) => void (state.text = state.text.replace(/\r?\n/g, '\r\n')),
};

const whole = (text: string, name: string, other: string): string =>
  text.replace(new RegExp(`(?<![\\w/-])${name.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&')}(?![\\w/-])`, 'g'), other);

const names: typeof layout = {
  'drives renamed': (state, seed, build) => {
    for (const drive of build.parts.drives) {
      const name = nameOf(drive);
      // A name that is also a word of the format would be replaced where it is that word.
      if (name && state.text.split(name).length <= 6 && name.length > 3)
        state.text = whole(state.text, name, `disk-${(seed % 97) + drive.index}`);
    }
  },
  'parts renamed': (state, seed, build) => {
    for (const name of new Set(build.all().flatMap(({ used }) => (used ? [used.name] : [])))) {
      const other = `${name.split('/')[0]}/model-${seed % 89}-${mixed(name, seed) % 9973}`;
      state.text = whole(state.text, name, other);
      state.parts.set(name, other);
    }
  },
};
const refactorings = { ...layout, ...names };
const kinds = Object.keys(refactorings);

function judged(before: Build, { text, parts }: State): { build: Build; judgement: Judgement } {
  const doc = new Doc(before.doc.name, 'build', text);
  const old = new Map([...parts].map(([name, other]) => [other, name]));
  const find = findIn(samples.docs);
  const build = new Build(doc, (name) => find(old.get(name) ?? name), before.house, before.today);
  return { build, judgement: judgeBuild(build) };
}

const known = samples.builds.map((build) => {
  const judgement = judgeBuild(build);
  return { build, judgement, prints: fingerprints(judgement.findings, build) };
});

const counted = (prints: Iterable<string>): Map<string, number> => {
  const counts = new Map<string, number>();
  for (const print of prints) counts.set(print, (counts.get(print) ?? 0) + 1);
  return counts;
};

it('no two findings of a build share a fingerprint', () => {
  for (const { prints, judgement } of known) expect(new Set(prints.values()).size).toBe(judgement.findings.length);
});

it('findings keep theirs through refactorings, and order and layout alone compare as empty', () => {
  let all = 0;
  let kept = 0;
  const lost: string[] = [];
  fc.assert(
    fc.property(
      fc.nat(known.length - 1),
      fc.subarray(kinds, { minLength: 1 }),
      fc.nat(100_000),
      (which, chosen, seed) => {
        const { build, judgement, prints } = known[which]!;
        const state: State = { text: build.doc.text, parts: new Map() };
        // Line ends last: what prints anew writes line feeds.
        for (const kind of [...chosen].sort((a, b) => Number(a === 'CRLF') - Number(b === 'CRLF')))
          refactorings[kind]!(state, seed, build);
        const after = judged(build, state);
        const anew = fingerprints(after.judgement.findings, after.build);
        const left = counted(anew.values());
        expect(
          [...left.values()].every((count) => count === 1),
          'a collision',
        ).toBe(true);
        for (const [finding, print] of prints) {
          all++;
          if (left.has(print)) kept++;
          else lost.push(`${chosen.join(', ')}: ${idOf(finding)}`);
        }
        if (chosen.every((kind) => kind in layout)) {
          const side = { doc: build.doc, judgement, build, shown: ({ name }: Doc) => name };
          const other = { doc: after.build.doc, ...after, shown: ({ name }: Doc) => name };
          const compared = compareFile(side, other);
          const { findings, moved, steps, newlyKnown, newlyUnknown } = compared;
          const changes = findings.filter(({ kind }) => kind !== 'unchanged');
          expect({ chosen, changes, moved, steps, newlyKnown, newlyUnknown, alters: alters(compared) }).toEqual({
            chosen,
            changes: [],
            moved: [],
            steps: [],
            newlyKnown: [],
            newlyUnknown: [],
            alters: false,
          });
        }
      },
    ),
    { numRuns: runs, seed: 20_261_125 },
  );
  expect(all).toBeGreaterThan(runs);
  expect(kept / all, [...new Set(lost)].slice(0, 20).join('\n')).toBeGreaterThanOrEqual(0.995);
}, 240_000);

const idOf = ({ id, subject }: Finding): string => `${id} ${subject}`;
