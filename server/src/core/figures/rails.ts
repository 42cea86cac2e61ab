// Figures of the 12 V rails: what the parts draw there, and what the supply’s rails deliver together.
import type { Build, Placed } from '../build/build';
import { SLOT_POWER } from '../trade/connectors';
import { railLimitsV } from '../trade/power';
import { between, derive, figure, missing, times, total, unknown, type Figure } from './figure';
import { memo } from './memo';
import { howMany, partDraws } from './power';

const twelve = railLimitsV(12);
const slotSource = 'PCI Express Card Electromechanical Specification: 3.3 V × 3 A in a slot';

/** What the parts draw at 12 V together. How a board, memory and drives split their draw no file states. */
export const twelveVoltDraw = memo(
  (build: Build): Figure =>
    total(
      'draw at 12 V',
      'power',
      [...partDraws(build)].map(([placed, draw]) => twelveVoltShare(placed, draw)),
      { unit: 'W' },
    ),
);

function twelveVoltShare(placed: Placed, draw: Figure): Figure {
  const label = `12 V share of ${placed.label}`;
  switch (placed.role) {
    case 'graphics':
    case 'cards': {
      const aside = between(0, SLOT_POWER.x16.at3V3A * 3.3, 'power', `3.3 V share of ${placed.label}`, {
        unit: 'W',
        source: slotSource,
      });
      const less = times(aside, howMany(placed));
      return derive(
        label,
        'power',
        [draw, less],
        `${draw.label} − ${less.label}`,
        (whole, at3V3) => Math.max(0, whole - at3V3),
        { unit: 'W' },
      );
    }
    case 'board':
    case 'memory':
    case 'drives': {
      const share = between(0, 100, 'percent', `part of it that ${placed.label} takes at 12 V`, {
        unit: '%',
        source: 'no file states it: from nothing to all',
      });
      return derive(
        label,
        'power',
        [draw, share],
        `${draw.label} × ${share.label}`,
        (whole, percent) => (percent === 0 ? 0 : (whole * percent) / 100),
        { unit: 'W' },
      );
    }
    default:
      return draw;
  }
}

/** What the 12 V rails deliver together, as the label’s currents say; a common limit may be lower still. */
export function twelveVoltLimit(supply: Placed<'supply'>): Figure {
  const label = `12 V rails of ${supply.label}`;
  const { rails } = supply.part;
  if (!rails.value) return unknown('power', label, [missing(rails, `rails of ${supply.label}`)]);
  const powers: Figure[] = [];
  for (const [name, { voltage, current }] of rails.value) {
    const volts = figure(voltage, `voltage of rail ${name}`);
    if (volts.missing.length === 0 && (volts.hi < twelve.low || volts.lo > twelve.high)) continue;
    powers.push(
      derive(
        `power of rail ${name}`,
        'power',
        [volts, figure(current, `current of rail ${name}`)],
        'voltage × current',
        (u, i) => u * i,
        { unit: 'W' },
      ),
    );
  }
  return total(label, 'power', powers, { unit: 'W' });
}
