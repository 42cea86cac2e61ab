// The height of an M.2 module's components against the room over its socket.
import { figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atMost, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { modulesOf, moves } from './storage-kit';
import type { Drive } from '../../figures/storage';

export default check({
  id: 'm2-too-thick',
  area: 'storage',
  grade: 'stop',
  what: 'Components and heat sink of each M.2 drive fit the room at its socket.',
  why: 'A module that is too high does not go under the board’s heat sink or the card above; pressed down, it bends.',
  source: 'drive makers’ M.2 module manuals: component heights',
  examples: [
    {
      faulty: `
parts:
  board: { slots: { M2_1: { kind: M.2, component-room: 1.5 mm } } }
  drives:
    - { name: scratch, shape: M.2, thickness: 2.3 mm, slot: M2_1 }
#                                                           ^^^^
`,
      instead: 'Choose a module with lower components, or a socket with more room.',
    },
  ],
  test(build, report) {
    for (const {
      placed,
      seat: { name, slot, missingFacts },
    } of modulesOf(build)) {
      if (placed.role !== 'drives') continue;
      const drive = placed as Drive;
      const height = figure(drive.part.thickness, `thickness of ${drive.label}`);
      const room = slot && figure(slot['component-room'], `component room of ${name}`);
      report(
        outcome(at(drive, drive.at.slot), room ? atMost(height, room) : lacking(missingFacts), {
          broken: () => sentence`${drive.label} stands ${height} high; ${drive.at.slot} leaves ${room!}.`,
          *fixes() {
            yield* moves(build, drive, (other) => (other['component-room'].value?.lo ?? -1) >= height.hi);
            yield swap(drive);
          },
        }),
      );
    }
  },
});
