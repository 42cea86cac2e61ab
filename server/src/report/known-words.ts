// Why a finding that was known counts again, in a sentence.
import type { KnownBy } from '../core/judge/finding';
import type { Language } from '../core/words/language';

export function knownWords({ state, by, until, record }: KnownBy, language: Language): string {
  if (state === 'past') return language.words`It was known and let stand until ${until}, by ${by}: that day has come.`;
  const past = record?.stated.past.text;
  return past
    ? language.words`It is known at ${past} past its limit, and is worse now; it counts.`
    : language.words`It is known as ${record?.grade ?? ''}, and is worse now; it counts.`;
}
