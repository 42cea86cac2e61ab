// Reads a unit word in a field of one dimension; a wrong word gets what it could have been meant to be.
import type { Dimension, QuantityProblemCode } from './types';
import { dimensions } from './dimensions';
import { slipsOf } from './slips';
import { unitNamed, unitSpelled, type UnitName } from './units';

export interface Fault {
  readonly code: QuantityProblemCode;
  /** A sentence without its end: what to write is added to it. */
  readonly why: string;
}

/** `texts` holds what could be written, best first. A fault beside a unit is a warning. */
export type UnitReading =
  | { readonly unit: UnitName; readonly texts: readonly string[]; readonly fault?: Fault }
  | { readonly unit?: undefined; readonly texts: readonly string[]; readonly fault: Fault };

const symbol = (name: UnitName): string => unitNamed(name).spellings[0];
const quoted = (texts: readonly string[]): string => texts.map((text) => `\`${text}\``).join(' or ');

/** The unit that `word` names in `dimension`, or what is wrong with it. `number` is only quoted. */
export function readUnit(word: string, number: string, dimension: Dimension, usual?: UnitName): UnitReading {
  const unit = unitSpelled(word, dimension);
  if (unit !== undefined) return { unit, texts: [word] };
  if (word === '') return missing(number, dimension, usual);
  return (
    unweighted(word, dimension) ??
    special(word, number, dimension) ??
    slipped(word, dimension) ??
    ofOtherDimension(word, number, dimension) ??
    unknown(word, dimension)
  );
}

function wrong(code: QuantityProblemCode, why: string, texts: readonly string[] = []): UnitReading {
  return { texts, fault: { code, why } };
}

function missing(number: string, dimension: Dimension, usual?: UnitName): UnitReading {
  const facts = dimensions[dimension];
  const offered = usual ?? facts.bare;
  if (offered !== undefined) return wrong('unit-missing', `\`${number}\` has no unit`, [symbol(offered)]);
  return wrong(
    'unit-missing',
    `\`${number}\` has no unit; add the one that is meant, such as ${quoted(facts.usual.slice(0, 3).map(symbol))}`,
  );
}

/** A level without its weighting is another quantity, by up to tens of decibels: it never becomes dBA. */
function unweighted(word: string, dimension: Dimension): UnitReading | undefined {
  if (dimension !== 'sound-level' || word !== 'dB') return undefined;
  return wrong('unit-unknown', '`dB` does not state its weighting; write `dBA` only where the sheet says dB(A)');
}

/** Mix-ups of two dimensions that deserve their own sentence. */
function special(word: string, number: string, dimension: Dimension): UnitReading | undefined {
  const written = `\`${number} ${word}\``;
  if (dimension === 'transfer-rate' && unitSpelled(word, 'frequency') !== undefined) {
    return wrong(
      'unit-of-other-dimension',
      `${written} is a frequency, and a memory's clock runs at half its transfer rate; write the transfers ` +
        `per second, in \`MT/s\``,
    );
  }
  if (dimension === 'temperature-difference' && word === '°C') {
    return wrong('unit-of-other-dimension', `${written} is a temperature; expected a difference of temperatures`, [
      'K',
    ]);
  }
  if (dimension === 'sound-power' && (word === 'dB' || unitSpelled(word, 'sound-level') !== undefined)) {
    return wrong(
      'unit-of-other-dimension',
      `${written} may be a level at the ear; a declared sound power is written in bels, \`B\`, one for every 10 dB`,
    );
  }
  if (dimension === 'sound-level' && unitSpelled(word, 'sound-power') !== undefined) {
    return wrong(
      'unit-of-other-dimension',
      `${written} is a declared sound power, which is no level at the ear; write the level in \`dBA\``,
    );
  }
  if (dimension === 'energy' && unitSpelled(word, 'charge') !== undefined) {
    return wrong('unit-missing', `${written} leaves out the battery's voltage; multiply by it and write the \`Wh\``);
  }
  if (dimension === 'data-rate' && unitSpelled(`${word}/s`, dimension) !== undefined) {
    return wrong('unit-of-other-dimension', `${written} is an amount of data; expected a rate`, [`${word}/s`]);
  }
  if (dimension === 'data-size' && word.endsWith('/s') && unitSpelled(word.slice(0, -2), dimension) !== undefined) {
    return wrong('unit-of-other-dimension', `${written} is a data rate; expected an amount of data`, [
      word.slice(0, -2),
    ]);
  }
  return undefined;
}

function slipped(word: string, dimension: Dimension): UnitReading | undefined {
  const meant = slipsOf(word, dimension);
  if (meant.length === 0) return undefined;
  const texts = meant.map(symbol);
  if (texts.length === 1)
    return wrong('unit-unknown', `\`${word}\` is not how ${dimensions[dimension].what} is written`, texts);
  const inBits = meant.filter((name) => unitNamed(name).notation === 'bits');
  const eightfold = inBits.length > 0 && inBits.length < meant.length;
  const differ = eightfold ? ', bytes or bits, which differ eightfold' : '';
  return wrong('unit-unknown', `\`${word}\` can mean ${quoted(texts)}${differ}`, texts);
}

function ofOtherDimension(word: string, number: string, dimension: Dimension): UnitReading | undefined {
  const other = (Object.keys(dimensions) as Dimension[]).find((each) => unitSpelled(word, each) !== undefined);
  if (other === undefined) return undefined;
  const { what, usual } = dimensions[dimension];
  return wrong(
    'unit-of-other-dimension',
    `\`${number} ${word}\` is ${dimensions[other].what}; expected ${what}, in ` +
      `${quoted(usual.slice(0, 2).map(symbol))}`,
  );
}

function unknown(word: string, dimension: Dimension): UnitReading {
  const { what, usual } = dimensions[dimension];
  return wrong(
    'unit-unknown',
    `\`${word}\` is not a unit in which ${what} is read; use ${quoted(usual.slice(0, 3).map(symbol))}`,
  );
}
