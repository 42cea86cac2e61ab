// Free text cut into clauses and words, in time that grows with the text alone. English only.

/** A word in lower case, and where it stands. */
export interface Token {
  readonly word: string;
  readonly start: number;
  readonly end: number;
  /** Whether it owns what follows: “the processor’s lever”. */
  readonly owns: boolean;
}

/** What stands between a clause and the one before it. */
export type Joint = 'start' | 'stop' | 'colon' | 'comma' | 'then' | 'and' | 'word';

export interface Clause {
  readonly tokens: readonly Token[];
  readonly joint: Joint;
  /** The word that opens it: `until`, `if`, `then`; it is none of its tokens. */
  readonly opener?: string;
  /** Whether its sentence ends in a question mark. */
  readonly asks: boolean;
}

export const wordSet = (words: string): ReadonlySet<string> => new Set(words.trim().split(/\s+/));

/** Two words that are one: `heat sink` is read as `heatsink`. */
const COMPOUNDS: ReadonlyMap<string, string> = new Map(
  [
    'heat sink, heat sinks, heat spreader, heat pipe, heat pipes, load plate, back plate, push pin, push pins',
    'hot swap, hot plug, no one, water block, thumb screw, thumb screws, eye sight, finger tip, finger tips',
    'mother board, lint free, gold edge',
  ]
    .join(', ')
    .split(', ')
    .map((pair) => [pair, pair === 'no one' ? 'nobody' : pair.replace(' ', '')]),
);

const WORD = /[\p{L}\p{N}_]+(?:['’-][\p{L}\p{N}_]+|\.\d+)*/gu;

/** The words of a text with what stands before each. */
function tokensOf(text: string): { token: Token; gap: string }[] {
  const found: { token: Token; gap: string }[] = [];
  let end = 0;
  for (const match of text.matchAll(WORD)) {
    const said = match[0].toLowerCase().replaceAll('’', "'");
    const owns = said.endsWith("'s");
    const token = { word: owns ? said.slice(0, -2) : said, start: match.index, end: match.index + said.length, owns };
    const gap = text.slice(end, match.index);
    const last = found.at(-1);
    const pair = last && /^[\s-]+$/.test(gap) ? COMPOUNDS.get(`${last.token.word} ${token.word}`) : undefined;
    if (pair) last!.token = { ...token, word: pair, start: last!.token.start };
    else found.push({ token: { ...token, word: joined(token.word) }, gap });
    ({ end } = token);
  }
  return found;
}

const joined = (word: string): string => (word.includes('-') ? (COMPOUNDS.get(word.replace('-', ' ')) ?? word) : word);

/** Words that open a clause of their own. */
const OPENERS =
  wordSet(`but then until till while before after so because since which who whoever once when whenever if unless
  otherwise else although though whereas as-long-as`);

/** Verbs of the bench: behind “and” they begin another order. */
const ORDERS =
  wordSet(`add align apply bend blow boot build bring carry change check clamp clean click clip close connect
  cover cut do drain draw drop fasten feel fit fix fold force get give go grab grip hammer hit hold hook insert
  install jam keep knock latch lay lean leave let lift line lock look loosen lower make mask measure mount move
  nudge open peel pick place plug poke power press pull push put raise ram read release remove replace rest
  return rock rub run screw seat secure see set shove shut sit slam slide snap spread squeeze stand start stroke
  brush swap swing switch take tap tear test thread tighten tilt touch try turn twist undo unplug unscrew use wait watch
  wedge wiggle wipe work write`);

const isOrder = (word: string | undefined): boolean =>
  word !== undefined &&
  (ORDERS.has(word) ||
    (word.endsWith('ing') && (ORDERS.has(word.slice(0, -3)) || ORDERS.has(`${word.slice(0, -3)}e`))));

function jointOf(gap: string): Joint | undefined {
  if (/[.;!?\n]/.test(gap)) return 'stop';
  if (gap.includes(':')) return 'colon';
  return /[,()–—"“”]|\s-\s/.test(gap) ? 'comma' : undefined;
}

/** No clause that a person writes is longer; where one goes on, what looks through a clause stays quick. */
const LONGEST = 60;

/** The clauses of a text in their order. Never throws. */
export function clausesOf(text: string): Clause[] {
  const words = tokensOf(text);
  const clauses: { tokens: Token[]; joint: Joint; opener?: string; asks: boolean }[] = [];
  let sentence = 0;
  const open = (joint: Joint, opener?: string): void => {
    clauses.push({ tokens: [], joint, asks: false, ...(opener === undefined ? {} : { opener }) });
  };
  words.forEach(({ token, gap }, i) => {
    const joint = jointOf(gap);
    if (joint === 'stop') {
      if (gap.includes('?')) for (const clause of clauses.slice(sentence)) clause.asks = true;
      sentence = clauses.length;
    }
    const opens = OPENERS.has(token.word);
    if (opens)
      open(joint === 'stop' ? 'stop' : token.word === 'then' || token.word === 'but' ? 'then' : 'word', token.word);
    else if (clauses.length === 0) open('start');
    else if (joint && (clauses.at(-1)!.tokens.length > 0 || joint === 'stop')) open(joint);
    else if (clauses.at(-1)!.tokens.length >= LONGEST) open('comma');
    else if (token.word === 'and' && isOrder(words[i + 1]?.token.word)) open('and');
    if (!opens) clauses.at(-1)!.tokens.push(token);
  });
  if (words.length > 0 && text.slice(words.at(-1)!.token.end).includes('?'))
    for (const clause of clauses.slice(sentence)) clause.asks = true;
  return clauses;
}

/** Whether a list names a word, in the singular or in the plural. */
export const names = (list: ReadonlySet<string>, word: string): boolean =>
  list.has(word) ||
  (word.endsWith('s') && (list.has(word.slice(0, -1)) || (word.endsWith('es') && list.has(word.slice(0, -2)))));

/** All forms of regular verbs: `tap` with `taps`, `tapped`, `tapping`. */
export function verbForms(words: string): ReadonlySet<string> {
  const forms = [...wordSet(words)].flatMap((verb) => {
    if (verb.endsWith('e')) return [verb, `${verb}s`, `${verb}d`, `${verb.slice(0, -1)}ing`];
    const stem = /^[^aeiou]*[aeiou][^aeiouwxy]$/.test(verb) ? verb + verb.at(-1)! : verb;
    return [verb, `${verb}${/(?:s|sh|ch)$/.test(verb) ? 'es' : 's'}`, `${stem}ed`, `${stem}ing`];
  });
  return new Set(forms);
}

const NEGATORS =
  wordSet(`not never no zero without avoid avoids avoiding nothing nobody nor neither cannot refrain stop wrong
  mistake mistakes error forbidden banned instead rather unnecessary needless needlessly none dont mustnt neednt
  shouldnt wont cant doesnt unneeded hardly`);
export const isNegator = (word: string): boolean => NEGATORS.has(word) || word.endsWith("n't");

/** “The urge to press it”: nobody should; “resist the urge” says the same. */
const URGES = wordSet('temptation tempted urge resist');

/** “Do not hesitate to press it” is an order. */
const UNDOES_NOT = wordSet('hesitate forget afraid shy worry fear fail omit scared skip only');

/**
 * How often the words from one to another deny what follows. An even number, as in “don’t stop pressing”, leaves
 * it open.
 */
export function denials(tokens: readonly Token[], from: number, to: number): number {
  let count = 0;
  for (let i = from; i < to; i++) {
    const { word } = tokens[i]!;
    if (isNegator(word)) count += 1;
    else if (URGES.has(word)) count = Math.max(count, 1);
    else if (UNDOES_NOT.has(word) && count > 0) count -= 1;
  }
  return count;
}
