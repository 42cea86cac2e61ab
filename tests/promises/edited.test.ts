// A build whose text was edited is judged from what changed alone: the same findings as from anew.
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
