// The memory speed promised against the speed that the modules reach on this board.
import { figure } from '../../figures/figure';
import { memorySpeed } from '../../figures/memory-speed';
import { sentence } from '../../figures/sentence';
import { binding } from '../../figures/storage';
import { atLeast } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome, swap } from '../kit';
import { fasterSetting, writtenSpeed } from './memory-kit';

export default check({
  id: 'memory-slower-than-promised',
  area: 'memory',
  grade: 'shortfall',
  what: 'The memory reaches the speed that is promised, as it is set, rated and filled.',
  why: 'The slowest of setting, rating, filling and standard speed counts for all modules.',
  source: 'common practice; JEDEC JESD79-4, JESD79-5: standard speeds',
  examples: [
    {
      faulty: `
parts:
  memory: [{ standard-speed: 4800 MT/s, rated-speed: 6000 MT/s, count: 2 }]
expect:
  memory: { speed: 6000 MT/s }
#                  ^^^^^^^^^
`,
      mended: `
parts:
  memory: [{ standard-speed: 4800 MT/s, rated-speed: 6000 MT/s, count: 2, speed: 6000 MT/s }]
expect:
  memory: { speed: 6000 MT/s }
`,
    },
  ],
  test(build, report) {
    const promise = build.file.expect.memory.speed;
    const reached = memorySpeed(build);
    if (!promise.node || !reached) return;
    const wanted = figure(promise, 'memory speed promised');
    report(
      outcome(atKey(build, promise), atLeast(reached, wanted), {
        broken: () =>
          sentence`The build promises memory at ${wanted}; it runs at ${reached}: the ${binding(reached).label} sets the
            limit.`,
        *fixes() {
          yield* fasterSetting(build);
          for (const kit of build.parts.memory) yield swap(kit);
          if (reached.lo > 0)
            yield change(promise, writtenSpeed(reached.lo), `Lower the promise to ${writtenSpeed(reached.lo)}`);
        },
      }),
    );
  },
});
