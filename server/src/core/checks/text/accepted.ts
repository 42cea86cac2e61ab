// The place of a line of `accept:`.
import type { Build } from '../../build/build';
import type { Found } from '../check';
import type { Place } from '../kit';

type Line = NonNullable<Build['file']['accept']['value']>[number];

/** The id that a line accepts, or the whole line where it names none. */
export function acceptedAt(build: Build, line: Line, index: number, key: string): Place {
  return { doc: build.doc, span: line.finding.node?.span ?? line.$.span, path: `accept[${index}].${key}` };
}

/** Whether the build has a finding that the line accepts; a line without one accepts nothing, and says that elsewhere. */
export const isThere = (line: Line, found: readonly Found[]): boolean =>
  found.some((one) => one.id === line.finding.value && (line.at.value === undefined || one.path === line.at.value));
