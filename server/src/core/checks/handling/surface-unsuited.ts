// What the board lies on: what conducts shorts it, what charges harms it.
import type { Build } from '../../build/build';
import { figure, known } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { all, atLeast, lessThan, sure } from '../../figures/truth';
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
const high = known(WORK_SURFACE_OHM.high, 'resistance', 'limit of a mat', { unit: 'MΩ', source: 'ANSI/ESD S20.20' });

export default check({
  id: 'surface-unsuited',
  area: 'handling',
  grade: 'harm',
  caution: 'static-to-parts',
  what: 'The board lies on something that neither conducts nor charges up; a mat drains slowly enough and fast enough.',
  why:
    'Metal joins contacts under a powered board; carpet, glass and plastic charge up and discharge into the ' +
    'part. Bare wood and plain cardboard do neither, and cable nothing off.',
  source: 'ANSI/ESD S20.20, work surfaces; common practice',
  limits: ['A bag as a mat is judged by `bag-as-mat`.'],
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
              ${SURFACES[kind].shorts ? 'conducts and joins contacts' : 'charges up'}; wood, cardboard or a
              dissipative mat serve.`,
          fixes: () => [
            change(on, 'wood', 'Lay it on bare wood'),
            change(on, 'dissipative mat', 'Lay it on a dissipative mat'),
          ],
        }),
      );
    }
    if (mat.$.stated) report(ofMat(build));
  },
});

function ofMat(build: Build): Outcome {
  const { mat } = build.file.bench;
  const resistance = figure(mat.resistance, 'resistance of the mat');
  return outcome(atBench(build, mat.resistance), all(atLeast(resistance, low), lessThan(resistance, high)), {
    broken: () => sentence`A mat is to have ${low} or more and less than ${high}; this one has ${resistance}.`,
    fixes: () => [change(mat.resistance, '10 MΩ', 'Use a mat of 10 MΩ')],
  });
}
