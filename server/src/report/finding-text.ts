// A finding in words for what has no columns: its sentence, its caution, what it waits for, how it is mended.
import { cautionWords } from '../core/checks/page';
import type { Finding } from '../core/judge/finding';
import type { Language } from '../core/words/language';
import { knownWords } from './known-words';
import type { Fixes } from './section';

/** @param cautioned cautions that stand in full already, each with its check; new ones are added. */
export function findingLines(
  finding: Finding,
  fixes: Fixes | undefined,
  language: Language,
  cautioned = new Map<string, string>(),
): string[] {
  const { said, missing, accepted, known } = finding;
  const [fix] = fixes?.of.get(finding) ?? [];
  const lacks = [...new Set(missing.map(({ what }) => language.plain(what)))];
  const named = [...lacks.slice(0, mostLacks), ...(lacks.length > mostLacks ? ['…'] : [])].join(', ');
  return [
    language.said(said),
    ...cautionLine(finding, language, cautioned),
    ...(known && !accepted ? [knownWords(known, language)] : []),
    ...(lacks.length > namedInSentence ? [language.words`Waits for: ${named}.`] : []),
    ...(fix ? [`${language.word(fix.givesWay ? 'give way' : 'mend')}: ${language.plain(fix.title)}`] : []),
  ];
}

/** The sentence of an open answer names so many facts itself. */
const namedInSentence = 3;
const mostLacks = 8;

/** The safety message in full at its first finding; at the others its signal word and where to read it. */
function cautionLine({ caution, id }: Finding, language: Language, cautioned: Map<string, string>): string[] {
  const words = cautionWords(caution);
  if (!words) return [];
  const first = cautioned.get(caution!);
  if (first !== undefined)
    return [`${language.word(words.word)} ${language.words`The caution under ${first} above holds here too.`}`];
  cautioned.set(caution!, id);
  return [[words.word, ...words.sentences].map((one) => language.word(one)).join(' ')];
}

/** Why a finding is let stand, with what was weighed and by whom. */
export function acceptedWords({ accepted, known, grade }: Finding, language: Language): string {
  const until = accepted?.until ? language.words` Until ${accepted.until}.` : '';
  const upTo = accepted?.atMost ? language.words` up to ${accepted.atMost}` : '';
  const by = accepted?.by ? language.words` By ${accepted.by}.` : '';
  const { because } = accepted!;
  return known
    ? language.words`A ${grade} finding, known${upTo}. ${because}${by}${until}`
    : language.words`A ${grade} finding, accepted${upTo} because: ${because}${by}${until}`;
}
