// Promises made to a drive, an array, memory or an output that the build does not have.
import type { Build } from '../../build/build';
import { referencesOf, type Reference } from '../../build/references';
import { offered } from '../../figures/places';
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { atFact, outcome, target, type Reporter } from '../kit';
import { isListed, nearestName, reportName } from './names-kit';

export default check({
  id: 'promise-uncheckable',
  area: 'text',
  grade: 'shortfall',
  what: 'Every promise, and every test of a drive before hand-over, is of something that the build has.',
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
    promisesOfMemory(build, report);
    for (const reference of referencesOf(build)) {
      const { fact, to, saidOf } = reference;
      if (saidOf !== 'build') continue;
      if (to.includes('drive'))
        reportName(build, reference, report, sentence`No drive of this build is called ${fact}.`);
      else if (to.includes('display output')) promisedOutput(build, reference, report);
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
function promisedOutput(build: Build, reference: Reference, report: Reporter): void {
  const { fact } = reference;
  const none = { by: [], names: [], lists: [], namedBy: new Map<never, never>(), missingFacts: [] };
  const outputs = offered(build, 'display output') ?? none;
  report(
    outcome(atFact(fact), isListed(fact, outputs), {
      broken: () => sentence`No board or card of this build has a display output called ${fact}.`,
      fixes: () => [nearestName(reference, outputs.names)],
    }),
  );
}
