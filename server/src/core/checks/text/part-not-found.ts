// Names of part files that no parts folder holds.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'part-not-found',
  area: 'text',
  grade: 'stop',
  unread: true,
  what: 'Every part used by name has its file in a parts folder.',
  why: 'Without its file nothing is known of the part but what the build spells out, and most checks stay open.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
parts:
  cooler: { use: boreas/tower-155 }
#                ^^^^^^^^^^^^^^^^
`,
      instead: 'Write the part file, or correct the name.',
    },
  ],
  test(build, report) {
    for (const placed of build.all()) {
      const { used } = placed;
      // A text that is no name at all is told of by itself.
      if (!used || placed.at.use.value === undefined) continue;
      report(
        outcome(at(placed), sure(used.file !== undefined, placed.at.use), {
          broken: () => sentence`No parts folder holds ${placed.at.use}.part.yaml.`,
          fixes: () => [swap(placed)],
        }),
      );
    }
  },
});
