// Figures of a case without fans of its own: what it gives off by itself, and what cards and supply blow out.
import type { Build } from '../build/build';
import { AIR_J_PER_KG_K, STILL_CASE_W_PER_K, SUPPLY_FAN_M3_PER_H } from '../trade/air';
import { airDensity } from './air';
import { heatInCase } from './case-heat';
import { between, derive, figure, total, type Figure } from './figure';
import { notNegative } from './guard';
import { memo } from './memo';
import { partDraw } from './power';

/**
 * Heat that is left to the case: a card with fans may breathe through an open side, and give off all of its own
 * there.
 */
export const heatLeft = memo((build: Build): Figure => {
  const all = heatInCase(build);
  const fanned = build.parts.graphics.filter(
    ({ part: { cooling } }) => cooling.value === undefined || cooling.value === 'open',
  );
  if (fanned.length === 0) return all;
  const cards = total(
    'heat of the cards that have fans',
    'power',
    fanned.map((card) => notNegative(partDraw(build, card)!)),
    { unit: 'W' },
  );
  const share = between(0, 1, 'count', 'share of it that leaves through an open side', { source: 'common practice' });
  return notNegative(
    derive(
      'heat left to the case',
      'power',
      [all, share, cards],
      'heat in the case − share that leaves × heat of the cards',
      (heat, part, card) => (part === 0 ? heat : heat - part * card),
      { unit: 'W' },
    ),
  );
});

const secondsAnHour = 3600;

/** Heat that a case without fans gives off at a rise: as it states, else by walls, gaps and the supply’s fan. */
export function stillHeat(build: Build, rise: Figure): Figure {
  const { case: box, supply } = build.parts;
  const rated = box?.part['rated-power'];
  if (rated?.value) return figure(rated, `heat that ${box!.label} gives off`);
  const { low, high } = STILL_CASE_W_PER_K;
  const perKelvin = between(low, high, 'count', 'heat through walls and gaps in W/K', {
    source: 'free convection and radiation: Incropera, Fundamentals of Heat and Mass Transfer; common practice',
  });
  const most = supply ? SUPPLY_FAN_M3_PER_H : 0;
  const blown = between(0, most, 'flow', 'air through the supply', { unit: 'm³/h', source: 'common practice' });
  return derive(
    'heat that the case gives off by itself',
    'power',
    [perKelvin, rise, blown, airDensity(build)],
    `(heat through walls and gaps + air through the supply × density × ${AIR_J_PER_KG_K} J/(kg·K)) × rise`,
    (each, by, flow, rho) => each * by + (flow === 0 ? 0 : ((flow * rho * AIR_J_PER_KG_K) / secondsAnHour) * by),
    { unit: 'W' },
  );
}
