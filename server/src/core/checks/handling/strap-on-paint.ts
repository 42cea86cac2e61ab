// What the strap’s clip holds on to: bare metal, or paint.
import { missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { strapFacts, wearsStrap } from '../../figures/strap';
import { fits, given, lacking, sure, type Truth } from '../../figures/truth';
import type { Build } from '../../build/build';
import { check } from '../check';
import { change, outcome } from '../kit';
import { atBench } from '../work/steps-kit';

export default check({
  id: 'strap-on-paint',
  area: 'handling',
  grade: 'harm',
  caution: 'static-to-parts',
  what: 'The strap’s clip holds on to bare metal or to an earth bonding plug.',
  why: 'Paint and powder coating insulate: a strap clipped to them joins nothing, and its wearer trusts it.',
  source: 'makers’ service manuals; common practice',
  examples: [
    {
      faulty: `
bench:
  strap: { series-resistance: 1 MΩ, clipped-to: painted chassis }
#                                               ^^^^^^^^^^^^^^^
`,
      mended: `
bench:
  strap: { series-resistance: 1 MΩ, clipped-to: bare chassis }
`,
    },
  ],
  test(build, report) {
    const { strap } = build.file.bench;
    const clip = strap['clipped-to'];
    // A strap without a cord has no clip, and one clipped to nothing is judged by what equalises instead.
    if (!wearsStrap(build) || strap.kind.value === 'cordless' || clip.value === 'nothing') return;
    report(
      outcome(atBench(build, clip), given(bare(build), ...strapFacts(build)), {
        broken: () => sentence`The strap is clipped to the ${clip}, whose paint insulates; clip it to bare metal.`,
        fixes: () => [change(clip, 'bare chassis', 'Clip the strap to the bare chassis')],
      }),
    );
  },
});

function bare(build: Build): Truth {
  const clip = build.file.bench.strap['clipped-to'];
  if (clip.value === undefined) return lacking([missing(clip, 'what the strap is clipped to')], clip);
  if (clip.value !== 'supply case') return sure(clip.value !== 'painted chassis', clip);
  const { supply } = build.parts;
  if (supply) return fits(supply.part.housing, `finish of ${supply.label}’s housing`, (finish) => finish === 'bare');
  return lacking([{ doc: build.doc, path: 'parts.supply.housing', what: 'finish of the supply’s housing' }], clip);
}
