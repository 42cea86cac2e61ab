// Figures of the circuit that feeds the machine: what hangs on it, as apparent power, and what it may carry.
import type { Build, Placed } from '../build/build';
import { apparentVa, continuousLimitW, CONTINUOUS_US, POWER_FACTORS } from '../trade/mains';
import {
  between,
  copyWith,
  decidedBy,
  derive,
  figure,
  known,
  missing,
  times,
  total,
  unknown,
  type Figure,
} from './figure';
import { allowed } from './guard';
import { memo } from './memo';
import { howMany } from './power';

/**
 * Watts for each VA of the supply: by its correction; every badge asks for an active one. Unstated, anything from none
 * to one.
 */
function powerFactor(supply: Placed<'supply'>): Figure {
  const { 'power-factor': correction, badge } = supply.part;
  const label = `power factor of ${supply.label}`;
  const kind = correction.value ?? (badge.value === undefined ? undefined : 'active');
  if (kind === undefined)
    return copyWith(between(POWER_FACTORS.none.low, 1, 'count', label, { source: 'common practice' }), {
      missing: [missing(correction, `power-factor correction of ${supply.label}`)],
    });
  const { low, high } = POWER_FACTORS[kind];
  return decidedBy(
    between(low, high, 'count', label, { source: 'makers of supplies, on power-factor correction' }),
    correction,
    badge,
  );
}

/** What the machine takes from the wall as apparent power: what its current is worth. */
export function apparentPower(supply: Placed<'supply'>, wall: Figure): Figure {
  return derive(
    'apparent power of the machine',
    'apparent-power',
    [wall, powerFactor(supply)],
    'power from the wall ÷ power factor',
    allowed(apparentVa),
    { unit: 'VA' },
  );
}

const asApparent = (power: Figure): Figure =>
  derive(power.label, 'apparent-power', [power], 'as much in VA, at a power factor of one', (watts) => watts, {
    unit: 'VA',
  });

/** What a display of the build draws: at most its peak, where it states one; never less than in ordinary use. */
function displayDraw(display: Placed<'displays'>): Figure {
  const { peak, typical } = display.part.draw;
  const label = `peak draw of ${display.label}`;
  const read = figure(peak, label);
  const each = peak.value ? read : copyWith(read, { lo: Math.max(0, figure(typical, label).lo), unit: 'W' });
  return times(each, howMany(display));
}

/** Everything on the machine’s circuit, the machine and its displays included. */
export function circuitLoad(build: Build, supply: Placed<'supply'>, wall: Figure): Figure {
  return total(
    'load on the circuit',
    'apparent-power',
    [
      apparentPower(supply, wall),
      ...build.parts.displays.map((display) => asApparent(displayDraw(display))),
      asApparent(figure(build.file.place.mains['shared-load'], 'shared load of the circuit')),
    ],
    { unit: 'VA' },
  );
}

/** What the circuit may carry for hours, by the rule of the site. */
export const circuitLimit = memo((build: Build): Figure => {
  const { mains } = build.file.place;
  const label = 'what the circuit may carry for hours';
  if (mains.rule.value === 'electrician says')
    return decidedBy(asApparent(figure(mains['allowed-load'], 'load that the electrician allows')), mains.rule);
  const inputs = [
    figure(mains.voltage, 'mains voltage'),
    figure(mains.circuit, 'rating of the breaker'),
    decidedBy(ruleShare(build), mains.rule),
  ];
  return derive(
    label,
    'apparent-power',
    inputs,
    'voltage × current × share for continuous load',
    allowed((u, i, percent) => continuousLimitW(u, i, percent)),
    { unit: 'VA' },
  );
});

function ruleShare(build: Build): Figure {
  const { rule } = build.file.place.mains;
  const label = 'share of the breaker for continuous load';
  const { percent: least, source } = CONTINUOUS_US;
  if (rule.value === '80 percent continuous') return known(least, 'percent', label, { unit: '%', source });
  if (rule.value === 'full rating') return known(100, 'percent', label, { unit: '%', source: 'the rule of the site' });
  const missingFacts = [missing(rule, 'rule of the site for continuous load')];
  return copyWith(unknown('percent', label, missingFacts), { lo: least, hi: 100, unit: '%' });
}
