// A text broken in every way that a copy, a terminal, a full disk or a tool of fuzzing breaks one.

/** The same numbers in every run. */
export function* randoms(seed = 1): Generator<number, never> {
  let state = seed;
  for (;;) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    yield state / 2 ** 32;
  }
}

/** FETTLE_SEED draws other changes, FETTLE_MUTATIONS another number of them for each reader: some 500 of each way. */
export const seed = Number(process.env.FETTLE_SEED ?? 1);
export const mutationsTried = Number(process.env.FETTLE_MUTATIONS ?? 10_000);

/** Every beginning of a text. */
export function* truncations(text: string): Generator<string> {
  for (let end = 0; end < text.length; end++) yield text.slice(0, end);
}

export interface Changing {
  readonly count: number;
  /** Texts that words are taken from and put in. */
  readonly others?: readonly string[];
}

export interface Changed {
  readonly text: string;
  /** How it was changed, and by which numbers, so that it can be made again. */
  readonly how: string;
}

/** A text changed in one way or two, so often; the same ones for a seed. */
export function* changedTexts(text: string, { count, others = [] }: Changing): Generator<Changed> {
  const random = randoms(seed * 7919 + text.length);
  const dice: Dice = (below) => Math.floor(random.next().value * below);
  const names = Object.keys(ways);
  for (let done = 0; done < count; done++) {
    const used = [names[done % names.length]!, ...(dice(4) === 0 ? [names[dice(names.length)]!] : [])];
    const changed = used.reduce((now, name) => ways[name]!(now, dice, others), text);
    yield { text: changed, how: `seed ${seed}, change ${done}: ${used.join(', then ')}` };
  }
}

/** A whole number from 0 up to one below. */
type Dice = (below: number) => number;
type Way = (text: string, dice: Dice, others: readonly string[]) => string;

const put = ['\n', ' ', '\t', ':', '"', '{', ']', '|', '0', '9', 'mm', '\ud83d', '\u202e', '<', '&#', ',', '×', '\\'];
const units = /(?<=\d) ?(?:mm|cm|in|GiB|[kMGT]B|MT\/s|MHz|GHz|[GM]b\/s|GT\/s|rpm|RPM|W|V|A|Hz|°C|g|kg|bits?)\b/g;

const of = (all: readonly string[], dice: Dice): string => all[dice(all.length)] ?? '';
const instead = (text: string, start: number, end: number, piece: string): string =>
  text.slice(0, start) + piece + text.slice(end);

/** One of the places where an expression is found, written anew; the text as it is where there is none. */
function anew(text: string, all: RegExp, dice: Dice, write: (found: string) => string): string {
  const places = [...text.matchAll(all)];
  const one = places[dice(places.length)];
  return one ? instead(text, one.index, one.index + one[0].length, write(one[0])) : text;
}

/** The lines with their ends, changed. */
function byLines(text: string, dice: Dice, change: (lines: string[], at: number, to: number) => void): string {
  const lines = text.split(/(?<=\n)/);
  change(lines, dice(lines.length), dice(lines.length));
  return lines.join('');
}

function otherNumber(found: string, dice: Dice): string {
  const at = dice(found.length);
  const forms = [
    () => found.slice(0, at) + found.slice(at + 1),
    () => instead(found, at, at, String(dice(10))),
    () => instead(found, at, at + 1, String(dice(10))),
    () => String(dice(100_000)),
    () => `-${found}`,
    () => `${found}.${dice(100)}`,
    () => `${found},${dice(1000)}`,
    () => found + '0'.repeat(dice(30)),
  ];
  return forms[dice(forms.length)]!();
}

const ways: Readonly<Record<string, Way>> = {
  'a bit turned': (text, dice) => {
    const at = dice(text.length);
    return instead(text, at, at + 1, String.fromCharCode(text.charCodeAt(at) ^ (1 << dice(7))));
  },
  'a sign replaced': (text, dice) => {
    const at = dice(text.length);
    return instead(text, at, at + 1, of(put, dice));
  },
  'a sign put in': (text, dice) => {
    const at = dice(text.length);
    return instead(text, at, at, of(put, dice));
  },
  'signs left out': (text, dice) => {
    const at = dice(text.length);
    return instead(text, at, at + 1 + dice(12), '');
  },
  'signs said again elsewhere': (text, dice) => {
    const [at, from] = [dice(text.length), dice(text.length)];
    return instead(text, at, at, text.slice(from, from + 40));
  },
  'a line left out': (text, dice) => byLines(text, dice, (lines, at) => void lines.splice(at, 1)),
  'a line twice': (text, dice) => byLines(text, dice, (lines, at) => void lines.splice(at, 0, lines[at]!)),
  'two lines changed about': (text, dice) =>
    byLines(text, dice, (lines, at, to) => {
      [lines[at], lines[to]] = [lines[to]!, lines[at]!];
    }),
  'a line joined to the next': (text, dice) => anew(text, /\r?\n/g, dice, () => ' '),
  'another number': (text, dice) => anew(text, /\d+/g, dice, (found) => otherNumber(found, dice)),
  'a unit left out': (text, dice) => anew(text, units, dice, () => ''),
  'another unit': (text, dice) =>
    anew(text, units, dice, () => of([' mm', ' cm', ' GB', ' MB', ' MT/s', ' MHz', 'Gb/s'], dice)),
  'a word of another': (text, dice, others) => {
    const words = (of(others, dice) || text).split(/(?<=[\s,:"<>])/);
    return anew(text, /[^\s,:"<>]+/g, dice, () => of(words, dice).trim());
  },
  'a line of another': (text, dice, others) =>
    byLines(text, dice, (lines, at) => void lines.splice(at, 0, of((of(others, dice) || text).split(/(?<=\n)/), dice))),
  'other line ends': (text, dice) => text.replaceAll(/\r?\n/g, of(['\r\n', '\r', '\n\r', '\u2028', '\n\n'], dice)),
  'a zero byte': (text, dice) => {
    const at = dice(text.length);
    return instead(text, at, at, '\0'.repeat(1 + dice(3)));
  },
  'a mark of the byte order': (text) => `\uFEFF${text}`,
  'a long line': (text, dice) => anew(text, /[^\s]+/g, dice, (found) => `${found} `.repeat(1 + dice(60))),
  'brackets in brackets': (text, dice) => {
    const [open, close] = of(['[]', '{}', '()', '<>'], dice);
    const depth = 1 + dice(90);
    return anew(text, /[^\s,:]+/g, dice, (found) => open!.repeat(depth) + found + close!.repeat(depth));
  },
};
