// What a sheet's title says of the part, where no line of the sheet says it.
import type { Kind } from '../parts/kinds';
import type { Line } from './columns';
import type { LooseLine } from './sheet';

/** What of a title is read, and under which label. */
const READ: Readonly<Partial<Record<Kind, readonly (readonly [label: string, words: RegExp])[]>>> = {
  memory: [
    ['Memory type', /\bDDR[345]\b/gi],
    ['Kit', /\b\d ?x ?\d{1,3} ?GB\b|\b\d{1,3} ?GB ?x ?\d\b/gi],
    ['Speed', /(?<![\d.])\d{4,5} ?(?:MT\/s|MHz)/gi],
    ['Module type', /\b(?:SO-?DIMM|UDIMM|RDIMM|LRDIMM|CUDIMM)\b/gi],
  ],
  drive: [
    ['Capacity', /(?<![\d.])\d{1,4}(?:\.\d{1,2})? ?[GT]B\b/gi],
    ['Form factor', /\bM\.2 22\d{2,3}\b|[23][.,]5[- ]?(?:in(?:ch)?\b|["”″]|zoll\b)/gi],
    ['Interface', /\b(?:NVMe|SATA|SAS)\b/gi],
  ],
  supply: [
    ['Rated power', /(?<![\d.])\d{3,4} ?W(?:att)?\b/gi],
    ['80 PLUS', /\b80 ?(?:PLUS|\+) (?:bronze|silver|gold|platinum|titanium)\b/gi],
    ['ATX version', /\bATX ?[23]\.\d\b/gi],
  ],
};

/** Lines without a label, as lists of modules have them. */
const LOOSE: Readonly<Partial<Record<Kind, typeof READ.memory>>> = {
  memory: [
    ...READ.memory!,
    ['Voltage', /(?<![\d.])1\.\d{1,3} ?V\b/gi],
    ['Rank', /\b(?:single|dual|quad)[ -]rank\b|\b[124]Rx\d{1,2}\b/gi],
    ['ECC', /\b(?:non-|on-die )?ECC\b/gi],
  ],
};

/** A title of several parts names the whole series. */
const SEVERAL = /\b(?:series|serie|family|familie|up to|bis zu|from|ab|range)\b| \/ |\bvs\b/i;

/** Lines for what a line without a label says once, and plainly. */
export function looseLines(kind: Kind, loose: readonly LooseLine[]): readonly Line[] {
  const read = LOOSE[kind] ?? [];
  return loose
    .filter(({ text }) => text.length <= 60 && !SEVERAL.test(text))
    .flatMap(({ text, line }) => linesIn(read, text, line));
}

/** Lines for what a title says once, and plainly. */
export function titleLines(kind: Kind, title: string | undefined): readonly Line[] {
  if (title === undefined || title.length > 120 || SEVERAL.test(title)) return [];
  return linesIn(READ[kind] ?? [], title, 0);
}

const linesIn = (read: NonNullable<typeof READ.memory>, text: string, line: number): readonly Line[] =>
  read.flatMap(([label, words]): Line[] => {
    const found = new Set([...text.matchAll(words)].map(([one]) => one));
    const [only] = found;
    return found.size !== 1 ? [] : [{ label, heading: '', text: only!, line, isLoose: true, isUnsure: false }];
  });
