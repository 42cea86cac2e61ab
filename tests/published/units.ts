// GNU units as an oracle: one expression converted into one unit.
import { runOracle } from './oracle';

/** What `units` makes of an expression in a unit, as a number. Throws when it does not know or cannot convert. */
export function units(expression: string, into: string): number {
  const { status, stdout, stderr } = runOracle('units', ['-t', '-d', '12', expression, into]);
  const value = Number(stdout.trim());
  if (status !== 0 || stdout.trim() === '' || !Number.isFinite(value)) {
    throw new Error(`units could not turn '${expression}' into '${into}': ${stdout}${stderr}`);
  }
  return value;
}
