// What a redundant supply still delivers once its spare modules have failed, against what the parts draw.
import { sustainedDraw } from '../../figures/power';
import { survivors } from '../../figures/redundancy';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { limitProcessor } from './power-kit';

export default check({
  id: 'supply-not-redundant',
  area: 'power',
  grade: 'shortfall',
  what: 'The modules of a redundant supply that are left when the spare ones have failed carry all parts alone.',
  why:
    'While all modules work they share the load, and nobody sees that one of them could not carry it; the first ' +
    'failure then stops the machine that the second module was bought for.',
  source: 'common practice: in a supply of 1+1 modules one alone must carry the whole load',
  limits: [
    'A supply is redundant where its part file states `redundancy`; `modules` in a build says how many are fitted.',
    'Whether its modules hang on separate circuits no file states.',
  ],
  examples: [
    {
      faulty: `
parts:
  processor: { power: { sustained: 350 W } }
  graphics: { power: { sustained: 500 W } }
  supply: { rating: 1600 W, redundancy: 1+1, module-rating: 800 W, rails: { +12V: { voltage: 12 V, current: 132 A } } }
# ^^^^^^
`,
      instead: 'Choose modules of which one carries all parts, or limit what the parts draw.',
    },
  ],
  test(build, report) {
    const { supply } = build.parts;
    const after = supply && survivors(build, supply);
    if (!supply || !after) return;
    const { modules, spare, left } = after;
    const drawn = sustainedDraw(build);
    report(
      outcome(at(supply), atMost(drawn, left), {
        broken: () =>
          sentence`The parts draw ${drawn}; with ${spare} of ${modules} modules failed, the supply delivers ${left}.`,
        fixes: () => [swap(supply), limitProcessor(build, drawn, left)],
      }),
    );
  },
});
