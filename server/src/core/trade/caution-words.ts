// The signal word that a caution’s consequence calls for, by a short list of words.
import { inOneClause, type Stretch } from './clauses';
import { signalWordFor, type SignalWord, type SignalWordFacts } from './signal-words';

/**
 * Worst first; the first that is found counts. Source: ANSI Z535.4, definitions of the signal words; the lists,
 * common practice.
 */
const INJURIES: readonly (readonly [(text: string) => Stretch | undefined, SignalWordFacts['injury']])[] = [
  [
    found(
      /\b(?:kills?(?!\s+(?:the\s+|an?\s+|its\s+|any\s+)?(?:board|processor|cpu|drive|memory|module|card|supply|parts?|port|header|fan|pump|chip|socket|slot|data))|(?:could|will|may|can)\s+die|death|fatal(?!\s+error)|deadly|lethal|electrocut\w*|suffocat\w*|blind\w*|amputat\w*|(?:serious|severe|grave|bad)(?:ly)?\s+(?:injur\w*|burn\w*|hurt|wound\w*)|(?:injur\w*|burn\w*|hurt|wound\w*)\s+(?:seriously|severely|badly|gravely)|los(?:e|ing)\s+(?:an?\s+|the\s+|your\s+|his\s+|her\s+)?(?:finger|hand|eye|sight)|stops?\s+the\s+heart|fires?)\b|\b(?:could|will|may)\s+burn(?:,|\.|$)/i,
    ),
    'death or serious injury',
  ],
  [
    (text) =>
      earlier(
        found(/\b(?:injur\w*|hurts?|bruis\w*|irritat\w*|crush\w*|pinch\w*|scald\w*)\b/i)(text),
        inOneClause(
          text,
          /\b(?:cuts?|burns?|shocks?|strains?|nips?)\b/i,
          /\b(?:skin|hands?|fingers?|eyes?|back|feet|foot|person|people|someone|you|wearer)\b/gi,
        ),
      ),
    'minor or moderate injury',
  ],
  [
    found(
      /\b(?:ruins?|damag\w*|destroy\w*|breaks?|bends?|shorts?|shuts?\s+down|fails?|spoils?|corrod\w*|tears?|cracks?|kills?)\b/i,
    ),
    'none',
  ],
];

/** Where the words stand that an expression looks for. */
function found(pattern: RegExp): (text: string) => Stretch | undefined {
  return (text) => {
    const match = pattern.exec(text);
    return match ? { index: match.index, words: match[0] } : undefined;
  };
}

function earlier(one: Stretch | undefined, other: Stretch | undefined): Stretch | undefined {
  if (!one || !other) return one ?? other;
  return other.index < one.index ? other : one;
}

/** A clause that says who is not hurt. */
const DENIED = /\b(?:nobody|no\s+one|no\s+person|not|never|without)\b[^.;,]*/gi;

/**
 * The word for what a consequence says: how badly someone is hurt, and whether it will or could happen. Undefined
 * where none of the words is found. English only. Never throws.
 */
export function wordFor(consequence: string): SignalWord | undefined {
  const said = consequence.replace(DENIED, '');
  for (const [words, injury] of INJURIES) {
    const match = words(said);
    if (match) return signalWordFor(injury, likelihood(said, match));
  }
  return undefined;
}

/**
 * How sure it is: by the last word before the injury in its clause. “It will ruin the board and could kill” is no
 * danger.
 */
function likelihood(said: string, match: Stretch): 'will' | 'could' {
  const clause = said.slice(0, match.index).split(/[.;,]/).at(-1)!;
  const last = [...`${clause} ${match.words}`.matchAll(/\b(?:will|could|may|can|might)\b/gi)].at(-1)?.[0];
  return last?.toLowerCase() === 'will' ? 'will' : 'could';
}
