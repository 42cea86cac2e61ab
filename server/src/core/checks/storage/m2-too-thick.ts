// The height of an M.2 module's components against the room over its socket.
import { figure } from '../../figures/figure';
import { heightAbove, heightBelow } from '../../figures/modules';
import { sentence } from '../../figures/sentence';
import type { Slot } from '../../figures/slots';
import type { Drive } from '../../figures/storage';
import { atMost, lacking } from '../../figures/truth';
import { check } from '../check';
import { aspectOf, at, outcome, swap } from '../kit';
import { modulesOf, moves } from './storage-kit';

export default check({
  id: 'm2-too-thick',
  area: 'storage',
  grade: 'stop',
  what: 'Components and heat sink of each M.2 drive fit the room at its socket.',
  why: 'A module that is too high does not go under the board’s heat sink or the card above; pressed down, it bends.',
  source: 'drive makers’ M.2 module manuals: components at most 1.5 mm a side',
  limits: [
    'A `thickness` of 2 mm and more may count the module’s board and what is below it; `height-above` does not.',
    'A module without a heat sink keeps to the standard’s heights.',
  ],
  examples: [
    {
      faulty: `
parts:
  board: { slots: { M2_1: { kind: M.2, component-room: 1.5 mm } } }
  drives:
    - { name: scratch, shape: M.2, height-above: 2.3 mm, slot: M2_1 }
#                                                              ^^^^
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
      const height = heightAbove(drive);
      const room = slot && figure(slot['component-room'], `component room of ${name}`);
      const target = at(drive, drive.at.slot);
      report(
        outcome(target, room ? atMost(height, room) : lacking(missingFacts), {
          broken: () => sentence`${drive.label} stands ${height} above its board; ${drive.at.slot} leaves ${room!}.`,
          *fixes() {
            yield* moves(build, drive, (other) => (other['component-room'].value?.lo ?? -1) >= height.hi);
            yield swap(drive);
          },
          ...(slot && saysNothing(drive, slot)
            ? { usual: () => `${drive.label} has no heat sink of its own, and fits under what ${name!} brings` }
            : {}),
        }),
      );
      if (!slot || (!slot['room-below'].node && !drive.part['height-below'].value?.hi)) continue;
      const below = heightBelow(drive);
      const under = figure(slot['room-below'], `room below a module in ${name}`);
      report(
        outcome(aspectOf(target, 'below'), atMost(below, under), {
          broken: () =>
            sentence`${drive.label} has components ${below} high on its back; ${drive.at.slot} leaves ${under} below
              it.`,
          *fixes() {
            yield* moves(build, drive, (other) => (other['room-below'].value?.lo ?? -1) >= below.hi);
            yield swap(drive);
          },
        }),
      );
    }
  },
});

/** A module that has a heat sink of its own says so, and a socket takes any that has none. Source: common practice. */
const saysNothing = ({ part }: Drive, slot: Slot): boolean =>
  ![part['height-above'], part.thickness, part['heat-sink'], slot['component-room']].some(({ node }) => node);
