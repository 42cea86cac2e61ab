// The German words. Programs for Node have them in a file of their own beside the bundles, read when somebody asks for
// German; a browser’s worker gets the same file from whoever starts it (`server/tools/build.mjs`).
import words from './de.json';
import fields from './de-fields.json';
import plain from './de-plain.json';
import text from './de-text.json';

export interface Tables {
  /** Sentences and words by their English ones. */
  readonly words: Readonly<Record<string, string>>;
  /** Templates of texts that are put together in English first. */
  readonly plain: Readonly<Record<string, string>>;
}

export const german = (): Tables => ({ words: { ...words, ...fields, ...text }, plain });
