// The supply’s depth against the case’s room for it.
import { figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atMost, sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'supply-too-deep',
  area: 'power',
  grade: 'stop',
  what: 'The supply is no deeper than the case’s room for it.',
  why:
    'Supplies of one outline differ in depth by half: a deep one meets the drive cage, and its cables have ' +
    'nowhere to go.',
  source: 'desktop platform power supply design guide, doc. 336521: depth of 140 mm and more; common practice',
  examples: [
    {
      faulty: `
parts:
  supply: { depth: 180 mm }
# ^^^^^^
  case: { supply-depth: 160 mm }
`,
      instead: 'Choose a supply 160 mm deep or less, or take the drive cage out and state the room it leaves.',
    },
  ],
  test({ parts: { supply, case: box } }, report) {
    if (!supply || !box) return;
    const { form } = supply.part;
    const isOutside = form.value === 'external';
    const depth = figure(supply.part.depth, `depth of ${supply.label}`);
    const room = figure(box.part['supply-depth'], `room for a supply in ${box.label}`);
    report(
      outcome(at(supply), isOutside ? sure(true, form) : atMost(depth, room), {
        broken: () => sentence`The supply is ${depth} deep; the case leaves ${room}.`,
        fixes: () => [swap(supply), swap(box)],
      }),
    );
  },
});
