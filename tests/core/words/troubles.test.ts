// Why something was not read or not laid out, in German. Such texts are made far from where they are shown, so the
// sources are asked for them.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { languageIn } from '../../../server/src/core/words/languages';

const source = join(__dirname, '../../../server/src');
const sources = ['command', 'host', 'language', 'session', 'core/yaml/relayout.ts'].flatMap((at) =>
  at.endsWith('.ts')
    ? [at]
    : readdirSync(join(source, at)).flatMap((name) => (name.endsWith('.ts') ? `${at}/${name}` : [])),
);

/** A text behind what takes one, in pieces: `trouble: …`, `troubleAt(path, …)`, `tell(…)`, `refused: …`, `return …`. */
const one = String.raw`(?:'(?:[^'\\]|\\.)*'|\x60[^\x60]*\x60)`;
const taking = String.raw`(?:trouble(?::| =)|refused:|doubt \?\?=|troubleAt\([^'\x60]*?,|tell\(|return|=>|\?\?)\s*`;
const told = new RegExp(`${taking}(${one}(?:\\s*\\+\\s*${one})*)`, 'g');

/** As it is said once something is put in. */
const filled = (pieces: string): string =>
  [...pieces.matchAll(new RegExp(one, 'g'))]
    .map(([piece]) => piece.slice(1, -1))
    .join('')
    .replace(/\$\{(?:[^{}]|\{[^{}]*\})*\}/g, '7');

/** What stands behind a path, or by itself; not a piece of one. */
const isSentence = (text: string): boolean => /^(?:[a-z]+|There) [a-z7].* .*[.]$/.test(text);

it('has German words for each', () => {
  const texts = sources.flatMap((name) =>
    [...readFileSync(join(source, name), 'utf8').matchAll(told)].map(([, pieces]) => filled(pieces!)),
  );
  const troubles = [...new Set(texts)].filter(isSentence);
  expect(troubles.length).toBeGreaterThan(50);
  const german = languageIn('de');
  expect(troubles.filter((text) => german.plain(text) === text)).toEqual([]);
});
