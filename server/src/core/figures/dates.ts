// Ages of facts: whole days between the day a file names and today.
import type { Build } from '../build/build';
import type { Fact } from '../parts/fact';
import { copyWith, known, missing, unknown, writtenAt, type Figure } from './figure';
import { all, atLeast, atMost, type Truth } from './truth';

const secondsADay = 86_400;

const msOf = (day: string): number => Date.parse(`${day}T00:00:00Z`);

/** How long ago a stated day was, in seconds; unknown when no file states it. */
export function ageOf(build: Build, day: Fact<string>, label: string): Figure {
  if (day.value === undefined) return unknown('time', label, [missing(day, label)]);
  const days = Math.round((msOf(build.today) - msOf(day.value)) / 1000 / secondsADay);
  return copyWith(known(days * secondsADay, 'time', label, { unit: 'day', source: 'the days from then until today' }), {
    from: writtenAt(day),
  });
}

const noDay = known(0, 'time', 'no day at all', { unit: 'day', source: 'a day that is still to come tells nothing' });

/** Whether an age is within a limit, and of a day that was: one that is still to come is a slip. */
export const isRecent = (age: Figure, limit: Figure): Truth => all(atLeast(age, noDay), atMost(age, limit));
