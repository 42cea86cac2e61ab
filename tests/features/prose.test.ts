// Prose as Markdown: nothing that comes from a file is read as anything but text. Held against a Markdown parser.
import fc from 'fast-check';
import MarkdownIt from 'markdown-it';
import { describe, expect, test } from 'vitest';
import { code, item, markdown, paragraph, plain, strong, verbatim } from '../../server/src/features/prose';

// All that an editor might switch on: tables and strikethrough of GitHub’s kind, bare addresses made into links.
const parser = new MarkdownIt({ html: true, linkify: true });

/** Kinds of tokens that a text may not bring about. */
const allowed = new Set(['inline', 'text', 'text_special', 'paragraph_open', 'paragraph_close', 'softbreak']);

function kinds(text: string): string[] {
  const tokens = parser.parse(text, {});
  return tokens.flatMap((token) => [token.type, ...(token.children ?? []).map((child) => child.type)]);
}

function shown(text: string): string {
  return parser
    .parse(text, {})
    .flatMap((token) => token.children ?? [])
    .map((child) => child.content)
    .join('');
}

const nasty = [
  '<img src=x onerror=alert(1)>',
  '[a](command:x)',
  '![a](http://example.org/a)',
  'http://example.org',
  'www.example.org',
  'xwww.example.org',
  'a.name',
  'write to b7.org, or not',
  '# a',
  '- a',
  '1. a',
  '> a',
  '| a | b |',
  '***',
  '---',
  '`a`',
  '``',
  '&amp;',
  'a@example.org',
  '~~a~~',
  '\\',
  '<!-- -->',
  'a\nb',
  '\u202e',
  '[a]: http://b',
  '_a_',
  '$(bug)',
  '    a',
  '+ a',
  '=',
  '```\na',
];

describe('a paragraph', () => {
  test.each(nasty)('of %j is only text', (text) => {
    for (const kind of kinds(markdown([paragraph(text)]))) expect(allowed).toContain(kind);
    for (const kind of kinds(markdown([paragraph('before ', text, ' after')]))) expect(allowed).toContain(kind);
  });

  test('of any text is only text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.constantFrom(...nasty), (a, b) => {
        for (const kind of kinds(markdown([paragraph(a, b)])))
          if (!allowed.has(kind)) throw new Error(`${kind} in ${JSON.stringify(markdown([paragraph(a, b)]))}`);
      }),
      { numRuns: 400 },
    );
  });

  test('shows what a person wrote', () => {
    for (const text of ['6.5 mm at 20 %', 'M2_1 and A2', 'Tower <155> & co', '3840x2160 @ 120 Hz', '2 × 5 = 10'])
      expect(shown(markdown([paragraph(text)]))).toBe(text);
  });
});

test('a code span holds any text and ends where it should', () => {
  fc.assert(
    fc.property(
      fc.oneof(fc.string(), fc.constantFrom(...nasty), fc.string({ unit: fc.constantFrom('`', ' ', 'a') })),
      (text) => {
        const printed = kinds(markdown([paragraph('a ', code(text), ' b')])).filter((kind) => !allowed.has(kind));
        expect(printed.filter((kind) => kind !== 'code_inline')).toEqual([]);
        expect(printed.length).toBeLessThanOrEqual(1);
      },
    ),
    { numRuns: 400 },
  );
});

test('a fence holds any text', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.constant('```\n# a\n```'), fc.constant('`````')), (text) => {
      expect(kinds(markdown([verbatim(text, 'yaml')]))).toEqual(['fence']);
    }),
    { numRuns: 200 },
  );
});

test('plain text carries no marks, and shows what cannot be seen', () => {
  expect(plain([paragraph(strong('height'), ': ', code('155 mm')), item(0, 'one'), item(1, 'two')])).toBe(
    'height: 155 mm\n\n- one\n  - two',
  );
  expect(plain([paragraph('a\u202eb')])).toBe('a\\u{202e}b');
});
