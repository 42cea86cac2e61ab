// Whether a note has the power supply opened, or hands or tools put into it.
import { mayFollow, passedOver } from './bench-lexicon';
import { names, verbForms, wordSet, type Token } from './clauses';
import type { SlipReader } from './handling-words';

const SUPPLY = wordSet('supply psu');
const OPEN = new Set([...verbForms('open dismantle disassemble'), ...wordSet('unseal')]);
const TAKE_OFF = new Set([
  ...verbForms('open unscrew remove lift pry undo pull take detach unclip prise pop crack'),
  ...wordSet('took taken'),
]);
const HOUSING = wordSet('cover housing lid shell top casing hood');
const REACH = verbForms('reach touch work solder measure probe poke stick insert clean put');
const INSIDE = wordSet('in into inside within');
const REPAIRERS = wordSet('repairer maker qualified service electrician workshop manufacturer');
const PASSED = wordSet('power unit faulty dead broken failed atx up old spare outer off screws');

const isSupply = (tokens: readonly Token[], at: number): boolean =>
  names(SUPPLY, tokens[at]!.word) &&
  !tokens[at]!.owns &&
  (mayFollow(tokens[at + 1]?.word) || /^(?:unit|apart|up|off|from|if|when|so)$/.test(tokens[at + 1]?.word ?? ''));

/** The supply from a place on, with nothing but passing words between; −1 where something else comes first. */
function supplyFrom(tokens: readonly Token[], from: number): number {
  for (let at = from; at < tokens.length; at++) {
    if (names(SUPPLY, tokens[at]!.word)) return isSupply(tokens, at) ? at : -1;
    if (!passedOver(tokens[at]!.word) && !PASSED.has(tokens[at]!.word)) return -1;
  }
  return -1;
}

/** “The supply’s cover”, “the cover of the supply”: where it ends. */
function housingFrom(tokens: readonly Token[], from: number): number {
  for (let at = from; at < tokens.length; at++) {
    const { word } = tokens[at]!;
    const next = tokens[at + 1]?.word ?? '';
    if (names(SUPPLY, word) && names(HOUSING, next))
      return at + 2 >= tokens.length || mayFollow(tokens[at + 2]!.word) || tokens[at + 2]!.word === 'off' ? at + 1 : -1;
    if (HOUSING.has(word) && /^(?:of|off|from)$/.test(next)) return supplyFrom(tokens, at + 2);
    if (!passedOver(word) && !PASSED.has(word)) return -1;
  }
  return -1;
}

/** “Open the supply”, “unscrew its cover”: what is opened stands right behind the verb. */
export const supplyOpened: SlipReader = ({ tokens }) => {
  if (tokens.some(({ word }) => names(REPAIRERS, word))) return undefined;
  for (const [i, { word }] of tokens.entries()) {
    const apart = tokens.findIndex((token, at) => at > i && token.word === 'apart');
    const housing = TAKE_OFF.has(word) ? housingFrom(tokens, i + 1) : -1;
    if (housing >= 0) return [i, housing];
    const opened =
      OPEN.has(word) || (/^tak/.test(word) && apart > 0) ? supplyFrom(tokens, i + 1 + Number(apart === i + 1)) : -1;
    if (opened >= 0) return [i, Math.max(opened, apart)];
    const inside = REACH.has(word) ? tokens.findIndex((token, at) => at > i && INSIDE.has(token.word)) : -1;
    const into = inside < 0 ? -1 : supplyFrom(tokens, inside + 1 + Number(tokens[inside + 1]?.word === 'of'));
    if (into >= 0 && !/^(?:put|insert|stick)/.test(word)) return [i, into];
  }
  return undefined;
};
