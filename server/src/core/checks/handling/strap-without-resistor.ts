// The resistance in the strap’s cord against the least that keeps its wearer safe.
import { figure, known } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { strapFacts, wearsStrap } from '../../figures/strap';
import { atLeast, given } from '../../figures/truth';
import { STRAP } from '../../trade/statics';
import { check } from '../check';
import { change, outcome } from '../kit';
import { atBench } from '../work/steps-kit';

const leastResistance = known(STRAP.cordLeastOhm, 'resistance', 'least resistance of a strap', {
  unit: 'MΩ',
  source: 'ANSI/ESD S1.1 annex B',
});
const usual = known(STRAP.cordOhm, 'resistance', 'usual resistor of a strap', {
  unit: 'MΩ',
  source: 'ANSI/ESD S1.1 annex B',
});

export default check({
  id: 'strap-without-resistor',
  area: 'handling',
  grade: 'harm',
  caution: 'strap-on-energised',
  what: 'The strap’s cord has a resistor that keeps a fault current through its wearer harmless.',
  why:
    'A strap that is only a wire ties a person to earth: the first live part touched sends its full current ' +
    'through the body.',
  source: 'ANSI/ESD S1.1 annex B: at most 0.5 mA; 0.8 MΩ serves for 240 V, 1 MΩ is usual',
  examples: [
    {
      faulty: `
bench:
  strap: { series-resistance: 0 Ω, clipped-to: bare chassis }
#                             ^^^
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
      outcome(
        atBench(build, strap['series-resistance']),
        given(atLeast(resistance, leastResistance), ...strapFacts(build)),
        {
          broken: () =>
            sentence`A strap’s wearer is protected from ${leastResistance} in its cord; this one has
              ${resistance}. Use a
              cord of ${usual}.`,
          fixes: () => [change(strap['series-resistance'], '1 MΩ', 'Use a strap with 1 MΩ in its cord')],
        },
      ),
    );
  },
});
