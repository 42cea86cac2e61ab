// The site’s mains voltage against the supply’s inlet and its selector.
import { derive, figure, known, missing, type Figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { all, atLeast, atMost, lacking, sure, type Truth } from '../../figures/truth';
import { badgeMains } from '../../trade/efficiency';
import { MARKED_VOLTAGE_TOLERANCE_PERCENT } from '../../trade/mains';
import type { Placed } from '../../build/build';
import { check } from '../check';
import { at, outcome, putOn, swap } from '../kit';

export default check({
  id: 'supply-voltage-differs',
  area: 'power',
  grade: 'harm',
  what:
    'The supply takes the site’s mains voltage, within the tolerance of its marking, and its selector stands ' +
    'there.',
  why:
    'A supply set to the lower range bursts when it is plugged into the higher one; the other way round it ' +
    'does not start.',
  source:
    'ATX12V Power Supply Design Guide, version 2.0, table 1; active correction without a selector: common practice',
  caution: 'wrong-mains-voltage',
  examples: [
    {
      faulty: `
place: { mains: { voltage: 230 V } }
parts:
  supply: { inlet: { lowest: 100 V, highest: 240 V, selector: true }, selector: 115 V }
#                                                                               ^^^^^
`,
      mended: `
place: { mains: { voltage: 230 V } }
parts:
  supply: { inlet: { lowest: 100 V, highest: 240 V, selector: true }, selector: 230 V }
`,
    },
  ],
  test(build, report) {
    const { supply } = build.parts;
    const { voltage } = build.file.place.mains;
    if (!supply || !voltage.entry) return;
    const mains = figure(voltage, 'mains voltage');
    const lowest = figure(supply.part.inlet.lowest, `lowest mains voltage of ${supply.label}`);
    const highest = figure(supply.part.inlet.highest, `highest mains voltage of ${supply.label}`);
    const enough = atLeast(mains, beyond(lowest, -1));
    report(
      outcome(at(supply), all(enough, atMost(mains, beyond(highest, 1))), {
        // Too low a voltage only keeps it from starting.
        ...(enough.is === false ? { grade: 'stop' as const } : {}),
        broken: () =>
          sentence`The mains is ${mains}; the supply takes ${lowest} to ${highest}, and ${tolerance} beyond
            either.${enough.is === false ? ' It will not start.' : ''}`,
        fixes: () => [swap(supply)],
      }),
    );
    const { selector } = supply.at;
    const stands = figure(selector, `selector of ${supply.label}`);
    const range = badgeMains(Math.max(0, Number.isFinite(mains.lo) ? mains.lo : 0));
    const usual = range === '115 V' ? 115 : 230;
    report(
      outcome(at(supply, selector, 'selector'), selectorTruth(supply, range), {
        ...(stands.lo > mains.hi ? { grade: 'stop' as const } : {}),
        broken: () =>
          sentence`The selector stands at ${stands}; the mains is ${mains}. Set it before the cord goes in.`,
        fixes: () => [range && putOn(supply, 'selector', `${usual} V`, `Set the selector to ${usual} V`)],
      }),
    );
  },
});

const tolerance = known(MARKED_VOLTAGE_TOLERANCE_PERCENT, 'percent', 'tolerance of the marking', {
  unit: '%',
  source: 'ATX12V Power Supply Design Guide, version 2.0, table 1',
});

/** The voltage up or down to which a supply marked for `marked` still works. */
function beyond(marked: Figure, way: 1 | -1): Figure {
  return derive(
    `${marked.label} with its tolerance`,
    'voltage',
    [marked, tolerance],
    `marked voltage ${way > 0 ? '+' : '−'} tolerance`,
    (volts, percent) => (volts * (100 + way * percent)) / 100,
    { unit: 'V' },
  );
}

/**
 * A selector is right when it and the mains are of one range. A supply with active correction, which every badge asks
 * for, finds the range by itself.
 */
function selectorTruth(supply: Placed<'supply'>, range: ReturnType<typeof badgeMains>): Truth {
  const { inlet, badge, form, 'power-factor': correction } = supply.part;
  const has = inlet.selector;
  const { selector } = supply.at;
  if (has.value === false) return sure(true, has);
  // Source: common practice: a brick takes its whole range by itself.
  if (has.value === undefined && form.value === 'external') return sure(true, has, form);
  if (selector.value)
    return sure(range !== undefined && badgeMains(Math.max(0, selector.value.lo)) === range, selector);
  const stands = missing(selector, `where the selector of ${supply.label} stands`);
  if (has.value !== undefined) return lacking([stands], has, selector);
  if (correction.value === 'active' || (correction.value === undefined && badge.value !== undefined))
    return sure(true, correction, badge);
  return lacking(
    [
      missing(has, `whether ${supply.label} has a selector`),
      ...(correction.value === undefined
        ? [missing(correction, `its power-factor correction`), missing(badge, 'its badge')]
        : []),
    ],
    has,
    selector,
    correction,
  );
}
