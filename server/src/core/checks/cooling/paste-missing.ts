// Paste between processor and cooler: listed, or brought by the cooler.
import { pasteOnBase } from '../../figures/paste';
import { sentence } from '../../figures/sentence';
import { all, any, fits, not, sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn } from '../kit';

export default check({
  id: 'paste-missing',
  area: 'cooling',
  grade: 'harm',
  what: 'There is paste between processor and cooler: the cooler brings some, or the build lists it.',
  why: 'Two dry metal faces touch in a few points only; the processor overheats within seconds of its first load.',
  source: 'common practice',
  caution: 'no-way-for-heat',
  examples: [
    {
      faulty: `
parts:
  processor: {}
  cooler: { paste: none }
#                  ^^^^
`,
      instead: 'List a paste under `parts:` as `paste:`, with its amount.',
    },
  ],
  test({ parts: { processor, cooler, paste } }, report) {
    if (!processor || !cooler) return;
    const brings = cooler.part.paste;
    const applied = cooler.at['applied-compound'];
    const wiped = applied.value === 'wiped off';
    const brought = fits(brings, `paste that ${cooler.label} brings`, (what) => what !== 'none');
    const kept = any(sure(!wiped, applied), not(pasteOnBase(cooler)));
    report(
      outcome(at(cooler, wiped ? applied : brings), any(sure(paste !== undefined), all(brought, kept)), {
        broken: () =>
          wiped && brings.value !== 'none'
            ? sentence`The paste on the cooler’s base is ${applied}, and the build lists no other.`
            : sentence`The cooler brings no paste, and the build lists none.`,
        fixes: () =>
          wiped ? [putOn(cooler, 'applied-compound', 'kept', 'Keep the paste that the cooler brings')] : [],
      }),
    );
  },
});
