// Option values that several sub-commands read.
import { InvalidArgumentError, Option } from 'commander';
import { grades, type Grade } from '../core/manifest/house-file';
import { isDay } from '../core/text';

export function readGrade(text: string): Grade {
  if ((grades as readonly string[]).includes(text)) return text as Grade;
  throw new InvalidArgumentError(`The grades are ${grades.join(', ')}.`);
}

/** A day of the calendar, written as in the files. */
export function readDay(text: string): string {
  if (isDay(text)) return text;
  throw new InvalidArgumentError('A day is written as 2027-06-30.');
}

/** For what depends on the day: prices and facts get old, findings are let stand until one. */
export const onDay = (): Option =>
  new Option('--on <date>', 'the day that counts as today, as 2027-06-30').argParser(readDay);

export const textOrJson = (): Option =>
  new Option('--format <format>', 'how to write').choices(['text', 'json']).default('text');

/** A whole number from one up. */
export function readCount(text: string): number {
  if (/^[1-9]\d{0,8}$/.test(text)) return Number(text);
  throw new InvalidArgumentError('Expected a whole number ≥ 1.');
}
