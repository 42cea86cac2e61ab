// The bench sheet as Markdown, read by a Markdown parser: every text of a file stays text.
import MarkdownIt from 'markdown-it';
import { describe, expect, it } from 'vitest';
import { sheetMarkdown } from '../../server/src/report/sheet/markdown';
import { readSamples } from '../support/samples';
import { hostile, hostileSheet, sheetFor, stepsOf } from '../support/sheets';

// What a reader might switch on: HTML, bare addresses made into links, tables and strikethrough of GitHub’s kind.
const parser = new MarkdownIt({ html: true, linkify: true });

function kinds(text: string): ReadonlySet<string> {
  const tokens = parser.parse(text, {});
  return new Set(tokens.flatMap(({ type, children }) => [type, ...(children ?? []).map((child) => child.type)]));
}

/** Everything that the sheet itself is made of; no text of a file brings any other. */
const own = kinds(
  readSamples()
    .builds.map((build) => sheetMarkdown(sheetFor(build)))
    .join('\n'),
);

describe.each(hostile)('a build whose every text is %j', (text) => {
  it('brings no link, image, HTML, code or heading', () => {
    const markdown = sheetMarkdown(hostileSheet(text));
    for (const kind of kinds(markdown)) if (kind !== 'text_special') expect([...own]).toContain(kind);
    const headings = (of: string): number => parser.parse(of, {}).filter(({ type }) => type === 'heading_open').length;
    expect(headings(markdown)).toBe(markdown.match(/^#{1,3} /gm)!.length);
  });
});

describe('the sheet in Markdown', () => {
  it('is made of headings, lists, tables, cautions in quotes and bold words', () => {
    for (const kind of ['link_open', 'image', 'html_block', 'html_inline', 'code_block', 'fence', 'code_inline'])
      expect([...own]).not.toContain(kind);
    for (const kind of ['table_open', 'blockquote_open', 'bullet_list_open', 'heading_open', 'strong_open'])
      expect([...own]).toContain(kind);
  });

  it('has a box for every step, its cautions before it', () => {
    for (const build of readSamples().builds) {
      const sheet = sheetFor(build);
      const lines = sheetMarkdown(sheet).split('\n');
      const quotes = lines.flatMap((line, i) => (line.startsWith('> **') ? [i] : []));
      let from = lines.indexOf('## Order of work');
      for (const { number, cautions } of stepsOf(sheet)) {
        const at = lines.findIndex((line, i) => i > from && line.startsWith(`- [ ] **${number}. `));
        expect(at, `step ${number}`).toBeGreaterThan(from);
        expect(quotes.filter((i) => i > from && i < at)).toHaveLength(cautions.length);
        from = at;
      }
    }
  });
});
