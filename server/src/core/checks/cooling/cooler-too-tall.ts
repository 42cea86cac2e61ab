// The cooler’s height against the room the case leaves above the processor.
import type { Placed } from '../../build/build';
import { copyWith, figure, type Figure } from '../../figures/figure';
import { isUnwalled } from '../../figures/fit';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'cooler-too-tall',
  area: 'cooling',
  grade: 'stop',
  what: 'The cooler stands no taller than the case allows.',
  why:
    'A cooler that meets the side panel keeps the case from closing, and is noticed only when everything else ' +
    'is in.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  cooler: { height: 158 mm }
# ^^^^^^
  case: { cooler-height: 155 mm }
`,
      instead: 'Choose a cooler that stands 155 mm or lower, or a wider case.',
    },
  ],
  test({ parts: { cooler, case: box } }, report) {
    if (!cooler || !box || isUnwalled(box, box.part['cooler-height'])) return;
    const height = heightOf(cooler);
    const room = figure(box.part['cooler-height'], `room for a cooler in ${box.label}`);
    report(
      outcome(at(cooler), atMost(height, room), {
        broken: () => sentence`The cooler stands ${height} tall; the case leaves ${room}.`,
        fixes: () => [swap(cooler), swap(box)],
      }),
    );
  },
});

/** How tall a cooler stands on the processor: as stated, else a liquid one’s block as tall as they get. */
function heightOf(cooler: Placed<'cooler'>): Figure {
  const { height, radiator } = cooler.part;
  const read = figure(height, `height of ${cooler.label}`);
  if (height.node || !radiator.$.stated) return read;
  return copyWith(read, {
    lo: 0,
    hi: blockMm,
    unit: 'mm',
    source: `common practice: a block of at most ${blockMm} mm`,
  });
}

/** The tallest block, fan and all. Source: common practice. */
const blockMm = 90;
