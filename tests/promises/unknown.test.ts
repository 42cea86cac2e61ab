// Unknown is an answer: without any one fact of a part file, what needs it becomes unknown and names it.
import { describe, expect, it } from 'vitest';
import { Build } from '../../server/src/core/build/build';
import { tableOf } from '../../server/src/core/build/tables';
import { judgeBuild } from '../../server/src/core/judge/judge';
import type { Judgement } from '../../server/src/core/judge/finding';
import { Doc } from '../../server/src/core/parts/doc';
import type { Field, Table } from '../../server/src/core/parts/field';
import { applyEdits } from '../../server/src/core/text';
import { removeEntry, type MapNode } from '../../server/src/core/yaml';
import { today } from '../support/bench';
import { findIn, readSamples } from '../support/samples';
import { judgedWith } from './support/changed-file';

interface FactAt {
  readonly path: string;
  readonly map: MapNode;
  readonly key: string;
}

/** Every fact that a part file states: each key that a table knows, in groups and under names, but not inside lists. */
function* factsOf(table: Table, map: MapNode, path: string): Iterable<FactAt> {
  for (const entry of map.entries) {
    const field = table[entry.key] as Field | undefined;
    if (!field) continue;
    const at = path === '' ? entry.key : `${path}.${entry.key}`;
    yield { path: at, map, key: entry.key };
    if (entry.value.type !== 'map') continue;
    if (field.type === 'group') yield* factsOf(field.fields, entry.value, at);
    if (field.type !== 'named') continue;
    const of = field.of as Field;
    if (of.type !== 'group') continue;
    for (const named of entry.value.entries)
      if (named.value.type === 'map') yield* factsOf(of.fields, named.value, `${at}.${named.key}`);
  }
}

/** Checks that ask only where an optional fact is stated: what is not yet broken may then go unasked, by design. */
const askedOnlyWhere: Readonly<Record<string, { readonly fact: string; readonly because: string }>> = {
  'board-power-short': { fact: 'processor-power', because: 'a board that lists the processor vouches for it' },
  'display-mode-beyond-link': { fact: 'modes', because: 'few displays print the whole list; their links are judged' },
  'lanes-oversubscribed': { fact: 'rate-needed', because: 'a card that states no need has none to fall short of' },
  'm2-heat-sink-wrong': { fact: 'needs-heat-sink', because: 'makers print it only of modules that need one' },
};

/** Whether an answer may go unasked without a fact; one that was broken never may. */
const mayGo = (key: string, was: string, fact: string): boolean =>
  was !== 'broken' && askedOnlyWhere[key.split(' at ')[0]!]?.fact === fact;

type Verdicts = Map<string, { verdict: string; missing: readonly string[] }>;

function verdicts(judgement: Judgement): Verdicts {
  const all: Verdicts = new Map();
  for (const { check, taken } of judgement.answers) {
    if (check.on !== 'build') continue;
    for (const {
      outcome: { subject, truth },
    } of taken) {
      const verdict = truth.is === undefined ? 'unknown' : truth.is ? 'holds' : 'broken';
      all.set(`${check.id} at ${subject}`, { verdict, missing: truth.missing.map((lack) => lack.path) });
    }
  }
  return all;
}

/** A missing fact names the removed one: itself, something below it, or something above it. */
const names = (missing: string, removed: string): boolean =>
  missing === removed ||
  missing.startsWith(`${removed}.`) ||
  missing.startsWith(`${removed}[`) ||
  removed.startsWith(`${missing}.`);

const { docs, house, builds } = readSamples();

describe('a fact taken out of a part file', () => {
  for (const build of builds) {
    it(`never turns a check of ${build.doc.name} to holds, and is named where it is needed`, () => {
      const judged = judgeBuild(build, { throwOn: true });
      const before = verdicts(judged);
      const wrong: string[] = [];
      for (const name of build.dependsOn) {
        const file = docs.get(`parts/${name}.part.yaml`);
        const table = file && tableOf(file);
        if (!file || !table || file.parsed.root?.type !== 'map') continue;
        for (const fact of factsOf(table, file.parsed.root, '')) {
          const edits = removeEntry(file.parsed, fact.map, fact.key);
          if (!edits) continue;
          const without = new Doc(file.name, file.kind, applyEdits(file.text, edits));
          const after = verdicts(
            judgedWith(build, judged, file, without) ??
              judgeBuild(new Build(build.doc, findIn(docs, without), house, today), { throwOn: true }),
          );
          for (const [key, was] of before) {
            const is = after.get(key);
            if (is?.verdict === was.verdict) continue;
            if (is?.verdict === 'unknown' && is.missing.some((path) => names(path, fact.path))) continue;
            if (!is && mayGo(key, was.verdict, fact.path)) continue;
            wrong.push(
              `without ${fact.path} of ${name}: ${key} was ${was.verdict}, is ` +
                `${is?.verdict ?? 'gone'}${is ? ` (${is.missing.join(', ')})` : ''}`,
            );
          }
        }
      }
      expect(wrong).toEqual([]);
    }, 120_000);
  }
});
