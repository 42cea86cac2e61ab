// What a box holds beside the part, as sheets list it.
import { labelKey } from '../clean';
import { nothing, plain, type Taker } from '../taken';

/** Labels of such a list; no other field is read from one. */
export const isBoxLabel = (label: string): boolean => LABELS.has(labelKey(label));
const LABELS = new Set(
  [
    'package contents',
    'package content',
    'box contents',
    'contents',
    'accessories',
    'in the box',
    'what’s in the box',
    "what's in the box",
    'scope of delivery',
    'lieferumfang',
    'zubehör',
  ].map(labelKey),
);

const PAPER = /manual|guide|handbuch|anleitung|warranty|garantie|sticker|aufkleber|\bDVD\b/i;
/** The part itself. */
const ITSELF =
  /^(?:(?:grafik)?karte|lüfter|netzteil|card|(?:mother|main)?board|ssd|cooler|case|monitor|display|power supply)$/i;

/** Things that builds look for, by the name that they have there. */
const KNOWN: readonly (readonly [name: string, words: RegExp])[] = [
  ['SATA data cable', /^sata(?: data)?[ -](?:cables?|kabel)$|^sata-datenkabel$/i],
  ['I/O shield', /^i\/o[ -](?:shields?|blende)$/i],
  ['M.2 screw', /^m\.2[ -](?:screws?|schrauben?)$|^screws? for m\.2$|^m\.2 (?:ssd )?(?:mounting )?screws?$/i],
];

const named = (words: string, count: number): string => {
  const known = KNOWN.find(([, pattern]) => pattern.test(words))?.[0];
  return known ?? (count > 1 ? words.replace(/(?<=[a-z]{3})s$/, '') : words);
};

/** `2 x SATA data cables, I/O shield`: every thing of the list with how many; nothing where one is not plain. */
export const box: Taker = (value, { path }) => {
  const things: string[] = [];
  for (const piece of value.split(/\s?[,;•\n]\s?/)) {
    const [, many, words = ''] = /^(?:(\d{1,2}) ?[x×] ?)?(\p{L}[\p{L}\d ./-]{2,40})$/u.exec(piece.trim()) ?? [];
    if (PAPER.test(piece) || ITSELF.test(piece.trim())) continue;
    if (words === '' || /\b(?:ohne|without|no|not|optional|kein)\b/i.test(words)) return nothing;
    const count = Number(many ?? 1);
    things.push(count > 1 ? `${named(words, count)} x${count}` : named(words, count));
  }
  return things.length > 0 && things.length <= 20 ? plain({ path, value: things }) : nothing;
};
