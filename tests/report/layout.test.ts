// Text in columns: nothing is lost, nothing passes the edge, nothing invisible reaches a terminal.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { block, columns, padded, safe, withRight, wrapped } from '../../server/src/report/layout';

/** Unicode’s own lists of what a terminal obeys or hides: control, format, surrogate, private, separators. */
const unsafe = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}]/u;

describe('layout', () => {
  it('keeps every visible character, in order, within the width', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.integer({ min: 12, max: 60 }), (text, width) => {
        const lines = wrapped(text, width);
        expect(lines.join('').replaceAll(' ', '')).toBe(safe(text).replaceAll(' ', ''));
        for (const line of lines) expect(columns(line)).toBeLessThanOrEqual(width);
      }),
    );
  });

  it('lets no control, bidirectional or invisible character through', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        for (const line of block(text, 8)) expect(line).not.toMatch(unsafe);
      }),
    );
  });

  it('counts columns as a terminal does', () => {
    expect(columns('158 mm')).toBe(6);
    expect(columns('\u6f6e')).toBe(2);
    expect(columns('e\u0301')).toBe(1);
    expect(padded('\u6f6e', 4)).toBe('\u6f6e  ');
  });

  it('puts a word at the right edge, on a line of its own where it would touch', () => {
    expect(withRight(['short'], 'id', 20)).toEqual(['short             id']);
    expect(withRight(['a line that is full'], 'id', 20)).toEqual(['a line that is full', '                  id']);
  });

  it('begins a block with its first words and keeps the margin', () => {
    expect(block('one two three', 6, 'grade', 14)).toEqual(['grade one two', '      three']);
  });
});
