// The size of an M.2 module against the sizes its socket has posts for.
import { spoken } from '../../figures/lists';
import { sentence } from '../../figures/sentence';
import { given, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { formOf, modulesOf, moves, sizeFits, sizeOf } from './storage-kit';

export default check({
  id: 'm2-length-unsupported',
  area: 'storage',
  grade: 'stop',
  what: 'Each M.2 module has a size for which its socket has a post.',
  why: 'A module without a post under its end stands up from its contacts, or meets what stands behind the socket.',
  source: 'drive makers’ M.2 module manuals: width and length',
  examples: [
    {
      faulty: `
parts:
  board: { slots: { M2_1: { kind: M.2, sizes: [2260, 2280] }, M2_2: { kind: M.2, sizes: [2280, 22110] } } }
  drives:
    - { name: scratch, shape: M.2, size: 22110, slot: M2_1 }
#                                                     ^^^^
`,
      mended: `
parts:
  board: { slots: { M2_1: { kind: M.2, sizes: [2260, 2280] }, M2_2: { kind: M.2, sizes: [2280, 22110] } } }
  drives:
    - { name: scratch, shape: M.2, size: 22110, slot: M2_2 }
`,
    },
  ],
  test(build, report) {
    for (const {
      placed,
      seat: { name, slot, missingFacts },
    } of modulesOf(build)) {
      const size = sizeOf(placed);
      const truth = slot ? sizeFits(slot, name!, size, placed.label) : lacking(missingFacts);
      report(
        outcome(at(placed, placed.at.slot), given(truth, formOf(placed), slot?.kind), {
          broken: () =>
            sentence`${placed.label} is of size ${size}; ${placed.at.slot} has posts for
              ${spoken(slot!.sizes.value ?? [])}.`,
          *fixes() {
            yield* moves(
              build,
              placed,
              (other) => other.kind.value === 'M.2' && sizeFits(other, '', size, '').is === true,
            );
            yield swap(placed);
          },
        }),
      );
    }
  },
});
