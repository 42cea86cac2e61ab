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

/** A version cut into what stands before its suffix, and a suffix of letters, perhaps with a number. */
interface Cut {
  /** Runs of digits before the suffix. */
  readonly digits: readonly string[];
  /** What stands before the suffix, every run of digits replaced by one `9`; in capitals. */
  readonly pattern: string;
  /** Letters of the suffix in capitals, and the run of digits behind them; both empty where there is none. */
  readonly letters: string;
  readonly count: string;
  /** The mark before the letters: a dot begins a branch of its own, not a test build. */
  readonly mark: string;
}

function cut(version: string): Cut {
  const [, main = version, mark = '', letters = '', count = ''] =
    /^(.*?\d)(?:([-._ ]?)([a-z]+)[-._ ]?(\d*))?$/is.exec(version) ?? [];
  return {
    digits: main.match(/\d+/g) ?? [],
    pattern: main.replace(/\d+/g, '9').toUpperCase(),
    letters: letters.toUpperCase(),
    count,
    mark,
  };
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
 * Natural order: runs of digits compare as numbers, before any suffix; where they are equal, a suffix counts.
 * Undefined when what stands around the numbers differs, as for boards of another product, and for one letter behind a
 * number against none while the maker’s habit is not known.
 * Source: Debian Policy Manual, chapter 5.6.12, on versions of one pattern; `dpkg --compare-versions` agrees.
 */
export function compareBySpelling(a: string, b: string, habit?: LetterHabit): Order | undefined {
  if (a === b) return 0;
  const [first, second] = [cut(a), cut(b)];
  if (first.pattern !== second.pattern) return undefined;
  for (const [n, run] of first.digits.entries()) {
    const other = second.digits[n] ?? '';
    const order = compareDigits(run, other);
    if (order === 0) continue;
    return readsOn(first, second, run, other) ? undefined : order;
  }
  return compareSuffixes(first, second, habit);
}

/** Letters may be digits of a number that counts on beyond nine, as `19`, `1A`: texts of one length then. */
function readsOn(first: Cut, second: Cut, run: string, other: string): boolean {
  const [a, b] = [run + first.letters + first.count, other + second.letters + second.count];
  return run.length !== other.length && a.length === b.length;
}

/** Words that mark a test build. */
const TEST_BUILD = /^(?:ALPHA|BETA|RC|PRE|TEST)$/;

/** Whether a version with one letter behind its number is older or newer than the version that stands plain. */
type LetterHabit = 'before' | 'after';

/**
 * The order of two suffixes behind one number. A word such as beta is an earlier test build of the version that stands
 * plain; letters follow the alphabet. One letter is a test build with one maker and a later mend with another: that
 * takes the maker’s habit. Source: common practice.
 */
function compareSuffixes(first: Cut, second: Cut, habit: LetterHabit | undefined): Order | undefined {
  if (first.letters === '' && second.letters === '') return 0;
  if (first.letters === '' || second.letters === '') {
    const own = first.letters === '' ? second : first;
    if (own.mark === '.') return undefined;
    const stands = TEST_BUILD.test(own.letters) ? 'before' : own.letters.length === 1 ? habit : undefined;
    if (stands === undefined) return undefined;
    return (own === first) === (stands === 'before') ? -1 : 1;
  }
  if (first.letters !== second.letters) {
    const areLetters = first.letters.length === 1 && second.letters.length === 1;
    return areLetters && first.mark === second.mark ? (first.letters < second.letters ? -1 : 1) : undefined;
  }
  return compareDigits(first.count || '0', second.count || '0');
}

/** Order by a maker's list, oldest first; undefined when either version is not on it. */
export function compareByList(list: readonly string[], a: string, b: string): Order | undefined {
  const [first, second] = [list.indexOf(a), list.indexOf(b)];
  return first < 0 || second < 0 ? undefined : sign(first - second);
}

/** What a list shows of its maker’s letters; undefined where it has no pair of both kinds, or shows both habits. */
function letterHabit(list: readonly string[]): LetterHabit | undefined {
  const cuts = list.map(cut);
  const numberOf = ({ pattern, digits }: Cut): string => [pattern, ...digits].join(' ');
  const shown = new Set<LetterHabit>();
  for (const [n, one] of cuts.entries()) {
    if (one.letters.length !== 1 || one.mark === '.') continue;
    const plain = cuts.findIndex((other) => other.letters === '' && numberOf(other) === numberOf(one));
    if (plain >= 0) shown.add(n < plain ? 'before' : 'after');
  }
  return shown.size === 1 ? [...shown][0] : undefined;
}

/**
 * True while no two neighbours of the list stand against their natural order: only then does spelling tell anything.
 */
export function spellingFollowsList(list: readonly string[], habit = letterHabit(list)): boolean {
  return list.every((version, n) => n === 0 || compareBySpelling(list[n - 1]!, version, habit) !== 1);
}

/**
 * The order of two versions: -1 when `a` is older, 1 when it is newer, 0 when they are one.
 * The list decides; a version that is not on it is placed by spelling, unless the list shows that the maker's
 * spelling does not follow time. Undefined means incomparable: ask for the dates.
 */
export function compareVersions(a: string, b: string, list: readonly string[] = []): Order | undefined {
  const listed = compareByList(list, a, b);
  if (listed !== undefined) return listed;
  const habit = letterHabit(list);
  return spellingFollowsList(list, habit) ? compareBySpelling(a, b, habit) : undefined;
}
