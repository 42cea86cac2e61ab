// Clearances that hold by less than the house wants to keep.
import { marginFigure } from '../../figures/margins';
import { clearances } from '../../figures/rooms';
import { copyWith, number, type Figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { any, atLeast, given, lessThan, sure, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

export default check({
  id: 'loose-margin',
  area: 'case',
  grade: 'note',
  what: 'What fits does so with the clearance that the house keeps.',
  why:
    'Stated sizes are round figures, and sheet metal is bent: a fit to the millimetre on paper may not be ' +
    'one at the bench.',
  source: 'common practice; the clearance is the house’s own, and 0 mm where it states none',
  limits: ['It asks nothing of a house that states no clearance.'],
  examples: [
    {
      faulty: `
parts:
  cooler: { height: 164 mm }
# ^^^^^^
  case: { cooler-height: 165 mm }
`,
      beside: { 'fettle.yaml': 'margins: { clearance: 3 mm }\n' },
      instead: 'Choose a cooler that stands 162 mm or lower, or measure both parts.',
    },
  ],
  test(build, report) {
    const margin = marginFigure(build, 'clearance', 'clearance of the house');
    if (margin.hi === 0) return;
    for (const { placed, side, gap, clear } of clearances(build)) {
      report(
        outcome(at(placed, undefined, side), keeps(gap, margin, clear), {
          broken: () => sentence`Beside the ${side} of ${placed.label} ${gap} are left; the house keeps ${margin}.`,
          fixes: () => [swap(placed)],
        }),
      );
    }
  },
});

/** What does not fit at all is the finding of another check, and what stands clear needs no room. */
function keeps(gap: Figure, margin: Figure, clear: Truth | undefined): Truth {
  const nothing = copyWith(number(0, 'no room at all'), { dimension: 'length' });
  const kept = any(atLeast(gap, margin), lessThan(gap, nothing));
  return clear ? given(clear.is === true ? sure(true) : kept, ...clear.uses) : kept;
}
