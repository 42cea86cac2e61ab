// A finding in words for what has no columns: its sentence, its caution, what it waits for, how it is mended.
import { cautionWords } from '../core/checks/page';
import type { Finding } from '../core/judge/finding';
import type { Language } from '../core/words/language';
import type { Fixes } from './section';

/** A line each: the sentence, then what belongs to it. */
export function findingLines(finding: Finding, fixes: Fixes | undefined, language: Language): string[] {
  const { said, missing, caution } = finding;
  const words = cautionWords(caution);
  const [fix] = fixes?.of.get(finding) ?? [];
  const lacks = [...new Set(missing.map(({ what }) => language.word(what)))];
  const named = [...lacks.slice(0, mostLacks), ...(lacks.length > mostLacks ? ['…'] : [])].join(', ');
  return [
    language.said(said),
    ...(words ? [[words.word, ...words.sentences].map((one) => language.word(one)).join(' ')] : []),
    ...(lacks.length > namedInSentence ? [language.words`Waits for: ${named}.`] : []),
    ...(fix ? [`${language.word(fix.givesWay ? 'give way' : 'mend')}: ${language.word(fix.title)}`] : []),
  ];
}

/** The sentence of an open answer names so many facts itself. */
const namedInSentence = 3;
const mostLacks = 8;

/** Why a finding is accepted, with what was weighed and by whom. */
export function acceptedText({ accepted }: Finding, language: Language): string {
  const { because, atMost, by, until } = accepted!;
  const upTo = atMost ? language.words` up to ${atMost}` : '';
  const who = by ? language.words` By ${by}.` : '';
  const end = until ? language.words` Until ${until}.` : '';
  return language.words`Accepted${upTo} because: ${because}${who}${end}`;
}
