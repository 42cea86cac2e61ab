// The supply’s outline against those the case takes.
import { sentence } from '../../figures/sentence';
import { agree } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'supply-shape-differs',
  area: 'power',
  grade: 'stop',
  what: 'The case takes a supply of this outline.',
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
  test({ parts: { supply, case: box } }, report) {
    if (!supply || !box) return;
    const { form } = supply.part;
    const takes = box.part['supply-forms'];
    const truth = agree(form, `outline of ${supply.label}`, takes, `supply outlines of ${box.label}`, (has, list) =>
      list.some((one) => one.value === has),
    );
    report(
      outcome(at(supply), truth, {
        broken: () =>
          sentence`The supply is ${form}; the case takes
            ${(takes.value ?? []).map((one) => one.text).join(', ') || 'none'}.`,
        fixes: () => [swap(supply), swap(box)],
      }),
    );
  },
});
