// The least signal word that a caution’s consequence calls for, read by clauses and lists of words.
import { names, clausesOf, wordSet, type Clause, type Token } from './clauses';
import * as lists from './injury-lexicon';
import { signalWordFor, type SignalWord, type SignalWordFacts } from './signal-words';

type Injury = SignalWordFacts['injury'];
const RANK: readonly SignalWord[] = ['NOTICE', 'CAUTION', 'WARNING', 'DANGER'];

/** Whether one word is weaker than another. Source: ANSI Z535.4. */
export const weaker = (word: SignalWord, than: SignalWord): boolean => RANK.indexOf(word) < RANK.indexOf(than);

/**
 * The least word for what a consequence says: how badly someone is hurt, and whether it will or could happen. What it
 * does not say plainly is never graded higher. Undefined where none of the words is found. English only. Never throws.
 */
export function wordFor(consequence: string): SignalWord | undefined {
  let least: SignalWord | undefined;
  const clauses = clausesOf(consequence);
  const cell = clauses.some(({ tokens }) => tokens.some(({ word }) => names(lists.CELLS, word)));
  for (const clause of clauses) {
    const live = undenied(clause);
    for (const [i, token] of clause.tokens.entries()) {
      if (!live[i]) continue;
      const injury = injuryAt(clause.tokens, i, token.word, cell);
      const word = injury && signalWordFor(injury, likelihood(clause.tokens, i));
      if (word && (least === undefined || weaker(least, word))) least = word;
    }
  }
  return least;
}

/** Words that nothing denies: “nobody is hurt” says no injury, “without gloves it could kill” does. */
function undenied({ tokens, opener }: Clause): boolean[] {
  let denied: 'to the end' | 'until told' | undefined;
  return tokens.map(({ word }, i) => {
    if (lists.DENIES.has(word) || word.endsWith("n't")) {
      const adjective = word === 'without' || (word === 'no' && !someone(tokens.slice(i + 1, i + 3)));
      denied = adjective || /^(?:if|unless|when)$/.test(opener ?? '') ? 'until told' : 'to the end';
      if (tokens[i + 1]?.word === 'only') denied = undefined;
    } else if (denied === 'until told' && (lists.MODAL.has(word) || /^(?:it|they|this|you|that)$/.test(word)))
      denied = undefined;
    return denied === undefined;
  });
}

const someone = (tokens: readonly Token[]): boolean =>
  tokens.some(({ word }) => names(lists.PERSON, word) || names(lists.BODY, word));

/** How sure it is, by the last word before the injury: “it will ruin the board and could kill” is no danger. */
function likelihood(tokens: readonly Token[], at: number): 'will' | 'could' {
  const last = tokens.slice(0, at + 1).findLast(({ word }) => lists.MODAL.has(word));
  return last?.word === 'will' ? 'will' : 'could';
}

function injuryAt(tokens: readonly Token[], i: number, word: string, cell: boolean): Injury | undefined {
  if (isSerious(tokens, i, word, cell)) return 'death or serious injury';
  if (isInjury(tokens, i, word)) return 'minor or moderate injury';
  const shutsDown = /^shuts?$/.test(word) && tokens[i + 1]?.word === 'down';
  return lists.DAMAGE.has(word) || shutsDown ? 'none' : undefined;
}

const wordAt = (tokens: readonly Token[], i: number): string => tokens[i]?.word ?? '';

/** A part of a body, and not one of a machine: “the back” and not “the back plate”. */
function isBody(tokens: readonly Token[], i: number): boolean {
  const word = wordAt(tokens, i);
  let before = i - 1;
  while (lists.DETERMINER.has(wordAt(tokens, before))) before -= 1;
  if (lists.NOT_BODY_BEHIND.has(wordAt(tokens, before)) || lists.NOT_BODY_BEFORE.has(wordAt(tokens, i + 1)))
    return false;
  if (names(lists.BODY, word) || lists.SENSE.has(word)) return true;
  if (!lists.BODY_OR_PART.has(word)) return false;
  const next = wordAt(tokens, i + 1);
  return (lists.DETERMINER.has(wordAt(tokens, i - 1)) || word === 'feet') && (next === '' || ENDS.has(next));
}
const ENDS = wordSet('and or when while if at in on to before within once badly with by from through');

/** What a verb is done to: a person or a body, a thing that is named, or nothing that is said. */
function objectOf(tokens: readonly Token[], verb: number): 'person' | 'thing' | 'none' {
  const first = wordAt(tokens, verb + 1);
  if (first === '' || ENDS.has(first) || /ly$|^(?:even|too|instantly|at)$/.test(first)) {
    return first !== '' && first !== 'or' && first !== 'and' && hitsBody(tokens, verb) ? 'person' : 'none';
  }
  for (let i = verb + 1; i < Math.min(tokens.length, verb + 5); i++)
    if (names(lists.PERSON, wordAt(tokens, i)) || isBody(tokens, i)) return 'person';
  return /^(?:the|a|an|its|any|your|of|to)$/.test(first) && tokens.length <= verb + 2 ? 'none' : 'thing';
}

/** A body within a few words behind a verb, or a person right behind it. */
function hitsBody(tokens: readonly Token[], verb: number): boolean {
  for (let i = verb + 1; i < Math.min(tokens.length, verb + 8); i++) {
    if (lists.MODAL.has(wordAt(tokens, i))) return false;
    if (isBody(tokens, i) || (i <= verb + 2 && names(lists.PERSON, wordAt(tokens, i)))) return true;
  }
  return false;
}

/** Who or what stands before the first “could” or “will” of a clause. */
function subjectOf(tokens: readonly Token[], verb: number): 'person' | 'thing' | 'none' {
  const modal = tokens.findIndex(({ word }) => lists.MODAL.has(word));
  const before = tokens.slice(0, modal >= 0 && modal < verb ? modal : verb);
  if (before.some(({ word }, i) => names(lists.PERSON, word) || isBody(before, i))) return 'person';
  return before.length === 0 ? 'none' : 'thing';
}

const SERIOUS: readonly ((tokens: readonly Token[], i: number, word: string, cell: boolean) => boolean)[] = [
  (tokens, i, word) => lists.KILL.has(word) && objectOf(tokens, i) !== 'thing',
  (tokens, i, word) =>
    /^(?:die|dies|died)$/.test(word) &&
    (lists.MODAL.has(wordAt(tokens, i - 1)) || word !== 'die') &&
    subjectOf(tokens, i) !== 'thing',
  (tokens, i, word) =>
    lists.DEATH.has(word) && !/^(?:errors?|of|crash)$/.test(wordAt(tokens, i + 1)) && personal(tokens, i),
  (_tokens, _i, word) => /^(?:electrocut|amputat|asphyxia|life-threat)/.test(word),
  (tokens, i, word) => /^blind(?:s|ed|ness|ing)?$/.test(word) && objectOf(tokens, i) !== 'thing',
  (tokens, i, word) => lists.SEVERE.has(word) && severely(tokens, i),
  (tokens, i, word) => lists.LOSE.has(word) && lostAt(tokens, i),
  (tokens, i, word) => lists.DESTROYS.has(word) && sightAt(tokens, i),
  (tokens, i, word) =>
    word === 'heart' && /^(?:stop|attack|failure)/.test(wordAt(tokens, i + 1) || wordAt(tokens, i - 2)),
  (tokens, i, word) => word === 'heart' && /^stop/.test(wordAt(tokens, i - 1) + wordAt(tokens, i - 2)),
  (_tokens, _i, word) => word === 'cardiac' || lists.IGNITE.has(word),
  (tokens, i, word) => lists.FIRE.has(word) && !firesUp(tokens, i),
  (tokens, i, word) => word === 'burn' && burnsDown(tokens, i),
  (tokens, i, word) => word === 'bone' && wordAt(tokens, i - 1) === 'the' && wordAt(tokens, i - 2) === 'to',
  (tokens, i, word) => (word === 'sever' || (word === 'cut' && wordAt(tokens, i + 1) === 'off')) && hitsBody(tokens, i),
  (tokens, i, word) => /^(?:cuts?|takes?|tears?|rips?|shears?)$/.test(word) && takesOff(tokens, i),
  (tokens, _i, word) =>
    /^burn/.test(word) &&
    tokens.some((token) => /^(?:tissue|internal|internally|throat|gullet|stomach)$/.test(token.word)),
  (_tokens, _i, word, cell) => cell && /^(?:explode|explodes|explosion|swallow|swallows|swallowed)$/.test(word),
  (tokens, _i, word) =>
    /^shocks?$/.test(word) && tokens.some((token) => /^(?:mains|230|120|240|400)$/.test(token.word)),
  (tokens, i, word) => word === 'breathing' && /^stop/.test(wordAt(tokens, i - 1)),
];
const isSerious = (tokens: readonly Token[], i: number, word: string, cell: boolean): boolean =>
  SERIOUS.some((test) => test(tokens, i, word, cell));

const personal = (tokens: readonly Token[], i: number): boolean =>
  !/^(?:drive|disk|ssd|board|data|thread|card|sudden)$/.test(wordAt(tokens, i - 1)) &&
  !(/^suffocat/.test(wordAt(tokens, i)) && objectOf(tokens, i) === 'thing');

/** “Serious burns”, “injured badly”; not “serious burn marks”. */
function severely(tokens: readonly Token[], i: number): boolean {
  const places = [i + 1, i + 2, i - 1, ...(someone(tokens.slice(i - 1, i)) ? [i - 2, i - 3] : [])];
  const at = places.find((place) => lists.WOUND.test(wordAt(tokens, place)));
  if (at !== undefined) return !/^(?:marks?|board|out|in|pins?|the)$/.test(wordAt(tokens, at + 1));
  return /^(?:cuts?|eye|nerve|shocks?)$/.test(wordAt(tokens, i + 1)) && !/^static/.test(wordAt(tokens, i + 1));
}

const lostAt = (tokens: readonly Token[], i: number): boolean =>
  [i + 1, i + 2, i + 3].some(
    (at) =>
      names(lists.LOST, wordAt(tokens, at)) &&
      tokens.slice(i + 1, at).every(({ word }) => lists.DETERMINER.has(word) || /^(?:of|you)$/.test(word)),
  );

/** “Cut the finger off”. */
const takesOff = (tokens: readonly Token[], i: number): boolean =>
  [i + 2, i + 3, i + 4].some((at) => wordAt(tokens, at) === 'off' && names(lists.LOST, wordAt(tokens, at - 1)));

const sightAt = (tokens: readonly Token[], i: number): boolean =>
  [i + 1, i + 2].some((at) => lists.SENSE.has(wordAt(tokens, at)));

/** “It could fire up the fans.” */
const firesUp = (tokens: readonly Token[], i: number): boolean =>
  /^(?:up|off|the|its|relay|relays)$/.test(wordAt(tokens, i + 1)) ||
  /^(?:could|will|may|can|sure|cease|rapid)$/.test(wordAt(tokens, i - 1));

/** “They could burn” is fire; “could burn the header” is not. */
function burnsDown(tokens: readonly Token[], i: number): boolean {
  const next = wordAt(tokens, i + 1);
  const subject = wordAt(tokens, i - 2);
  if (next === 'down') return true;
  const ends = next === '' || ((next === 'and' || next === 'or') && i + 2 < tokens.length);
  return ends && lists.MODAL.has(wordAt(tokens, i - 1)) && (subject === '' || names(lists.BURNS, subject));
}

const INJURING: readonly ((tokens: readonly Token[], i: number, word: string) => boolean)[] = [
  (tokens, i, word) =>
    lists.PERSONAL.has(word) && objectOf(tokens, i) !== 'thing' && !/^(?:pins?|data)$/.test(wordAt(tokens, i - 1)),
  (_tokens, _i, word) => lists.ALWAYS_INJURY.has(word),
  (tokens, i, word) => lists.TO_BODY.has(word) && (hitsBody(tokens, i) || isDoneToPerson(tokens, i)),
  (tokens, i, word) => lists.ILLS.has(word) && isBody(tokens, i - 1),
  (tokens, i, word) =>
    word === 'burns' &&
    /^(?:causes?|causing|suffer|get|gives?|of|and|or|minor|slight|painful|chemical|by)$/.test(wordAt(tokens, i - 1)) &&
    objectOf(tokens, i) !== 'thing',
  (tokens, i, word) => /^shocks?$/.test(word) && isElectric(tokens, i),
  (tokens, i, word) =>
    lists.INTO.has(word) && tokens.slice(0, i).some((token) => lists.GETS.has(token.word)) && bodyNext(tokens, i),
  (tokens, i, word) => lists.TOXIC.has(word) && names(lists.FUMES, wordAt(tokens, i + 1)),
  (tokens, i, word) => /^(?:breathe|breathing)$/.test(word) && !/^(?:room|space|holes?)$/.test(wordAt(tokens, i + 1)),
  (tokens, i, word) =>
    lists.STUMBLES.has(word) &&
    subjectOf(tokens, i) === 'person' &&
    /^(?:over|on|down|and|or|)$/.test(wordAt(tokens, i + 1)),
];
const isInjury = (tokens: readonly Token[], i: number, word: string): boolean =>
  INJURING.some((test) => test(tokens, i, word));

/** “Fingers could get caught”, “you could be burned”. */
const isDoneToPerson = (tokens: readonly Token[], i: number): boolean =>
  /^(?:be|get|gets|are|is|been|being)$/.test(wordAt(tokens, i - 1)) && subjectOf(tokens, i) === 'person';

const bodyNext = (tokens: readonly Token[], i: number): boolean =>
  isBody(tokens, i + 1) || (lists.DETERMINER.has(wordAt(tokens, i + 1)) && isBody(tokens, i + 2));

const NASTY = wordSet('a an nasty painful strong sharp bad severe small little mild');

/** An electric shock, or one that somebody gets; not a static one, nor one that a drive takes. */
function isElectric(tokens: readonly Token[], i: number): boolean {
  const before = tokens.slice(Math.max(0, i - 4), i).map(({ word }) => word);
  if (before.some((word) => /^(?:static|thermal|mechanical|heat)$/.test(word))) return false;
  if (before.some((word) => /^electric/.test(word))) return true;
  const give = before.findLastIndex((word) => /^gives?$/.test(word));
  const between = before.slice(give + 1);
  const given =
    give >= 0 && (between.some((word) => names(lists.PERSON, word)) || between.every((word) => NASTY.has(word)));
  const gets = before.some((word) => /^(?:get|gets|receive|suffer)$/.test(word)) && subjectOf(tokens, i) === 'person';
  const atAll = lists.MODAL.has(before.at(-1) ?? '') && i === tokens.length - 1;
  return given || gets || atAll || hitsBody(tokens, i);
}
