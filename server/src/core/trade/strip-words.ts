// Whether a note has one socket strip, or extension cord, plugged into another.
import { mayFollow, passedOver } from './bench-lexicon';
import { names, verbForms, wordSet, type Token } from './clauses';
import type { SlipReader } from './handling-words';

const FEED = verbForms('plug hang run connect put feed hook take');
const CHAIN = new Set([...verbForms('chain daisy-chain cascade'), 'daisychain']);
const DAISY = 'daisy';
const INTO = wordSet('into in to off behind on from');
const OTHER = wordSet('another other first second one next previous');
/** “The other side of the bench”. */
const SIDES = /^(?:side|corner|edge|top|middle|body)s?$/;
/** Of lights, fans and headers another strip is meant. */
const LIGHTS = wordSet('led rgb argb light lights header terminal foam adhesive velcro');

/** “Power strip”, “socket strip”, “extension cord”; where it begins a clause, from a place on. */
const stripAt = (tokens: readonly Token[], from: number, extra: ReadonlySet<string> = OTHER): number => {
  for (let at = from; at < tokens.length; at++) {
    const { word } = tokens[at]!;
    if (/^strips?$/.test(word)) return at;
    if (/^extensions?$/.test(word)) return /^(?:cord|lead|cable)s?$/.test(tokens[at + 1]?.word ?? '') ? at + 1 : at;
    if (!passedOver(word) && !extra.has(word) && !/^(?:power|socket|outlet|multiple|long)$/.test(word)) return -1;
  }
  return -1;
};

/** “Plug the second strip into the first”, “run an extension off the strip”, “chain two strips”. */
export const stripsChained: SlipReader = ({ tokens }) => {
  if (tokens.some(({ word }) => names(LIGHTS, word))) return undefined;
  for (const [i, { word }] of tokens.entries()) {
    if (CHAIN.has(word) || (CHAIN.has(tokens[i + 1]?.word ?? '') && word === DAISY)) {
      const chained = stripAt(tokens, word === DAISY ? i + 2 : i + 1);
      if (chained >= 0) return [i, chained];
    }
    const fed = FEED.has(word) ? stripAt(tokens, i + 1) : -1;
    if (fed < 0 || !INTO.has(tokens[fed + 1]?.word ?? '')) continue;
    const feeder = stripAt(tokens, fed + 2);
    if (feeder >= 0) return [i, feeder];
    const other = tokens[fed + 2]?.word === 'the' && OTHER.has(tokens[fed + 3]?.word ?? '') ? fed + 3 : fed + 2;
    const isOther = other === fed + 3 || tokens[other]?.word === 'another';
    const next = tokens[other + 1]?.word;
    if (isOther && mayFollow(next) && !SIDES.test(next ?? '')) return [i, other];
  }
  return undefined;
};
