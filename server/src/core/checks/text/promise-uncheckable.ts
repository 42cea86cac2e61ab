// Promises made to a drive, an array, memory or an output that the build does not have.
import type { Build } from '../../build/build';
import type { Fact } from '../../parts/fact';
import { outputsOffered } from '../../figures/places';
import { sentence } from '../../figures/sentence';
import { any, lacking, sure } from '../../figures/truth';
import { nearest } from '../../text';
import { renameKey } from '../../yaml';
import { check } from '../check';
import { atFact, change, outcome, target, type FixIdea, type Reporter } from '../kit';

export default check({
  id: 'promise-uncheckable',
  area: 'text',
  grade: 'shortfall',
  what: 'Every promise is made to something that the build has.',
  why: 'A promise to a misspelled name is kept by nobody and missed by nobody.',
  source: 'the format’s own rule',
  examples: [
    {
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
    },
  ],
  test(build, report) {
    const names = build.parts.drives.flatMap((drive) => drive.at.name.value ?? []);
    const { drives, arrays } = build.file.expect;
    promisesTo(build, drives, names, report);
    promisesOfMemory(build, report);
    promisedOutputs(build, report);
    for (const [, array] of arrays.value ?? []) {
      for (const name of array.drives.value ?? []) {
        if (name.value === undefined || !name.node) continue;
        report(
          outcome(atFact(name), sure(names.includes(name.value), name), {
            broken: () => sentence`No drive of this build is called ${name}.`,
          }),
        );
      }
    }
  },
});

/** Memory is promised as a whole: any module makes it a promise that can be checked. */
function promisesOfMemory(
  {
    doc,
    file: {
      expect: { memory },
    },
    parts,
  }: Build,
  report: Reporter,
): void {
  const { entry } = memory.$;
  if (!entry || !memory.$.stated) return;
  report(
    outcome(target(memory.$.path, doc, entry.keySpan), sure(parts.memory.length > 0), {
      broken: () => sentence`The build promises something of its memory and lists none.`,
    }),
  );
}

/** A display mode is promised at an output, which a card or the board must have. */
function promisedOutputs(build: Build, report: Reporter): void {
  const offers = outputsOffered(build);
  for (const { port } of build.file.expect.displays.value ?? []) {
    if (port.value === undefined || !port.node) continue;
    const names = offers?.names ?? [];
    const open = offers && offers.missingFacts.length > 0 ? lacking(offers.missingFacts) : sure(false);
    report(
      outcome(atFact(port), any(sure(names.includes(port.value), port), open), {
        broken: () => sentence`No board or card of this build has a display output called ${port}.`,
        fixes: () => {
          const near = nearest(port.value!, names);
          return near === undefined ? [] : [change(port, near, `Write ${near}`)];
        },
      }),
    );
  }
}

function promisesTo(
  build: Build,
  promises: Fact<ReadonlyMap<string, unknown>>,
  names: readonly string[],
  report: Reporter,
): void {
  if (promises.node?.type !== 'map') return;
  const map = promises.node;
  for (const entry of map.entries) {
    report(
      outcome(target(`${promises.path}.${entry.key}`, build.doc, entry.keySpan), sure(names.includes(entry.key)), {
        broken: () => sentence`No drive of this build is called ${entry.key}.`,
        fixes: (): FixIdea[] => {
          const near = nearest(
            entry.key,
            names.filter((name) => !map.get(name)),
          );
          const edits = near === undefined ? undefined : renameKey(build.doc.parsed, map, entry.key, near);
          return edits ? [{ type: 'text', title: `Write ${near}`, doc: build.doc, edits }] : [];
        },
      }),
    );
  }
}
