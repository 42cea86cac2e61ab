// How the values of pastes and of cables are read.
import { CABLE_WORDS } from '../../trade/connector-words';
import { PASTE_CLASS_WORDS } from '../../trade/paste-words';
import { wordOf } from '../../trade/vocabulary';
import { nothing, plain, type Taker } from '../taken';
import { withDots } from '../take-quantity';
import { anyTakers, onlyOne, orNothing } from './common';

/** `Electrically conductive: no`. */
const electrically: Taker = (value, { path, label }) => {
  if (!/conductive|leitfähig|leitend/i.test(label)) return undefined;
  if (/^(?:no|nein|none|keine|non-conductive|nicht leitend|nicht leitfähig)$/i.test(value.trim()))
    return plain({ path, value: 'insulating' });
  return /^(?:yes|ja)$/i.test(value.trim())
    ? plain({ path, value: 'conductive' })
    : /\d|S\/m/.test(value)
      ? nothing
      : undefined;
};

/** `Zinc oxide, aluminium oxide`: several fillers of one class. */
const fillers: Taker = (value, { path }) => {
  const found = new Set(value.split(/\s?[,;/+]\s?|\s(?:and|und|&)\s/).map((one) => wordOf(PASTE_CLASS_WORDS, one)));
  const [only] = found;
  return found.size === 1 && only !== undefined ? plain({ path, value: only }) : undefined;
};

/** `3 g (1.2 ml)`: what it weighs stands beside. */
const volume: Taker = (value, { path }) => {
  const ml = onlyOne(withDots(value), /(?<![\d.])(\d{1,3}(?:\.\d{1,2})?) ?ml\b/gi);
  return ml === undefined ? undefined : plain({ path, value: `${Number(ml)} ml` });
};

export const pasteTakers: Readonly<Record<string, Taker>> = { ...anyTakers, class: fillers, electrically, volume };

/** A splitter feeds as many fans as it has plugs: `1x 4-pin socket to 2x 4-pin plugs`. */
const connector: Taker = (value, { path, whole }) => {
  const isSplitter = /(?:fan|pwm|lüfter).{0,12}(?:splitter|y-?(?:cable|kabel|lead))|y-?(?:splitter|cable|kabel)/i;
  if (isSplitter.test(value) && /fan|pwm|lüfter/i.test(`${value} ${whole}`))
    return plain({ path, value: 'fan splitter' });
  const word = wordOf(CABLE_WORDS, value) ?? wordOf(CABLE_WORDS, value.split(/, ?(?=\d)/)[0]!);
  return orNothing(path, word);
};

/** Screws by what they hold. */
const SCREWS: readonly (readonly [string, RegExp])[] = [
  ['M.2 screw', /\bM\.2\b/i],
  ['fan screw', /\bfan\b|lüfter/i],
  ['drive screw', /\b(?:drive|hdd|ssd|disk)\b|laufwerk|festplatte/i],
  ['board screw', /\b(?:mother|main)?board\b|hauptplatine/i],
];
const screw: Taker = (value, { path }) => {
  const found = SCREWS.filter(([, words]) => words.test(value.replace(/(?<=laufwerk|lüfter|board)s?schraube/gi, ' ')));
  return /screw|schraube/i.test(value) && found.length === 1 ? plain({ path, value: found[0]![0] }) : nothing;
};
export const fixingTakers: Readonly<Record<string, Taker>> = { ...anyTakers, item: screw };

/** `18 AWG`. */
const gauge: Taker = (value, { path }) => orNothing(path, /^(?:AWG ?)?(\d{1,2})(?: ?AWG)?$/i.exec(value.trim())?.[1]);

const ways: Taker = (value, { path, whole }) => {
  const found = /^1 ?x .{2,30} (?:to|auf|zu|→|->) ([2-8]) ?x /i.exec(value.trim())?.[1];
  const isOfFans = /fan|pwm|lüfter/i.test(`${value} ${whole}`) && !/sata|molex|pcie|eps|12v/i.test(value);
  return found !== undefined && isOfFans && /splitter|y-?kabel|y-?cable/.test(whole)
    ? plain({ path, value: found })
    : nothing;
};

export const cableTakers: Readonly<Record<string, Taker>> = { ...anyTakers, connector, gauge, ways };
