// The supply’s depth against the case’s room for it.
import type { Placed } from '../../build/build';
import { copyWith, decidedBy, figure, type Figure } from '../../figures/figure';
import { isUnwalled } from '../../figures/fit';
import { sentence } from '../../figures/sentence';
import { atMost, sure } from '../../figures/truth';
import { SUPPLY_DEPTH_MM, SUPPLY_DEPTH_SOURCE } from '../../trade/forms';
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
    if (!supply || !box || isUnwalled(box, box.part['supply-depth'])) return;
    const { form } = supply.part;
    const isOutside = form.value === 'external';
    const depth = figure(supply.part.depth, `depth of ${supply.label}`);
    const room = supplyRoom(box);
    report(
      outcome(at(supply), isOutside ? sure(true, form) : atMost(depth, room), {
        broken: () => sentence`The supply is ${depth} deep; the case leaves ${room}.`,
        fixes: () => [swap(supply), swap(box)],
      }),
    );
  },
});

/** Room for a supply: as stated, else at least the standard’s depth of the deepest form that the case takes. */
function supplyRoom({ part, label }: Placed<'case'>): Figure {
  const stated = part['supply-depth'];
  const room = figure(stated, `room for a supply in ${label}`);
  const forms = part['supply-forms'].value ?? [];
  const lo = Math.max(0, ...forms.map(({ value }) => SUPPLY_DEPTH_MM[value ?? ''] ?? 0));
  if (stated.node || lo === 0) return room;
  return decidedBy(copyWith(room, { lo, unit: 'mm', source: SUPPLY_DEPTH_SOURCE }), part['supply-forms']);
}
