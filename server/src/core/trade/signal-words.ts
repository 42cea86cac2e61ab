// Signal words of safety messages: what each means, and the parts a message must have.

export type SignalWord = 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE';

export interface SignalWordFacts {
  /** What happens if the hazard is not avoided, in our words. */
  readonly means: string;
  readonly injury: 'death or serious injury' | 'minor or moderate injury' | 'none';
  readonly likelihood: 'will' | 'could';
}

/** Worst first. Source: ANSI Z535.4 and Z535.6, definitions of the signal words. */
export const SIGNAL_WORDS: Readonly<Record<SignalWord, SignalWordFacts>> = {
  DANGER: {
    means: 'will kill or seriously injure if not avoided',
    injury: 'death or serious injury',
    likelihood: 'will',
  },
  WARNING: {
    means: 'could kill or seriously injure if not avoided',
    injury: 'death or serious injury',
    likelihood: 'could',
  },
  CAUTION: {
    means: 'could injure slightly or moderately if not avoided',
    injury: 'minor or moderate injury',
    likelihood: 'could',
  },
  NOTICE: { means: 'could damage things; nobody is injured', injury: 'none', likelihood: 'could' },
};

/** The word for an injury and how sure it is; damage only is a NOTICE. Source: ANSI Z535.4 definitions. */
export function signalWordFor(
  injury: SignalWordFacts['injury'],
  likelihood: SignalWordFacts['likelihood'],
): SignalWord {
  if (injury === 'none') return 'NOTICE';
  if (injury === 'minor or moderate injury') return 'CAUTION';
  return likelihood === 'will' ? 'DANGER' : 'WARNING';
}

/** What a safety message must say, in this order, before the step it belongs to. Source: ANSI Z535.6. */
export const CAUTION_PARTS = ['hazard', 'consequence', 'avoidance'] as const;

export type CautionPart = (typeof CAUTION_PARTS)[number];

/** Parts that a message lacks, in the standard's order; blank text counts as missing. Source: ANSI Z535.6. */
export function missingParts(message: Partial<Record<CautionPart, string>>): CautionPart[] {
  return CAUTION_PARTS.filter((part) => !message[part]?.trim());
}
export interface Caution extends Readonly<Record<CautionPart, string>> {
  readonly word: SignalWord;
  readonly defersTo: string;
  readonly source: string;
}

/** The end of a safety message: whose word counts above ours. It fits a person, a handbook and a code alike. */
export const deferral = (caution: Pick<Caution, 'defersTo'>): string => `Defer to ${caution.defersTo}.`;
