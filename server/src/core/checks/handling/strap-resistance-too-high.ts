// The strap’s resistance against the most that still carries charge off.
import { figure, known } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { strapFacts, wearsStrap } from '../../figures/strap';
import { given, lessThan } from '../../figures/truth';
import { STRAP } from '../../trade/statics';
import { check } from '../check';
import { change, outcome } from '../kit';
import { atBench } from '../work/steps-kit';

const limit = known(STRAP.throughPersonBelowOhm, 'resistance', 'limit from person to earth', {
  unit: 'MΩ',
  source: 'ANSI/ESD S20.20',
});
const usual = known(STRAP.cordOhm, 'resistance', 'usual resistor of a strap', {
  unit: 'MΩ',
  source: 'ANSI/ESD S1.1 annex B',
});

export default check({
  id: 'strap-resistance-too-high',
  area: 'handling',
  grade: 'harm',
  caution: 'static-to-parts',
  what: 'The strap carries charge off fast enough to protect parts.',
  why:
    'Above the standard’s limit a person charges up faster than the strap drains; the part is handled as if ' +
    'there were none.',
  source: 'ANSI/ESD S20.20: below 35 MΩ through the person for parts of 100 V',
  examples: [
    {
      faulty: `
bench:
  strap: { series-resistance: 100 MΩ, clipped-to: bare chassis }
#                             ^^^^^^
`,
      mended: `
bench:
  strap: { series-resistance: 1 MΩ, clipped-to: bare chassis }
`,
    },
  ],
  test(build, report) {
    const { strap } = build.file.bench;
    if (!wearsStrap(build) || strap.kind.value === 'cordless') return;
    const resistance = figure(strap['series-resistance'], 'resistance in the strap’s cord');
    report(
      outcome(atBench(build, strap['series-resistance']), given(lessThan(resistance, limit), ...strapFacts(build)), {
        broken: () =>
          sentence`The strap’s cord has ${resistance}; parts are protected below ${limit} from person to
            earth. Use a cord of
            ${usual}.`,
        fixes: () => [change(strap['series-resistance'], '1 MΩ', 'Use a strap with 1 MΩ in its cord')],
      }),
    );
  },
});
