// What the board lies on: what conducts shorts it, what charges harms it.
import type { Build } from '../../build/build';
import { figure, known } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { all, atLeast, fits, lessThan, sure } from '../../figures/truth';
import { surfaceServesAsBench, SURFACES, WORK_SURFACE_OHM, type Surface } from '../../trade/statics';
import { check } from '../check';
import { atKey, change, outcome, type Outcome } from '../kit';
import { atBench } from '../work/steps-kit';

const kinds: Readonly<Record<string, Surface>> = {
  wood: 'wood',
  cardboard: 'cardboard',
  'dissipative mat': 'mat',
  'bare metal': 'metal',
  carpet: 'carpet',
  glass: 'glass',
  plastic: 'plastic',
};
const low = known(WORK_SURFACE_OHM.low, 'resistance', 'least resistance of a mat', {
  unit: 'MΩ',
  source: 'common practice',
});
const usual = known(10e6, 'resistance', 'usual resistance of a mat', { unit: 'MΩ', source: 'common practice' });
const high = known(WORK_SURFACE_OHM.high, 'resistance', 'limit of a mat', { unit: 'MΩ', source: 'ANSI/ESD S20.20' });

export default check({
  id: 'surface-unsuited',
  area: 'handling',
  grade: 'harm',
  caution: 'static-to-parts',
  what: 'The board lies on something that neither conducts nor charges up; a mat drains slowly enough and fast enough.',
  why:
    'Metal joins contacts under a powered board; carpet, glass and plastic charge up and discharge into the ' +
    'part. Bare wood and plain cardboard do neither, and carry nothing off; so does a mat that is not earthed.',
  source: 'ANSI/ESD S20.20, work surfaces; common practice',
  remarks: ['A bag as a mat is judged by `bag-as-mat`.'],
  examples: [
    {
      faulty: `
bench:
  equalise-by: touching bare chassis
  surface: carpet
#          ^^^^^^
`,
      mended: `
bench:
  equalise-by: touching bare chassis
  surface: wood
`,
    },
  ],
  test(build, report) {
    const { surface, 'bench-start-on': start, mat } = build.file.bench;
    for (const on of [surface, start]) {
      const kind = on.value === undefined ? undefined : kinds[on.value];
      if (!kind) continue;
      report(
        outcome(atKey(build, on), sure(surfaceServesAsBench(kind), on), {
          broken: () =>
            sentence`The board ${on === start ? 'starts' : 'lies'} on ${on}, which
              ${SURFACES[kind].shorts ? 'conducts and joins contacts' : 'charges up'}; lay it on wood, cardboard or a
              dissipative mat.`,
          fixes: () => [
            change(on, 'wood', 'Lay it on bare wood'),
            change(on, 'dissipative mat', 'Lay it on a dissipative mat'),
          ],
        }),
      );
    }
    if (mat.$.stated) for (const judged of ofMat(build)) report(judged);
  },
});

/**
 * A mat is below the standard’s limit, not below the practised low end, and earthed. Only the first can harm a part:
 * a mat without the other two does no more than bare wood.
 */
function* ofMat(build: Build): Iterable<Outcome> {
  const { mat } = build.file.bench;
  const resistance = figure(mat.resistance, 'resistance of the mat');
  const slow = lessThan(resistance, high);
  yield outcome(atBench(build, mat.resistance), all(slow, atLeast(resistance, low)), {
    broken: () =>
      slow.is === false
        ? sentence`A mat drains charge below ${high}; this one has ${resistance}. Use one of ${usual}.`
        : sentence`A mat usually has ${low} or more; this one has ${resistance}. Use one of ${usual}.`,
    ...(slow.is === false ? {} : { grade: 'note' }),
    fixes: () => [change(mat.resistance, '10 MΩ', 'Use a mat of 10 MΩ')],
  });
  yield outcome(
    atBench(build, mat.earthed),
    fits(mat.earthed, 'whether the mat is earthed', (earthed) => earthed),
    {
      broken: () =>
        sentence`The mat is not earthed, and carries no charge off; bond it to the point that the strap is clipped to.`,
      grade: 'note',
      fixes: () => [change(mat.earthed, true, 'Bond the mat to the strap’s point')],
    },
  );
}
