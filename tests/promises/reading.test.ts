// Reading never throws, and every position lies inside its text, between whole characters (promises P1 and P3).
import { relatedTo } from '../../server/src/core/judge/finding';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { completions } from '../support/completions';
import { definition } from '../../server/src/features/definition';
import { diagnosticsOf } from '../../server/src/features/diagnostics';
import { hover } from '../../server/src/features/hover';
import { symbols } from '../../server/src/features/symbols';
import { provenFileFixes, provenFixes } from '../../server/src/core/judge/prove';
import type { Doc } from '../../server/src/core/parts/doc';
import { Lines, type Position, type Range, type Span } from '../../server/src/core/text';
import { parse } from '../../server/src/core/yaml';
import { walk } from '../core/yaml/projection';
import { buildName, candidates, judge, partName, type Judged } from './support/judged';
import { runs } from './support/seed';
import { broken, builds, partFiles } from './support/texts';

/** What is wrong with an offset of a text; written apart from the code that keeps it right. */
function fault(text: string, offset: number): string | undefined {
  if (!Number.isInteger(offset) || offset < 0 || offset > text.length) return `${offset} is outside 0..${text.length}`;
  const around = text.slice(Math.max(0, offset - 1), offset + 1);
  if (offset > 0 && offset < text.length && /^(?:\r\n|[\ud800-\udbff][\udc00-\udfff])$/.test(around))
    return `${offset} splits ${JSON.stringify(around)}`;
  return undefined;
}

function holdSpan(text: string, { start, end }: Span, what: string): void {
  const wrong = fault(text, start) ?? fault(text, end) ?? (end < start ? `${start}..${end} is reversed` : undefined);
  if (wrong) throw new Error(`${what}: ${wrong} in ${JSON.stringify(text)}`);
}

/** A position is right when it names a line that there is and a column within it. */
function holdRange(doc: Doc, { start, end }: Range, what: string): void {
  const lines = doc.text.split(/\r\n|\r|\n/);
  for (const { line, character } of [start, end]) {
    const own = lines[line];
    if (own === undefined || character < 0 || character > own.length)
      throw new Error(`${what}: line ${line}, character ${character} is not in ${JSON.stringify(doc.text)}`);
    if (fault(own, character)) throw new Error(`${what}: ${fault(own, character)} in line ${JSON.stringify(own)}`);
  }
}

function holdAll(view: Judged): void {
  const { doc, judgement } = view;
  for (const finding of judgement.findings) {
    const { underline, id } = finding;
    holdSpan(underline.doc.text, underline.span, id);
    for (const { doc, span } of relatedTo(finding)) holdSpan(doc.text, span, `${id}, related`);
  }
  for (const { taken, check } of judgement.answers)
    for (const {
      outcome: { underline },
    } of taken)
      holdSpan(underline.doc.text, underline.span, check.id);
  for (const problem of doc.parsed.problems) holdSpan(doc.text, problem.span, problem.code);
  walk(doc.parsed.root, (node) => holdSpan(doc.text, node.span, node.type));
  for (const one of diagnosticsOf(view, { from: 'unknown', related: true })) holdRange(doc, one.range, one.code);
  for (const symbol of symbols(doc)) holdRange(doc, symbol.range, `symbol ${symbol.name}`);
}

function holdFeatures(view: Judged, position: Position): void {
  const shown = hover(view, position, { kind: 'markdown' });
  if (shown?.range) holdRange(view.doc, shown.range, 'hover');
  definition(view, position);
  for (const item of completions(view, position)) {
    if ('textEdit' in item && item.textEdit)
      holdRange(view.doc, (item.textEdit as { range: Range }).range, `completion ${item.label}`);
  }
}

describe('positions', () => {
  it('lie inside plausible builds', () => {
    fc.assert(
      fc.property(builds, ({ text }) => holdAll(judge(text))),
      runs(120),
    );
  });

  it('lie inside part files', () => {
    fc.assert(
      fc.property(partFiles, ({ text }) => holdAll(judge(text, partName))),
      runs(120),
    );
  });

  it('lie inside broken texts of every kind', () => {
    fc.assert(
      fc.property(broken(builds), broken(partFiles), (build, part) => {
        holdAll(judge(build, buildName));
        holdAll(judge(part, partName));
        holdAll(judge(part, 'fettle.yaml'));
      }),
      runs(120),
    );
  });

  it('of features lie inside, wherever they are asked', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          builds.map(({ text }) => text),
          broken(builds),
        ),
        fc.array(fc.nat(), { minLength: 3, maxLength: 3 }),
        (text, offsets) => {
          const view = judge(text);
          for (const offset of offsets) holdFeatures(view, view.doc.lines.positionAt(offset % (text.length + 1)));
        },
      ),
      runs(50),
    );
  });

  it('of edits lie inside', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          builds.map(({ text }) => text),
          broken(builds),
        ),
        (text) => {
          const view = judge(text);
          for (const finding of view.judgement.findings.slice(0, 6)) {
            const fixes = view.build
              ? provenFixes(view.build, view.judgement, finding, candidates)
              : provenFileFixes(view.doc, view.judgement, finding);
            for (const { doc, edits } of fixes) for (const { span } of edits) holdSpan(doc.text, span, finding.id);
          }
        },
      ),
      runs(25),
    );
  });
});

it('any text at all is read, and gives positions inside it', () => {
  const scraps = fc.constantFrom(
    'a',
    'parts',
    ': ',
    ':',
    '- ',
    '\n',
    '\r',
    '\r\n',
    '\t',
    '  ',
    '[',
    ']',
    '{',
    '}',
    ',',
    '"',
    "'",
    '#',
    '&a',
    '*a',
    '!',
    '!!int ',
    '|',
    '>',
    '%',
    '---',
    '...',
    '? ',
    '<<',
    '\ud83c',
    '\udf0a',
    '\u0000',
    '\ufeff',
    '\u2028',
    '🌊',
    '\\u',
    '\\x',
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string({ unit: 'binary', maxLength: 200 }),
        fc.array(scraps, { maxLength: 60 }).map((all) => all.join('')),
      ),
      (text) => {
        const parsed = parse(text);
        for (const { span, code } of parsed.problems) holdSpan(text, span, code);
        walk(parsed.root, (node) => holdSpan(text, node.span, node.type));
        holdAll(judge(text));
      },
    ),
    runs(800),
  );
});

it('lines and offsets are each other’s inverse, for every line end of the protocol', () => {
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom('a', '🌊', '\r', '\n', '\r\n'), { maxLength: 20 }).map((all) => all.join('')),
      fc.nat(),
      (text, at) => {
        const lines = new Lines(text);
        const offset = at % (text.length + 1);
        const back = lines.offsetAt(lines.positionAt(offset));
        expect(fault(text, back)).toBeUndefined();
        expect(back).toBe(fault(text, offset) ? offset - 1 : offset);
      },
    ),
    runs(500),
  );
});
