// Plain slips of the bench read out of free text: by clauses, word lists, and what denies them.
import { clausesOf, denials, type Clause } from './clauses';
import { bagAsMat, contactsTouched, heldByParts, unlessDenied, vacuumed, type SlipReader } from './handling-words';
import { hotTouched } from './hot-words';
import { findPressing } from './processor-pressed';
import type { PressedWhere } from './processor-said';
import type { StepKind } from './steps';
import { earthLifted } from './earth-words';
import { stripsChained } from './strip-words';
import { supplyOpened } from './supply-words';

export type HandlingMistake =
  | 'processor pressed'
  | 'contacts touched'
  | 'held by its parts'
  | 'vacuum cleaner'
  | 'bag as mat'
  | 'hot part touched'
  | 'supply opened'
  | 'earth lifted'
  | 'strips chained';

export interface SlipFound {
  /** The words that say it. */
  readonly words: string;
  readonly start: number;
  readonly end: number;
  /** Whether verb, object and the lack of another part leave no doubt; what is doubtful is to be read again. */
  readonly sure: boolean;
}

const READERS: Readonly<Record<Exclude<HandlingMistake, 'processor pressed'>, SlipReader>> = {
  'contacts touched': contactsTouched,
  'held by its parts': heldByParts,
  'vacuum cleaner': vacuumed,
  'bag as mat': bagAsMat,
  'hot part touched': hotTouched,
  'supply opened': supplyOpened,
  'earth lifted': earthLifted,
  'strips chained': stripsChained,
};

/** A word without which a text cannot say the slip: most notes are done with here. */
const KEYS: Readonly<Record<HandlingMistake, RegExp>> = {
  'processor pressed': /processor|cpu|apu|ihs|spreader/i,
  'contacts touched': /contact|pins?\b|gold|lands\b|socket|edge connector/i,
  'held by its parts': /\b(?:by|at)\b/i,
  'vacuum cleaner': /vacuum|hoover|\bvacs?\b/i,
  'bag as mat': /bags?\b|pouch/i,
  'hot part touched': /hot\b|stress|load|running|test|burn-in|benchmark/i,
  'supply opened': /supply|psu\b/i,
  'earth lifted': /earth|ground|third/i,
  'strips chained': /strips?\b|extension/i,
};

const ANY_KEY = new RegExp(
  Object.values(KEYS)
    .map((key) => key.source)
    .join('|'),
  'i',
);

/** Steps in which something else is set onto the processor: what is pressed onto it there is that. */
const ONTO_PROCESSOR: ReadonlySet<StepKind> = new Set<StepKind>([
  'fit cooler',
  'apply paste',
  'remove film',
  'clean surfaces',
  'fit back plate',
  'fit radiator',
  'fill loop',
]);

const whereOf = (kind: StepKind | undefined): PressedWhere => {
  if (kind === 'fit processor') return 'fits processor';
  return kind !== undefined && ONTO_PROCESSOR.has(kind) ? 'sets onto processor' : 'elsewhere';
};

/**
 * Whether a text may hold a slip at all: asked once of each note, it spares looking for each slip. “It” in a step
 * that fits the processor needs no such word.
 */
export const mayHoldSlip = (text: string, kind?: StepKind): boolean => kind === 'fit processor' || ANY_KEY.test(text);

/**
 * The first place where a text says what must not be done. A clause that denies it (“do not press the processor”)
 * or warns of it (“pressing the processor bends pins”) says nothing. English only. Never throws.
 * @param kind the step to which the text belongs.
 */
export function findSlip(text: string, slip: HandlingMistake, kind?: StepKind): SlipFound | undefined {
  const fits = slip === 'processor pressed' && kind === 'fit processor';
  if (!fits && !KEYS[slip].test(text)) return undefined;
  if (slip === 'processor pressed') {
    const found = findPressing(text, whereOf(kind));
    return found && { words: text.slice(found.from, found.to), start: found.from, end: found.to, sure: found.sure };
  }
  const clauses = clausesOf(text);
  for (const [i, clause] of clauses.entries()) {
    const place = unlessDenied(clause, READERS[slip](clause, clauses[i - 1], clauses[i + 1], clauses[i + 2]));
    if (!place) continue;
    const start = clause.tokens[place[0]]!.start;
    const { end } = clause.tokens[place[1]]!;
    return { words: text.slice(start, end), start, end, sure: true };
  }
  return undefined;
}

/** Words by which a caution shows which hazard it speaks of. Source: `CAUTIONS`; common practice. */
export const HAZARD_WORDS = {
  'coin cell': /\b(?:coin|button)[- ]?cells?\b|\bswallow|\bbatter(?:y|ies)\b/i,
  'sharp edges': /\bsharp\b|\bedges?\b.{0,400}?\bcut|\bcuts?\b.{0,400}?\b(?:finger|hand|skin)/i,
  'hot parts': /\bhot\b|\bburns?\b|\bcool(?:s|ed)?\s+down\b/i,
} as const;

const CELL = /\b(?:(?:coin|button|clock|CR\d{4})[- ]?(?:cells?|batter(?:y|ies))|CR\d{4}|CMOS\s+batter(?:y|ies))\b/i;

const LEFT = /^(?:leave|leaves|stays?|left)$/;

/** Whether a text has someone handle the clock’s cell; one that says to leave it alone does not. English only. */
export const handlesCell = (text: string): boolean =>
  CELL.test(text) && clausesOf(text).some((clause) => CELL.test(wordsOf(text, clause)) && !leavesAlone(clause));

const wordsOf = (text: string, { tokens }: Clause): string =>
  tokens.length === 0 ? '' : text.slice(tokens[0]!.start, tokens.at(-1)!.end);

/** What is read about a cell handles none. */
const READ_ABOUT = /^(?:read|reads|pages?|chapters?|sections?|handbooks?|manuals?|leaflets?)$/;

const leavesAlone = ({ tokens }: Clause): boolean =>
  denials(tokens, 0, tokens.length) > 0 || tokens.some(({ word }) => LEFT.test(word) || READ_ABOUT.test(word));

export type Hazard = keyof typeof HAZARD_WORDS;

export const speaksOf = (hazard: Hazard, text: string): boolean => HAZARD_WORDS[hazard].test(text);
