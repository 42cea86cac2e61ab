// Where a line of `accept:` is pointed at.
import type { Build } from '../../build/build';
import type { FoundFinding } from '../check';
import { isWithin } from '../../figures/measure';
import { target, type Target } from '../kit';

type Line = NonNullable<Build['file']['accept']['value']>[number];

/** The id that a line accepts, or the whole line where it names none. */
export function acceptedAt(build: Build, line: Line, index: number, key: string): Target {
  return target(`accept[${index}].${key}`, build.doc, line.finding.node?.span ?? line.$.span);
}

/**
 * Whether the build has a finding that the line accepts; a line without one accepts nothing, and says that elsewhere.
 */
export const isThere = (line: Line, found: readonly FoundFinding[]): boolean =>
  found.some((one) => one.id === line.finding.value && (line.at.value === undefined || one.subject === line.at.value));

/**
 * Whether a finding is no worse than what its line weighed. A line that says no amount weighs none, which is enough
 * for everything but harm that a number decides.
 */
export function isWeighed(line: Line, { grade, measure }: Pick<FoundFinding, 'grade' | 'measure'>): boolean {
  const atMost = line['at-most'];
  if (atMost.node === undefined) return grade !== 'harm' || measure === undefined;
  return atMost.value !== undefined && measure !== undefined && isWithin(measure, atMost.value);
}
