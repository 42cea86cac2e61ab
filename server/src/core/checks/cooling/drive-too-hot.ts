// Each drive's temperature in the warm case, against what it bears.
import { caseRise, inletTemperature } from '../../figures/air';
import { figure } from '../../figures/figure';
import { driveRise, driveTemperature } from '../../figures/heat-steps';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'drive-too-hot',
  area: 'cooling',
  grade: 'shortfall',
  what: 'Each drive stays at or below its highest operating temperature, with the air in the case at its worst.',
  why: 'A drive that gets too hot slows down or ages fast; one that is hot all summer loses data before its time.',
  source: 'common practice: air at the inlet + rise in the case + the drive’s own; limits, by the drive’s data sheet',
  examples: [
    {
      faulty: `
place: { inlet: 40 °C }
parts:
  drives: [{ name: scratch, hottest: 70 °C, rise: 32 K }]
#          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Bring more air past the drive, give it a heat sink, or choose one that bears more.',
    },
  ],
  test(build, report) {
    const { ambient, inlet } = build.file.place;
    if (!ambient.value && !inlet.value) return;
    for (const drive of build.parts.drives) {
      const limit = figure(drive.part.hottest, `highest temperature of ${drive.label}`);
      const reached = driveTemperature(build, drive);
      report(
        outcome(at(drive), atMost(reached, limit), {
          broken: () =>
            sentence`${drive.label} reaches ${reached}: ${inletTemperature(build)} at the inlet, ${caseRise(build)} in
              the case, ${driveRise(drive)} of its own; it bears ${limit}.`,
          fixes: () => [swap(drive)],
          ...(drive.part.rise.node
            ? {}
            : {
                usual: () => `${drive.label} keeps cool enough in the case: how warm it gets is measured, not printed`,
              }),
        }),
      );
    }
  },
});
