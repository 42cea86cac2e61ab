// Firmware updates with a raised memory profile, or on mains that may drop out.
import { plannedUpdate } from '../../figures/firmware';
import { sentence } from '../../figures/sentence';
import { fits, given, sure } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome } from '../kit';

export default check({
  id: 'update-risky',
  area: 'board',
  grade: 'harm',
  caution: 'update-interrupted',
  what: 'Firmware is updated with memory at its standard speed and on mains that stay.',
  why: 'An update that is interrupted, or written wrongly, can leave the board unable to start.',
  source: 'common practice: board makers’ handbooks',
  limits: ['A memory profile is judged only where the update runs with a processor in the board.'],
  examples: [
    {
      faulty: `
parts: { board: { maker: Norrvik } }
bench:
  firmware-update: { to: "1.20", by: service, memory-profile: raised }
#                                                             ^^^^^^
`,
      mended: `
parts: { board: { maker: Norrvik } }
bench:
  firmware-update: { to: "1.20", by: service, memory-profile: standard }
`,
    },
  ],
  test(build, report) {
    const update = plannedUpdate(build);
    if (!update) return;
    const profile = update['memory-profile'];
    // Without a processor the memory is not even powered, and its profile decides nothing.
    const hasMemory = update.by.value !== 'stick without processor' && update.by.value !== 'management controller';
    if (profile.entry && hasMemory) {
      report(
        outcome(
          atKey(build, profile),
          given(
            fits(profile, 'memory profile during the update', (set) => set === 'standard'),
            update.by,
          ),
          {
            broken: () =>
              sentence`The memory profile is ${profile} during the update; a bit written wrongly leaves the board
                dead.`,
            fixes: () => [change(profile, 'standard', 'Set the memory profile to standard')],
          },
        ),
      );
    }
    const { steadiness, backup } = build.file.place.mains;
    if (!steadiness.entry || update.by.value === 'service') return;
    report(
      outcome(atKey(build, steadiness), sure(steadiness.value === 'steady' || backup.$.stated, steadiness), {
        broken: () =>
          sentence`The mains are not steady (${steadiness}) and no UPS is stated; an update that is cut off leaves the
            board dead.`,
      }),
    );
  },
});
