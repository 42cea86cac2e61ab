// What keeps a file or folder from being read, as a run reports it.

/** Something that kept a file or folder from being read; `path` as people see it, empty where it is of no one place. */
export interface RunTrouble {
  readonly path: string;
  readonly trouble: string;
}

/** Of a longer path the start and the end are shown: enough to know it by. */
const longest = 240;

export function shortPath(path: string): string {
  if (path.length <= longest) return path;
  const half = longest / 2;
  // Cut between whole characters, never inside a surrogate pair.
  const start = path.slice(0, half).replace(/[\uD800-\uDBFF]$/, '');
  const end = path.slice(-half).replace(/^[\uDC00-\uDFFF]/, '');
  return `${start} … ${end} (${path.length} characters)`;
}

/** What is said of a check that threw. */
export const failedWords = ({ id, error }: { readonly id: string; readonly error: string }): string =>
  `the check ${id} failed by a fault of its own: ${error}`;

export const troubleAt = (path: string, trouble: string): RunTrouble => ({ path: shortPath(path), trouble });
