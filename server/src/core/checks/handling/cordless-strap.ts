// A strap that has no cord carries nothing off.
import { given } from '../../figures/truth';
import { sentence } from '../../figures/sentence';
import { hasCord, strapFacts, wearsStrap } from '../../figures/strap';
import { check } from '../check';
import { change, outcome } from '../kit';
import { atBench } from '../work/steps-kit';

export default check({
  id: 'cordless-strap',
  area: 'handling',
  grade: 'harm',
  caution: 'static-to-parts',
  what: 'The strap has a cord.',
  why:
    'Charge leaves a body only through a path; a strap without a cord has none, whatever its maker prints on ' +
    'the box.',
  source: 'ANSI/ESD S20.20: a path from person to earth below 35 MΩ, which a cordless strap cannot give',
  examples: [
    {
      faulty: `
bench:
  strap: { kind: cordless }
#                ^^^^^^^^
  equalise-by: touching bare chassis
`,
      mended: `
bench:
  strap: { kind: corded }
  equalise-by: touching bare chassis
`,
    },
  ],
  test(build, report) {
    if (!wearsStrap(build)) return;
    const { kind } = build.file.bench.strap;
    report(
      outcome(atBench(build, kind), given(hasCord(build), ...strapFacts(build)), {
        broken: () => sentence`The strap is ${kind}: charge has no path off the wearer, and no part is protected; use
            one with a
            cord.`,
        fixes: () => [change(kind, 'corded', 'Use a strap with a cord')],
      }),
    );
  },
});
