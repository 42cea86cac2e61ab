// No control, bidirectional or invisible character of a file reaches the terminal, nor what is made for other programs
// to read line by line (promises P13, P18).
import fc from 'fast-check';
import MarkdownIt from 'markdown-it';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hover } from '../../server/src/features/hover';
import { diagnosticsOf } from '../../server/src/features/diagnostics';
import { fettle } from '../support/command';
import { view } from '../support/view';
import { built, runCommand, write, type Built } from './support/built';
import { runs } from './support/seed';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/**
 * Everything a terminal obeys, turns round or hides; a line feed alone is ours. Written out from
 * `DerivedCoreProperties.txt` (Default_Ignorable_Code_Point), not from the property that the program asks.
 */
const forbidden =
  /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u00ad\u034f\u061c\u115f\u1160\u17b4\u17b5\u180b-\u180f\u200b-\u200f\u2028-\u202e\u2060-\u206f\u2800\u3164\ufe00-\ufe0f\ufeff\uffa0\ufff0-\ufffb\u{1bca0}-\u{1bca3}\u{1d173}-\u{1d17a}\u{e0000}-\u{e0fff}]/u;

const signs = [
  '\x1b[31m',
  '\x1b]0;title\x07',
  '\x07',
  '\x08\x08',
  '\x7f',
  '\x9b1m',
  '\u202e',
  '\u2066',
  '\u200b',
  '\u200d',
  '\u00ad',
  '\ufeff',
  '\u061c',
  '\u2028',
  '\u{e0041}',
  '\ufe0f',
  '\u{e0100}',
  '\u{e01ef}',
  '\u180b',
  '\u180f',
  '\u2800',
  '\u3164',
  '\u034f',
  '\u{1d173}',
  '\x00',
  '\x0c',
  '\x85',
];
const hostile = fc
  .array(fc.oneof(fc.constantFrom(...signs), fc.constantFrom('a', 'mm', ' ', '8', '/', '🌊')), {
    minLength: 1,
    maxLength: 5,
  })
  .map((all) => all.join(''));

/** As YAML would hold it: written out, or as escapes of a quoted text. */
const quotedIn = (text: string, raw: boolean): string => {
  const escaped = JSON.stringify(text).replace(
    /[\u007f-\uffff]/g,
    (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  return raw ? `"${text.replace(/["\\\n\r\0]/g, '')}"` : escaped;
};

const filesOf = (t: string, raw: boolean): Record<string, string> => {
  const q = quotedIn(t, raw);
  return {
    'fettle.yaml': `format: 1\nparts: [parts, ${quotedIn(`../${t}`, raw)}]\ngrades: { ${q}: ${q} }\n${q}: 1\n`,
    'desk.pcbuild.yaml':
      `format: 1\nbuild: ${q}\npurpose: ${q}\n${q}: ${q}\nparts:\n  cooler: { use: boreas/tower, maker: ` +
      `${q}, height: ${q}, ${q}: 2 }\n  case: { model: ${q}, cooler-height: 155 mm }\n  drives: [{ name: ` +
      `${q}, slot: ${q}, use: ${quotedIn(`a/${t}`, raw)} }]\n  graphics: [{ name: ${q}, power: { sustained: ` +
      `320 W } }]\n  supply: { rating: 100 W }\nexpect: { drives: { ${q}: { read: 5 GB/s } } }\naccept: [{ ` +
      `finding: ${q}, at: ${q}, because: ${q} }, { finding: unknown-key, because: ${q}, by: ${q} }]\n`,
    'parts/boreas/tower.part.yaml': `kind: cooler\nmodel: ${q}\nsource: { title: ${q}, revision: ${q} }\nheight: 158 mm\n${q}: ${q}\n`,
  };
};

function hold(text: string, what: string): void {
  const found = forbidden.exec(text);
  if (found)
    throw new Error(
      `${what}: U+${found[0].codePointAt(0)!.toString(16)} in ` +
        `${JSON.stringify(text.slice(Math.max(0, found.index - 60), found.index + 20))}`,
    );
}

describe('on the terminal', () => {
  it.each([
    [['check', '--working', '--from', 'unknown', '--accepted']],
    [['check', 'desk.pcbuild.yaml']],
    [['missing', 'desk.pcbuild.yaml']],
    [['swap', 'desk.pcbuild.yaml', 'cooler']],
    [['swap', 'desk.pcbuild.yaml', 'nothing']],
    [['check', '--format', 'json', '--working']],
    [['missing', 'desk.pcbuild.yaml', '--format', 'json']],
  ])('`%j` shows nothing of a file that a terminal obeys or hides', async (words) => {
    await fc.assert(
      fc.asyncProperty(hostile, fc.boolean(), async (text, raw) => {
        const { out, err } = await fettle(filesOf(text, raw), ...words);
        hold(out, 'out');
        hold(err, 'err');
      }),
      runs(25),
    );
  });

  it('nor of the names of files and folders', async () => {
    await fc.assert(
      fc.asyncProperty(
        hostile.map((text) => text.replaceAll('/', '')).filter((text) => text.trim() !== '' && !text.startsWith('.')),
        async (name) => {
          const { out, err } = await fettle(
            {
              [`${name}/${name}.pcbuild.yaml`]: 'build: [\n',
              [`${name}.pcbuild.yaml`]: 'format: 9\nx: 1\n',
              [`${name}/fettle.yaml`]: 'y: 1\n',
            },
            'check',
          );
          hold(out + err, 'check');
        },
      ),
      runs(40),
    );
  });

  it('what is escaped is still told apart', async () => {
    const { out } = await fettle({ 'a.pcbuild.yaml': 'format: 1\nbuild: A\n"pa\\u202erts": {}\n' }, 'check');
    expect(out).toContain('pa\\u{202e}rts');
  });
});

describe('words on the command line', () => {
  let program: Built;
  let folder: string;
  beforeAll(() => {
    program = built();
    folder = mkdtempSync(join(tmpdir(), 'fettle-words-'));
    write(join(folder, 'a.pcbuild.yaml'), 'format: 1\nbuild: A\n');
  });
  afterAll(() => program.remove());

  const sign = '\x1b[31m\u202e';
  it.each([
    [['check', `x${sign}`]],
    [['swap', 'a.pcbuild.yaml', sign]],
    [['missing', `y${sign}`]],
    [['explain', sign]],
  ])('%j is shown escaped, and ends with 2', (words) => {
    const ran = runCommand(program, folder, words);
    expect([ran.status, ran.signal]).toEqual([2, null]);
    hold(ran.out + ran.err, words.join(' '));
  });

  it.each(
    [
      ['check', '--on', sign],
      ['check', '--from', sign],
      ['check', '--format', sign],
      ['check', `--${sign}`],
      ['check', `-${sign}`],
      [sign],
      [`chec${sign}`],
      ['explain', 'x', sign],
      ['swap', 'a.pcbuild.yaml', 'cooler', '--from', sign],
      ['missing', '--format', sign],
      ['check', '--from', 'a\nb'],
      ['check', '--from', 'a\n(Did you mean b?)'],
      ['help', sign],
    ].map((words) => [words]),
  )('what is refused in %j is shown escaped, and ends with 2', async (words) => {
    const { status, out, err } = await fettle({}, ...words);
    expect([status, out]).toEqual([2, '']);
    hold(err, words.join(' '));
    expect(err).not.toMatch(/^(b|\(Did you mean b)/m);
  });

  it('what is refused is still told, with what was perhaps meant on a line of its own', async () => {
    expect((await fettle({}, 'check', '--on', `1${sign}`)).err).toBe(
      "error: option '--on <date>' argument '1\\u{1b}[31m\\u{202e}' is invalid. A day is written as 2027-06-30.\n",
    );
    expect((await fettle({}, 'chekc')).err).toBe("error: unknown command 'chekc'\n(Did you mean check?)\n");
  });
});

describe('in an editor', () => {
  const markdown = new MarkdownIt({ html: true, linkify: true });
  const active = new Set(['html_inline', 'html_block', 'link_open', 'image', 'heading_open', 'table_open', 'hr']);

  it('hovers hold no live HTML, link or image of a file, and messages nothing hidden', () => {
    const texts = fc.oneof(
      hostile,
      fc.constantFrom(
        '<img src=x onerror=alert(1)>',
        '[a](command:x)',
        '![a](http://example.org/a)',
        'http://example.org',
        '`a`',
        '```\\n# a',
        '| a | b |',
        '<!-- -->',
        '&lt;b&gt;',
        '$(bug)',
        '[a]: http://b',
      ),
    );
    fc.assert(
      fc.property(texts, fc.nat(), (text, at) => {
        const files = filesOf(text, false);
        const { 'desk.pcbuild.yaml': desk, ...others } = files;
        const shown = view(`¦${desk}`, others, 'desk.pcbuild.yaml');
        for (const { message } of diagnosticsOf(shown.view, { from: 'unknown', related: true }))
          hold(message, 'message');
        for (let step = 0; step < 12; step++) {
          const said = hover(shown.view, shown.view.doc.lines.positionAt((at + step * 53) % desk!.length), {
            kind: 'markdown',
          });
          if (!said) continue;
          hold(said.contents.value, 'hover');
          const kinds = markdown
            .parse(said.contents.value, {})
            .flatMap((token) => [token.type, ...(token.children ?? []).map((child) => child.type)]);
          expect(
            kinds.filter((kind) => active.has(kind)),
            said.contents.value,
          ).toEqual([]);
        }
      }),
      runs(60),
    );
  });
});
