// Offsets and lines, edits, near words, and text made safe to show.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import {
  applyEdits,
  editsOverlap,
  isDay,
  Lines,
  nearest,
  quoted,
  visible,
  visibleInJson,
} from '../../../server/src/core/text';
import { clampSpan } from '../../../server/src/core/text/span';
import type { Edit } from '../../../server/src/core/text';

const anyText = fc
  .array(fc.constantFrom('a', 'é', '😀', '\ud83d', '\ude00', '\n', '\r\n', '\r', '\u2028', ' '), { maxLength: 20 })
  .map((parts) => parts.join(''));
const edit = (start: number, end: number, text: string): Edit => ({ span: { start, end }, text });

describe('days', () => {
  // Source: ISO 8601, the Gregorian calendar: a year of a full century is a leap year where 400 divides it.
  it.each(['2024-02-29', '2000-02-29', '2026-04-30', '2026-12-31'])('takes %s', (day) => expect(isDay(day)).toBe(true));

  it.each([
    '2026-02-29',
    '2100-02-29',
    '2026-04-31',
    '2026-13-01',
    '2026-00-10',
    '2026-10-00',
    '2026-10-3',
    '20261003',
  ])('refuses %s', (day) => expect(isDay(day)).toBe(false));

  it.each(['2026-10-03T00:00:00Z', ' 2026-10-03', '+002026-10-03', '2026-10-03\n', ''])('refuses %j', (text) =>
    expect(isDay(text)).toBe(false),
  );
});

describe('Lines', () => {
  const lines = new Lines('ab\r\nc😀\rd\n');

  it('takes LF, CRLF and a lone CR as line ends', () => {
    expect(lines.count).toBe(4);
    expect([0, 1, 2, 3].map((line) => lines.lineSpan(line))).toEqual([
      { start: 0, end: 2 },
      { start: 4, end: 7 },
      { start: 8, end: 9 },
      { start: 10, end: 10 },
    ]);
  });

  it('never gives a place inside a CRLF or a surrogate pair', () => {
    expect(lines.positionAt(3)).toEqual({ line: 0, character: 2 });
    expect(lines.positionAt(6)).toEqual({ line: 1, character: 1 });
    expect(lines.offsetAt({ line: 1, character: 2 })).toBe(5);
  });

  it('clamps what lies outside', () => {
    expect(lines.positionAt(-1)).toEqual({ line: 0, character: 0 });
    expect(lines.positionAt(99)).toEqual({ line: 3, character: 0 });
    expect(lines.positionAt(Number.NaN)).toEqual({ line: 0, character: 0 });
    expect(lines.offsetAt({ line: 0, character: 99 })).toBe(2);
    expect(lines.offsetAt({ line: 99, character: 0 })).toBe(10);
    expect(lines.offsetAt({ line: -1, character: 5 })).toBe(0);
    expect(lines.offsetAt({ line: 2, character: -5 })).toBe(8);
    expect(lines.lineSpan(99)).toEqual({ start: 10, end: 10 });
  });

  // The reference is the Language Server Protocol's own text document, by its authors.
  it("agrees with the protocol's text document wherever no character is split", () => {
    fc.assert(
      fc.property(anyText, fc.nat({ max: 40 }), (text, at) => {
        const ours = new Lines(text);
        const reference = TextDocument.create('file:///x', 'x', 1, text);
        expect(ours.count).toBe(reference.lineCount);
        const offset = clampSpan(text, at, at).start;
        expect(ours.positionAt(offset)).toEqual(reference.positionAt(offset));
        expect(ours.offsetAt(ours.positionAt(offset))).toBe(offset);
        expect(ours.rangeOf({ start: 0, end: offset }).end).toEqual(reference.positionAt(offset));
      }),
      { numRuns: 500 },
    );
  });
});

describe('edits', () => {
  it('applies them in any order', () => {
    const edits = [edit(4, 4, '!'), edit(0, 1, 'J'), edit(1, 1, '-')];
    for (const order of [edits, [...edits].reverse()]) expect(applyEdits('doom', order)).toBe('J-oom!');
    expect(applyEdits('doom', [])).toBe('doom');
  });

  it('refuses edits that overlap or lie outside', () => {
    expect(() => applyEdits('doom', [edit(0, 2, ''), edit(1, 3, '')])).toThrow(RangeError);
    expect(() => applyEdits('doom', [edit(0, 5, '')])).toThrow(RangeError);
    expect(() => applyEdits('doom', [edit(-1, 0, '')])).toThrow(RangeError);
    expect(() => applyEdits('doom', [edit(2, 1, '')])).toThrow(RangeError);
    expect(editsOverlap([edit(0, 4, ''), edit(2, 2, 'x')])).toBe(true);
    expect(editsOverlap([edit(2, 2, 'x'), edit(2, 2, 'y')])).toBe(true);
    expect(editsOverlap([edit(0, 2, 'x'), edit(2, 4, 'y'), edit(2, 2, 'z')])).toBe(false);
  });

  it("gives the protocol's own result", () => {
    fc.assert(
      fc.property(
        anyText,
        fc.array(fc.tuple(fc.nat({ max: 20 }), fc.nat({ max: 5 }), fc.string({ maxLength: 3 })), { maxLength: 4 }),
        (text, wanted) => {
          const edits = wanted.map(([start, length, inserted]) => ({
            span: clampSpan(text, start, start + length),
            text: inserted,
          }));
          fc.pre(!editsOverlap(edits));
          const lines = new Lines(text);
          const reference = TextDocument.create('file:///x', 'x', 1, text);
          // The reference wants an insertion listed before a replacement that begins where it stands.
          const ordered = [...edits].sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
          const inProtocol = ordered.map(({ span, text: newText }) => ({ range: lines.rangeOf(span), newText }));
          expect(applyEdits(text, edits)).toBe(TextDocument.applyEdits(reference, inProtocol));
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe('clampSpan', () => {
  it('widens a span to whole characters and never reverses it', () => {
    expect(clampSpan('a😀b', 2, 2)).toEqual({ start: 1, end: 3 });
    expect(clampSpan('a\r\nb', 1, 2)).toEqual({ start: 1, end: 3 });
    expect(clampSpan('ab', 5, 1)).toEqual({ start: 2, end: 2 });
    expect(clampSpan('ab', Number.NaN, Number.NaN)).toEqual({ start: 0, end: 0 });
  });
});

describe('nearest', () => {
  const known = ['board', 'processor', 'cooler', 'case', 'fans', 'humidity'];
  it.each([
    ['bord', 'board'],
    ['baord', 'board'],
    ['procesor', 'processor'],
    ['Case', 'case'],
    ['humidty', 'humidity'],
    ['board', 'board'],
  ])('%s is %s', (word, expected) => {
    expect(nearest(word, known)).toBe(expected);
  });

  it.each(['', 'x', 'keyboard', 'lamp', 'x'.repeat(500)])('%j is none of them', (word) => {
    expect(nearest(word, known)).toBeUndefined();
  });

  it('decides ties the same in any order: the same first letter, then the earlier name', () => {
    expect(nearest('cat', ['bat', 'car', 'can'])).toBe('can');
    expect(nearest('cat', ['can', 'car', 'bat'])).toBe('can');
    expect(nearest('M2_3', ['M2_2', 'M2_1', 'N2_3'])).toBe('M2_1');
  });
});

describe('text for messages', () => {
  it('shows what cannot be seen', () => {
    expect(visible('a\u0000b\u202ec\u200bd\n\ud800')).toBe('a\\u{0}b\\u{202e}c\\u{200b}d\\u{a}\\u{d800}');
    expect(visible('31 °C é 😀')).toBe('31 °C é 😀');
    expect(visible('❤\ufe0f⠀a\u180bb\u{e0100}c\u3164')).toBe('❤\\u{fe0f}\\u{2800}a\\u{180b}b\\u{e0100}c\\u{3164}');
  });

  it('escapes every default-ignorable character in JSON, to the same value, and leaves what can be seen', () => {
    for (let point = 0; point <= 0x10ffff; point++) {
      const character = String.fromCodePoint(point);
      if (!/\p{Default_Ignorable_Code_Point}/u.test(character)) continue;
      const json = visibleInJson(JSON.stringify(character));
      expect(json).toMatch(/^"(?:\\u[0-9a-f]{4}){1,2}"$/);
      expect(JSON.parse(json)).toBe(character);
      expect(visible(character)).toMatch(/^\\u\{[0-9a-f]+\}$/);
    }
    expect(visibleInJson('"31 °C 😀 é"')).toBe('"31 °C 😀 é"');
  });

  it('quotes and cuts between characters', () => {
    expect(quoted('abc')).toBe('`abc`');
    expect(quoted('😀😀😀', 2)).toBe('`😀😀…`');
    expect(quoted('a'.repeat(1000))).toBe(`\`${'a'.repeat(60)}…\``);
    expect(quoted('a`b')).toBe('"a`b"');
  });
});
