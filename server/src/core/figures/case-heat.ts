// Figures of the heat that stays in the case: what the parts make, less what leaves it with air of its own.
import type { Build, Placed } from '../build/build';
import { isLiquid } from './coolers';
import { copyWith, decidedBy, missing, number, total, type Figure } from './figure';
import { notNegative } from './guard';
import { askingWidest } from './widest';
import { memo } from './memo';
import { partDraws } from './power';

/** Of a build in an open frame nothing is judged that needs walls. */
export const isOpenFrame = ({ parts: { case: box } }: Build): boolean => box?.part.open.value === true;

/**
 * Heat that the air in the case has to carry off. A radiator that blows out takes the processor’s with it, and a
 * blower its card’s.
 */
export const heatInCase = memo((build: Build): Figure => {
  const inputs = [...partDraws(build)].map(([placed, draw]) => inside(build, placed, notNegative(draw)));
  return askingWidest(total('heat in the case', 'power', inputs, { unit: 'W' }), inputs);
});

function inside({ parts: { cooler, graphics } }: Build, placed: Placed, draw: Figure): Figure {
  if (placed.role === 'processor' && cooler && isLiquid(cooler)) {
    const { flow } = cooler.at;
    if (flow.value === undefined) {
      const way = missing(flow, `air direction of the radiator’s fans of ${cooler.label}`);
      return copyWith(draw, { lo: 0, missing: [...draw.missing, way] });
    }
    return decidedBy(flow.value === 'in' ? draw : nothing(draw, 'it leaves with the air through the radiator'), flow);
  }
  const card = graphics.find((one) => one === placed);
  return card?.part.cooling.value === 'blower'
    ? decidedBy(nothing(draw, 'a blower takes its card’s heat out of the case'), card.part.cooling)
    : draw;
}

const nothing = ({ label }: Figure, why: string): Figure =>
  copyWith(number(0, label, why), { dimension: 'power', unit: 'W' });
