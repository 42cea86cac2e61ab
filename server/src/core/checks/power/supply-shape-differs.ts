// The supply’s outline against those the case takes, a plate to the larger opening included.
import type { Build, Placed } from '../../build/build';
import { boxHas } from '../../figures/box-contents';
import { sentence } from '../../figures/sentence';
import { agree, any, sure, type Truth } from '../../figures/truth';
import { boxWord } from '../../trade/box-things';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'supply-shape-differs',
  area: 'power',
  grade: 'stop',
  what: 'The case takes a supply of this outline, as it is or with a plate.',
  why:
    'A supply of another outline meets neither the opening nor its four screws; a smaller one needs a plate ' +
    'that few boxes hold.',
  source: 'desktop platform power supply design guide, doc. 336521, mechanical outlines',
  examples: [
    {
      faulty: `
parts:
  supply: { form: ATX }
# ^^^^^^
  case: { supply-forms: [SFX, SFX-L] }
`,
      instead: 'Choose an SFX supply, or a case that takes ATX.',
    },
  ],
  test(build, report) {
    const { supply, case: box } = build.parts;
    if (!supply || !box) return;
    const { form } = supply.part;
    // A brick stands outside.
    if (form.value === 'external') return report(outcome(at(supply), sure(true, form), { broken: () => sentence`` }));
    const takes = box.part['supply-forms'];
    const fits = agree(form, `outline of ${supply.label}`, takes, `supply outlines of ${box.label}`, (has, list) =>
      list.some(({ value }) => value === has || (value !== undefined && shorterThan[value] === has)),
    );
    const plate = takesBracket(supply, box);
    const truth = fits.is !== true && plate ? any(fits, hasBracket(build, supply, box)) : fits;
    report(
      outcome(at(supply), truth, {
        broken: () =>
          sentence`The supply is ${form}; the case takes
            ${(takes.value ?? []).map((one) => one.text).join(', ') || 'none'}.${plate ? ' Get a plate for it.' : ''}`,
        fixes: () => [swap(supply), swap(box)],
      }),
    );
  },
});

/** Of the same face, and shorter. */
const shorterThan: Readonly<Record<string, string>> = { 'SFX-L': 'SFX' };

/** A supply of the smaller outline goes into the larger opening with a plate. */
const takesBracket = ({ part }: Placed<'supply'>, box: Placed<'case'>): boolean =>
  (part.form.value === undefined || part.form.value === 'SFX' || part.form.value === 'SFX-L') &&
  (box.part['supply-forms'].value?.some(({ value }) => value === 'ATX') ?? true);

/** A plate lies in the supply’s or the case’s box, or is bought beside them. */
function hasBracket(build: Build, supply: Placed<'supply'>, box: Placed<'case'>): Truth {
  const bought = build.parts.fixings.find(({ part }) => boxWord(part.item.value ?? '') === 'supply bracket');
  if (bought) return sure(true, bought.part.item);
  const own = boxHas(supply, 'supply bracket');
  // The case’s box seldom holds one: it counts where it is listed, and is never waited for.
  return box.part['in-the-box'].value ? any(own, boxHas(box, 'supply bracket')) : own;
}
