// The speed set for the memory against the fastest that the processor’s maker states.
import { figure } from '../../figures/figure';
import { channelCount, modules } from '../../figures/memory';
import { isSet, setSpeed } from '../../figures/memory-speed';
import { sentence } from '../../figures/sentence';
import { all, any, atMost, lessThan, not } from '../../figures/truth';
import { check } from '../check';
import { aspectOf, at, outcome } from '../kit';
import { setKitSpeed } from './memory-kit';

/** No machine of slots has fewer: so many modules never share a channel. Source: common practice. */
const FEWEST_CHANNELS = 2;

export default check({
  id: 'memory-speed-over-processor',
  area: 'memory',
  grade: 'note',
  what: 'The speed set for the memory is within what the processor’s maker states.',
  why:
    'Beyond it the memory controller runs outside its maker’s word: most do, some do not, and it has to be ' +
    'tested for.',
  source: 'common practice: processor makers state the fastest memory speed, and less for two modules a channel',
  limits: ['What is stated for several modules a channel no field holds; only the fastest speed of all is judged.'],
  examples: [
    {
      faulty: `
parts:
  processor: { memory: { fastest: 5600 MT/s } }
  memory: [{ count: 2, speed: 6000 MT/s }]
#                             ^^^^^^^^^
`,
      mended: `
parts:
  processor: { memory: { fastest: 5600 MT/s } }
  memory: [{ count: 2, speed: 5600 MT/s }]
`,
    },
  ],
  test(build, report) {
    const { processor, memory } = build.parts;
    if (!processor) return;
    const fastest = figure(processor.part.memory.fastest, `fastest memory stated for ${processor.label}`);
    for (const kit of memory) {
      if (!isSet(kit)) continue;
      const set = setSpeed(kit);
      report(
        outcome(at(kit, kit.at.speed), atMost(set, fastest), {
          broken: () =>
            sentence`${kit.label} is set to ${set}; for ${processor.label} memory up to ${fastest} is stated.`,
          fixes: () => [setKitSpeed(kit, fastest.lo)],
        }),
      );
      if (modules(build).hi <= FEWEST_CHANNELS) continue;
      // Makers state less for two modules a channel; what is stated without more holds for one.
      const crowded = all(lessThan(channelCount(build), modules(build)), not(lessThan(set, fastest)));
      report(
        outcome(aspectOf(at(kit, kit.at.speed), 'a channel'), any(not(atMost(set, fastest)), not(crowded)), {
          broken: () =>
            sentence`${kit.label} is set to ${set}, the fastest stated for ${processor.label}; that holds for one module
              a channel, and here ${modules(build)} share ${channelCount(build)} channels. Look up what is stated for
              so many.`,
        }),
      );
    }
  },
});
