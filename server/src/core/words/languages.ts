// The languages that Fettle speaks, and which of them a tag asks for.
import german from './de.json';
import germanFields from './de-fields.json';
import germanPlain from './de-plain.json';
import { Language } from './language';

export const tags = ['en', 'de'] as const;
export type Tag = (typeof tags)[number];

/** One language, made anew: what it keeps dies with the run it is handed to. */
export function languageIn(tag: Tag): Language {
  const table: Readonly<Record<string, string>> = tag === 'de' ? { ...german, ...germanFields } : {};
  const plain = tag === 'de' ? germanPlain : undefined;
  return new Language(tag, (english) => (Object.hasOwn(table, english) ? table[english] : undefined), plain);
}

/** Messages as they are written. */
export const english = (): Language => languageIn('en');

/** The language of a tag such as `de`, `de-AT` or `de_DE.UTF-8`; English for any that Fettle does not speak. */
export function languageFor(asked: string | undefined): Language {
  const own = /^[a-z]+/i.exec(asked ?? '')?.[0].toLowerCase();
  return languageIn(tags.find((tag) => tag === own) ?? 'en');
}
