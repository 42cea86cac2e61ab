// The version a firmware update is planned to, against the first one that starts the processor.
import { atLeastVersion, plannedUpdate, processorListed, versionList } from '../../figures/firmware';
import { sentence } from '../../figures/sentence';
import { lacking } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome } from '../kit';

export default check({
  id: 'firmware-target-too-old',
  area: 'board',
  grade: 'stop',
  what: 'The version that the update goes to starts the processor.',
  why: 'An update that stops short of the first listed version has to be done twice.',
  source: 'common practice: the board maker’s processor support list',
  examples: [
    {
      faulty: `
parts:
  board:
    firmware: { versions: ["1.02", "1.08", "1.20"] }
    processors: [{ family: Calder C7, since: "1.20" }]
  processor: { family: Calder C7 }
bench:
  firmware-update: { to: "1.08", by: service }
#                        ^^^^^^
`,
      mended: `
parts:
  board:
    firmware: { versions: ["1.02", "1.08", "1.20"] }
    processors: [{ family: Calder C7, since: "1.20" }]
  processor: { family: Calder C7 }
bench:
  firmware-update: { to: "1.20", by: service }
`,
    },
  ],
  test(build, report) {
    const { board, processor } = build.parts;
    const to = plannedUpdate(build)?.to;
    const listed = processorListed(build);
    if (!board || !processor || !listed || to?.value === undefined) return;
    const { line } = listed;
    if (!line && listed.missingFacts.length === 0) return;
    report(
      outcome(
        atKey(build, to),
        !line
          ? lacking(listed.missingFacts, ...listed.uses)
          : atLeastVersion(
              board,
              to,
              'the update’s target',
              line.since,
              `first firmware of ${board.label} for ${processor.label}`,
            ),
        {
          broken: () => sentence`The update goes to ${to}; ${processor.label} needs ${line!.since} or later.`,
          fixes: () => {
            const serves = line!.since.value ?? versionList(board).at(-1);
            return serves === undefined ? [] : [change(to, serves, `Set the target to ${serves}`)];
          },
        },
      ),
    );
  },
});
