// The languages that Fettle speaks, and which of them a tag asks for.
import { german } from './german';
import { Language } from './language';

export const tags = ['en', 'de'] as const;
export type Tag = (typeof tags)[number];

/** One language, made anew: what it keeps dies with the run it is handed to. */
export function languageIn(tag: Tag): Language {
  const { words = {}, plain } = tag === 'de' ? german() : {};
  return new Language(tag, (english) => (Object.hasOwn(words, english) ? words[english] : undefined), plain);
}

/** Messages as they are written. */
export const english = (): Language => languageIn('en');

/** The language of a tag such as `de`, `de-AT` or `de_DE.UTF-8`; English for any that Fettle does not speak. */
export function languageFor(asked: string | undefined): Language {
  const own = /^[a-z]+/i.exec(asked ?? '')?.[0].toLowerCase();
  return languageIn(tags.find((tag) => tag === own) ?? 'en');
}
