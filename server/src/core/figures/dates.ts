// Ages of facts: whole days between the day a file names and today.
import type { Build } from '../build/build';
import type { MarginName } from '../build/workspace-config';
import type { Fact } from '../parts/fact';
import { copyWith, figure, known, missing, unknown, writtenAt, type Figure } from './figure';
import { memo } from './memo';

const secondsADay = 86_400;

const msOf = (day: string): number => Date.parse(`${day}T00:00:00Z`);
const todayMs = memo((build: Build): number => msOf(build.today));

/** How long ago a stated day was, in seconds; unknown when no file states it. */
export function ageOf(build: Build, day: Fact<string>, label: string): Figure {
  if (day.value === undefined) return unknown('time', label, [missing(day, label)]);
  const days = Math.round((todayMs(build) - msOf(day.value)) / 1000 / secondsADay);
  return copyWith(known(days * secondsADay, 'time', label, { unit: 'day', source: 'the days from then until today' }), {
    from: writtenAt(day),
  });
}

/** A margin of the house, with its origin: the settings file, or the default. */
export function marginOf(build: Build, name: MarginName, label: string): Figure {
  const margin = build.house.margin(name);
  if ('fact' in margin) return figure(margin.fact, label);
  return known(margin.standard, margin.dimension, label, {
    unit: margin.unit,
    source: 'default of the house settings',
  });
}
