// Plain slips of the bench read out of free text: small word lists, and what keeps them from firing.

export type HandlingMistake =
  | 'processor pressed'
  | 'contacts touched'
  | 'vacuum cleaner'
  | 'bag as mat'
  | 'hot part touched';

export interface SlipFound {
  /** The words that say it. */
  readonly words: string;
  readonly start: number;
  readonly end: number;
}

/** One expression of several; blanks and words in it end somewhere, so that looking through a text stays linear. */
const words = (...pieces: readonly string[]): RegExp =>
  new RegExp(
    pieces.join('|').replace(/(\\[sw])([+*])/g, (_, kind, many) => `${kind}{${many === '+' ? 1 : 0},20}`),
    'i',
  );
const cpu = '(?:processors?|cpus?)\\b';
const press =
  '\\b(?:press(?:es|ed|ing)?|push(?:es|ed|ing)?|forc(?:e|es|ed|ing)|squeez(?:e|es|ed|ing)|shov(?:e|es|ed|ing)|tap(?:s|ped|ping)?|lean(?:s|ed|ing)?)';
const how =
  '(?:(?:down|in|into|on|onto|home|together|firmly|gently|lightly|hard|carefully|evenly|slowly|with|of|your|his|her|their|its|the|an?|both|each|every|all|one|two|new|thumbs?|fingers?|palm|hand|top|corners?|edges?|sides?|middle|cent(?:re|er))\\s+){0,8}';
const be =
  '(?:(?:is|are|be|being|gets?|has|have|needs?|must|should|can|may|to|then|now|just|simply|once|gently|firmly|lightly|carefully|briefly)\\s+){1,5}';
const contacts =
  '(?:(?:the|its|their|an?|any|one|of|bare|both)\\s+){0,3}(?:(?:gold|bare|socket|edge|contact)(?:en)?\\s+(?:contacts?|pins?|pads?|fingers|lands|edge)|contacts?|pins?|lands)\\b';
const hotThing =
  '(?:cooler|heat\\s?sinks?|heat\\s?pipes?|fins|drives?|cards?|modules?|memory|processor|cpu|vrm|radiator)\\b';

/** What each slip sounds like. Source: common practice; the lists are short so that they can be read. */
const SLIPS: Readonly<Record<HandlingMistake, RegExp>> = {
  'processor pressed': words(
    `${press}\\s+${how}${cpu}(?!['’]|\\s*(?:fan|cooler|lever|latch|header|lead|plug|power|socket|cover|cap|heat|bracket|frame|mount|tray|holder|clip|arm|box|bag|aside|away|retention)s?\\b)`,
    `\\b${cpu}\\s+${be}(?:pressed|pushed|forced|squeezed|shoved|tapped)\\b`,
    `\\b(?:apply|use|with)\\s+(?:\\w+\\s+){0,3}(?:pressure|force)\\s+(?:on|to|onto)\\s+(?:the\\s+)?${cpu}`,
    `\\bgiv(?:e|es|ing)\\s+(?:the\\s+)?${cpu}\\s+an?\\s+(?:\\w+\\s+){0,2}(?:press|push|tap|nudge|squeeze)\\b`,
  ),
  'contacts touched': words(
    `\\b(?:touch(?:es|ed|ing)?|wip(?:e|es|ed|ing)|rub(?:s|bed|bing)?|hold(?:s|ing)?|held|grip(?:s|ped|ping)?|grab(?:s|bed|bing)?|feel(?:s|ing)?|felt)\\s+${how}(?:by\\s+|at\\s+)?${contacts}`,
    `\\b(?:hold|held|take|pick|lift|grip|grab)\\w*\\s+(?:(?!lever|latch|plug|lead|cable)\\w+\\s+){0,4}(?:by|at)\\s+${contacts}`,
    `\\bfinger(?:tip)?s?\\s+(?:over|across|along|on|onto)\\s+${contacts}`,
    `\\b(?:contacts|pins)\\s+${be}(?:touched|wiped|rubbed|held|gripped)\\b`,
  ),
  'vacuum cleaner': words(
    '\\b(?:vacuum(?!\\s*-?(?:seal|pack|bag|pouch|wrap|foil))|vacuum(?:s|ed|ing)|hoover(?:s|ed|ing)?)\\b(?!\\s+(?:the\\s+|this\\s+)?(?:floor|carpet|room|bench|table|shop|filter|case\\s+filter|dust\\s+filter))(?:\\s+cleaners?)?',
  ),
  'bag as mat': words(
    '\\b(?:on|onto|upon|over|across)\\s+(?:top\\s+of\\s+)?(?:(?:the|an?|its|their|own|empty|silver|flat|shielding|anti-?static|static|esd)\\s+){0,4}bags?\\b(?!\\s*(?:is|are|label))',
    '\\bbags?\\s+(?:serves?\\s+)?as\\s+(?:an?\\s+|the\\s+)?(?:mat|underlay|surface|base|pad)\\b',
    '\\bbags?\\s+(?:flat\\s+)?under(?:neath)?\\s+(?:the\\s+)?(?:board|card|drive|module)',
  ),
  'hot part touched': words(
    `\\b(?:touch|feel|grab|grip|pull|remove|change|swap|take\\s+(?:off|out))(?:s|es|ing)?\\s+(?:\\w+\\s+){0,3}${hotThing}(?:\\s+\\w+){0,3}?\\s+(?:(?:while|when|as\\s+long\\s+as)(?:\\s+\\w+){0,4}?\\s+(?:hot|running|under\\s+load)|(?:straight|right|immediately|directly)\\s+after(?:\\s+\\w+){0,3}?\\s+(?:stress|load|test)|during(?:\\s+\\w+){0,2}?\\s+(?:stress|load|test))\\b`,
    `\\breach(?:es|ing)?\\s+in(?:to|side)?(?:\\s+\\w+){0,2}?\\s+(?:(?:straight|right|immediately|directly)\\s+after|during|while)(?:\\s+\\w+){0,3}?\\s+(?:stress|load|test|hot)\\b`,
    `\\b(?:touch|grab|grip|pull|remove|hold|take\\s+(?:off|out))(?:s|es|ing)?\\s+(?:the\\s+|an?\\s+)?(?:still\\s+)?hot\\s+${hotThing}`,
    `\\b(?:feel|touch)(?:s|es|ing)?\\s+(?:(?:the\\s+)?${hotThing}\\s+)?(?:to\\s+\\w+\\s+)?(?:if|whether|how)\\s+(?:\\w+\\s+){0,3}(?:hot\\b|${hotThing}\\s+(?:is|are|gets?)\\s+hot\\b)`,
  ),
};

/** A word without which a text cannot say the slip: most notes are done with here. */
const KEYS: Readonly<Record<HandlingMistake, RegExp>> = {
  'processor pressed': /processor|cpu/i,
  'contacts touched': /contact|pins?\b|gold|lands\b/i,
  'vacuum cleaner': /vacuum|hoover/i,
  'bag as mat': /bags?\b/i,
  'hot part touched': /hot\b|stress|load|running|test/i,
};

const ANY_KEY = new RegExp(
  Object.values(KEYS)
    .map((key) => key.source)
    .join('|'),
  'i',
);

/**
 * Whether a text may hold a slip at all: asked once of each note, it spares looking for each slip. “It” in a step
 * that fits the processor needs no such word.
 */
export const mayHoldSlip = (text: string, fits = false): boolean => fits || ANY_KEY.test(text);

/** What lets a match of the list pass after all: another thing is meant, or it is done as it should be. */
const INNOCENT: Readonly<Partial<Record<HandlingMistake, RegExp>>> = {
  'contacts touched': /\b(?:alcohol|isopropyl|isopropanol|swab|contact\s+cleaner)\b/i,
  'vacuum cleaner': /\b(?:keeps?|stays?|kept)\b/i,
  'bag as mat':
    /\b(?:label|serial|number|date|seal|sticker|tape|note|warning|write|written|read|reads|print|printed|tear|cut|stick|fold)\b/i,
};

/**
 * In a step that fits the processor “it” is the processor, unless lever or frame was named last. Source: common
 * practice.
 */
const PRESSED_IT = words(
  `${press}\\s+(?:(?:down|in|firmly|gently|lightly|hard)\\s+){0,2}(?:on\\s+)?it\\b`,
  `${press}\\s+(?:(?:down|in)\\s+)?(?:firmly|gently|lightly|hard|evenly|down\\s+(?:until|till))\\b`,
  '\\b(?:apply|use|with)\\s+(?:some|light|gentle|firm|slight|a\\s+little|even)\\s+(?:pressure|force)\\b',
);
const LEVER =
  /\b(?:lever|latch|arm|frame|load\s+plate|retention|cover|cap|cooler|memory|modules?|bracket|pad|film|tape|heat\s?sink)\b/gi;
const LAID_IN =
  /\b(?:lay|lays|put|puts|place|places|drop|drops|set|sets|insert|seat|lower)\s+(?:it|in)\b|\b(?:processor|cpu)\b/gi;
const INTO_SOCKET = /^\s*(?:down\s+)?in(?:to)?\s+(?:the|its)\s+socket\b/i;

const NOT =
  /\b(?:not|never|no|zero|without|avoid|avoids|avoiding|nothing|nobody|nor|neither|cannot|refrain|stop|wrong|mistake|forbidden|banned|instead\s+of|rather\s+than|don['’]?t|mustn['’]?t|needn['’]?t|shouldn['’]?t|won['’]?t|can['’]?t|doesn['’]?t)\b|^\s*(?:if|whoever)\b/i;
const WARNS =
  /\b(?:(?:is|are|must|may|can|should|has|have|will|would)\s+(?:not|never)|wrong|forbidden|banned|how\s+(?:pins|contacts)|bends?|ruins?|harms?|damages?|destroys?|kills?|corrodes?|charges?\s+up|leaves?\s+(?:grease|marks)|stays?\s+(?:out|away))\b/i;
const ASIDE = /\b(not|never|don['’]t),[^,.;!?]*,/gi;

/** Sentences and clauses, each with where it begins; an aside between commas after “never” does not end its clause. */
function clausesOf(text: string): { text: string; at: number }[] {
  const joined = text.replace(ASIDE, (aside) => aside.replaceAll(',', ' '));
  const clauses: { text: string; at: number }[] = [];
  let at = 0;
  for (const part of joined.split(/([.;:!?,\n]+|\s(?:but|then)\s)/i)) {
    if (part !== '') clauses.push({ text: part, at });
    at += part.length;
  }
  return clauses;
}

/**
 * The first place where a text says what must not be done. A clause that denies it (“do not press the processor”) or
 * warns of it (“pressing the processor bends pins”) says nothing. English only. Never throws.
 * @param fits whether the text belongs to a step that fits the processor.
 */
export function findSlip(text: string, slip: HandlingMistake, fits = false): SlipFound | undefined {
  const processor = slip === 'processor pressed';
  let named: PlacesNamed | undefined;
  if (!(processor && fits) && !KEYS[slip].test(text)) return undefined;
  for (const clause of clausesOf(text)) {
    const match = SLIPS[slip].exec(clause.text) ?? (processor && fits ? PRESSED_IT.exec(clause.text) : null);
    if (!match) continue;
    const start = clause.at + match.index;
    const end = start + match[0].length;
    const before = clause.text.slice(0, match.index);
    if (
      NOT.test(before + match[0]) ||
      WARNS.test(clause.text.slice(match.index + match[0].length)) ||
      INNOCENT[slip]?.test(clause.text)
    )
      continue;
    if (processor && leverPresses(text, clause.at, start, end, (named ??= placesNamed(text)))) continue;
    if (slip === 'bag as mat' && /^on|^over|^across/i.test(match[0]) && !LAYING.test(before)) continue;
    return { words: text.slice(start, end), start, end };
  }
  return undefined;
}

const LAYING =
  /\b(?:lay|lays|laid|lying|lies|lie|puts?|plac(?:e|es|ed)|sets?|rests?|stands?|starts?|works?|builds?|sits?|runs?|tests?|power(?:ed)?|keeps?|leaves?|left)\b/i;

/**
 * Whether it is the lever or the frame that presses, or that is pressed: named last, or the one that “it” or “which”
 * stands for.
 */
function leverPresses(text: string, clause: number, start: number, end: number, places: PlacesNamed): boolean {
  const leverBefore = lastBefore(places.lever, start);
  const own = text.slice(clause, start);
  const subject = own.slice(own.toLowerCase().lastIndexOf(' and ') + 1);
  const named = /\b(?:processor|cpu)/i.test(text.slice(start, end));
  if (named)
    return (
      hits(LEVER, subject) >= 0 ||
      /^\s+by\s+(?:the|its)\b/i.test(text.slice(end)) ||
      (/\b(?:it|which|that)\s*$/i.test(own) && leverBefore >= 0)
    );
  if (INTO_SOCKET.test(text.slice(end))) return false;
  const rest = /^[^.;:!?,\n]*/.exec(text.slice(start))![0];
  return hits(LEVER, rest) >= 0 || leverBefore > lastBefore(places.laidIn, start);
}

/** Where a text names the lever, and where it says that the processor is laid in; in order. */
interface PlacesNamed {
  readonly lever: readonly number[];
  readonly laidIn: readonly number[];
}

const placesNamed = (text: string): PlacesNamed => ({
  lever: [...text.matchAll(LEVER)].map((match) => match.index),
  laidIn: [...text.matchAll(LAID_IN)].map((match) => match.index),
});

function lastBefore(places: readonly number[], end: number): number {
  let [low, high] = [0, places.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (places[middle]! < end) low = middle + 1;
    else high = middle;
  }
  return places[low - 1] ?? -1;
}

/** Where the last of some words stands; −1 where none does. */
const hits = (list: RegExp, text: string): number => [...text.matchAll(list)].at(-1)?.index ?? -1;

/** Words by which a caution shows which hazard it speaks of. Source: `CAUTIONS`; common practice. */
export const HAZARD_WORDS = {
  'coin cell': /\b(?:coin|button)[- ]?cells?\b|\bswallow|\bbatter(?:y|ies)\b/i,
  'sharp edges': /\bsharp\b|\bedges?\b.{0,400}?\bcut|\bcuts?\b.{0,400}?\b(?:finger|hand|skin)/i,
  'hot parts': /\bhot\b|\bburns?\b|\bcool(?:s|ed)?\s+down\b/i,
} as const;

const CELL = /\b(?:(?:coin|button|clock|CR\d{4})[- ]?(?:cells?|batter(?:y|ies))|CR\d{4}|CMOS\s+batter(?:y|ies))\b/i;

/** Whether a text has someone handle the clock’s cell; one that says to leave it alone does not. English only. */
export const handlesCell = (text: string): boolean =>
  CELL.test(text) &&
  clausesOf(text).some(
    (clause) =>
      CELL.test(clause.text) && !NOT.test(clause.text) && !/\b(?:leave|leaves|stays?|left)\b/i.test(clause.text),
  );

export type Hazard = keyof typeof HAZARD_WORDS;

export const speaksOf = (hazard: Hazard, text: string): boolean => HAZARD_WORDS[hazard].test(text);
