// A dose in words alone: what it may mean, and the volume that this lid wants.
import { grainVolume, pattern, wantedVolume } from '../../figures/paste';
import { sentence } from '../../figures/sentence';
import { given, sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { amountFix, holdsNoPad } from './cooling-kit';

/** A number with a unit of volume in the words. */
const volume = /\d\s*(?:mm³|mm3|µl|ul|ml|cm³)/i;

export default check({
  id: 'paste-dose-vague',
  area: 'cooling',
  grade: 'note',
  what: 'A dose of paste is a volume, not a comparison.',
  why:
    'From a grain of rice to a fresh pea is a factor of forty in volume; the same words give one lid too ' +
    'little and another far too much.',
  source:
    'papers on the physical properties of rice and pea seeds; volume = area × bond line, the excess by common practice',
  limits: ['Without a stated bond line the span of 20 to 100 µm is used.'],
  examples: [
    {
      faulty: `
parts:
  processor: { lid: { area: 900 mm² } }
  paste: { bond-line: 40 µm, dose: a pea in the middle }
#                                  ^^^^^^^^^^^^^^^^^^^
`,
      mended: `
parts:
  processor: { lid: { area: 900 mm² } }
  paste: { bond-line: 40 µm, dose: a pea in the middle, amount: 49 mm³ }
`,
    },
  ],
  test({ parts: { processor, paste } }, report) {
    if (!paste || !holdsNoPad(paste)) return;
    const { amount, dose } = paste.at;
    if (!dose.entry) return;
    report(
      outcome(
        at(paste, dose),
        given(sure(amount.entry !== undefined || volume.test(dose.text), dose), paste.part.class),
        {
          broken: () => {
            const grain = grainVolume(dose.text);
            const means = grain ? sentence`“${dose}” may be ${grain}` : sentence`“${dose}” is no volume`;
            if (!processor) return sentence`${means}; say how many mm³.`;
            const wanted = wantedVolume(processor, paste);
            if (!Number.isFinite(wanted.hi))
              return sentence`${means}, and no file states the lid’s size that would give one.`;
            return sentence`${means}; this lid takes ${wanted}, ${pattern(processor, wanted)}.`;
          },
          fixes: () => (processor ? [amountFix(paste, wantedVolume(processor, paste))] : []),
        },
      ),
    );
  },
});
