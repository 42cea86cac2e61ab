// Whether a note takes the mains’ earth away: the pin of a plug, its wire, or an adapter that has none.
import { mayFollow, passedOver } from './bench-lexicon';
import { names, verbForms, wordSet, type Token } from './clauses';
import type { SlipReader } from './handling-words';

const TAKE_AWAY = new Set([
  ...verbForms('lift remove cut bend break snap tape isolate disconnect defeat saw snip clip pull unscrew file'),
  ...wordSet('broken bent took taken take'),
]);
const LEAVE = verbForms('leave');
const UNCONNECTED = wordSet('unconnected disconnected off out open');
const EARTH = /^(?:earth|ground|earthing|grounding)$/;
const CONDUCTOR = wordSet('pin prong contact wire conductor core');
const OF_MAINS = wordSet('plug outlet supply cord');
const FEED = verbForms('use plug run feed connect take put power supply fit');
const FEEDER = wordSet('adapter adaptor plug lead cord socket outlet extension cable strip');
const UNEARTHED = wordSet('unearthed ungrounded');
/** Of a strap, a mat or an electrician’s work another earth is meant. */
const OTHERS = wordSet(`strap wristband mat wrist electrician clean cleaned straighten reject throw replace isolating
  earthed instead tie sticker plane`);

/** “The third prong”, “the third pin of the cord”: the earth’s, where the mains is spoken of. */
function thirdFrom(tokens: readonly Token[], from: number): number {
  const third = tokens.findIndex(({ word }, at) => at >= from && word === 'third');
  if (third < 0 || tokens.slice(from, third).some(({ word }) => !passedOver(word) && word !== 'off')) return -1;
  const conductor = tokens[third + 1]?.word ?? '';
  if (/^prongs?$/.test(conductor)) return third + 1;
  const ofMains = tokens.some(({ word }) => /^(?:cord|outlet|mains|wall)$/.test(word));
  return names(CONDUCTOR, conductor) && ofMains ? third + 1 : -1;
}

const isEarth = (word: string | undefined): boolean => EARTH.test(word ?? '');

/** “The earth pin”, “the earth of the supply”, “the earth at the plug”: its last word, from a place on. */
function earthFrom(tokens: readonly Token[], from: number): number {
  for (let at = from; at < tokens.length; at++) {
    const next = tokens[at + 1];
    if (isEarth(tokens[at]!.word)) {
      if (next && names(CONDUCTOR, next.word)) return at + 1;
      if (isIdiom(tokens, from, at)) return at;
      const of = /^(?:of|at|in)$/.test(next?.word ?? '') && tokens.slice(at + 2, at + 4).findIndex(isOfMains);
      return typeof of === 'number' && of >= 0 ? at + 2 + of : -1;
    }
    if (!passedOver(tokens[at]!.word) && !/^(?:off|away|out|mains|safety|protective)$/.test(tokens[at]!.word))
      return -1;
  }
  return -1;
}
/** “Lift the ground”, “defeat the earth”, with nothing behind: the idiom; “off the ground” is none. */
const isIdiom = (tokens: readonly Token[], from: number, at: number): boolean =>
  IDIOM.has(tokens[from - 1]?.word ?? '') &&
  tokens.slice(from, at).every(({ word }) => /^(?:the|its|your|mains|safety|protective)$/.test(word)) &&
  mayFollow(tokens[at + 1]?.word);
const IDIOM = verbForms('lift defeat');
const isOfMains = ({ word }: Token): boolean => names(OF_MAINS, word);

/** “An adapter without earth”, “a socket that has no earth”: the feeder, so that `without` denies nothing. */
function unearthedFrom(tokens: readonly Token[], from: number): number {
  for (let at = from; at < tokens.length; at++) {
    if (UNEARTHED.has(tokens[at]!.word) && tokens.slice(at + 1, at + 3).some(({ word }) => names(FEEDER, word)))
      return at;
    const lacks = names(FEEDER, tokens[at]!.word) ? lackOfEarth(tokens.slice(at + 1, at + 6)) : -1;
    if (lacks >= 0) return at + lacks;
  }
  return -1;
}

/** How many words stand before the one that says there is no earth; −1 where none says so. */
const lackOfEarth = (rest: readonly Token[]): number => {
  const lacks = rest.findIndex(({ word }) => word === 'without' || word === 'no');
  const isSaid =
    rest.slice(0, lacks).every(({ word }) => /^(?:with|that|has|having)$/.test(word)) &&
    rest.slice(lacks + 1, lacks + 3).some(({ word }) => isEarth(word));
  return lacks >= 0 && isSaid ? lacks : -1;
};

export const earthLifted: SlipReader = ({ tokens, opener }) => {
  if (tokens.some(({ word }) => names(OTHERS, word))) return undefined;
  for (const [i, { word }] of tokens.entries()) {
    const gone = TAKE_AWAY.has(word) ? Math.max(earthFrom(tokens, i + 1), thirdFrom(tokens, i + 1)) : -1;
    if (gone >= 0) return [i, gone];
    const over = word === 'over' && TAKE_AWAY.has(tokens[i - 1]?.word ?? '') ? earthFrom(tokens, i + 1) : -1;
    if (over >= 0) return [i - 1, over];
    const left = LEAVE.has(word) ? earthFrom(tokens, i + 1) : -1;
    if (left >= 0 && UNCONNECTED.has(tokens[left + 1]?.word ?? '')) return [i, left + 1];
    const fed = FEED.has(word) && opener === undefined ? unearthedFrom(tokens, i + 1) : -1;
    if (fed >= 0) return [i, fed];
  }
  return undefined;
};
