// Labels and values of a data sheet without what a page puts around them: marks of notes, trade marks, odd blanks.

/** Blanks of all kinds, and controls: what stands on both sides of one was never one figure. */
const odd = /[\u0000-\u001f\u007f-\u009f\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]/g;
const unseen = /[\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u2064\u2066-\u2069\ufeff]/g;

/** A text that is one plain line already. Nearly all are, and to see it takes a fraction of making them so. */
const isPlainLine = (text: string): boolean => /^(?:[!-~]+(?: [!-~]+)*)?$/.test(text) && !/\((?:R|TM|C)\)/.test(text);

/** One line with plain blanks, without characters that nobody sees and without trade marks. */
export const plainLine = (text: string): string => (isPlainLine(text) ? text : madePlain(text));

const madePlain = (text: string): string =>
  text
    .replace(odd, ' ')
    .replace(unseen, '')
    .replace(/[®™©]|\((?:R|TM|C)\)/g, '')
    .replace(/\s+/g, ' ')
    .trim();

/** A text without any of some characters at its ends; in time that grows with its length alone. */
export function trimEnds(text: string, characters: string): string {
  let [start, end] = [0, text.length];
  while (start < end && characters.includes(text[start]!)) start++;
  while (end > start && characters.includes(text[end - 1]!)) end--;
  return text.slice(start, end);
}

/** A mark behind a word that leads to a note: a star, a dagger, a raised figure; the cube of a metre is none. */
const mark = /(?:(?<![mt])[¹²³]|[⁴-⁹]|[*†‡§]|\[\d\]|⁾)$/;

/** A text without the marks of notes at its end, and the marks. */
export function withoutMarks(text: string): { readonly text: string; readonly marks: string } {
  let rest = text.trim();
  let marks = '';
  while (mark.test(rest)) {
    const [found] = mark.exec(rest)!;
    marks = found + marks;
    rest = rest.slice(0, -found.length).trimEnd();
  }
  return { text: rest, marks };
}

/** Letters and figures alone: as labels are compared. */
export const labelKey = (text: string): string =>
  isPlainLine(text) ? text.toLowerCase().replace(/[^a-z0-9+#]/g, '') : anyLabelKey(text);

const anyLabelKey = (text: string): string =>
  plainLine(text)
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}+#]/gu, '');

/** Words between bars, as a set. */
export const wordSet = (words: string): ReadonlySet<string> => new Set(words.split('|'));

const saysNothing = new Set([
  'na',
  'n/a',
  'tbd',
  'tba',
  'tbc',
  'k.a.',
  'k. a.',
  'keine angabe',
  'not specified',
  'unspecified',
  'unknown',
  'unbekannt',
  'see manual',
  'see website',
  '?',
]);

/** Whether a cell says that it says nothing. */
export const isBlank = (text: string): boolean =>
  /^[-–—./\s]*$/.test(text) || saysNothing.has(text.trim().toLowerCase());

/** `l6 GB`, `32OO MT/s`, `1O mm`: letters that a scan put where figures stood; which figure it was is not plain. */
const misread: readonly RegExp[] = [
  /(?<![\p{L}\d_-])[lIO]\d[\d.,lIO]{0,8} ?(?:[GT]B|MB\/s|MT\/s|MHz|rpm|k?g|[cm]?m|W|V|A)(?![\p{L}\d])/u,
  /(?<![\p{L}\d.,_-])\d[\d.,]{0,8}[lIO][\d.,lIO]{0,8}(?![\p{L}\d])/u,
];
export const isMisread = (text: string): boolean => misread.some((figures) => figures.test(text));

/** Labels and headings of what is not the part itself: its package, what is advised beside it, what it draws asleep. */
const elsewhere: readonly RegExp[] = [
  /\b(?:packag\w{0,14}|packing|carton|box(?:ed)?|gross|shipping|retail|pallet|versand\w{0,14}|brutto\w{0,14})\b/i,
  /verpackung|karton/i,
  /\b(?:recommended|suggested|required?|minimum|min|optional|empfohlen\w{0,14}|mindest\w{0,14}|minimal\w{0,14})\b/i,
  /\b(?:standby|stand-by|sleep|off|idle|storage temperature|non-?operating|bereitschaft\w{0,14})\b/i,
  /\b(?:tec|kwh|annual|yearly)\b/i,
  /\b(?:warranty|garantie|without|ohne|excluding|excl)\b/i,
];

export const isElsewhere = (text: string, kind?: string): boolean => {
  const own = text.replace(OF_ITSELF, ' ');
  return elsewhere.some((words) => words.test(kind === 'processor' ? own.replace(PACKAGE, ' ') : own));
};

/** A processor’s package is the processor. */
const PACKAGE = /\bpackage\b(?! (?:weight|dimension|content))/i;

/** Words that sound of something else, and are of the part. */
const OF_ITSELF =
  /package (?:specifications?|memory (?:format|type))|(?:without|ohne) (?:a |eine )?(?:cpu|processor|prozessor)/gi;

/** Words of a note or of brackets that take a value’s plainness away. */
const hedges: readonly RegExp[] = [
  /\b(?:optional\w{0,14}|sold separately|not included|depend\w{0,14}|only (?:with|for|when)|nur (?:mit|bei|für))\b/i,
  /\b(?:je nach|abhängig|overclock\w{0,14}|oc|up to|bis zu|max\.?|maximum|recommended|empfohlen|other models?)\b/i,
  /\b(?:vary|varies|estimated|approx\w{0,14}|ca\.?|about|theoretical)\b/i,
];

export const isHedged = (text: string): boolean => hedges.some((words) => words.test(text));
