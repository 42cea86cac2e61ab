// Plain slips of the bench read out of free text: small word lists, and what keeps them from firing.

export type Slip = 'processor pressed' | 'contacts touched' | 'vacuum cleaner' | 'bag as mat' | 'hot part touched';

export interface SlipFound {
  /** The words that say it. */
  readonly words: string;
  readonly start: number;
  readonly end: number;
}

const filler = '(?:(?:down|in|into|on|onto|home|firmly|gently|lightly|hard|carefully|evenly|slowly|the|a|an|your|its|new|it|both)\\s+){0,5}';
const press = '(?:press|push|force|squeeze|shove|lean|pressing|pushing|forcing|pressed|pushed|forced)';
const touch = '(?:touch|touching|wipe|wiping|finger|fingering|rub|rubbing|hold|holding|grip|gripping|grab|grabbing)';

/** What each slip sounds like. Source: common practice; the lists are short so that they can be read. */
const SLIPS: Readonly<Record<Slip, RegExp>> = {
  'processor pressed': new RegExp(`\\b${press}\\s+${filler}(?:processor|cpu)\\b(?!\\s*(?:fan|cooler|lever|latch|header|lead|plug|power|socket|cover|cap|heat|bracket|frame|mount))|\\b(?:apply|use|with)\\s+(?:\\w+\\s+){0,3}(?:pressure|force)\\s+(?:on|to)\\s+(?:the\\s+)?(?:processor|cpu)\\b`, 'i'),
  'contacts touched': new RegExp(`\\b${touch}\\s+${filler}(?:by\\s+|with\\s+)?(?:the\\s+|its\\s+)?(?:gold\\s+|bare\\s+|socket\\s+|edge\\s+)?(?:contacts|pins|fingers|pads|lands)\\b|\\b(?:hold|take|pick|lift|grip)\\w*\\s+(?:\\w+\\s+){0,4}by\\s+(?:the\\s+|its\\s+)?(?:gold\\s+|bare\\s+|edge\\s+)?(?:contacts|pins|pads)\\b`, 'i'),
  'vacuum cleaner': /\b(?:vacuum|vacuuming|hoover)(?:ed|s)?\b(?:\s+cleaner)?/i,
  'bag as mat': /\b(?:on|onto|upon|over|across)\s+(?:top\s+of\s+)?(?:the\s+|an?\s+|its\s+|their\s+)?(?:(?:own|empty|silver|flat|shielding|anti-?static|static|esd)\s+){0,3}bags?\b(?!\s*(?:is|are|label))/i,
  'hot part touched': /\b(?:touch|feel|grab|grip|pull|remove|take\s+(?:off|out))\b(?:\s+\w+){0,4}\s+(?:while|when|straight\s+after|right\s+after|as\s+long\s+as)\b(?:\s+\w+){0,4}\s+(?:hot|warm|running|stress|load|test)\b/i,
};

/** In a step that fits the processor “it” is the processor, unless lever or frame is named first. Source: common practice. */
const PRESSED_IT = new RegExp(`\\b${press}\\s+(?:(?:down|in|firmly|gently|lightly|hard)\\s+){0,2}(?:on\\s+)?it\\b|\\b(?:apply|use|with)\\s+(?:some|light|gentle|firm|slight|a\\s+little|even)\\s+(?:pressure|force)\\b`, 'i');
const LEVER = /\b(?:lever|latch|arm|frame|load\s+plate|retention|cover|cap|cooler|memory|module|bracket)\b/i;

const NOT = /\b(?:not|never|no|without|avoid|avoids|avoiding|nothing|nobody|nor|neither|cannot|instead\s+of|rather\s+than|don['’]?t|mustn['’]?t|needn['’]?t|shouldn['’]?t|won['’]?t|can['’]?t|doesn['’]?t)\b/i;
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
 * The first place where a text says what must not be done. A clause that denies it (“do not press the processor”)
 * says nothing. English only. Never throws.
 * @param fits whether the text belongs to a step that fits the processor.
 */
export function findSlip(text: string, slip: Slip, fits = false): SlipFound | undefined {
  for (const clause of clausesOf(text)) {
    const match = SLIPS[slip].exec(clause.text) ?? (fits && slip === 'processor pressed' && !LEVER.test(text.slice(0, clause.at) + clause.text) ? PRESSED_IT.exec(clause.text) : null);
    if (!match || NOT.test(clause.text)) continue;
    const start = clause.at + match.index;
    return { words: text.slice(start, start + match[0].length), start, end: start + match[0].length };
  }
  return undefined;
}

/** Words by which a caution shows which hazard it speaks of. Source: `CAUTIONS`; common practice. */
export const HAZARD_WORDS = {
  'coin cell': /\b(?:coin|button)[- ]?cells?\b|\bcells?\b.*\bswallow|\bswallow|\bbatter(?:y|ies)\b/i,
  'sharp edges': /\bsharp\b|\bedges?\b.*\bcut|\bcuts?\b.*\b(?:finger|hand|skin)/i,
  'hot parts': /\bhot\b|\bburns?\b|\bcool(?:s|ed)?\s+down\b/i,
} as const;

/** Whether a text has someone handle the clock’s cell. */
export const handlesCell = (text: string): boolean => /\b(?:coin|button)[- ]?cell\b|\b(?:CMOS|clock)\s+battery\b/i.test(text);

export type Hazard = keyof typeof HAZARD_WORDS;

export const speaksOf = (hazard: Hazard, text: string): boolean => HAZARD_WORDS[hazard].test(text);
