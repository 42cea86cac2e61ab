// A build whose text, or a part of which, was edited is judged from what changed alone: the same findings as from anew.
import { expect, it } from 'vitest';
import { Build } from '../../server/src/core/build/build';
import { judgeEdited } from '../../server/src/core/judge/edited';
import { judgeBuild } from '../../server/src/core/judge/judge';
import type { Judgement } from '../../server/src/core/judge/finding';
import { Doc } from '../../server/src/core/parts/doc';
import { applyEdits } from '../../server/src/core/text';
import { removeEntry, type MapNode, type Node } from '../../server/src/core/yaml';
import { today } from '../support/bench';
import { findIn, readSamples } from '../support/samples';
import { judgedWith } from './support/changed-file';

const { docs, house, builds } = readSamples();
const find = findIn(docs);

const said = ({ findings }: Judgement): string[] =>
  findings.map(({ id, subject, grade, said: { text } }) => `${grade} ${id} at ${subject}: ${text}`).sort();

/** Every map of a text, with what it holds. */
function* mapsIn(node: Node | undefined): Iterable<MapNode> {
  if (node?.type === 'list') for (const item of node.items) yield* mapsIn(item);
  if (node?.type !== 'map') return;
  yield node;
  for (const { value } of node.entries) yield* mapsIn(value);
}

/** Every verdict, whether it became a finding or not. */
const verdicts = ({ answers }: Judgement): string[] =>
  answers
    .flatMap(({ check, taken }) =>
      taken.map(({ outcome: { subject, truth } }) => `${check.id} at ${subject}: ${truth.is} ${truth.missing.length}`),
    )
    .sort();

it.each(builds.map(({ doc }) => [doc.name, doc] as const))('%s with another text of one of its parts', (_, doc) => {
  const build = new Build(doc, find, house, today);
  const before = judgeBuild(build, { throwOn: true });
  let tried = 0;
  for (const name of build.dependsOn) {
    const file = find(name);
    if (!file) continue;
    for (const [i, map] of [...mapsIn(file.parsed.root)].entries()) {
      // One key of each map, another one in each.
      const entry = map.entries[(i * 7) % map.entries.length];
      const edits = entry && removeEntry(file.parsed, map, entry.key);
      if (!edits || i % 3 > 0) continue;
      const changed = new Doc(file.name, file.kind, applyEdits(file.text, edits));
      const kept = judgedWith(build, before, file, changed)!;
      const anew = judgeBuild(new Build(doc, findIn(docs, changed), house, today), { throwOn: true });
      expect([said(kept), verdicts(kept)], `${name} without ${entry!.key}`).toEqual([said(anew), verdicts(anew)]);
      tried++;
    }
  }
  expect(tried).toBeGreaterThan(3);
});

it.each(builds.map(({ doc }) => [doc.name, doc] as const))(
  '%s without any one of its keys',
  (_, doc) => {
    const build = new Build(doc, find, house, today);
    const before = judgeBuild(build, { throwOn: true });
    let tried = 0;
    for (const map of mapsIn(doc.parsed.root))
      for (const { key } of map.entries) {
        const edits = removeEntry(doc.parsed, map, key);
        if (!edits) continue;
        const changed = new Doc(doc.name, doc.kind, applyEdits(doc.text, edits));
        const anew = judgeBuild(new Build(changed, find, house, today), { throwOn: true });
        expect(said(judgeEdited(build, before, changed)), `without ${key}`).toEqual(said(anew));
        tried++;
      }
    expect(tried).toBeGreaterThan(20);
  },
  120_000,
);
