// Fenced blocks: whatever stands before their lines, what is found in them is found at the same words.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { WorkspaceConfig } from '../../../server/src/core/build/workspace-config';
import { Guide } from '../../../server/src/core/guide/guide';
import { tiesOf } from '../../../server/src/core/guide/ties';
import { judgeBuild, judgeGuide } from '../../../server/src/core/judge/judge';
import { provenFixes } from '../../../server/src/core/judge/prove';
import { Doc } from '../../../server/src/core/parts/doc';
import { applyEdits, Lines } from '../../../server/src/core/text';
import { documentEdit, type View } from '../../../server/src/features/shapes';
import { today } from '../../support/bench';

const guideOf = (text: string): Guide =>
  new Guide(new Doc('guide.md', 'guide', text), () => undefined, new WorkspaceConfig(), today);

const yaml = [
  'build: Small',
  'parts:',
  '  bord: {}',
  '  memory:',
  '    - { capacity: 32, modules: 2 }',
  '  cooler: { hight: 155 mm }',
];

/** What stands before the opening fence and before each line, in quotes and lists. */
const places: readonly (readonly [string, string])[] = [
  ['', ''],
  ['   ', '   '],
  ['> ', '> '],
  ['>', '>'],
  ['- ', '  '],
  ['12. ', '    '],
  ['> - ', '>   '],
  ['- > ', '  > '],
  ['> > 1. ', '> >    '],
];

const framed = ([first, rest]: readonly [string, string], fence: string, end: string, info = 'pcbuild'): string =>
  [`${first}${fence}${info}`, ...yaml.map((line) => rest + line), `${rest}${fence}`].join(end);

/** The findings of the blocks, with the words that they underline in the guide. */
function found(text: string): string[] {
  const lines = new Lines(text);
  return guideOf(text)
    .blocks.flatMap(({ build }) => judgeBuild(build!, { throwOn: true }).findings)
    .map(({ id, underline: { doc, span } }) => {
      const range = doc.lines.rangeOf(span);
      const [start, end] = [lines.offsetAt(range.start), lines.offsetAt(range.end)];
      return `${id} ${text.slice(start, end).split(/[\r\n]/)[0]}`;
    });
}

const plain = found(framed(places[0]!, '```', '\n'));

describe('a fenced block', () => {
  it('is read wherever it stands, with its places mapped line by line', () => {
    expect(plain).toContain('unknown-key bord');
    expect(plain).toContain('unknown-key hight');
    fc.assert(
      fc.property(
        fc.constantFrom(...places),
        fc.constantFrom('```', '~~~', '`````'),
        fc.constantFrom('\n', '\r\n'),
        fc.constantFrom('', 'Some words.\n\n', '# Build\r\n\r\n', '- one\n- two\n\n***\n\n'),
        (place, fence, end, before) => void expect(found(before + framed(place, fence, end))).toEqual(plain),
      ),
      { numRuns: 200 },
    );
  });

  it('is mended within its fence, and its new lines begin as its lines do', () => {
    for (const place of places) {
      const text = `${framed(place, '~~~', '\n')}\n`;
      const guide = guideOf(text);
      const { build, doc } = guide.blocks[0]!;
      const judgement = judgeBuild(build!);
      const view = { doc, uriOf: () => 'file:///guide.md', versionOf: () => 1 } as unknown as View;
      const bord = judgement.findings.find(({ subject }) => subject === 'parts.bord')!;
      const [fix] = provenFixes(build!, judgement, bord);
      const edits = documentEdit(view, doc, [
        ...fix!.edits,
        { span: { start: doc.text.length, end: doc.text.length }, text: 'purpose: none\n' },
      ]).edits;
      const lines = new Lines(text);
      const after = applyEdits(
        text,
        edits.map(({ range, newText }) => ({
          span: { start: lines.offsetAt(range.start), end: lines.offsetAt(range.end) },
          text: newText,
        })),
      );
      expect(tiesOf(new Doc('guide.md', 'guide', after)).fences[0]!.text).toBe(
        `${doc.text.replace('bord', 'board')}purpose: none\n`,
      );
    }
  });

  it('holds the positions between its fences, and gives each offset back', () => {
    const text = `Words\n\n${framed(places[6]!, '```', '\n')}\n`;
    const { doc } = guideOf(text).blocks[0]!;
    for (let offset = 0; offset <= doc.text.length; offset++) {
      const position = doc.lines.positionAt(offset);
      expect(doc.lines.offsetAt(position)).toBe(offset);
      expect(doc.holds(position)).toBe(offset < doc.text.length);
    }
    expect(doc.holds({ line: 0, character: 0 })).toBe(false);
  });

  it('that is not closed ends with its text, and one without lines is empty', () => {
    expect(tiesOf(new Doc('g.md', 'guide', '~~~pcbuild\nbuild: A')).fences[0]).toMatchObject({ text: 'build: A' });
    expect(tiesOf(new Doc('g.md', 'guide', '> ~~~part\n')).fences[0]).toMatchObject({ text: '', kind: 'part' });
    expect(tiesOf(new Doc('g.md', 'guide', '````md\n```pcbuild\nbuild: A\n```\n````')).fences).toEqual([]);
    expect(tiesOf(new Doc('g.md', 'guide', '```pcbuilder\n```\n```yaml\n```')).fences).toEqual([]);
  });
});

describe('any text', () => {
  const pieces = fc.constantFrom(
    '```',
    '~~~',
    'pcbuild',
    'part',
    '\n',
    '\r\n',
    '\r',
    '> ',
    '- ',
    '\t',
    '1. ',
    '    ',
    '---\n',
    'build: ',
    'a.pcbuild.yaml',
    '<!-- fettle: ',
    'power.wall',
    'step fit board',
    'caution coin-cell',
    ' -->',
    '<!-- /fettle -->',
    '`',
    '\\',
    '412 W',
    'parts:',
    '  board: {}',
    '\u0000',
    '\uFEFF',
    '\uD83D',
    '|',
    '# ',
    '<div>',
  ); // prettier-ignore

  it('is only text: it is read, its places lie in it', () => {
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 40 }), (parts) => {
        const text = parts.join('');
        const guide = guideOf(text);
        const all = [
          ...judgeGuide(guide, { throwOn: true }).findings,
          ...guide.blocks.flatMap(({ build }) => (build ? judgeBuild(build, { throwOn: true }).findings : [])),
        ];
        const lines = new Lines(text);
        for (const { underline } of all) {
          const { start, end } = underline.doc.lines.rangeOf(underline.span);
          for (const position of [start, end]) expect(lines.positionAt(lines.offsetAt(position))).toEqual(position);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('of 10,000 marks, of unclosed ones and of deep quotes is read in time', () => {
    const begun = performance.now();
    const mark = '<!-- fettle: power.wall -->412 W<!-- /fettle --> ';
    expect(tiesOf(new Doc('g.md', 'guide', mark.repeat(10_000))).values).toHaveLength(10_000);
    expect(tiesOf(new Doc('g.md', 'guide', '<!-- fettle: power.wall -->\n\n'.repeat(10_000))).loose).toHaveLength(
      10_000,
    );
    expect(tiesOf(new Doc('g.md', 'guide', '<!-- fettle: '.repeat(10_000))).markers).toEqual([]);
    expect(tiesOf(new Doc('g.md', 'guide', `${'`a '.repeat(20_000)}${mark}`)).values).toHaveLength(1);
    tiesOf(new Doc('g.md', 'guide', `${'> '.repeat(5_000)}\`\`\`pcbuild`));
    tiesOf(new Doc('g.md', 'guide', `${'- '.repeat(5_000)}${mark}`));
    expect(performance.now() - begun).toBeLessThan(4_000);
  });
});
