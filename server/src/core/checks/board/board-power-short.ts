// The processor’s sustained power against what the board’s converters are stated for.
import type { Placed } from '../../build/build';
import { figure } from '../../figures/figure';
import { processorDraw } from '../../figures/power';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { inUnit } from '../../quantity';
import { processorListed } from '../../figures/firmware';
import { check } from '../check';
import { at, outcome, putOn, swap } from '../kit';

export default check({
  id: 'board-power-short',
  area: 'board',
  grade: 'shortfall',
  what: 'The processor draws no more for long than the board’s converters are stated for.',
  why: 'A board with small converters starts a big processor and then holds it back when they grow hot.',
  source: 'common practice: the board maker’s processor support list',
  limits: [
    'A board that lists the processor and states no power is taken to carry it, unless it is set to more than its own.',
  ],
  examples: [
    {
      faulty: `
parts:
  board: { processor-power: 125 W }
  processor: { power: { sustained: 253 W } }
# ^^^^^^^^^
`,
      mended: `
parts:
  board: { processor-power: 125 W }
  processor: { power: { sustained: 253 W }, power-limit: 125 W }
`,
    },
  ],
  test(build, report) {
    const { board, processor } = build.parts;
    if (!board || !processor) return;
    // A maker that lists a processor has its board carry it; only what it is set to above that may be too much.
    const isListed = processorListed(build)?.line !== undefined;
    if (!board.part['processor-power'].node && isListed && !isRaised(processor)) return;
    const bears = figure(board.part['processor-power'], `processor power of ${board.label}`);
    const drawn = processorDraw(processor);
    report(
      outcome(at(processor), atMost(drawn, bears), {
        broken: () => sentence`${processor.label} draws ${drawn} for long; ${board.label} is stated for ${bears}.`,
        fixes: () => [
          putOn(
            processor,
            'power-limit',
            `${inUnit(bears.lo, 'W')} W`,
            `Limit the processor to ${inUnit(bears.lo, 'W')} W`,
          ),
          swap(board),
          swap(processor),
        ],
      }),
    );
  },
});

/** Whether it is set to draw more than its own sustained power, or may be. */
function isRaised({ at, part }: Placed<'processor'>): boolean {
  const limit = at['power-limit'];
  const own = part.power.sustained.value;
  return limit.entry !== undefined && !(limit.value && own && limit.value.hi <= own.lo);
}
