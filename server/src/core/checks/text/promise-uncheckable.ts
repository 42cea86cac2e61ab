// Promises made to a drive, an array or an output that the build does not have.
import type { Build } from '../../build/build';
import type { Fact } from '../../parts/fact';
import { say } from '../../figures/say';
import { sure } from '../../figures/truth';
import { nearest } from '../../text';
import { renameKey } from '../../yaml';
import { check } from '../check';
import { outcome, type FixIdea } from '../kit';

export default check({
  id: 'promise-uncheckable',
  area: 'text',
  grade: 'short',
  what: 'Every promise is made to something that the build has.',
  why: 'A promise to a misspelled name is kept by nobody and missed by nobody.',
  source: 'the format’s own rule',
  examples: [{
    faulty: `
parts:
  drives: [{ name: scratch }]
expect:
  drives: { scrath: { capacity: 2 TB } }
#           ^^^^^^
`,
    mended: `
parts:
  drives: [{ name: scratch }]
expect:
  drives: { scratch: { capacity: 2 TB } }
`,
  }],
  *test(build) {
    const names = build.parts.drives.flatMap((drive) => drive.at.name.value ?? []);
    const { drives, arrays } = build.file.expect;
    yield* promisesTo(build, drives, names);
    for (const [, array] of arrays.value ?? []) {
      for (const name of array.drives.value ?? []) {
        if (name.value === undefined || !name.node) continue;
        yield outcome({ doc: build.doc, span: name.node.span, path: name.path }, sure(names.includes(name.value), name), {
          broken: () => say`No drive of this build is called ${name}.`,
        });
      }
    }
  },
});

function* promisesTo(build: Build, promises: Fact<ReadonlyMap<string, unknown>>, names: readonly string[]) {
  if (promises.node?.type !== 'map') return;
  const map = promises.node;
  for (const entry of map.entries) {
    yield outcome({ doc: build.doc, span: entry.keySpan, path: `${promises.path}.${entry.key}` }, sure(names.includes(entry.key)), {
      broken: () => say`No drive of this build is called ${entry.key}.`,
      fixes: (): FixIdea[] => {
        const near = nearest(entry.key, names.filter((name) => !map.get(name)));
        const edits = near === undefined ? undefined : renameKey(build.doc.parsed, map, entry.key, near);
        return edits ? [{ type: 'text', title: `Write ${near}`, doc: build.doc, edits }] : [];
      },
    });
  }
}
