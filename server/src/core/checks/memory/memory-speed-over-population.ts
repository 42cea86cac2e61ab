// The speed set for the memory against what the modules are rated for and what the board lists for so many of them.
import { many } from '../../figures/lists';
import { sentence } from '../../figures/sentence';
import { modules } from '../../figures/memory';
import { isSet, populationSpeed, setSpeed, speedLimit } from '../../figures/memory-speed';
import { binding } from '../../figures/storage';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { setKitSpeed } from './memory-kit';

export default check({
  id: 'memory-speed-over-population',
  area: 'memory',
  grade: 'shortfall',
  what:
    'The speed set for the memory is one that the modules are rated for and that the board lists for so many ' +
    'modules of so many ranks.',
  why:
    'Four modules, or modules of two ranks, load the channel: the board falls back to a lower speed, or ' +
    'trains for minutes and fails.',
  source: 'common practice: the board’s table of memory speeds by modules and ranks',
  limits: [
    'A line that the board’s table lacks is bounded by its neighbours: more modules or ranks are never ' + 'faster.',
  ],
  examples: [
    {
      faulty: `
parts:
  board:
    memory:
      speeds:
        - { modules: 2, ranks: 1, up-to: 7200 MT/s }
        - { modules: 4, ranks: 2, up-to: 4400 MT/s }
  memory: [{ rated-speed: 6000 MT/s, ranks: 2, count: 4, speed: 6000 MT/s }]
#                                                               ^^^^^^^^^
`,
      mended: `
parts:
  board:
    memory:
      speeds:
        - { modules: 2, ranks: 1, up-to: 7200 MT/s }
        - { modules: 4, ranks: 2, up-to: 4400 MT/s }
  memory: [{ rated-speed: 6000 MT/s, ranks: 2, count: 4, speed: 4400 MT/s }]
`,
    },
  ],
  test(build, report) {
    const { board, memory } = build.parts;
    for (const kit of memory) {
      if (!isSet(kit)) continue;
      const set = setSpeed(kit);
      const limit = speedLimit(build, kit);
      const byBoard = binding(limit).label === populationSpeed(build)?.label;
      report(
        outcome(at(kit, kit.at.speed), atMost(set, limit), {
          broken: () =>
            byBoard && board
              ? sentence`${kit.label} is set to ${set}; for ${many(modules(build), 'module')} like these ${board.label}
                lists ${limit}.`
              : sentence`${kit.label} is set to ${set}; its modules are rated for ${limit}.`,
          *fixes() {
            if (limit.lo > 0 && Number.isFinite(limit.lo)) yield setKitSpeed(kit, limit.lo);
            yield swap(kit);
            if (board && byBoard) yield swap(board);
          },
        }),
      );
    }
  },
});
