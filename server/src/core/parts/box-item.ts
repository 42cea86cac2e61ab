// The spelling of what a box holds: a thing, then how many.

export interface BoxItem {
  readonly thing: string;
  readonly count: number;
}

/** Reads `SATA data cable x2` or `I/O shield`; undefined for an empty text. Never throws. */
export function parseBoxItem(text: string): BoxItem | undefined {
  const match = /^(\S.*?)(?:\s+[x×]\s?(\d{1,4}))?$/u.exec(text.trim());
  if (!match?.[1]) return undefined;
  return { thing: match[1], count: match[2] === undefined ? 1 : Number(match[2]) };
}
