// Temperatures that are written down without the room’s.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { atKey, outcome, put } from '../kit';
import { atGroup } from './acceptance-kit';

export default check({
  id: 'room-temperature-unlogged',
  area: 'work',
  grade: 'shortfall',
  what: 'Where temperatures are measured, the room’s is written beside them.',
  why:
    'Every temperature in a machine rides on the room’s: 70 °C in winter is 80 °C in summer, and without the ' +
    'room’s nobody can tell.',
  limits: ['Nothing is judged where `acceptance:` is not stated.'],
  source: 'common practice; processor thermal guides state temperatures at a given ambient',
  examples: [
    {
      faulty: `
acceptance:
#^^^^^^^^^
  stress-test: { until-rise: 1 K }
`,
      mended: `
acceptance:
  stress-test: { until-rise: 1 K }
  room-temperature: logged
`,
    },
  ],
  test(build, report) {
    const { acceptance, 'hand-over': handOver } = build.file;
    const room = acceptance['room-temperature'];
    const measures = acceptance['stress-test'].$.stated || acceptance['processor-temperature'].node !== undefined;
    const hands = handOver.includes.value?.some((item) => item.value === 'temperatures') ?? false;
    if (!acceptance.$.stated || (!measures && !hands)) return;
    const place = room.node ? atKey(build, room) : atGroup(build, measures ? acceptance : handOver, room.path);
    report(
      outcome(place, sure(room.value === 'logged'), {
        broken: () => sentence`Temperatures are measured and the room’s is not logged beside them; log it.`,
        fixes: () => [put(build.doc, ['acceptance', room.key], 'logged', 'Log the room’s temperature')],
      }),
    );
  },
});
