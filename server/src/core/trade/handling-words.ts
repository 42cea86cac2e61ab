// Slips of the bench in one clause of a note: contacts touched, vacuum cleaners, bags as mats.
import { BE, mayFollow, passedOver, WARNS } from './bench-lexicon';
import { denials, names, verbForms, wordSet, type Clause, type Token } from './clauses';

/** The tokens that say a slip: from, to. */
export type Place = readonly [from: number, to: number] | undefined;

/** Looks for a slip in a clause; the clauses beside it tell when it is done. */
export type SlipReader = (
  clause: Clause,
  before: Clause | undefined,
  next: Clause | undefined,
  later: Clause | undefined,
) => Place;

export const has = (tokens: readonly Token[], list: ReadonlySet<string>): boolean =>
  tokens.some(({ word }) => names(list, word));

/** A place, unless the words before it deny it, the words behind it warn of it, or it is only asked or supposed. */
export function unlessDenied({ tokens, opener, asks }: Clause, place: Place): Place {
  if (!place || asks || /^(?:if|whoever|unless|otherwise)$/.test(opener ?? '')) return undefined;
  if (denials(tokens, 0, place[1] + 1) % 2 === 1) return undefined;
  const rest = tokens.slice(place[1] + 1);
  if (rest.some(({ word }) => WARNS.has(word))) return undefined;
  return rest.some(({ word }, i) => MODAL.has(word) && denials(rest, i + 1, i + 2) > 0) ? undefined : place;
}
const MODAL = wordSet('is are must may can should has have will would');

/** The first word from a place on that a test takes, with nothing but passing words between. */
export function reach(tokens: readonly Token[], from: number, is: (at: number) => boolean, more = NONE): number {
  for (let at = from; at < tokens.length; at++) {
    if (is(at)) return at;
    if (!passedOver(tokens[at]!.word) && !more.has(tokens[at]!.word)) return -1;
  }
  return -1;
}
const NONE = wordSet('of');

const TOUCH = new Set([
  ...verbForms('touch wipe rub hold grip grab feel pinch stroke poke press scrape scratch'),
  ...wordSet('held felt'),
]);
const HOLD = new Set([
  ...verbForms('hold take pick lift grip grab carry move pull remove raise handle seize catch pinch clasp'),
  ...wordSet('held took taken carried'),
]);
const TOUCHED = wordSet('touched wiped rubbed held gripped grabbed stroked scraped');
const CLEANED = wordSet(`alcohol isopropyl isopropanol ipa swab cleaner probe multimeter meter screwdriver
  header switch jumper earth ground earthing grounding outlet plug lead cable lever latch pushpin cooler
  standoff wire oscilloscope tweezer glove`);
const CLOTHS = wordSet('cloth lintfree');
const GILDED = wordSet('gold golden contact edge gold-plated gilded');
const COMPOUNDED = wordSet('surface area face plate frame patch cleaner pad paste point number one');
const FINGER = wordSet('finger fingertip thumb');
const OVER = wordSet('over across along on onto');

/** A contact of a part: pins, lands, gold fingers; not the contact surface of a cooler. */
const isContact = (tokens: readonly Token[], at: number): boolean => {
  const { word } = tokens[at]!;
  if (word === 'contact' && tokens[at + 1]?.word === 'with') return false;
  if (COMPOUNDED.has(tokens[at + 1]?.word ?? '')) return false;
  if (/^(?:contacts?|pins?|lands|goldedge)$/.test(word)) return true;
  const before = tokens[at - 1]?.word ?? '';
  if (/^(?:fingers|edge|connector)$/.test(word)) return GILDED.has(before) && !(word === 'edge' && before === 'edge');
  return /^(?:pads?|springs?)$/.test(word) && (GILDED.has(before) || before === 'socket');
};

export const contactsTouched: SlipReader = ({ tokens }, before) => {
  if (has(tokens, CLEANED)) return undefined;
  if (has(tokens, CLOTHS) && !tokens.some(({ word }) => word === 'socket')) return undefined;
  const contact = (at: number): boolean => isContact(tokens, at);
  const them = before ? wipedByHand(tokens, before.tokens) : undefined;
  if (them) return them;
  for (const [i, { word }] of tokens.entries()) {
    const touched = TOUCH.has(word) && !withContacts(tokens, i) ? reach(tokens, i + 1, contact, SOCKET) : -1;
    if (touched >= 0) return [i, touched];
    const by = HOLD.has(word) ? tokens.findIndex((token, at) => at > i && /^(?:by|at)$/.test(token.word)) : -1;
    const held = by > 0 && by - i <= 6 ? reach(tokens, by + 1, contact, SOCKET) : -1;
    if (held >= 0) return [i, held];
    const over =
      names(FINGER, word) && OVER.has(tokens[i + 1]?.word ?? '') ? reach(tokens, i + 2, contact, SOCKET) : -1;
    if (over >= 0) return [i, over];
    if (TOUCHED.has(word) && BE.has(beforeAdverbs(tokens, i))) {
      const subject = tokens.findIndex((_, at) => at < i && isContact(tokens, at));
      if (subject >= 0) return [subject, i];
    }
  }
  return undefined;
};
/** “Look at the contacts, then wipe them with a thumb”: what the clause before named last. */
function wipedByHand(tokens: readonly Token[], before: readonly Token[]): Place {
  const verb = tokens.findIndex(({ word }) => WIPE.has(word));
  const finger = tokens.findIndex(({ word }, at) => at > verb && names(FINGER, word));
  if (verb < 0 || finger < 0 || !/^(?:them|these)$/.test(tokens[verb + 1]?.word ?? '')) return undefined;
  const named = before.findLastIndex((_, at) => isContact(before, at));
  const other = before.findLastIndex(({ word }) => /[^s]s$/.test(word));
  return named >= 0 && named >= other ? [verb, finger] : undefined;
}
const WIPE = verbForms('wipe rub stroke brush clean');

/** “The pins touch the lands”, “hold it with the contacts down”: nobody touches them. */
const withContacts = (tokens: readonly Token[], verb: number): boolean => {
  const contact = tokens.findIndex((_, at) => isContact(tokens, at));
  return contact < verb || tokens.some(({ word }, at) => word === 'with' && at > verb && at < contact);
};
const SOCKET = wordSet('of socket its exposed memory module card processor cpu board edge connector');

function beforeAdverbs(tokens: readonly Token[], at: number): string {
  let i = at - 1;
  while (i > 0 && (passedOver(tokens[i]!.word) || /^(?:to|once|briefly)$/.test(tokens[i]!.word))) i -= 1;
  return tokens[i]?.word ?? '';
}

const BOARD = wordSet('board motherboard');
const ANY_PART = wordSet('board motherboard module card drive memory dimm stick ssd processor cpu it them part');
const BOARD_PARTS = wordSet('heatsink vrm slot socket connector header port memory');
const SMALL_PARTS = wordSet('chip component capacitor coil choke');
const VRM = wordSet('of vrm chipset m.2 memory big tall black power south small');

/** A board lifted by what is soldered or screwed to it. Source: makers’ handbooks. */
export const heldByParts: SlipReader = ({ tokens }) => {
  const verb = tokens.findIndex(({ word }) => HOLD.has(word));
  const by = tokens.findIndex(({ word }, at) => at > verb && /^(?:by|at)$/.test(word));
  if (verb < 0 || by < 0 || by - verb > 5) return undefined;
  const object = tokens.slice(verb + 1, by);
  const at = reach(
    tokens,
    by + 1,
    (i) =>
      (names(BOARD_PARTS, tokens[i]!.word) && !VRM.has(tokens[i]!.word) && has(object, BOARD)) ||
      (tokens[i]!.word === 'vrm' && tokens[i + 1]?.word !== 'heatsink' && has(object, BOARD)) ||
      (names(SMALL_PARTS, tokens[i]!.word) && has(object, ANY_PART)),
    VRM,
  );
  return at < 0 ? undefined : [verb, at];
};

const PACKED =
  wordSet(`seal sealed pack packed package bag pouch wrap wrapped foil pen pump cup tube chamber tweezer lifter
  grease flask packaging gripper`);
const FLOORS = wordSet('floor carpet room bench table shop filter desk workshop rug shelf area worktop empty');
const EARTHED = wordSet('esd esd-safe antistatic anti-static earthed static-safe');
const KEPT = wordSet('keep keeps kept stay stays banish leave');
const USING = new Set([
  ...verbForms('use clean suck remove take get go run dust blow pass draw pull finish bring hold start vacuum hoover'),
  ...wordSet('with goes using by'),
]);

export const vacuumed: SlipReader = ({ tokens }) => {
  const at = tokens.findIndex(({ word }) => /^(?:vacuum(?:s|ed|ing)?|hoover(?:s|ed|ing)?|vacs?)$/.test(word));
  const elsewhere = tokens.some(({ word }, i) => names(FLOORS, word) && !(i === at - 1 && word === 'shop'));
  if (at < 0 || elsewhere || has(tokens, EARTHED) || has(tokens, KEPT)) return undefined;
  if (names(PACKED, tokens[at + 1]?.word ?? '')) return undefined;
  const noun = /^(?:the|a|an|of|our|your|with|this|with|shop|hand|small|cordless)$/.test(tokens[at - 1]?.word ?? '');
  if (
    (noun || /^cleaners?$/.test(tokens[at + 1]?.word ?? '')) &&
    !tokens.slice(0, at).some(({ word }) => USING.has(word))
  )
    return undefined;
  return [at, /^cleaners?$/.test(tokens[at + 1]?.word ?? '') ? at + 1 : at];
};

const LAYING = new Set([
  ...verbForms(
    'lay put place set rest stand start work build sit run test power keep leave drop slide move boot switch',
  ),
  ...wordSet('laid lying lies lie left assemble assembled standing sits built stood lain transfer'),
]);
export const PUTTING = verbForms('lay put place set rest spread');
const READ = wordSet(`label serial number date seal sticker tape note warning write written read print printed
  tear cut stick fold screw standoff handbook manual tool hand finger bracket cable lead plug receipt glove
  strap name barcode`);
const BAG_WORDS =
  wordSet(`the a an its their own empty silver flat shielding antistatic anti-static static esd outside side
  of top open closed old spare this that pink black metallised metallized grey gray shiny opened upper back bare`);
const ON = wordSet('on onto upon over across atop');
const MAT = wordSet('mat underlay surface base pad bench worktop underlayer');
const WORK = wordSet('of work working');
const LAID = wordSet('board card drive module motherboard gpu ssd processor cpu part');
const LAID_THINGS = new Set([...LAID, 'it', 'everything', 'them', 'memory']);

/** Where “on its bag” begins, if something is laid there; work over a bag lays nothing on it. */
function laidOn(tokens: readonly Token[], bag: number): number {
  let from = bag - 1;
  while (from > 0 && (BAG_WORDS.has(tokens[from]!.word) || (names(LAID, tokens[from]!.word) && tokens[from]!.owns)))
    from -= 1;
  const on = tokens[from]?.word ?? '';
  if (!ON.has(on)) return -1;
  const laying = /^(?:over|across)$/.test(on) ? PUTTING : LAYING;
  const laid = /^(?:upon|onto)$/.test(on) || tokens.slice(0, from).some(({ word }) => laying.has(word));
  return laid ? from : -1;
}

/** “Spread the bag out and set the board on it”: the clause before lays the bag down, and nothing on another thing. */
function onSpread(tokens: readonly Token[], { tokens: before }: Clause): Place {
  const verb = before.findIndex(({ word }) => SPREAD.has(word));
  const isBag = (at: number): boolean => /^(?:bags?|pouch(?:es)?)$/.test(before[at]!.word);
  const bag = verb < 0 ? -1 : reach(before, verb + 1, isBag, BAG_WORDS);
  const denied = denials(before, 0, before.length) % 2 === 1 || has(before.slice(verb + 1), READ);
  if (bag < 0 || denied || before.slice(bag).some(({ word }) => AWAY.has(word) || ON.has(word))) return undefined;
  const on = tokens.findIndex(({ word }) => ON.has(word));
  const it = tokens[on + 1]?.word ?? '';
  if (on < 0 || !/^(?:it|them|that|top)$/.test(it) || !mayFollow(tokens[on + 2]?.word)) return undefined;
  const laid = tokens.slice(0, on).some(({ word }) => LAYING.has(word) || PUT_DOWN.has(word));
  return laid && has(tokens.slice(0, on), LAID_THINGS) ? [0, on + 1] : undefined;
}
const SPREAD = new Set([...verbForms('spread lay put place unfold flatten smooth open slit cut fold'), 'laid']);
const AWAY = wordSet('away aside box drawer bin from off inside');
const PUT_DOWN = wordSet('goes go comes');

export const bagAsMat: SlipReader = ({ tokens }, previous) => {
  if (has(tokens, READ)) return undefined;
  const spread = previous && onSpread(tokens, previous);
  if (spread) return spread;
  for (const [i, { word }] of tokens.entries()) {
    if (!/^(?:bags?|pouch(?:es)?)$/.test(word)) continue;
    const next = tokens[i + 1]?.word ?? '';
    const from = /^(?:is|are|label|of)$/.test(next) ? -1 : laidOn(tokens, i);
    if (from >= 0) return [from, i];
    const as = tokens.findIndex((token, at) => at > i && at <= i + 3 && /^(?:as|for)$/.test(token.word));
    const mat = as < 0 ? -1 : reach(tokens, as + 1, (at) => names(MAT, tokens[at]!.word), WORK);
    if (mat >= 0) return [i, mat];
    const under = tokens.findIndex((token, at) => at > i && at <= i + 2 && /^under(?:neath)?$/.test(token.word));
    const part = under < 0 ? -1 : reach(tokens, under + 1, (at) => names(LAID, tokens[at]!.word));
    if (part >= 0) return [i, part];
  }
  return undefined;
};
