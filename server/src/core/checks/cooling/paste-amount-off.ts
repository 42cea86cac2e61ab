// How much paste is brought on, against the gap between lid and cooler.
import type { Build } from '../../build/build';
import { figure, number, derive, type Figure } from '../../figures/figure';
import { memo } from '../../figures/memo';
import { gapVolume, pattern, wantedVolume } from '../../figures/paste';
import { sentence } from '../../figures/sentence';
import { all, any, atLeast, atMost, given } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { amountFix, holdsNoPad, insulates } from './cooling-kit';

const least = number(0.8, 'least share of the gap that the paste must fill', 'common practice');
const most = number(2, 'most that is pressed out without running over', 'common practice');
const mostInsulating = number(4, 'most of a paste that insulates before the edge has to be wiped', 'common practice');

export default check({
  id: 'paste-amount-off',
  area: 'cooling',
  grade: 'shortfall',
  what:
    'The volume of paste is 0.8 to 2 times what the gap between lid and cooler holds, or 4 times where it ' +
    'insulates.',
  why:
    'Too little leaves air between the faces; too much is pressed out over the edge, where a paste that ' +
    'conducts ruins parts and one that insulates has to be wiped off.',
  source: 'volume = area × thickness; the factors, common practice',
  limits: ['Without a stated bond line the span of 20 to 100 µm is used.'],
  remarks: ['Too much of a paste that insulates is a note; of one that conducts, harm.'],
  examples: [
    {
      faulty: `
parts:
  processor: { lid: { area: 900 mm² } }
  paste: { bond-line: 40 µm, electrically: insulating, amount: 25 mm³ }
#                                                              ^^^^^^
`,
      mended: `
parts:
  processor: { lid: { area: 900 mm² } }
  paste: { bond-line: 40 µm, electrically: insulating, amount: 49 mm³ }
`,
    },
  ],
  test(build, report) {
    const { processor, paste } = build.parts;
    if (!processor || !paste || !holdsNoPad(paste) || (!paste.at.amount.entry && paste.at.dose.entry)) return;
    const amount = figure(paste.at.amount, `amount of ${paste.label}`);
    const { low, high, highest, wanted } = doses(build);
    const little = atLeast(amount, low).is === false;
    const harmless = insulates(paste);
    const grade = little || harmless.is === undefined ? 'shortfall' : harmless.is ? 'note' : 'harm';
    const over = atMost(amount, high);
    const truth = all(atLeast(amount, low), any(over, all(harmless, atMost(amount, highest))));
    report(
      outcome(at(paste, paste.at.amount), given(truth, paste.part.class, ...(over.is === false ? harmless.uses : [])), {
        broken: () =>
          sentence`${amount} of paste is too ${little ? 'little' : 'much'}: this lid takes
            ${wanted}, ${pattern(processor, wanted)}${grade === 'harm' ? '; what runs over conducts' : ''}.`,
        grade,
        ...(grade === 'harm' ? { caution: 'conductive-paste' } : {}),
        fixes: () => [amountFix(paste, wanted)],
      }),
    );
  },
});

/** The volumes between which a dose is right, and what is wanted. */
const doses = memo((build: Build) => {
  const { processor, paste } = build.parts;
  const gap = gapVolume(processor!, paste!);
  const wanted = wantedVolume(processor!, paste!);
  return {
    low: share(gap, least, 'least paste'),
    high: share(gap, most, 'most paste'),
    highest: share(gap, mostInsulating, 'most paste that insulates'),
    wanted,
  };
});

function share(gap: Figure, factor: Figure, label: string): Figure {
  return derive(label, 'volume', [factor, gap], `${factor.label} × ${gap.label}`, (n, volume) => n * volume, {
    unit: 'mm³',
  });
}
