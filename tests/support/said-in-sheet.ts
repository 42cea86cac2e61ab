// Whether a fact that was read of a data sheet stands there: its figures whole, its words in a spelling of the trade.
import type { Drafted } from '../../server/src/core/sheets';

/** What counts or names, and is printed in words or by the thing itself: `dual channel`, `24-pin`, `6 Gb/s`. */
const inWords =
  /^standard$|^openings$|^edge$|generation|kind$|pins$|power-connectors|bays|class|ranks|channels|connector$|rails|front-cables|link|count|carries|modules|headers|ports|slots|holes/;

/** A name of memory tells its bandwidth in MB/s: eight bytes a transfer. Source: JEDEC, names of modules. */
const isRate = /fastest|speed/;

/** Between metric units, from inches, and from grams in a thousand. */
const factors = [1, 10, 1000, 0.1, 0.001, 25.4];

/** Other spellings of words that part files use. Common practice, in English and German. */
const spellings: readonly (readonly [RegExp, RegExp])[] = [
  [/^(?:UDIMM|RDIMM|LRDIMM|SO-DIMM|DIMM)$/i, /dimm|buffer|puffer|regist|pin/i],
  [/^(?:processor|chipset)$/, /cpu|prozessor|pch|chips/i],
  [/ATX|ITX/, /atx|itx|µatx/i],
  [/^tube/, /includ|inkl|beilieg|compound|paste/i],
  [/^(?:open|closed)$/, /fan|lüfter|axial|radial|blower/i],
  [/^(?:ceramic|silicone)/, /oxid|kera|cera|sili/i],
  [/^NVMe$/, /pci|nvm/i],
  [/^true$/, /\S/],
  [
    /^false$/,
    /\bno\b|non|nicht|nein|ohne|kein|\bn\b|steel|stahl|without|false|none|✗|not |unsupported|\bsem\b|\bsin\b|não|tidak/i,
  ],
  [/^(?:SATA data cable|I\/O shield|M\.2 screw)/, /kabel|cable|blende|shield|schraube|screw/i],
  [
    /^(?:front (?:USB|audio|panel)|fan|RGB|ARGB)/i,
    /usb|audio|áudio|panel|painel|fan|lüf|y-?kabel|address|lüfter|led|rgb|type-?c/i,
  ],
  [/^full height$/, /standard|volle/i],
  [/ screw$/, /schraube/i],
  [/^copper|aluminium|nickel/, /kupfer|copper|alu|nickel/i],
  [/^(?:insulating|conductive)$/, /leit|conduct/i],
  [/^(?:active|passive|none)$/, /aktiv|activ|pass/i],
  [/^passive$/, /fanless|lüfterlos|heat ?sink|kühlkörper/i],
  [/^(?:platinum|gold|silver|bronze|titanium|white)$/, /plat|gold|silb|silv|bron|tita|white|standard|80/i],
  [/^(?:fully|partly|no|fixed)/, /modul/i],
  [/^(?:PCIe|SATA|USB|HDMI|DP|DisplayPort)/, /pci|sata|gb\/s|usb|hdmi|dp|display/i],
];

const numbersIn = (text: string): number[] => {
  const joined = text.replace(/(?<=\d)[.,'’ ](?=\d{3}(?!\d))/g, '');
  return [...(text.match(/\d+(?:[.,]\d+)?/g) ?? []), ...(joined.match(/\d+(?:[.,]\d+)?/g) ?? [])].map((one) =>
    Number(one.replace(',', '.')),
  );
};

const unseen = /\p{Cf}/gu;
const letters = (text: string): string =>
  text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '');

/** Without tags, and with what entities stand for; escapes of JSON too. */
const shownText = (text: string): string =>
  text
    .replace(/<[^>]*>/g, ' ')
    .replace(/&(?:nbsp|#160);/g, ' ')
    .replace(/&#(\d{2,5});/g, (_, code: string) => String.fromCharCode(Number(code)))
    .replace(/&[a-z]{2,8};/gi, ' ')
    .replace(/\\u([0-9a-f]{4})/gi, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16)));

/** A piece of a sheet, with what is asked of it worked out once. */
class Near {
  private readonly numbers: ReadonlySet<number>;
  readonly letters: string;

  constructor(readonly text: string) {
    this.numbers = new Set(numbersIn(text));
    this.letters = letters(text);
  }

  /** Whether a figure stands there whole, be it in another unit. */
  has(asked: number): boolean {
    if (this.numbers.has(asked)) return true;
    return [...this.numbers].some((one) =>
      factors.some((factor) => Math.abs(one * factor - asked) <= 1e-6 * Math.max(1, asked)),
    );
  }
}

/**
 * What of some facts does not stand where they say: within so many lines of the one that they name, or anywhere. In
 * tables kept as text, a comma may part two cells.
 */
export function misfits(facts: readonly Drafted[], text: string, isTable: boolean, reach = 9): string[] {
  const lines = text.split(/\r\n?|\n|\f/);
  const known = new Map<number, Near>();
  const nearOf = (start: number): Near => {
    const there = known.get(start);
    if (there) return there;
    const here = start < 0 ? text : lines.slice(start, start + reach).join('\n');
    // Readers of pages pass over zero bytes, as the standard of HTML asks.
    const forms = [here, shownText(here), here.replaceAll('\0', ''), isTable ? here.replaceAll(',', ' , ') : ''];
    const near = new Near(forms.join('\n').replace(unseen, ''));
    known.set(start, near);
    return near;
  };
  return facts.flatMap((fact) => {
    // A mode and a list of sockets stand on several lines, and what slots hang on in a heading above them.
    const isOfSeveral =
      (/^(?:modes|sockets)$/.test(fact.path[0]!) && fact.said.includes('; ')) || fact.path.at(-1) === 'from';
    const near = nearOf(isOfSeveral || reach === Infinity ? -1 : (fact.line ?? 0) - 1);
    return [fact.value]
      .flat()
      .filter((value) => !isSaid(value, fact.path.join('.'), near))
      .map((value) => `${fact.path.join('.')}: ${value} <- line ${fact.line}, ${fact.said}`);
  });
}

function isSaid(value: string, path: string, near: Near): boolean {
  if (value === '{}') return true;
  const isThere = near.letters.includes(letters(value));
  if (/^sockets?$/.test(path) && isThere) return true;
  if (path === 'modes' && /\b(?:full ?|f|w?q|uwq)hd\b/i.test(near.text)) return true;
  if (
    !inWords.test(path) &&
    !numbersIn(value).every((one) => near.has(one) || (isRate.test(path) && near.has(one * 8)))
  )
    return false;
  if (isThere) return true;
  const words = (value.match(/\p{L}{3,}/gu) ?? []).filter((word) => !near.letters.includes(letters(word)));
  return words.every(
    (word) =>
      /^(?:dBA|rpm|mmH|CFM)$/.test(word) ||
      spellings.some(([ours, theirs]) => (ours.test(word) || ours.test(value)) && theirs.test(near.text)),
  );
}
