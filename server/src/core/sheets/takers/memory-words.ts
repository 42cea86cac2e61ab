// Memory as sheets print it in one line: type, rate, class, kit, error correction.
import { rateOfBandwidth } from '../../trade/memory';
import { MEMORY_CLASS_WORDS, MEMORY_SHAPE_WORDS } from '../../trade/sheet-words';
import { sheetRanks } from '../../trade/sheet-forms';
import { wordOf, type Vocabulary } from '../../trade/vocabulary';

/** Generations that a text names, each once. */
export function typesIn(text: string): string[] {
  const found = [...text.matchAll(/\b(LP)?DDR-? ?([345])(X?)(?![0-9A-WYZa-z])/gi)].map(
    ([, low, generation, end]) => `${low ? 'LP' : ''}DDR${generation}${end ? 'X' : ''}`,
  );
  return [...new Set(found)];
}

/** The least that a module of a type runs at; below it, a figure in MHz is that of its clock. */
const LEAST: Readonly<Record<string, number>> = { DDR3: 1066, DDR4: 2133, DDR5: 4000 };

/**
 * The rates in MT/s that a text names, each once: `6000 MT/s`, `DDR5-6000`, `6000 MHz`, `PC5-48000`. Undefined where a
 * figure may be a clock.
 */
export function ratesIn(text: string, whole: string): number[] | undefined {
  const plain = text.replace(/(?<=\d)[.,](?=\d{3}(?:\D|$))/g, '');
  const types = typesIn(`${text} ${whole}`);
  const least = Math.max(0, ...types.map((type) => LEAST[type] ?? 0));
  const found = new Set<number>();
  for (const [, rate, unit] of plain.matchAll(
    /(?<![\d.-]|\d,)(\d{3,5})\+? ?(MT\/s|MTps|MT\/sec|MHz|Mbps|MT)(?![a-z])/gi,
  )) {
    if (/mhz/i.test(unit!) && Number(rate) < (least || 2133)) return undefined;
    found.add(Number(rate));
  }
  for (const [, rate] of plain.matchAll(/\bDDR[345][ -](\d{3,5})(?![\d.])/gi)) found.add(Number(rate));
  for (const [, bandwidth] of plain.matchAll(/\bPC[345]L?-(\d{4,6})[URES]?\b/gi)) {
    const rate = rateOfBandwidth(Number(bandwidth));
    if (rate !== undefined) found.add(rate);
  }
  return [...found];
}

/** Modules and the capacity of one: `32 GB (2 x 16 GB)`, `16GBx2`, `kit of 2`. */
export interface Kit {
  readonly modules?: number;
  readonly eachGb?: number;
  readonly wholeGb?: number;
}

const SEVERAL =
  /\bkit of (\d)\b|\b(\d)[ -]?(?:modules?|module?|dimms?|er-kit)\b|\b(dual|quad|single)[ -]?(?:channel )?kit\b/i;

export function kitIn(text: string): Kit {
  const plain = text.replace(/[×*]/g, 'x');
  const ahead = /(?<![\d.]|\d,)(\d{1,2}) ?x ?(\d{1,4}) ?GB/i.exec(plain);
  const behind = /(?<![\d.]|\d,)(\d{1,4}) ?GB ?x ?(\d{1,2})(?!\d)/i.exec(plain);
  const [modules, eachGb] = ahead
    ? [Number(ahead[1]), Number(ahead[2])]
    : behind
      ? [Number(behind[2]), Number(behind[1])]
      : [];
  const rest = plain.replace(ahead?.[0] ?? behind?.[0] ?? '', ' ');
  const whole = [...rest.matchAll(/(?<![\d.]|\d,)(\d{1,4}) ?GB\b/gi)].map(([, gb]) => Number(gb));
  const several = SEVERAL.exec(plain);
  const word = several?.[3]?.toLowerCase();
  const stated = word ? { dual: 2, quad: 4, single: 1 }[word] : Number(several?.[1] ?? several?.[2]) || undefined;
  return {
    ...((modules ?? stated) === undefined ? {} : { modules: (modules ?? stated)! }),
    ...(eachGb === undefined ? {} : { eachGb }),
    ...(new Set(whole).size === 1 ? { wholeGb: whole[0]! } : {}),
  };
}

const wordIn = (of: Vocabulary, text: string, pattern: RegExp): string | undefined => {
  const found = new Set([...text.matchAll(pattern)].map(([one]) => wordOf(of, one)));
  const [only] = found;
  return found.size === 1 ? only : undefined;
};

export const classIn = (text: string): string | undefined =>
  wordIn(
    MEMORY_CLASS_WORDS,
    text.replace(/\bs(?:em|in) b[uú]ff?er\b/gi, 'unbuffered'),
    /(?<![\w-])(?:un-?buffered|ungepuffert|non-buffered|regist(?:ered|riert)|load-reduced|[LCM]?[RU]-?DIMM)(?![\w-])/gi,
  );

export const shapeIn = (text: string): string | undefined =>
  wordIn(
    MEMORY_SHAPE_WORDS,
    text.replace(/\b(DDR[345])-(?=(?:SO-?)?DIMM)/gi, '$1 '),
    /(?<![\w-])(?:SO-?DIMM|LPCAMM2|CAMM2|(?:LR|CU|R|U)-?DIMM|DIMM|288-pin|260-pin|262-pin)s?(?![\w-])/gi,
  );

/** Whether error correction is there: `ECC`, `non-ECC`; chips that correct within themselves say nothing of it. */
export function eccIn(text: string): boolean | undefined {
  const plain = text.replace(/on-?die[ -]ecc/gi, ' ').replace(/nicht-ecc/gi, 'non-ecc');
  const without =
    /\b(?:non|no|without|ohne|sem|kein|nicht)[ -]?ecc\b|\becc[: ]{1,3}(?:no|nein|not|nicht|unsupported)\b/i.test(plain);
  const rest = plain.replace(/\b(?:non|no|without|ohne|sem|kein|nicht)[ -]?ecc\b/gi, ' ');
  const has = /\becc\b/i.test(rest) && !/\becc[: ]{1,3}(?:no|nein|not|nicht|unsupported)\b/i.test(rest);
  return has === without ? undefined : has;
}

export const ranksIn = (text: string): string | undefined => {
  const found = new Set(
    [...text.matchAll(/\b(?:[1248]R ?x ?\d{1,2}|[SDQ]R ?x ?\d{1,2}|(?:single|dual|quad)[ -]ranks?)\b/gi)].map(([one]) =>
      sheetRanks(one),
    ),
  );
  const [only] = found;
  return found.size === 1 ? only : sheetRanks(text);
};
