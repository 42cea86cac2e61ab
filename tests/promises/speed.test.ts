// All checks on a parsed build stay in proportion to the library’s reading it: a coarse guard, so that a check which goes through
// everything for everything is seen. The real figures are those of `npm run bench`.
import { expect, it } from 'vitest';
import { parseDocument } from 'yaml';
import { Build } from '../../server/src/core/build/build';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { today } from '../support/bench';
import { findIn, readSamples } from '../support/samples';

/**
 * Some twice what was measured when this was written; times are the best of many, taken in turns, since machines are
 * busy.
 */
const mostTimesReading = 8;

it('all checks on a build take no more than some times as long as the library’s reading of its text', () => {
  const { docs, house, builds } = readSamples();
  const find = findIn(docs);
  const timed = (work: () => unknown): number => {
    const begun = performance.now();
    work();
    return performance.now() - begun;
  };
  for (const build of builds) {
    const turn = { read: Infinity, judged: Infinity };
    for (let i = 0; i < 40; i++) {
      turn.read = Math.min(
        turn.read,
        timed(() => parseDocument(build.doc.text)),
      );
      turn.judged = Math.min(
        turn.judged,
        timed(() => judgeBuild(new Build(build.doc, find, house, today))),
      );
    }
    expect(turn.judged / turn.read, build.doc.name).toBeLessThan(mostTimesReading);
  }
}, 180_000);
