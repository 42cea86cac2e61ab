// What goes with a machine when it is handed over.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { handedOver } from '../../manifest/acceptance';
import { listed } from '../../text';
import { check } from '../check';
import { atKey, outcome, put } from '../kit';
import { atGroup } from './acceptance-kit';

/** What each is called in a sentence. */
const words: Readonly<Record<(typeof handedOver)[number], string>> = {
  serials: 'parts and serials',
  firmware: 'the firmware version',
  settings: 'settings',
  slots: 'slots used',
  temperatures: 'temperatures with the room’s',
  noise: 'noise with its distance',
  'wall power': 'power from the wall',
  logs: 'test logs',
  spares: 'spares',
};

export default check({
  id: 'hand-over-incomplete',
  area: 'work',
  grade: 'note',
  what: 'A hand-over holds serials, firmware, settings, slots, temperatures, noise, wall power, logs and spares.',
  why: 'Whoever opens the machine next begins with what was written down today.',
  source: 'common practice',
  limits: ['Nothing is judged where `hand-over:` is not stated.'],
  examples: [
    {
      faulty: `
hand-over:
  includes: [serials, firmware, settings, slots, temperatures, noise, wall power, logs]
#           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
acceptance: { room-temperature: logged }
`,
      mended: `
hand-over:
  includes: [serials, firmware, settings, slots, temperatures, noise, wall power, logs, spares]
acceptance: { room-temperature: logged }
`,
    },
  ],
  test(build, report) {
    const handOver = build.file['hand-over'];
    if (!handOver.$.stated) return;
    const { includes } = handOver;
    const held = (includes.value ?? []).map((item) => item.value);
    const missingFacts = handedOver.filter((item) => !held.includes(item));
    report(
      outcome(
        includes.node ? atKey(build, includes) : atGroup(build, handOver, includes.path),
        sure(missingFacts.length === 0),
        {
          broken: () =>
            sentence`The hand-over leaves out ${listed(missingFacts.map((item) => words[item]))}; add them.`,
          fixes: () => [
            put(
              build.doc,
              ['hand-over', 'includes'],
              [...held.flatMap((item) => item ?? []), ...missingFacts],
              `Add ${listed(missingFacts)}`,
            ),
          ],
        },
      ),
    );
  },
});
