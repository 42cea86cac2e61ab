// Whatever a text holds, no feature throws, and every position it gives lies in the text.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { definition } from '../../server/src/features/definition';
import { diagnosticsOf } from '../../server/src/features/diagnostics';
import { fixAllEdits } from '../../server/src/features/fix-all';
import { hover } from '../../server/src/features/hover';
import { Rewrite } from '../../server/src/features/rewrite';
import { foldingRanges } from '../../server/src/features/folding';
import { hintsIn, printed, tooltipOf } from '../../server/src/features/inlay-hints';
import { buildTitle } from '../../server/src/features/lenses';
import { addressLinks, fileLinks, partLinks } from '../../server/src/features/links';
import { highlights } from '../../server/src/features/references';
import { renamedAt, renameEdits } from '../../server/src/features/rename';
import { selectionRange, type SelectionRange } from '../../server/src/features/selection-ranges';
import { symbols, type DocumentSymbol } from '../../server/src/features/symbols';
import type { Position, Range, View } from '../../server/src/features/shapes';
import { applyEdits, editsOverlap, Lines } from '../../server/src/core/text';
import { view } from '../support/view';
import { codeActions } from '../support/code-actions';
import { completions } from '../support/completions';

const parts = {
  'parts/norrvik/b7-forge.part.yaml':
    'kind: board\nslots:\n  M2_1: { kind: M.2, carries: [PCIe 4 x4] }\nports: { SATA_1: {} }\n',
  'parts/boreas/tower-155.part.yaml': 'kind: cooler\nheight: 155 mm\n',
};

const seed = `format: 1
build: Tide logger 🌊
parts:
  board: { use: norrvik/b7-forge }
  cooler: { use: boreas/tower-155, hieght: 150mm }
  drives:
    - name: scratch
      slot: M2_1
      read: 7 GB/s   # stated
expect:
  drives: { scratch: { read: 5 GB/s } }
accept: [{ finding: cooler-too-tall, at: parts.cooler }]
`;

// Pieces that break texts in many ways, put at any place of a sound one.
const pieces = [
  '',
  ' ',
  '\n',
  '\r\n',
  '\t',
  ':',
  '- ',
  '{',
  '}',
  '[',
  ']',
  '"',
  "'",
  '#',
  '&a ',
  '*a',
  '<<: *a',
  '!!int ',
  '|\n',
  '>-\n',
  '\u00a0',
  '🌊',
  '\ud83c',
  '%YAML 1.1\n',
  '---\n',
  '?',
  '158',
  '__proto__: 1\n',
  'constructor: {}',
  'toString: x',
  '0',
  'x'.repeat(50),
];
const mangled = fc
  .array(fc.tuple(fc.nat(seed.length), fc.nat(12), fc.constantFrom(...pieces)), { minLength: 1, maxLength: 5 })
  .map((changes) => changes.reduce((text, [at, cut, piece]) => text.slice(0, at) + piece + text.slice(at + cut), seed));

function inside(text: string, range: Range): void {
  const lines = new Lines(text);
  for (const position of [range.start, range.end]) expect(lines.positionAt(lines.offsetAt(position))).toEqual(position);
}

function rangesOf(these: readonly DocumentSymbol[]): Range[] {
  return these.flatMap(({ range, selectionRange, children }) => [range, selectionRange, ...rangesOf(children ?? [])]);
}

function everything(judged: View, offset: number): void {
  const { doc } = judged;
  const position = doc.lines.positionAt(offset);
  for (const { range } of diagnosticsOf(judged, { from: 'unknown', related: true })) inside(doc.text, range);
  for (const item of completions(judged, position)) inside(doc.text, item.textEdit.range);
  const said = hover(judged, position, { kind: 'markdown' });
  if (said?.range) inside(doc.text, said.range);
  definition(judged, position);
  across(judged, position, offset);
  for (const range of rangesOf(symbols(doc))) inside(doc.text, range);
  for (const action of codeActions(judged, { start: position, end: position }, { candidates: () => [] })) {
    for (const { textDocument, edits } of action.edit?.documentChanges ?? [])
      if (textDocument.uri.endsWith(doc.name)) for (const { range } of edits) inside(doc.text, range);
  }
}

/** What speaks of the whole file, or of names in it. */
function across(judged: View, position: Position, offset: number): void {
  const { doc } = judged;
  const whole = doc.lines.rangeOf({ start: 0, end: doc.text.length });
  for (const { startLine, endLine } of foldingRanges(doc, 100)) {
    expect(endLine).toBeGreaterThan(startLine);
    expect(endLine).toBeLessThan(doc.lines.count);
  }
  let inner = -1;
  for (let at: SelectionRange | undefined = selectionRange(doc, position); at; at = at.parent) {
    inside(doc.text, at.range);
    const length = doc.lines.offsetAt(at.range.end) - doc.lines.offsetAt(at.range.start);
    expect(length).toBeGreaterThan(inner);
    inner = length;
  }
  for (const { span } of [...partLinks(doc), ...fileLinks(doc), ...addressLinks(doc)])
    inside(doc.text, doc.lines.rangeOf(span));
  for (const told of hintsIn(judged, whole, () => true)) {
    inside(doc.text, { start: printed(judged, told).position, end: printed(judged, told).position });
    expect(tooltipOf(judged, told, 'markdown').value).not.toBe('');
  }
  for (const { range } of highlights(judged, position)) inside(doc.text, range);
  if (judged.build) expect(buildTitle(judged)).not.toBe('');
  const subject = renamedAt(judged, judged.doc.lines.offsetAt(position));
  const edits = subject && renameEdits(judged, subject, 'norrvik/other');
  if (!edits) return;
  expect(editsOverlap(edits), `renaming at ${offset}`).toBe(false);
  for (const { span } of edits) inside(doc.text, doc.lines.rangeOf(span));
}

describe.each(['desk.pcbuild.yaml', 'parts/a/b.part.yaml', 'fettle.yaml'])('in %s', (name) => {
  test('nothing throws or points outside', () => {
    fc.assert(
      fc.property(mangled, fc.nat(seed.length), (text, offset) =>
        everything(view(text, parts, name).view, Math.min(offset, text.length)),
      ),
      { numRuns: name.startsWith('desk') ? 60 : 25 },
    );
  }, 60_000);
});

test('fixing all gives edits that lie apart, and the same text in any order', () => {
  fc.assert(
    fc.property(mangled, fc.boolean(), (text, turned) => {
      const edits = fixAllEdits(view(text, parts).view);
      expect(editsOverlap(edits)).toBe(false);
      expect(applyEdits(text, turned ? [...edits].reverse() : edits)).toBe(applyEdits(text, edits));
    }),
    { numRuns: 40 },
  );
}, 60_000);

test('rounds of edits come out as one set of edits of the first text', () => {
  const edit = fc.tuple(fc.nat(60), fc.nat(6), fc.string({ maxLength: 4 }));
  fc.assert(
    fc.property(fc.string({ minLength: 1, maxLength: 40 }), fc.array(edit, { maxLength: 6 }), (text, rounds) => {
      const rewrite = new Rewrite(text);
      let expected = text;
      for (const [at, length, put] of rounds) {
        const start = Math.min(at, expected.length);
        const span = { start, end: Math.min(start + length, expected.length) };
        expected = applyEdits(expected, [{ span, text: put }]);
        rewrite.apply([{ span, text: put }]);
      }
      expect(rewrite.text()).toBe(expected);
      expect(editsOverlap(rewrite.edits())).toBe(false);
      expect(applyEdits(text, rewrite.edits())).toBe(expected);
    }),
    { numRuns: 300 },
  );
});
