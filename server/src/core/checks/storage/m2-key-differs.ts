// The notches of an M.2 module against the key of its socket.
import { sentence } from '../../figures/sentence';
import { given, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { formOf, keyFits, modulesOf, moves } from './storage-kit';

export default check({
  id: 'm2-key-differs',
  area: 'storage',
  grade: 'stop',
  what: 'Each M.2 module has a notch where its socket has the key.',
  why: 'A module with another notch does not go in; one that is forced shears the key or the socket off the board.',
  source: 'drive makers’ M.2 module manuals: pins left out for each key',
  examples: [
    {
      faulty: `
parts:
  board: { slots: { M2_WIFI: { kind: M.2, key: E } } }
  drives:
    - { name: scratch, shape: M.2, key: M, slot: M2_WIFI }
#                                                ^^^^^^^
`,
      instead: 'Put the drive into a socket with key M, or choose a module that is cut for the socket.',
    },
  ],
  test(build, report) {
    for (const {
      placed,
      seat: { name, slot, missingFacts },
    } of modulesOf(build)) {
      const own = placed.part.key;
      const truth = slot ? keyFits(slot, name!, own, placed.label, placed.part.link) : lacking(missingFacts);
      report(
        outcome(at(placed, placed.at.slot), given(truth, formOf(placed), slot?.kind), {
          broken: () =>
            sentence`${placed.label} is cut for key ${own}; ${placed.at.slot} has key ${slot!.key}: it does not go in.`,
          *fixes() {
            yield* moves(
              build,
              placed,
              (other) => other.kind.value === 'M.2' && keyFits(other, '', own, '').is === true,
            );
            yield swap(placed);
          },
        }),
      );
    }
  },
});
