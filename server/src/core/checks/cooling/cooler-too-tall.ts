// The cooler’s height against the room the case leaves above the processor.
import { figure } from '../../figures/figure';
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
    if (!cooler || !box) return;
    const height = figure(cooler.part.height, `height of ${cooler.label}`);
    const room = figure(box.part['cooler-height'], `room for a cooler in ${box.label}`);
    report(
      outcome(at(cooler), atMost(height, room), {
        broken: () => sentence`The cooler stands ${height} tall; the case leaves ${room}.`,
        fixes: () => [swap(cooler), swap(box)],
      }),
    );
  },
});
