// How much is read at most. Reaching one of these is said, and the run counts as failed.

export const limits = {
  /** Bytes of one file; a larger one is not opened. */
  fileBytes: 2_000_000,
  /** Files of ours found under the named paths. */
  files: 100_000,
  /** Entries of all folders looked at, whatever they are. */
  entries: 1_000_000,
  /** Entries of one folder; one that holds more is not looked into. */
  folderEntries: 100_000,
  /** Folders inside each other. */
  depth: 64,
} as const;

/** A whole number in threes: `2 000 000`. Without the tables of a locale, which a cold start would wait for. */
export function spelled(value: number): string {
  const digits = String(value);
  const groups = [digits.slice(0, digits.length % 3 || 3)];
  for (let at = groups[0]!.length; at < digits.length; at += 3) groups.push(digits.slice(at, at + 3));
  return groups.join(' ');
}
