// A heat sink for a module that needs one, and not two on top of each other.
import { missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import type { Drive } from '../../figures/storage';
import { any, fits, lacking, sure } from '../../figures/truth';
import { check } from '../check';
import { aspectOf, at, outcome, swap } from '../kit';
import { modulesOf, moves } from './storage-kit';

export default check({
  id: 'm2-heat-sink-wrong',
  area: 'storage',
  grade: 'shortfall',
  what:
    'A module whose maker asks for a heat sink has one, of its own or of the board; one with its own goes where the ' +
    'board’s cover is left off: a note.',
  why:
    'A hot module slows itself down to a fraction of its rate; two heat sinks on one module press it off its ' +
    'contacts.',
  limits: ['Of a module that does not say whether it needs a heat sink, only a cover over its own is asked.'],
  source: 'drive makers’ data sheets; boards’ handbooks, page on M.2 sockets',
  examples: [
    {
      faulty: `
parts:
  board: { slots: { M2_2: { kind: M.2, cover: false } } }
  drives:
    - { name: scratch, shape: M.2, needs-heat-sink: true, heat-sink: false, slot: M2_2 }
#                                                                                 ^^^^
`,
      instead: 'Use a socket with a cover, or a heat sink made for the module.',
    },
  ],
  test(build, report) {
    for (const { placed, seat } of modulesOf(build)) {
      if (placed.role !== 'drives') continue;
      const drive = placed as Drive;
      const { 'needs-heat-sink': needs, 'heat-sink': own } = drive.part;
      const cover = seat.slot?.cover;
      const unknown = lacking(cover ? [missing(cover, `cover of ${seat.name}`)] : seat.missingFacts);
      const target = at(drive, drive.at.slot);
      if (needs.value) {
        const has = any(
          fits(own, `heat sink of ${drive.label}`, (is) => is),
          cover?.value === undefined ? unknown : sure(cover.value, cover),
        );
        report(
          outcome(target, has, {
            broken: () =>
              sentence`${drive.label} needs a heat sink and has none; ${drive.at.slot} has no cover.
                Put one on, or use a socket with a cover.`,
            *fixes() {
              yield* moves(build, drive, (other) => other.cover.value === true);
              yield swap(drive);
            },
          }),
        );
      }
      if (!own.value || cover?.value === false) continue;
      const free = cover?.node ? sure(false, own, cover) : unknown;
      report(
        outcome(aspectOf(target, 'cover'), free, {
          grade: 'note',
          broken: () =>
            sentence`${drive.label} has a heat sink of its own; leave the board’s cover off ${drive.at.slot}.`,
          fixes: () => moves(build, drive, (other) => other.cover.value === false),
        }),
      );
    }
  },
});
