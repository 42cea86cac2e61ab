// Whether a note has the processor pressed: verb of force, what it is done to, and what denies it.
import {
  BE,
  FINITE,
  FORCE,
  FORCE_ALONE,
  FORCE_NOUN,
  FORCE_OR_NOUN,
  GIVING,
  isOtherPart,
  LID,
  mayFollow,
  PASSIVE_FORCE,
  passedOver,
  PROCESSOR,
  PROCESSOR_WHEN_FITTING,
  SOFT,
  SOFTWARE,
  WARNS,
} from './bench-lexicon';
import { endsLabel, leverFollows, remember, retracted, type PressedWhere, type Said } from './processor-said';
import { clausesOf, denials, names, wordSet, type Clause, type Token } from './clauses';

/** Words of a clause that have the processor pressed; doubtful ones are to be read again by a person. */
export interface Pressing {
  readonly from: number;
  readonly to: number;
  readonly sure: boolean;
}

interface Context extends Readonly<Said> {
  readonly where: PressedWhere;
}

const PRONOUN = wordSet('it them');
const MODIFIES =
  wordSet(`a an the of with no some any little more much less firm light gentle slight even strong under by
  zero without extra good hard steady moderate considerable brute`);
const OUT = wordSet('out off up aside away open back under');
const CLOSES = /^(?:clos|lower|latch|lock|hook|clamp)ing$/;
const STATES = wordSet('takes needs requires took wants');

/** The first words that press the processor for sure, else the first that may. Time grows with the text alone. */
export function findPressing(text: string, where: PressedWhere): Pressing | undefined {
  const clauses = clausesOf(text);
  const said: Said = { other: false };
  let doubtful: Pressing | undefined;
  for (const [i, clause] of clauses.entries()) {
    if (clause.joint === 'stop' || clause.joint === 'then' || endsLabel(clause, clauses[i - 1])) delete said.denied;
    const found = pressingIn(clause, { ...said, where });
    if (found && !retracted(clauses[i + 1]) && said.denied !== 'yes' && said.denied !== 'open') {
      const sure = found.sure && said.denied === undefined && !(found.leans && leverFollows(clauses[i + 1]));
      const pressing = { from: found.from, to: found.to, sure };
      if (sure) return pressing;
      doubtful ??= pressing;
    }
    remember(said, clause, where);
  }
  return doubtful;
}

interface Found {
  readonly from: number;
  readonly to: number;
  readonly sure: boolean;
  /** Whether only “it”, or nothing, says what is pressed. */
  readonly leans?: boolean;
}

function pressingIn(clause: Clause, context: Context): Found | undefined {
  const { tokens, opener, asks } = clause;
  if (asks || ['if', 'whoever', 'unless', 'which', 'who', 'otherwise'].includes(opener ?? '')) return undefined;
  const elsewhere = ({ word }: Token, i: number): boolean => isOtherPart(word) && !(i === 0 && FORCE.has(word));
  if (tokens.some((token, i) => names(SOFTWARE, token.word) || elsewhere(token, i))) return undefined;
  for (const [i, { word }] of tokens.entries()) {
    const noun = FORCE_NOUN.has(word) && isNoun(tokens, i);
    const found = noun
      ? byNoun(clause, i, context)
      : (FORCE.has(word) && !isNamed(tokens, i)) ||
          SOFT.has(word) ||
          (word === 'bear' && tokens[i + 1]?.word === 'down')
        ? byVerb(tokens, i, context)
        : undefined;
    if (!found) continue;
    const count =
      denials(tokens, 0, i + 1) +
      (tokens.slice(i + 1).some(({ word: said }) => /^(?:nothing|none)$/.test(said)) ? 1 : 0);
    if (count % 2 === 1 || warns(tokens, i, context)) return undefined;
    const from = Math.min(found.from, i);
    return { ...found, from: tokens[from]!.start, to: tokens[found.to]!.end, sure: found.sure && count === 0 };
  }
  return undefined;
}

const isNoun = (tokens: readonly Token[], i: number): boolean =>
  MODIFIES.has(tokens[i - 1]?.word ?? '') ||
  (GIVING.has(tokens[i - 1]?.word ?? '') && !names(PROCESSOR, tokens[i + 1]?.word ?? '')) ||
  ['pressure', 'weight'].includes(tokens[i]!.word) ||
  (i === 0 && BE.has(tokens[1]?.word ?? ''));

/** “With one thumb on the CPU”: a noun, though it may be a verb as well. */
const isNamed = (tokens: readonly Token[], i: number): boolean =>
  FORCE_OR_NOUN.has(tokens[i]!.word) && i > 0 && !/^(?:and|to|you|then|must|please)$/.test(tokens[i - 1]!.word);

/** “Pressing it bends pins”: told as a warning, or as how things are. */
function warns(tokens: readonly Token[], i: number, { where }: Context): boolean {
  const rest = tokens.slice(i + 1);
  if (rest.some(({ word }, at) => WARNS.has(word) && !(word === 'how' && at === 0))) return true;
  return (
    tokens[i]!.word.endsWith('ing') && i === 0 && where === 'elsewhere' && rest.some(({ word }) => FINITE.has(word))
  );
}

type Thing = { readonly at: number; readonly is: 'processor' | 'lid' | 'pronoun'; readonly by: string } | undefined;

/** What a verb or a noun of force is done to, from a place on: whatever stands between must be known. */
function thingFrom(tokens: readonly Token[], from: number, where: PressedWhere): Thing {
  let by = '';
  for (let at = from; at < tokens.length; at++) {
    const { word } = tokens[at]!;
    if (PRONOUN.has(word)) return { at, is: 'pronoun', by };
    if (names(PROCESSOR, word) || (where === 'fits processor' && names(PROCESSOR_WHEN_FITTING, word)))
      return isWhole(tokens, at) ? { at, is: 'processor', by } : undefined;
    if (LID.has(word) && tokens[at + 1]?.word !== 'of') return { at, is: 'lid', by };
    if (/^(?:on|onto|upon|against|at|with|to|into|in)$/.test(word)) by = word;
    else if (!passedOver(word) && !LID.has(word)) return undefined;
  }
  return undefined;
}

/** Not part of a compound: “the CPU plug”, “the processor’s lever”. */
const isWhole = (tokens: readonly Token[], at: number): boolean => {
  const next = tokens[at + 1]?.word;
  if (tokens[at]!.owns)
    return next !== undefined && (PROCESSOR.has(next) || LID.has(next) || /^(?:corner|edge|side|top)/.test(next));
  return mayFollow(next);
};

function byVerb(tokens: readonly Token[], verb: number, context: Context): Found | undefined {
  const { word } = tokens[verb]!;
  const be = tokens.findLastIndex(({ word: said }, i) => i < verb && BE.has(said));
  if (PASSIVE_FORCE.has(word) && be >= 0) return passive(tokens, be, verb, context);
  const subject = subjectOf(tokens, verb, context);
  if (subject === 'no') return undefined;
  const thing = thingFrom(tokens, verb + 1, context.where);
  const sure = !SOFT.has(word) && subject === 'yes';
  if (!thing) return alone(tokens, verb, context, sure);
  if (thing.is === 'pronoun') return SOFT.has(word) ? undefined : pronoun(tokens, verb, thing.at, context, sure);
  return explicit(thing, verb, context, sure);
}

/** Who presses: a person, or “it”, which may be the lever. */
function subjectOf(tokens: readonly Token[], verb: number, { last }: Context): 'yes' | 'perhaps' | 'no' {
  const before = tokens[verb - 1]?.word ?? '';
  if (!/^(?:it|that|this|which)$/.test(before)) {
    const named = tokens.slice(0, verb).some(({ word }) => names(PROCESSOR, word));
    return named && /[^s]s$/.test(tokens[verb]!.word) ? 'no' : 'yes';
  }
  return last === 'other' ? 'no' : 'perhaps';
}

function explicit(
  { at, is, by }: NonNullable<Thing>,
  verb: number,
  context: Context,
  sure: boolean,
): Found | undefined {
  const onto = /^(?:on|onto|upon|against|at)$/.test(by);
  if (context.where === 'sets onto processor' && (onto || is === 'lid')) return undefined;
  if (is === 'lid' && context.where !== 'fits processor') return undefined;
  const lidOfIt = is !== 'lid' || (onto && context.lastOfThem === 'laid in' && !context.other);
  if (by === 'with') return undefined;
  return { from: verb, to: at, sure: sure && lidOfIt };
}

/** “It”: the processor where that was named last, or where the step fits it and nothing else was named. */
function pronoun(
  tokens: readonly Token[],
  from: number,
  at: number,
  { where, last, lastOfThem, other }: Context,
  sure: boolean,
): Found | undefined {
  const rest = tokens.slice(at + 1).map(({ word }) => word);
  if (rest.some((word) => OUT.has(word))) return undefined;
  const intoSocket = rest.includes('socket') && (rest.includes('into') || rest.includes('in'));
  const found = { from, to: at, leans: true };
  if (where === 'fits processor') {
    if (intoSocket) return { ...found, sure };
    if (last === 'other') return undefined;
    return { ...found, sure: sure && (!other || lastOfThem === 'laid in') };
  }
  return where === 'elsewhere' && last === 'processor' && !other ? { ...found, sure } : undefined;
}

/** A verb without an object: in a step that fits the processor it is done to that, unless something else was named. */
function alone(
  tokens: readonly Token[],
  verb: number,
  { where, last, lastOfThem, other }: Context,
  sure: boolean,
): Found | undefined {
  if (where !== 'fits processor' || last === 'other' || !FORCE_ALONE.has(tokens[verb]!.word)) return undefined;
  let to = verb;
  while (to + 1 < tokens.length && passedOver(tokens[to + 1]!.word)) to += 1;
  const open = to + 1 < tokens.length && !mayFollow(tokens[to + 1]!.word);
  if (open || tokens.slice(verb + 1).some(({ word }) => OUT.has(word))) return undefined;
  return { from: verb, to, sure: sure && (!other || lastOfThem === 'laid in'), leans: true };
}

/** “The processor is pressed down”, “it has to be pressed”. */
function passive(tokens: readonly Token[], be: number, verb: number, context: Context): Found | undefined {
  if (tokens.some(({ word }, i) => i > verb && word === 'by' && /^(?:the|its|a)$/.test(tokens[i + 1]?.word ?? '')))
    return undefined;
  for (let at = be - 1; at >= 0; at--) {
    const { word } = tokens[at]!;
    if (word === 'it' || word === 'they') {
      const found = pronoun(tokens, at, verb, context, true);
      return found && { ...found, to: verb };
    }
    const fits = context.where === 'fits processor' && names(PROCESSOR_WHEN_FITTING, word);
    if (names(PROCESSOR, word) || fits) return isWhole(tokens, at) ? { from: at, to: verb, sure: true } : undefined;
  }
  return undefined;
}

/** “Give it a firm push”, “seat it with gentle pressure”, “pressure on the CPU”. */
function byNoun({ tokens, opener }: Clause, noun: number, context: Context): Found | undefined {
  const { where } = context;
  const next = tokens[noun + 1]?.word ?? '';
  const seats = /^(?:seats|sets|settles)$/.test(next);
  const after =
    seats || /^(?:on|onto|to|against|upon|at)$/.test(next)
      ? thingFrom(tokens, noun + 1 + Number(seats), where)
      : undefined;
  const giving = tokens.findIndex(({ word }, i) => i < noun && GIVING.has(word));
  const start = giving >= 0 ? giving : noun;
  if (after?.is === 'pronoun') return pronoun(tokens, start, after.at, context, giving >= 0);
  if (after) return explicit(after, start, context, giving >= 0 || where === 'fits processor');
  if (giving < 0) return undefined;
  const states = STATES.has(tokens[giving]!.word);
  if (states && (opener === 'when' || tokens.some(({ word }) => CLOSES.test(word)))) return undefined;
  const before = states ? subject(tokens, giving, where) : thingFrom(tokens.slice(0, noun), giving + 1, where);
  if (!before) return where === 'fits processor' ? ofNothing(tokens, giving, noun, context, !states) : undefined;
  if (before.is === 'pronoun') {
    const found = pronoun(tokens, Math.min(giving, before.at), before.at, context, !states);
    return found && { ...found, to: noun };
  }
  const found = explicit({ ...before, by: '' }, Math.min(giving, before.at), context, true);
  return found && { ...found, to: noun };
}

function subject(tokens: readonly Token[], before: number, where: PressedWhere): Thing {
  return thingFrom(tokens.slice(0, before), 0, where);
}

function ofNothing(
  tokens: readonly Token[],
  giving: number,
  noun: number,
  context: Context,
  sure: boolean,
): Found | undefined {
  if (tokens.slice(giving + 1, noun).some(({ word }) => !passedOver(word))) return undefined;
  const found = alone([{ ...tokens[noun]!, word: 'press' }], 0, context, sure);
  return found && { ...found, from: giving, to: noun };
}
