// Hot parts touched, as one clause of a note and those beside it say it.
import { denials, names, verbForms, wordSet, type Clause, type Token } from './clauses';
import { has, PUTTING, reach, type SlipReader } from './handling-words';

const HOT_THING =
  wordSet(`cooler heatsink heatpipe fin drive card module memory processor cpu vrm radiator ssd gpu graphics
  chipset dimm`);
const HANDLES = new Set([
  ...verbForms('touch feel grab grip pull remove change swap hold take replace reseat unscrew lift press'),
  ...wordSet('took held felt taken'),
]);
const COOLED = wordSet(`probe thermometer thermocouple infrared sensor camera glove hotplug hotswap
  hot-swappable usb profile setting curve speed label name driver software air stick`);
const AT_ONCE = wordSet('straight right immediately directly just');
const LOADS = wordSet('stress load test burn-in benchmark copy render encode transfer run write read session');

const isHot = (clause: Clause | undefined): boolean => {
  if (!clause || !/^(?:while|when|whilst)$/.test(clause.opener ?? '')) return false;
  const { tokens } = clause;
  return (
    denials(tokens, 0, tokens.length) === 0 &&
    (tokens.some(({ word }) => /^(?:hot|running)$/.test(word)) || underLoad(tokens) || testRuns(tokens))
  );
};
/** “While the test runs”. */
const testRuns = (tokens: readonly Token[]): boolean => {
  const test = tokens.findIndex(({ word }) => names(LOADS, word));
  return test >= 0 && tokens.slice(test + 1, test + 4).some(({ word }) => /^(?:runs?|lasts|goes|on)$/.test(word));
};
const underLoad = (tokens: readonly Token[]): boolean =>
  tokens.some(({ word }, i) => word === 'under' && tokens[i + 1]?.word === 'load');

/** “Right after the stress test”: the clause ends with the first words, the next one opens with `after`. */
const atOnce = ({ tokens }: Clause, next: Clause | undefined): boolean =>
  next?.opener === 'after' && AT_ONCE.has(tokens.at(-1)?.word ?? '') && has(next.tokens.slice(0, 5), LOADS);

export const hotTouched: SlipReader = (clause, before, next, later) => {
  const { tokens } = clause;
  if (has(tokens, COOLED) || (next && has(next.tokens, COOLED))) return undefined;
  const during = tokens.findIndex(({ word }) => word === 'during');
  const when =
    isHot(next) ||
    (next?.opener === 'after' && later?.joint !== 'stop' && isHot(later)) ||
    atOnce(clause, next) ||
    (clause.joint === 'comma' && isHot(before)) ||
    (during > 0 && has(tokens.slice(during), LOADS)) ||
    (clause.opener === undefined && asLongAsHot(tokens));
  for (const [i, { word }] of tokens.entries()) {
    if (/^reach(?:es|ing)?$/.test(word) && /^in/.test(tokens[i + 1]?.word ?? '') && when) return [i, i + 1];
    const asked = next?.opener === 'if' ? [] : tokens.slice(i + 1);
    if (isByHand(tokens, i) && asksHowHot(asked, next)) return [i, tokens.length - 1];
    const laid = when && PUTTING.has(word) ? handOn(tokens, i + 1) : -1;
    if (laid >= 0) return [i, asksHowHot(asked, next) ? tokens.length - 1 : laid];
    if (!HANDLES.has(word)) continue;
    const thing = reach(tokens, i + 1, (at) => names(HOT_THING, tokens[at]!.word), WARM);
    if (thing >= 0 && (when || tokens.slice(i, thing).some((token) => token.word === 'hot'))) return [i, thing];
    if (
      /^(?:feel|touch)/.test(word) &&
      (asksHowHot(tokens.slice(i + 1), next) || asksOfIt(tokens.slice(i + 1), before))
    )
      return [i, tokens.length - 1];
  }
  return undefined;
};
/** “Put a finger on the radiator”: where the hot thing stands, from behind the verb on. */
function handOn(tokens: readonly Token[], from: number): number {
  const hand = reach(tokens, from, (at) => names(BARE_HAND, tokens[at]!.word));
  if (hand < 0 || !/^(?:on|onto|against|to)$/.test(tokens[hand + 1]?.word ?? '')) return -1;
  return reach(tokens, hand + 2, (at) => names(HOT_THING, tokens[at]!.word), WARM);
}

/** “Check by hand”, “see with a finger”. */
const isByHand = (tokens: readonly Token[], verb: number): boolean =>
  CHECKS.has(tokens[verb]!.word) &&
  tokens
    .slice(verb + 1, verb + 5)
    .some(({ word }, i, all) => names(BARE_HAND, word) && /^(?:by|with|your|a|the)$/.test(all[i - 1]?.word ?? ''));
const CHECKS = verbForms('check test see find try');
const BARE_HAND = wordSet('hand finger fingertip palm');

const WARM = wordSet('of hot still off out m.2 graphics memory power up');

const asLongAsHot = (tokens: readonly Token[]): boolean => {
  const long = tokens.findIndex(({ word }, i) => word === 'long' && tokens[i + 1]?.word === 'as');
  return (
    long > 0 && denials(tokens, long, tokens.length) === 0 && tokens.slice(long).some(({ word }) => word === 'hot')
  );
};

/** “Feel if the heat pipes are hot.” */
function asksHowHot(rest: readonly Token[], next: Clause | undefined): boolean {
  const words = rest.length === 0 && next?.opener === 'if' ? next.tokens : rest;
  const asks = words === rest ? rest.some(({ word }) => /^(?:whether|how)$/.test(word)) : true;
  return asks && words.some(({ word }) => word === 'hot') && has(words, HOT_THING);
}

/** “The heat sink gets hot: touch it to see how hot.” */
const asksOfIt = (rest: readonly Token[], before: Clause | undefined): boolean =>
  /^(?:it|them)$/.test(rest[0]?.word ?? '') &&
  rest.some(({ word }, i) => word === 'how' && rest[i + 1]?.word === 'hot') &&
  before !== undefined &&
  has(before.tokens, HOT_THING);
