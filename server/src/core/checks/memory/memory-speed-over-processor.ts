// The speed set for the memory against the fastest that the processor’s maker states.
import { figure } from '../../figures/figure';
import { isSet, setSpeed } from '../../figures/memory';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { setKitSpeed } from './memory-kit';

export default check({
  id: 'memory-speed-over-processor',
  area: 'memory',
  grade: 'note',
  what: 'The speed set for the memory is within what the processor’s maker states.',
  why:
    'Beyond it the memory controller runs outside its maker’s word: most do, some do not, and it has to be ' +
    'tested for.',
  source: 'common practice: processor makers state the fastest memory speed',
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
  test({ parts: { processor, memory } }, report) {
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
    }
  },
});
