// Parts in slots that the board switches off with the build’s processor.
import type { Build } from '../../build/build';
import { lineFor } from '../../figures/processor-slots';
import { freeSlots, seated, seatOf, type Seated, type Slot } from '../../figures/slots';
import { sentence } from '../../figures/sentence';
import { given, lacking, sure, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, aspectOf, outcome, putOn, swap, type FixIdea } from '../kit';

export default check({
  id: 'slot-off-with-processor',
  area: 'slots',
  grade: 'stop',
  what: 'No part sits in a slot that the board switches off with this family of processor.',
  why:
    'One board takes several families, and not all of them bring the lanes for every slot: a drive or a card in a ' +
    'slot without lanes is never seen, and nothing looks wrong.',
  source: 'handbooks of boards: slots by processor family, in the footnotes of the specification table',
  limits: ['It is judged where the board states `by-processor` of the slot.'],
  examples: [
    {
      faulty: `
parts:
  board:
    slots:
      M2_1: { kind: M.2, carries: [PCIe 4 x4], by-processor: [{ family: Calder C6, lanes: 0 }] }
      M2_2: { kind: M.2, carries: [PCIe 3 x4] }
  processor: { family: Calder C6 }
  drives: [{ bus: NVMe, shape: M.2, slot: M2_1 }]
#                                         ^^^^
`,
      mended: `
parts:
  board:
    slots:
      M2_1: { kind: M.2, carries: [PCIe 4 x4], by-processor: [{ family: Calder C6, lanes: 0 }] }
      M2_2: { kind: M.2, carries: [PCIe 3 x4] }
  processor: { family: Calder C6 }
  drives: [{ bus: NVMe, shape: M.2, slot: M2_2 }]
`,
    },
  ],
  test(build, report) {
    const { processor } = build.parts;
    if (!processor) return;
    for (const placed of seated(build)) {
      const { slot } = seatOf(build, placed);
      const works = slot && isOn(build, slot);
      if (!works) continue;
      report(
        outcome(aspectOf(at(placed, placed.at.slot), 'processor'), given(works, placed.at.slot), {
          broken: () =>
            sentence`${placed.at.slot} is switched off with processors of ${processor.part.family}; ${placed.label} is
              never seen there.`,
          fixes: () => [...moves(build, placed), swap(processor)],
        }),
      );
    }
  },
});

/** Undefined for a slot that no processor switches off. */
function isOn(build: Build, slot: Slot): Truth | undefined {
  const line = lineFor(build, slot);
  const off = slot['by-processor'].value?.some(({ lanes }) => lanes.value === 0);
  if (!line || !off) return undefined;
  return line.missingFacts.length > 0
    ? lacking(line.missingFacts)
    : sure(line.row?.lanes.value !== 0, ...line.decidedBy);
}

const moves = (build: Build, placed: Seated): (FixIdea | undefined)[] =>
  freeSlots(build).map(([name]) => putOn(placed, 'slot', name, `Move ${placed.label} to ${name}`));
