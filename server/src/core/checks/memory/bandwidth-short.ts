// The memory bandwidth promised against channels, modules and the speed they reach.
import { copyWith, figure } from '../../figures/figure';
import { channelsUsed } from '../../figures/memory';
import { memoryBandwidth, memorySpeed } from '../../figures/memory-speed';
import { many } from '../../figures/lists';
import { sentence } from '../../figures/sentence';
import { atLeast } from '../../figures/truth';
import { inUnit } from '../../quantity';
import { check } from '../check';
import { atKey, change, outcome, swap } from '../kit';
import { fasterSetting, moveMemory } from './memory-kit';

export default check({
  id: 'bandwidth-short',
  area: 'memory',
  grade: 'shortfall',
  what: 'Channels in use and the speed reached give the memory bandwidth that is promised.',
  why: 'One channel instead of two halves the bandwidth, and graphics built into the processor feel it first.',
  source: 'JEDEC JESD79-4, JESD79-5: 64 data bits a channel; channels × 8 B × MT/s',
  examples: [
    {
      faulty: `
parts:
  board:
    memory:
      slots: [A1, B1]
      channels: { A: [A1], B: [B1] }
      fill-first: [A1, B1]
      speeds: [{ modules: 1, ranks: 1, up-to: 5600 MT/s }]
  memory: [{ standard-speed: 4800 MT/s, ranks: 1 }]
expect:
  memory: { bandwidth: 76.8 GB/s }
#                      ^^^^^^^^^
`,
      mended: `
parts:
  board:
    memory:
      slots: [A1, B1]
      channels: { A: [A1], B: [B1] }
      fill-first: [A1, B1]
      speeds: [{ modules: 1, ranks: 1, up-to: 5600 MT/s }]
  memory: [{ standard-speed: 4800 MT/s, ranks: 1 }]
expect:
  memory: { bandwidth: 38.4 GB/s }
`,
    },
  ],
  test(build, report) {
    const promise = build.file.expect.memory.bandwidth;
    const reached = memoryBandwidth(build);
    if (!promise.node || !reached) return;
    const wanted = figure(promise, 'memory bandwidth promised');
    const channels = channelsUsed(build);
    report(
      outcome(atKey(build, promise), atLeast(reached, wanted), {
        broken: () =>
          reached.lo > 0
            ? sentence`The build promises memory at ${wanted}; it reaches ${reached} on ${many(channels, 'channel')} at
                ${memorySpeed(build)!}.`
            : sentence`The build promises memory at ${wanted}; it reaches ${copyWith(reached, { lo: -Infinity })} on
                ${many(channels, 'channel')}.`,
        *fixes() {
          yield moveMemory(build);
          yield* fasterSetting(build);
          for (const kit of build.parts.memory) yield swap(kit);
          const rate = `${Math.floor(inUnit(reached.lo, 'GB/s') * 100) / 100} GB/s`;
          if (reached.lo > 0) yield change(promise, rate, `Lower the promise to ${rate}`);
        },
      }),
    );
  },
});
