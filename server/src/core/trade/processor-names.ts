// Whether two spellings name one socket, or one processor family or model. Source: common practice throughout.
import { SOCKET_NAMES } from './names';
import { plainLetters, vocabulary, wordOf, type Vocabulary } from './vocabulary';

/** Sockets that the standard's list leaves out. */
const MORE = ['AM2+', 'AM3+', 'FM2+', 'TR4', 'sTRX4', 'sWRX8', 'sTR5', 'LGA1954'].filter(
  (name) => !SOCKET_NAMES.includes(name),
);

function spellingsOf(name: string): string[] {
  const number = /^LGA(\d{3,4})$/.exec(name)?.[1];
  const array = /^(?:LGA|BGA)/.test(name) ? [`FC${name}`, `Socket FC${name}`] : [];
  const bare = number === undefined ? [] : [number, `Socket ${number}`, `S${number}`, `Socket H ${number}`];
  return [`Socket ${name}`, `${name} socket`, `CPU socket ${name}`, `S${name}`, ...array, ...bare].filter(
    (one) => !(/^S[A-Z]*\d/.test(one) && SOCKET_NAMES.includes(one)),
  );
}

/** Sockets that have a name and are printed by their contacts as well. Source: processor makers’ data sheets. */
const CONTACTS: ReadonlyMap<string, readonly string[]> = new Map([
  ['AM4', ['PGA1331', 'uOPGA1331', 'µOPGA1331']],
  ['AM5', ['LGA1718', 'FCLGA1718']],
  ['SP5', ['LGA6096', 'FCLGA6096']],
]);

/** Contacts that several sockets have, whose processors do not interchange. Source: processor makers’ data sheets. */
const SHARED_CONTACTS: Readonly<Record<string, readonly string[]>> = {
  LGA4094: ['SP3', 'SP3r2', 'TR4', 'sTRX4', 'sWRX8'],
  LGA4844: ['SP6', 'sTR5'],
};

export const SOCKET_WORDS: Vocabulary = vocabulary(
  'a processor socket',
  Object.fromEntries(
    [...SOCKET_NAMES, ...MORE].map((name) => [name, [...spellingsOf(name), ...(CONTACTS.get(name) ?? [])]]),
  ),
  SHARED_CONTACTS,
);

/** A socket outside the list is compared by its letters, without the word and without the mark of its package. */
const socketLetters = (text: string): string =>
  wordOf(SOCKET_WORDS, text) ??
  plainLetters(text.replace(/^\s*(?:cpu |processor )?socket\b/i, '')).replace(/^fc(?=[lbp]ga)/, '');

/** True when two spellings name one socket; a revision makes another one. */
export const sameSocket = (a: string, b: string): boolean => socketLetters(a) === socketLetters(b);

/** Sockets that coolers' lists name in one word, since one mounting kit fits them all. */
const CLASSES: ReadonlyMap<string, readonly string[]> = new Map<string, readonly string[]>([
  ['115x', ['LGA1150', 'LGA1151', 'LGA1155', 'LGA1156']],
  ['20xx', ['LGA2011', 'LGA2011-3', 'LGA2066']],
  ...Object.entries(SHARED_CONTACTS).map(([name, all]) => [name.slice('LGA'.length), all] as const),
]);

/** A maker's name before a socket: `Calder LGA 1851`. */
const MAKER = /^\s?[a-z]{2,12} (?=(?:socket |fc)?(?:lga|am|fm|sp|str|tr) ?-?\d)/i;

/** The sockets of one line; a bare number behind another, as in `LGA 1851/1700`, is of the same kind. */
function socketsIn(line: string): string[] {
  let kind = '';
  return line.split(/[/,;&|]|\s(?:and|or|und|oder)\s/i).map((one) => {
    const name = one.replace(MAKER, '').trim();
    kind = /^[a-z]{2,4}(?=[ -]?\d)/i.exec(name)?.[0] ?? kind;
    return /^\d{3,4}x?$/i.test(name) ? kind + name : name;
  });
}

/** Does a line of a cooler's list, `LGA1700`, `AM4 and AM5`, `LGA 1851 | 1700` or `LGA115x`, name this socket? */
export function listsSocket(line: string, socket: string): boolean {
  return socketsIn(line).some((one) => {
    const letters = socketLetters(one);
    const classed = CLASSES.get(letters.replace(/^(?:socket)?(?:fc)?(?:lga)?/, ''));
    return letters === socketLetters(socket) || (classed?.some((name) => sameSocket(name, socket)) ?? false);
  });
}

const NOISE: ReadonlySet<string> = new Set(['series', 'processor', 'processors', 'cpu', 'cpus', 'family', 'desktop']);

/** The words of a name without those that say nothing: `Calder C7 Series Processors` is `calder c7`. */
function wordsOf(name: string, maker: string): string[] {
  const words = name
    .replace(/[®™©]/g, ' ')
    .normalize('NFKC')
    .toLowerCase()
    .replace(/\((?:r|tm)\)/g, ' ')
    .split(/[\s()\-_]+/)
    .filter((word) => word !== '' && !NOISE.has(word));
  const makers = maker.toLowerCase().split(/[\s()\-_]+/);
  return makers.length > 0 && makers.every((word, i) => word !== '' && words[i] === word)
    ? words.slice(makers.length)
    : words;
}

/**
 * True when two texts name one family or model: case, blanks, hyphens, `Series`, `Processor` and the maker before it do
 * not matter. Where no maker is stated, one first word more is taken for the maker.
 */
export function sameProcessorName(a: string, b: string, maker?: string): boolean {
  const [one, other] = [wordsOf(a, maker ?? ''), wordsOf(b, maker ?? '')];
  const same = (x: readonly string[], y: readonly string[]): boolean => x.length > 0 && x.join('') === y.join('');
  if (same(one, other)) return true;
  if (maker !== undefined) return false;
  return same(one.slice(1), other) || same(one, other.slice(1));
}
