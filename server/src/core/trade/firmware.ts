// The order of firmware versions: by a maker's list, else by spelling within one pattern, else not at all.

export type Order = -1 | 0 | 1;

/** A file name of the short form: eight characters at most, a dot, three at most. */
const shortName = /^[^. ]{1,8}(?:\.[^. ]{1,3})?$/;

/**
 * Whether a file of one name is found under the other on a FAT file system: short names are kept in capitals,
 * whatever was typed; a longer one is taken to want its exact spelling.
 * Source: Microsoft Extensible Firmware Initiative FAT32 File System Specification, version 1.03.
 */
export function sameFileOnFat(a: string, b: string): boolean {
  return a === b || (shortName.test(a) && a.toUpperCase() === b.toUpperCase());
}

/** A version cut into runs of digits and what stands between them. */
interface Cut {
  readonly digits: readonly string[];
  /** The text with every run of digits replaced by one `9`. */
  readonly pattern: string;
}

function cut(version: string): Cut {
  return { digits: version.match(/\d+/g) ?? [], pattern: version.replace(/\d+/g, '9') };
}

function sign(difference: number): Order {
  return difference < 0 ? -1 : difference > 0 ? 1 : 0;
}

/** Compares whole numbers of any length written in digits. */
function compareDigits(a: string, b: string): Order {
  const [first, second] = [a.replace(/^0+/, ''), b.replace(/^0+/, '')];
  const byLength = sign(first.length - second.length);
  if (byLength !== 0 || first === second) return byLength;
  return first < second ? -1 : 1;
}

/**
 * The spelling pattern of a version: two versions can be ordered by spelling only within one.
 * `1.08` and `1.20` share `9.9`; `F22` has another, and `F22b` a third: a letter that trails marks a beta
 * before the plain version with one maker and a repair after it with another. Source: common practice.
 */
export function versionPattern(version: string): string {
  return cut(version).pattern;
}

/**
 * Natural order: runs of digits compare as numbers. Undefined when the patterns differ.
 * Source: Debian Policy Manual, chapter 5.6.12, on versions of one pattern; `dpkg --compare-versions` agrees.
 */
export function compareBySpelling(a: string, b: string): Order | undefined {
  if (a === b) return 0;
  const [first, second] = [cut(a), cut(b)];
  if (first.pattern !== second.pattern) return undefined;
  for (const [n, run] of first.digits.entries()) {
    const order = compareDigits(run, second.digits[n]!);
    if (order !== 0) return order;
  }
  return 0;
}

/** Order by a maker's list, oldest first; undefined when either version is not on it. */
export function compareByList(list: readonly string[], a: string, b: string): Order | undefined {
  const [first, second] = [list.indexOf(a), list.indexOf(b)];
  return first < 0 || second < 0 ? undefined : sign(first - second);
}

/**
 * True while no two neighbours of the list stand against their natural order: only then does spelling tell anything.
 */
export function spellingFollowsList(list: readonly string[]): boolean {
  return list.every((version, n) => n === 0 || compareBySpelling(list[n - 1]!, version) !== 1);
}

/**
 * The order of two versions: -1 when `a` is older, 1 when it is newer, 0 when they are one.
 * The list decides; a version that is not on it is placed by spelling, unless the list shows that the maker's
 * spelling does not follow time. Undefined means incomparable: ask for the dates.
 */
export function compareVersions(a: string, b: string, list: readonly string[] = []): Order | undefined {
  return compareByList(list, a, b) ?? (spellingFollowsList(list) ? compareBySpelling(a, b) : undefined);
}
