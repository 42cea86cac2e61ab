// Promised temperatures that rest on the room's air where the air at the inlet is meant.
import { figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atLeast, sure } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome, put } from '../kit';

export default check({
  id: 'inlet-taken-as-room',
  area: 'cooling',
  grade: 'note',
  what: 'Where temperatures are promised, the air at the case’s inlet is stated, and it is no cooler than the room.',
  why:
    'Every kelvin at the inlet is a kelvin at the die; under a desk or in a cabinet the inlet is several ' +
    'warmer than the room.',
  source: 'processor thermal design guides: the chain begins at the local ambient, not at the room',
  examples: [
    {
      faulty: `
place: { ambient: 31 °C }
#                 ^^^^^
expect: { temperature: { rise: 12 K } }
`,
      mended: `
place: { ambient: 31 °C, inlet: 31 °C }
expect: { temperature: { rise: 12 K } }
`,
    },
  ],
  test(build, report) {
    const { ambient, inlet } = build.file.place;
    const { processor, rise } = build.file.expect.temperature;
    if (!ambient.value) return;
    const room = figure(ambient, 'room temperature');
    if (!inlet.entry) {
      if (!processor.entry && !rise.entry) return;
      report(
        outcome(atKey(build, ambient), sure(false, room), {
          broken: () =>
            sentence`The promised temperature rests on the room’s ${room}; the air at the case’s inlet is not stated.`,
          fixes: () => [
            put(
              build.doc,
              ['place', 'inlet'],
              ambient.text,
              `State ${ambient.text} at the inlet: the case stands free in the room`,
            ),
          ],
        }),
      );
      return;
    }
    const there = figure(inlet, 'air at the inlet');
    report(
      outcome(atKey(build, inlet), atLeast(there, room), {
        broken: () =>
          sentence`The inlet is stated at ${there} and the room at ${room}: a case draws no air that is cooler than its
            room.`,
        fixes: () => [change(inlet, ambient.text, `Set the inlet to ${ambient.text}`)],
      }),
    );
  },
});
