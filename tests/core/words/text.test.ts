// What is wrong with a text by itself, in German: every such sentence, from every field of every table and every
// fixture, and every sentence that a syntax error is told in.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inspect } from '../../../server/src/core/build/inspect';
import { inPieces } from '../../../server/src/core/checks/text/text-pieces-kit';
import { asBuiltFile } from '../../../server/src/core/manifest/as-built';
import { buildFile } from '../../../server/src/core/manifest/build-file';
import { houseFile } from '../../../server/src/core/manifest/house-file';
import { knownFile } from '../../../server/src/core/manifest/known-file';
import { roles } from '../../../server/src/core/manifest/places';
import { Doc } from '../../../server/src/core/parts/doc';
import { isDeep, type Field, type Table } from '../../../server/src/core/parts/field';
import { kinds } from '../../../server/src/core/parts/kinds';
import { readScalar } from '../../../server/src/core/parts/scalar';
import { keyOf } from '../../../server/src/core/words/language';
import { languageIn } from '../../../server/src/core/words/languages';
import table from '../../../server/src/core/words/de-text.json';

const root = join(__dirname, '../../..');
/** Texts that are wrong in as many ways as readers of scalars know. */
const wrong = [
  ...['', 'xx', '12', '12 qq', '5..6', '-5', '1,5 mm', '1.234', '1,234 MB/s', '6 mm to 3 mm', '999999999 mm', '5 %'],
  ...['12 W', '12 GB', '12 Mb', '12 °C', '5 °', '5 C', '12 m m', 'l2 mm', '１２ mm', '12 μm', '−5 °C', '5\u200b mm'],
  ...['5\u2007mm', '18 Ah', '32 dB', '12 €', 'yes', 'PCIe', 'DDR', 'USB', '2026-13-01'],
];

function* fieldsOf(fields: Table): Generator<Exclude<Field, { type: 'group' | 'named' | 'list' }>> {
  for (const field of Object.values(fields)) yield* within(field as Field);
}

function* within(field: Field): ReturnType<typeof fieldsOf> {
  if (!isDeep(field)) yield field;
  else if (field.type === 'group') yield* fieldsOf(field.fields);
  else yield* within(field.of);
}

const tables = [...Object.values(kinds), ...Object.values(roles).map(({ fields }) => fields)];
const ofFields = (): string[] =>
  [...tables, buildFile, houseFile, knownFile, asBuiltFile].flatMap((one) =>
    [...fieldsOf(one as Table)].flatMap((field) =>
      [...wrong, `${field.example}x`, field.example.slice(0, -1), field.example.replace(/\d+/, '99999999')].flatMap(
        (text) => readScalar(field, text).slip?.message ?? [],
      ),
    ),
  );

const ofFixtures = (): string[] =>
  readdirSync(join(root, 'tests/checks/text'), { encoding: 'utf8' }).flatMap((path) =>
    [...readFileSync(join(root, 'tests/checks/text', path), 'utf8').matchAll(/```yaml[^\n]*\n([\s\S]*?)```/g)].flatMap(
      ([, text]) =>
        (['build', 'part', 'house'] as const).flatMap((kind) =>
          inspect(new Doc('a.yaml', kind, text!)).problems.map(({ message }) => message),
        ),
    ),
  );

/** The sentences of the table, as its source has them. */
const ofSyntax = (): string[] =>
  [
    ...readFileSync(join(root, 'server/src/core/yaml/messages.ts'), 'utf8')
      .replace(/'\s*\+\s*'/g, '')
      .matchAll(/(?:, |^ {4})(?:'([A-Z][^'\n]*\.)'|"([A-Z][^"\n]*\.)")/gm),
  ].map(([, one, other]) => (one ?? other)!.replaceAll('\\\\', '\\'));

const said = (message: string): string => languageIn('de').said(inPieces(message));
const english = /\b(?:the|is not|this|here|belongs?|write|stands|means?|such as)\b/i;

describe('what is wrong with a text', () => {
  it.each([
    ['a value of a field', ofFields, 40],
    ['the fixtures', ofFixtures, 45],
    ['a syntax error', ofSyntax, 30],
  ] as const)('is said in German: %s', (_, messages, least) => {
    const forms = new Map(messages().map((message) => [keyOf(inPieces(message).words), message]));
    expect(forms.size).toBeGreaterThanOrEqual(least);
    const left = [...forms.values()].filter((message) => english.test(said(message).replace(/`[^`]*`/g, '')));
    expect(left).toEqual([]);
  });

  it('is the same text in pieces, whatever stands in quotes', () => {
    for (const message of new Set([...ofFields(), ...ofFixtures(), ...ofSyntax()])) {
      const { words, pieces } = inPieces(message);
      expect(words.length).toBe(pieces.length + 1);
      expect(words.map((one, i) => one + (pieces[i] ?? '')).join('')).toBe(message);
    }
  });

  it('has German words with the same pieces, and keeps what a file says', () => {
    const piecesOf = (words: string): string => `${(words.match(/\{\d\}/g) ?? []).sort()}`;
    expect(Object.entries(table).filter(([key, own]) => piecesOf(key) !== piecesOf(own))).toEqual([]);
    expect(said('`26` has no unit; write `26 °C`.')).toBe('`26` hat keine Einheit; schreibe `26 °C`.');
    expect(said('`Mb` can mean `MB` or `Mbit`, bytes or bits, which differ eightfold; write `1 MB` or `1 Mbit`.')).toBe(
      '`Mb` kann `MB` oder `Mbit` bedeuten, Bytes oder Bits, was das Achtfache ausmacht; schreibe `1 MB` oder `1 Mbit`.',
    );
    expect(said('`9 m` is outside what can stand here, 0 mm to 2.5 m.')).toBe(
      '`9 m` liegt außerhalb dessen, was hier stehen kann: 0 mm bis 2.5 m.',
    );
    expect(said('The key `is not the case, such as` means nothing here.')).toBe(
      'Der Schlüssel `is not the case, such as` bedeutet hier nichts.',
    );
  });
});
