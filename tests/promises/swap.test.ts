// A part tried in a place gives what the whole build gives with that part written there: nothing that was kept from
// before may be stale.
import { describe, expect, it } from 'vitest';
import { Build } from '../../server/src/core/build/build';
import { kindOfPart } from '../../server/src/core/build/placed';
import type { Finding } from '../../server/src/core/judge/finding';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { bestSwaps, trySwaps, type Swapped } from '../../server/src/core/judge/swaps';
import { grades } from '../../server/src/core/manifest/house-file';
import { putOn } from '../../server/src/core/checks/kit';
import { Doc } from '../../server/src/core/parts/doc';
import { applyEdits } from '../../server/src/core/text';
import { today } from '../support/bench';
import { findIn, readSamples } from '../support/samples';

const { docs, house, builds } = readSamples();
const parts = [...docs.values()]
  .filter((doc) => doc.kind === 'part')
  .map((doc) => ({ name: doc.name.replace(/^parts\/|\.part\.yaml$/g, ''), doc, kind: kindOfPart(doc) }));

/** All of a finding but its columns, which depend on how long a name is. */
const lineOf = ({ id, grade, subject, said, missing }: Finding): string =>
  [grade, id, subject, said.text, ...missing.map((lack) => lack.path)].join(' | ');

describe('parts of the folder in every place of', () => {
  it.each(builds.map((build) => [build.doc.name, build] as const))(
    '%s',
    (_, build) => {
      const before = judgeBuild(build, { throwOn: true });
      let tried = 0;
      for (const placed of build.all()) {
        for (const candidate of parts.filter(({ kind }) => kind === placed.kind).slice(0, 4)) {
          const written = putOn(placed, 'use', candidate.name, '');
          if (!written) continue;
          tried++;
          const text = applyEdits(build.doc.text, written.edits);
          const whole = judgeBuild(new Build(new Doc(build.doc.name, 'build', text), findIn(docs), house, today), {
            throwOn: true,
          });
          const { after } = [...trySwaps(build, before, placed, [candidate])][0]!;
          expect(after.failed).toEqual([]);
          expect(after.findings.map(lineOf).sort(), `${candidate.name} at ${placed.path}`).toEqual(
            whole.findings.map(lineOf).sort(),
          );
          expect(after.counts).toEqual(whole.counts);
        }
      }
      expect(tried).toBeGreaterThan(10);
    },
    60_000,
  );
});

/** How many findings of each grade there would be, as text that sorts in that order. */
const countsOf = ({ after }: Swapped): string =>
  grades
    .map((grade) =>
      String(after.findings.filter((one) => one.grade === grade && !one.accepted).length).padStart(4, '0'),
    )
    .join(' ');

describe('the best parts for every place, found without judging all to the end, of', () => {
  it.each(builds.map((build) => [build.doc.name, build] as const))(
    '%s',
    (_, build) => {
      const before = judgeBuild(build, { throwOn: true });
      for (const placed of build.all()) {
        const candidates = parts.filter(({ kind }) => kind === placed.kind);
        const all = [...trySwaps(build, before, placed, candidates)]
          .map((one) => `${countsOf(one)} ${one.candidate.name}`)
          .sort();
        for (const most of [1, 3, candidates.length]) {
          const best = bestSwaps(build, before, placed, candidates, most).map(
            (one) => `${countsOf(one)} ${one.candidate.name}`,
          );
          expect(best, placed.path).toEqual(all.slice(0, most));
        }
      }
    },
    60_000,
  );
});
