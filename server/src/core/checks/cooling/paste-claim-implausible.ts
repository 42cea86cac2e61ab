// A conductivity on the tube that no paste of its class has shown.
import { figure, known, missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atMost, lacking } from '../../figures/truth';
import { PASTE_CONDUCTIVITY, type PasteClass } from '../../trade/thermal-paste';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

/** What is known of each class; of pastes filled with metal particles no source tells. */
const classes: Readonly<Record<string, PasteClass | undefined>> = {
  silicone: 'paste',
  ceramic: 'paste',
  carbon: 'paste',
  pad: 'pad',
  'liquid metal': 'gallium alloy',
};

export default check({
  id: 'paste-claim-implausible',
  area: 'cooling',
  grade: 'note',
  what: 'The conductivity stated for a paste is one that its class reaches.',
  why:
    'Figures on tubes are several times what independent measurement finds; a sum that believes them ' +
    'promises kelvins which are not there.',
  source:
    'a paste maker’s page on interface materials: 1 to 4 W/m·K; review of gallium alloys: 16.5 to 28 ' +
    'W/m·K; Bulletin of Materials Science, filled pads',
  limits: ['Pastes filled with metal particles are not judged: no source tells what they reach.'],
  examples: [
    {
      faulty: `
parts:
  paste: { class: ceramic, electrically: insulating, conductivity: 12.5 W/m·K }
#                                                                  ^^^^^^^^^^
`,
      instead: 'Reckon with what the class reaches, or with a measurement of this paste.',
    },
  ],
  test({ parts: { paste } }, report) {
    if (!paste) return;
    const { conductivity, class: fills } = paste.part;
    const pasteClass = fills.value === undefined ? undefined : classes[fills.value];
    if (fills.value !== undefined && !pasteClass) return;
    const stated = figure(conductivity, `conductivity of ${paste.label}`);
    const reached =
      pasteClass &&
      known(PASTE_CONDUCTIVITY[pasteClass].high, 'conductivity', `most that a ${pasteClass} reaches`, {
        unit: 'W/m·K',
        source: 'paste makers’ pages and reviews of interface materials',
      });
    report(
      outcome(
        at(paste, conductivity),
        reached ? atMost(stated, reached) : lacking([missing(fills, `class of ${paste.label}`)], stated),
        {
          broken: () =>
            sentence`${paste.label} is said to conduct ${stated}; pastes of its class (${fills})
              really reach ${reached!}
              at most.`,
          fixes: () => [swap(paste)],
        },
      ),
    );
  },
});
