// How much paste is brought on, against the gap between lid and cooler.
import type { Build } from '../../build/build';
import { figure, number, derive, type Figure } from '../../figures/figure';
import { memo } from '../../figures/memo';
import { dotDiameter, gapVolume, wantedVolume } from '../../figures/paste';
import { sentence } from '../../figures/sentence';
import { all, atLeast, atMost, given } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { amountFix, conducts, holdsNoPad } from './cooling-kit';

const least = number(0.8, 'least share of the gap that the paste must fill', 'common practice');
const most = number(2, 'most that is pressed out without running over', 'common practice');

export default check({
  id: 'paste-amount-off',
  area: 'cooling',
  grade: 'shortfall',
  what: 'The volume of paste is 0.8 to 2 times what the gap between lid and cooler holds.',
  why:
    'Too little leaves air between the faces; too much thickens the layer and runs over the edge, where a ' +
    'paste that conducts ruins parts.',
  source: 'volume = area × thickness; the factors, common practice',
  limits: ['Without a stated bond line the span of 20 to 100 µm is used.'],
  examples: [
    {
      faulty: `
parts:
  processor: { lid: { area: 900 mm² } }
  paste: { bond-line: 40 µm, electrically: insulating, amount: 150 mm³ }
#                                                              ^^^^^^^
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
    const { low, high, wanted, dot } = doses(build);
    const over = atMost(amount, high);
    const harms = conducts(paste);
    const spills = over.is === false && harms.is === true;
    report(
      outcome(
        at(paste, paste.at.amount),
        given(all(atLeast(amount, low), over), paste.part.class, ...(over.is === false ? harms.uses : [])),
        {
          broken: () =>
            sentence`${amount} of paste is brought on; this lid wants ${wanted}, a dot ${dot}
            wide${spills ? ', and what runs over conducts' : ''}.`,
          ...(spills ? { grade: 'harm', caution: 'conductive-paste' } : {}),
          fixes: () => [amountFix(paste, wanted)],
        },
      ),
    );
  },
});

/** The volumes between which a dose is right, what is wanted, and how wide a dot of that is. */
const doses = memo((build: Build) => {
  const { processor, paste } = build.parts;
  const gap = gapVolume(processor!, paste!);
  const wanted = wantedVolume(processor!, paste!);
  return {
    low: share(gap, least, 'least paste'),
    high: share(gap, most, 'most paste'),
    wanted,
    dot: dotDiameter(wanted),
  };
});

function share(gap: Figure, factor: Figure, label: string): Figure {
  return derive(label, 'volume', [factor, gap], `${factor.label} × ${gap.label}`, (n, volume) => n * volume, {
    unit: 'mm³',
  });
}
