// The signal word that a caution’s consequence calls for, by a short list of words.
import { signalWordFor, type SignalWord, type SignalWordFacts } from './cautions';

/** Worst first; the first that is found counts. Source: ANSI Z535.4, definitions of the signal words; the lists, common practice. */
const INJURIES: readonly (readonly [RegExp, SignalWordFacts['injury']])[] = [
  [/\b(?:kills?|die|dies|death|fatal|deadly|lethal|electrocut\w*|suffocat\w*|blind\w*|amputat\w*|serious(?:ly)?\s+(?:injur\w*|burn\w*|hurt)|fires?)\b|\b(?:could|will|may)\s+burn(?:,|\.|$)/i, 'death or serious injury'],
  [/\b(?:injur\w*|hurts?|bruis\w*|irritat\w*|crush\w*|pinch\w*|scald\w*)\b|\b(?:cuts?|burns?|shocks?|strains?)\b[^.;]*\b(?:skin|hands?|fingers?|eyes?|back|feet|foot|person|people|someone|you|wearer)\b/i, 'minor or moderate injury'],
  [/\b(?:ruins?|damag\w*|destroy\w*|breaks?|bends?|shorts?|shuts?\s+down|fails?|spoils?|corrod\w*|tears?)\b/i, 'none'],
];

/**
 * The word for what a consequence says: how badly someone is hurt, and whether it will or could happen. Undefined
 * where none of the words is found. English only. Never throws.
 */
export function wordFor(consequence: string): SignalWord | undefined {
  const injury = INJURIES.find(([words]) => words.test(consequence))?.[1];
  return injury && signalWordFor(injury, /\bwill\b/i.test(consequence) ? 'will' : 'could');
}
