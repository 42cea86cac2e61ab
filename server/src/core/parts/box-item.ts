// The spelling of what a box holds: a thing and how many.
import { boxWord, type BoxWord } from '../trade/box-things';

export interface BoxItem {
  readonly thing: string;
  readonly count: number;
  /** What the thing is; undefined where its name is not understood: it may then be anything. */
  readonly word: BoxWord | undefined;
}

const countBefore = /^(\d{1,4}) ?[x×*] ?(?=\S)(?!\d)/u;
const countAfter = /(?: [x×*] ?(\d{1,4})| \(?(\d{1,4}) ?(?:x|×|pcs\.?|pieces)\)?| \([x×]? ?(\d{1,4})\))$/u;

/**
 * Reads `SATA data cable x2`, `2 x M.2 screw`, `M.2 screws (2)` or `I/O shield`; undefined for an empty text. Never
 * throws.
 */
export function parseBoxItem(text: string): BoxItem | undefined {
  const line = text.trim().replace(/\s+/g, ' ');
  if (line === '') return undefined;
  const before = countBefore.exec(line);
  const after = before ? null : countAfter.exec(line);
  const thing = before ? line.slice(before[0].length) : after && after.index > 0 ? line.slice(0, after.index) : line;
  const count = before?.[1] ?? after?.[1] ?? after?.[2] ?? after?.[3];
  return { thing, count: count === undefined || thing === line ? 1 : Number(count), word: boxWord(thing) };
}
