// Parts for which the build writes no slot, port or header.
import type { Fact } from '../../parts/fact';
import type { Placed } from '../../build/build';
import { partsToPlace } from '../../figures/assigning';
import { offered } from '../../figures/places';
import { sentence } from '../../figures/sentence';
import { given, lacking, sure } from '../../figures/truth';
import { check } from '../check';
import { assign, outcome, underlineOf, type FixIdea } from '../kit';

export default check({
  id: 'place-left-out',
  area: 'text',
  grade: 'note',
  what: 'Every drive, card and fan that plugs into the board says where.',
  why: 'Speed, lanes and which ports fall away depend on the place; left to the bench, it is whatever is nearest.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  board:
    slots:
      M2_1: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 4 x2], takes-from: [], halves: [] }
      M2_2: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 4 x4], takes-from: [], halves: [] }
  drives:
    - { name: scratch, shape: M.2, bus: NVMe, key: M, size: 2280, link: PCIe 4 x4, read: 7 GB/s }
#     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      mended: `
parts:
  board:
    slots:
      M2_1: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 4 x2], takes-from: [], halves: [] }
      M2_2: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 4 x4], takes-from: [], halves: [] }
  drives:
    - { name: scratch, shape: M.2, bus: NVMe, key: M, size: 2280, link: PCIe 4 x4, read: 7 GB/s, slot: M2_2 }
`,
    },
  ],
  test(build, report) {
    const all = [
      ['drives', partsToPlace(build, ['drives'])],
      ['cards', partsToPlace(build, ['graphics', 'cards'])],
      ['fans', partsToPlace(build, ['fans'])],
    ] as const;
    for (const [what, wanting] of all) {
      for (const { placed, key, stated, missingFacts } of wanting) {
        const place = offered(build, key)!;
        const open = missingFacts.length > 0 ? missingFacts : place.missingFacts;
        const truth =
          stated.value !== undefined
            ? sure(true, stated)
            : open.length > 0
              ? lacking(open, stated)
              : sure(false, stated);
        report(
          outcome(
            { subject: `${placed.path}:place`, underline: underlineOf(placed, stated) },
            given(truth, shapeOf(placed)),
            {
              broken: () => sentence`The build does not say which ${key} ${placed.label} goes into.`,
              fixes: (): FixIdea[] => [what === 'cards' ? assign(what, 'graphics', 'cards') : assign(what, what)],
            },
          ),
        );
      }
    }
  },
});

/** A drive’s shape says which kind of place it goes into. */
const shapeOf = ({ part }: Placed): Fact<unknown> | undefined => ('shape' in part ? part.shape : undefined);
