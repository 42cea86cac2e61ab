// The comment of a pull request: what is seen at once, what is folded, when it is silent, and that nothing in it lives.
import { english } from '../../server/src/core/words/languages';
import fc from 'fast-check';
import MarkdownIt from 'markdown-it';
import { describe, expect, it } from 'vitest';
import { comparisonComment } from '../../server/src/report/comment';
import { code, prose, table } from '../../server/src/report/comment-parts';
import { readerLimits } from '../../server/src/report/reader-limits';
import type { Comparison } from '../../server/src/review/comparison';
import { fettle, fettleAmong } from '../support/command';
import { readComment } from '../support/comments';
import { hostileFiles, tricks } from '../support/hostile';
import { commandsIn, readSarif } from '../support/readers';

const desk = (cooler: string, title = 'Desk'): string =>
  `format: 1\nbuild: ${title}\nparts:\n  cooler: { use: ${cooler} }\n  case: { use: tarn/mid-3, price: 80.00 EUR }\n`;
const base: Record<string, string> = {
  'fettle.yaml': 'format: 1\n',
  'parts/tarn/mid-3.part.yaml': 'kind: case\ncooler-height: 160 mm\n',
  'parts/boreas/tower-155.part.yaml': 'kind: cooler\nheight: 155 mm\nprice: 48.00 EUR\n',
  'desk.pcbuild.yaml': desk('boreas/tower-155'),
  'shed.pcbuild.yaml': desk('boreas/tower-155', 'Shed'),
};
const tower = 'parts/boreas/tower-155.part.yaml';
const taller = { ...base, [tower]: 'kind: cooler\nheight: 172 mm\nprice: 52.00 EUR\n' };
const comment = async (before: Record<string, string>, after: Record<string, string>, ...words: string[]) => {
  const { out, status } = await fettleAmong(
    { main: before },
    after,
    'compare',
    'main',
    '--format',
    'comment',
    ...words,
  );
  return { out, status, ...readComment(out) };
};

describe('a comparison', () => {
  it('shows the builds that a part breaks, before → after and what it is now, in a few lines', async () => {
    const { seen, text, status } = await comment(base, taller);
    expect(seen.length).toBeLessThanOrEqual(25);
    expect(seen[1]).toBe('### Fettle: 2 stop new.');
    expect(seen.find((line) => line.includes('**Desk**'))).toMatch(
      /^\| \*\*Desk\*\* \| 1 note → 1 stop, 1 note \| 1 new \| room left.* 5 mm → −12 mm \(−17 mm\).*price 128 EUR → 132 EUR \(\+4 EUR\) \|$/,
    );
    expect(text).toContain('2 builds, 2 touched.');
    expect(text).toContain('The cooler stands 172 mm tall; the case leaves 160 mm.');
    expect(status).toBe(1);
  });

  it('says in every format the safety message of what could hurt, in full once a file', async () => {
    const bench = 'bench:\n  surface: carpet\n  equalise-by: nothing\n';
    const after = { ...base, 'desk.pcbuild.yaml': `${base['desk.pcbuild.yaml']}${bench}` };
    for (const format of ['text', 'json', 'sarif', 'annotations', 'comment']) {
      const { out } = await fettleAmong({ main: base }, after, 'compare', 'main', '--format', format);
      expect(out.replace(/\s+/g, ' '), format).toContain('People carry charges that they do not feel.');
      expect(out, format).toContain('NOTICE');
      if (format === 'text' || format === 'comment') expect(out.match(/People carry charges/g), format).toHaveLength(1);
    }
  });

  it('is silent where the judgement did not change', async () => {
    const same = { ...base, 'desk.pcbuild.yaml': `# Moved.\n\n${base['desk.pcbuild.yaml']}` };
    expect(await comment(base, same)).toMatchObject({ out: '', status: 0 });
  });

  it('shows what cancels out all the same', async () => {
    const both = {
      ...base,
      'desk.pcbuild.yaml': desk('boreas/tower-155').replace('80.00', '76.00'),
      [tower]: base[tower]!.replace('48.00', '52.00'),
    };
    const { text, seen } = await comment(base, both);
    expect(text).toContain('price 128 EUR, as before: what changed cancels out');
    expect(seen.length).toBeLessThanOrEqual(25);
  });

  it('says what was not read, though nothing else changed', async () => {
    const broken = { ...base, 'parts/tarn/mid-3.part.yaml': 'kind: case\ncooler-height: {{\n' };
    expect((await comment(base, broken)).text).toMatch(/^new stop/m);
  });

  it('folds what the table has no room for, and keeps to a comment’s length', async () => {
    const many = (cooler: string): Record<string, string> => ({
      ...base,
      'parts/boreas/tower-172.part.yaml': 'kind: cooler\nheight: 172 mm\n',
      ...Object.fromEntries(
        Array.from({ length: 30 }, (_, i) => [`b${i}.pcbuild.yaml`, desk(cooler, `Bench ${i}`)] as const),
      ),
    });
    const { out } = await fettleAmong(
      { main: many('boreas/tower-155') },
      many('boreas/tower-172'),
      'compare',
      'main',
      '--format',
      'json',
    );
    const comparison = JSON.parse(out) as Comparison;
    const { seen, text } = readComment(
      comparisonComment(comparison, { from: 'note', working: true, language: english() }),
    );
    expect(seen.length).toBeLessThanOrEqual(25);
    expect(text).toContain('22 files more are folded below.');
    const huge = { ...comparison, files: Array.from({ length: 1_000 }, () => comparison.files).flat() };
    const long = comparisonComment(huge, { from: 'note', working: true, language: english() });
    expect(long.length).toBeLessThanOrEqual(readerLimits.commentCharacters.most);
    expect(readComment(long).text).toMatch(/\d+ files more found no room in this comment\./);
  });
});

describe('findings without a comparison', () => {
  it('are a table of the worst builds, with the rest folded', async () => {
    const { out } = await fettle(taller, 'check', '--format', 'comment');
    const { seen, text } = readComment(out);
    expect(seen.length).toBeLessThanOrEqual(25);
    expect(seen[1]).toMatch(/^### Fettle: 2 stop, 2 note$/);
    expect(text).toContain('2 builds: 2 stop.');
  });

  it('are silent after a base that they all stood in', async () => {
    const words = ['check', '--format', 'comment', '--only-new', 'main'];
    expect((await fettleAmong({ main: taller }, taller, ...words)).out).toBe('');
    expect((await fettleAmong({ main: base }, taller, ...words)).out).toContain('2 stop');
  });
});

describe('hostile texts', () => {
  const hostile = hostileFiles();
  it('live in no comment of findings', async () => {
    const { out } = await fettle(hostile, 'check', '--format', 'comment', '--from', 'unknown');
    expect(readComment(out).text).toContain(tricks[8]);
  });

  it('live in no prose, however they are put together', () => {
    const pieces = fc.constantFrom(...tricks, ...'@#!$&~%^:/[]()<>|*_`\\-+. \n0a', 'www', 'http', 'GH-', 'abcdef1');
    const texts = fc.array(fc.oneof(pieces, fc.string({ unit: 'grapheme', maxLength: 6 })), { maxLength: 8 });
    fc.assert(
      fc.property(texts, (of) => {
        const text = of.join('');
        readComment(
          `#### ${prose(text)}\n\n- ${prose(text)}: ${code(text)}\n\n${table(['a', 'b'], [[prose(text), 'x']])}`,
        );
        const cells = new MarkdownIt().parse(table(['a', 'b'], [[prose(text), 'x']]), {});
        expect(cells.filter(({ type }) => type === 'td_open')).toHaveLength(2);
      }),
      // A reference of a forge may begin with a sign that Markdown escapes.
      { numRuns: 150, examples: [[['[', '_']]] },
    );
  });

  it('live in no comparison: comment, SARIF, annotations, text, JSON', async () => {
    const calm = Object.fromEntries(
      Object.entries(hostile).map(([name, text]) => [name, text.replace('172 mm', '150 mm')]),
    );
    const write = async (format: string) =>
      (await fettleAmong({ '@x #1': calm }, hostile, 'compare', '@x #1', '--format', format, '--working')).out;
    expect(readComment(await write('comment')).text).toContain('javascript:boom');
    expect(readSarif(await write('sarif')).runs[0]!.results!.some(({ baselineState }) => baselineState === 'new')).toBe(
      true,
    );
    const lines = (await write('annotations')).trimEnd().split('\n');
    expect(commandsIn(lines.join('\n'))).toHaveLength(lines.length);
    for (const format of ['text', 'json']) expect(commandsIn(await write(format))).toEqual([]);
  });
});

it('says in SARIF what became of each finding', async () => {
  const states = async (before: Record<string, string>, after: Record<string, string>) => {
    const { out } = await fettleAmong({ main: before }, after, 'compare', 'main', '--format', 'sarif');
    const [run] = readSarif(out).runs;
    return run!.results!.filter(({ ruleId }) => ruleId === 'cooler-too-tall').map(({ baselineState }) => baselineState);
  };
  expect(await states(base, taller)).toEqual(['new', 'new']);
  expect(await states(taller, base)).toEqual(['absent', 'absent']);
  expect(await states(taller, { ...taller, [tower]: taller[tower]!.replace('172', '180') })).toEqual([
    'updated',
    'updated',
  ]);
});
