// Figures of the single steps by which a part gets warmer than the air around it, and of the temperature of a drive.
import type { Build, Placed } from '../build/build';
import { caseTemperature, inletTemperature } from './air';
import { derive, figure, type Figure } from './figure';
import { notNegative } from './guard';
import { filmResistance, heatOf, riseAtCooler } from './heat';
import { memoOf } from './memo';

/** One step on the way from the die to the air: what it adds, and how warm it is behind it. */
export interface HeatStep {
  readonly name: 'cooler' | 'lid' | 'die';
  readonly rise: Figure;
  readonly reached: Figure;
}

/** Air that enters the cooler. */
export const airAtCooler = memoOf((build: Build, cooler: Placed<'cooler'>): Figure => {
  const inlet = inletTemperature(build);
  const rise = riseAtCooler(build, cooler);
  return warmer('air at the cooler', inlet, rise);
});

/** From the air at the cooler to the die: the last step reaches the temperature of the processor. */
export function heatSteps(build: Build, processor: Placed<'processor'>, cooler: Placed<'cooler'>): readonly HeatStep[] {
  const heat = heatOf(processor);
  const resistances = [
    ['cooler', notNegative(figure(cooler.part['thermal-resistance'], `thermal resistance of ${cooler.label}`))],
    ['lid', filmResistance(processor, build.parts.paste)],
    ['die', notNegative(figure(processor.part['die-to-lid'], `resistance from die to lid of ${processor.label}`))],
  ] as const;
  let from = airAtCooler(build, cooler);
  return resistances.map(([name, resistance]) => {
    const rise = notNegative(
      derive(
        `rise at the ${name}`,
        'temperature-difference',
        [heat, resistance],
        `power × ${resistance.label}`,
        (watts, kelvinPerWatt) => (watts === 0 ? 0 : watts * kelvinPerWatt),
        { unit: 'K' },
      ),
    );
    from = warmer(`temperature of the ${name}`, from, rise);
    return { name, rise, reached: from };
  });
}

const warmer = (label: string, from: Figure, rise: Figure): Figure =>
  derive(label, 'temperature', [from, rise], `${from.label} + ${rise.label}`, (a, b) => a + b, { unit: '°C' });

/** How warm a drive gets in the air of the case at its worst. */
export const driveTemperature = memoOf(
  (build: Build, drive: Placed<'drives'>): Figure =>
    derive(
      `temperature of ${drive.label}`,
      'temperature',
      [caseTemperature(build), driveRise(drive)],
      'air in the case + its own rise',
      (air, rise) => air + rise,
      { unit: '°C' },
    ),
);

/** How much warmer a drive gets than the air around it. */
export const driveRise = ({ part, label }: Placed<'drives'>): Figure =>
  notNegative(figure(part.rise, `rise of ${label} over the air around it`));
