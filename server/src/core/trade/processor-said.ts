// What the clauses before say: what “it” may stand for, and what a denial reaches.
import { FORCE, isOtherPart, LAYING_IN, PROCESSOR, SOFT, SOFTWARE, WARNS } from './bench-lexicon';
import { denials, isNegator, names, wordSet, type Clause, type Token } from './clauses';

/** Where a note stands: in a step that fits the processor, in one that sets something onto it, or elsewhere. */
export type PressedWhere = 'fits processor' | 'sets onto processor' | 'elsewhere';

/** What has been said so far: what “it” may stand for, and what a denial reaches. */
export interface Said {
  last?: 'processor' | 'other';
  lastOfThem?: 'laid in';
  other: boolean;
  denied?: 'open' | 'yes' | 'perhaps' | undefined;
}

const LIFTS = wordSet('lift raise open release unhook unlatch hook latch lock');

/** “Not, mind you, gently: press it”: only what stands right before the colon reaches behind it. */
export const endsLabel = ({ joint }: Clause, before: Clause | undefined): boolean =>
  joint === 'colon' && before !== undefined && denials(before.tokens, 0, before.tokens.length) === 0;

/** “…; that is wrong.” */
export const retracted = (next: Clause | undefined): boolean =>
  next !== undefined &&
  ['that', 'this', 'which', 'is'].includes(next.opener ?? next.tokens[0]?.word ?? '') &&
  (denials(next.tokens, 0, next.tokens.length) > 0 || next.tokens.some(({ word }) => WARNS.has(word)));

/** “Push it down, lift the lever …” speaks of the lever. */
export const leverFollows = (next: Clause | undefined): boolean => LIFTS.has(next?.tokens[0]?.word ?? '');

const BESIDE = wordSet('beside near by behind above below under underneath around between');
const SIDE = wordSet('next close left right top ahead');

/** “Beside the CPU”, “next to the processor”: it only says where something else is. */
function saysWhere(tokens: readonly Token[], at: number): boolean {
  let i = at - 1;
  while (i > 0 && /^(?:the|a|an|its|your|this|that)$/.test(tokens[i]!.word)) i -= 1;
  const before = tokens[i]?.word ?? '';
  return BESIDE.has(before) || (/^(?:to|of)$/.test(before) && SIDE.has(tokens[i - 1]?.word ?? ''));
}

/** Takes in what a clause names and denies. */
export function remember(said: Said, clause: Clause, where: PressedWhere): void {
  const { tokens } = clause;
  delete said.lastOfThem;
  for (const [i, { word }] of tokens.entries()) {
    if (isOtherPart(word) || names(SOFTWARE, word)) Object.assign(said, { last: 'other', other: true });
    else if (names(PROCESSOR, word)) {
      if (!saysWhere(tokens, i)) said.last = 'processor';
    } else if (where === 'fits processor' && LAYING_IN.has(word) && ['it', 'in'].includes(tokens[i + 1]?.word ?? ''))
      Object.assign(said, { last: 'processor', lastOfThem: 'laid in' });
  }
  if (said.last === 'processor' && tokens.some(({ word }) => LAYING_IN.has(word))) said.lastOfThem = 'laid in';
  carryDenial(said, clause);
}

/** What a denial reaches beyond its clause: “never press, push or force it”, “never, in any case, press it”. */
function carryDenial(said: Said, { tokens, opener }: Clause): void {
  const words = tokens.map(({ word }) => word);
  const at = words.findIndex(isNegator);
  const denied = denials(tokens, 0, tokens.length) % 2 === 1;
  const force = words.findLastIndex((word) => FORCE.has(word) || SOFT.has(word));
  if (opener !== undefined) {
    if (force >= 0 && force === words.length - 1) said.denied = opener === 'if' || denied ? 'yes' : undefined;
    return;
  }
  const ofThings = /^(?:no|zero|without)$/.test(words[at] ?? '');
  const reaches = at >= 0 && ((at <= 1 && !ofThings) || words[at + 1]?.endsWith('ing') === true);
  if (denied && words.length <= 2 && force < 0 && !ofThings) said.denied = 'open';
  else if (denied && reaches) said.denied = force === words.length - 1 ? 'yes' : 'perhaps';
  else if (said.denied === 'open' && force >= 0) said.denied = 'yes';
}
