// A conductivity on the tube that no paste of its class has shown.
import { between, copyWith, figure, known, missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atMost, given } from '../../figures/truth';
import { CLAIM_AT_MOST, type PasteClaim } from '../../trade/thermal-paste';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

const claims: Readonly<Record<string, PasteClaim>> = {
  silicone: 'paste',
  ceramic: 'paste',
  carbon: 'paste',
  'metal particles': 'metal-filled paste',
  pad: 'pad',
  'liquid metal': 'gallium alloy',
};

export default check({
  id: 'paste-claim-implausible',
  area: 'cooling',
  grade: 'note',
  what: 'The conductivity stated for a paste is one that its class may reach by the method named.',
  why:
    'Figures on tubes are several times what independent measurement finds; a sum that believes them ' +
    'promises kelvins which are not there.',
  source:
    'ASTM D5470, which measures the pressed film; a review of gallium alloys: 16.5 to 28 W/m·K; what sheets of ' +
    'compounds for industry state, common practice',
  limits: ['A figure by ASTM D5470 is believed up to 12 W/m·K, any other of a paste up to 8.'],
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
    const { conductivity, class: fills, 'tested-by': method } = paste.part;
    const claim = fills.value === undefined ? undefined : claims[fills.value];
    const stated = figure(conductivity, `conductivity of ${paste.label}`);
    const film = method.value === 'ASTM D5470';
    const by = film ? 'film' : 'anyMethod';
    const words = `most that is believed of a ${claim ?? 'paste'}`;
    const source = 'sheets of compounds for industry; a review of gallium alloys';
    const look = { unit: 'W/m·K', source } as const;
    // Some figures every class reaches, and some none, whatever fills it.
    const ofAll = Object.values(CLAIM_AT_MOST).map((one) => one[by]);
    const best = known(Math.max(...ofAll), 'conductivity', words, look);
    const believed = claim
      ? known(CLAIM_AT_MOST[claim][by], 'conductivity', words, look)
      : copyWith(between(Math.min(...ofAll), Math.max(...ofAll), 'conductivity', words, look), {
          missing: [missing(fills, `class of ${paste.label}`)],
        });
    report(
      outcome(at(paste, conductivity), given(atMost(stated, believed), fills, method), {
        broken: () =>
          sentence`${paste.label} is said to conduct ${stated}; ${claim ? `a ${claim}` : 'the best of any class'}
            reaches ${claim ? believed : best} at most. Reckon with a measurement by ASTM D5470.`,
        fixes: () => [swap(paste)],
      }),
    );
  },
});
