// A speed beyond what the modules run at by themselves: the profile is a firmware step that must be planned.
import { setSpeed, standardSpeed } from '../../figures/memory-speed';
import { sentence } from '../../figures/sentence';
import { any, atMost, sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn } from '../kit';
import { setKitSpeed } from './memory-kit';

export default check({
  id: 'memory-profile-needed',
  area: 'memory',
  grade: 'note',
  what: 'A memory speed beyond what the modules run at by themselves goes with a profile that the build says is on.',
  why: 'Without the firmware step the memory runs at its standard speed for years, and nobody notices.',
  source: 'common practice; JEDEC JESD79-4, JESD79-5: standard speeds',
  examples: [
    {
      faulty: `
parts:
  memory: [{ standard-speed: 4800 MT/s, count: 2, speed: 6000 MT/s }]
#                                                        ^^^^^^^^^
`,
      mended: `
parts:
  memory: [{ standard-speed: 4800 MT/s, count: 2, speed: 6000 MT/s, profile: used }]
`,
    },
  ],
  test({ parts: { memory } }, report) {
    for (const kit of memory) {
      if (!kit.at.speed.node) continue;
      const set = setSpeed(kit);
      const standard = standardSpeed(kit);
      const { profile } = kit.at;
      report(
        outcome(at(kit, kit.at.speed), any(sure(profile.value === 'used', profile), atMost(set, standard)), {
          broken: () =>
            sentence`${kit.label} runs at ${standard} by itself; for ${set} its profile has to be switched on in the
                firmware.`,
          fixes: () => [putOn(kit, 'profile', 'used', 'Say that the profile is used'), setKitSpeed(kit, standard.lo)],
        }),
      );
    }
  },
});
