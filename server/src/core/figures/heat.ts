// Figures of the way of the heat: power, the resistances in its chain from die to air, the temperature that results.
import type { Build, Placed } from '../build/build';
import { PASTE_CONDUCTIVITY } from '../trade/thermal-paste';
import {
  filmResistanceKPerW,
  powerAtLimitW,
  RATED_AT_RISE_K,
  resistanceAtRatingKPerW,
  steadyTemperatureC,
} from '../trade/heat';
import { copyWith, between, derive, figure, total, type Figure } from './figure';
import { caseRise, inletTemperature, riseAllowed } from './air';
import { isLiquid } from './coolers';
import { guarded, notNegative, aboveZero } from './guard';
import { marginFigure } from './margins';
import { memo } from './memo';
import { bondLine, lidArea, usualBondLine } from './paste';
import { processorDraw } from './power';

const umPerMm = 1000;

type Processor = Placed<'processor'>;
type Cooler = Placed<'cooler'>;

/** Power that the processor gives off for as long as it works. */
export const heatOf = (processor: Processor): Figure => notNegative(processorDraw(processor));

/** Resistance of the paste between lid and cooler: of the paste listed, or of whatever paste the cooler brings. */
export function filmResistance(processor: Processor, paste: Placed<'paste'> | undefined): Figure {
  const { low, high } = PASTE_CONDUCTIVITY.paste;
  const line = paste ? bondLine(paste) : usualBondLine('bond line of the cooler’s own paste');
  const conductivity = paste
    ? aboveZero(paste.part.conductivity, `conductivity of ${paste.label}`)
    : between(low, high, 'conductivity', 'conductivity of the cooler’s own paste', {
        unit: 'W/m·K',
        source: 'a paste maker’s page on interface materials',
      });
  return notNegative(
    derive(
      'resistance of the paste',
      'thermal-resistance',
      [line, conductivity, lidArea(processor)],
      'bond line ÷ (conductivity × lid area)',
      guarded((mm, k, mm2) => filmResistanceKPerW(mm * umPerMm, k, mm2)),
      { unit: 'K/W', source: 'Fourier’s law for a plane wall' },
    ),
  );
}

/** Resistance from the hottest point of the die to the air that enters the cooler. */
export function chainResistance(processor: Processor, cooler: Cooler, paste: Placed<'paste'> | undefined): Figure {
  return total(
    'resistance from die to air',
    'thermal-resistance',
    [
      notNegative(figure(processor.part['die-to-lid'], `resistance from die to lid of ${processor.label}`)),
      filmResistance(processor, paste),
      notNegative(figure(cooler.part['thermal-resistance'], `thermal resistance of ${cooler.label}`)),
    ],
    { unit: 'K/W' },
  );
}

/**
 * The temperature that a cooler’s rating in watts speaks for, with the air in the case as warm as it is allowed to get:
 * makers rate the whole chain, from a hot processor to the air of a room.
 */
export function temperatureByRating(build: Build, processor: Processor, cooler: Cooler): Figure {
  const air = inletTemperature(build);
  const rise = riseAllowed(build, marginFigure(build, 'room-rise', 'rise allowed in the case'));
  const rated = aboveZero(cooler.part['rated-power'], `rated power of ${cooler.label}`);
  const chain = derive(
    'resistance from die to air by the rating',
    'thermal-resistance',
    [rated],
    `at most ${RATED_AT_RISE_K} K ÷ rated power`,
    guarded(resistanceAtRatingKPerW),
    { unit: 'K/W', source: 'common practice: rated with a processor of at most 100 °C in a room of 25 °C' },
  );
  return derive(
    `temperature of ${processor.label} by the rating`,
    'temperature',
    [air, rise, heatOf(processor), copyWith(chain, { lo: 0 })],
    `${air.label} + rise + power × resistance from die to air`,
    (inlet, over, watts, resistance) => inlet + over + watts * resistance,
    { unit: '°C' },
  );
}

/**
 * How much warmer the air that enters the cooler is than at the case's inlet: a radiator may breathe the room's air.
 */
export function riseAtCooler(build: Build, cooler: Cooler): Figure {
  const rise = caseRise(build);
  const { flow } = cooler.at;
  if (!isLiquid(cooler) || flow.value === 'out') return rise;
  if (flow.value === 'in')
    return derive(
      'rise at the radiator',
      'temperature-difference',
      [],
      'a radiator that blows in breathes the inlet’s air',
      () => 0,
      { unit: 'K' },
    );
  return copyWith(rise, { lo: 0, label: 'rise at the radiator' });
}

/** Steady temperature of the processor at its sustained power. */
export function processorTemperature(build: Build, processor: Processor, cooler: Cooler): Figure {
  const air = inletTemperature(build);
  const work = (inlet: number, rise: number, watts: number, chain: number): number =>
    Number.isFinite(chain) && Number.isFinite(rise) && Number.isFinite(watts) && Number.isFinite(inlet)
      ? steadyTemperatureC(inlet + rise, watts, [chain])
      : inlet + rise + watts * chain;
  return derive(
    `temperature of ${processor.label}`,
    'temperature',
    [air, riseAtCooler(build, cooler), heatOf(processor), chainResistance(processor, cooler, build.parts.paste)],
    `${air.label} + rise + power × resistance from die to air`,
    work,
    { unit: '°C' },
  );
}

/** The temperature that the processor is to stay at or below: where it slows itself down, less the house's margin. */
export const hottestAllowed = memo((build: Build): Figure | undefined => {
  const { processor } = build.parts;
  if (!processor) return undefined;
  const margin = marginFigure(build, 'processor-temperature', 'room below the limit');
  return derive(
    'temperature to stay below',
    'temperature',
    [figure(processor.part.hottest, `temperature limit of ${processor.label}`), margin],
    'temperature limit − room below the limit',
    (limit, room) => limit - room,
    { unit: '°C' },
  );
});

/**
 * Whole watts at which the processor surely stays below a limit; undefined where something of the chain is not known.
 */
export function powerWithin(build: Build, processor: Processor, cooler: Cooler, limit: Figure): number | undefined {
  const inlet = inletTemperature(build).hi + riseAtCooler(build, cooler).hi;
  const chain = chainResistance(processor, cooler, build.parts.paste).hi;
  if (![inlet, chain, limit.lo].every(Number.isFinite) || chain <= 0) return undefined;
  return Math.floor(powerAtLimitW(limit.lo, inlet, chain));
}
