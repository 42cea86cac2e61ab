// The same bytes give the same findings: LF or CRLF, typed or opened, command or server, whatever the order of files,
// the locale and the time zone (promise P19).
import fc from 'fast-check';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { lspOf, TypingClient } from './support/typing';
import { built, runCommand, type Built } from './support/built';
import { judge, linesOf, partName } from './support/judged';
import { runs } from './support/seed';
import { broken, builds, partFiles } from './support/texts';
import { fettle } from '../support/command';

const samplesFolder = join(__dirname, '../../samples');
const samples = Object.fromEntries(
  readdirSync(samplesFolder, { recursive: true, encoding: 'utf8' })
    .sort()
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => [name.replaceAll('\\', '/'), readFileSync(join(samplesFolder, name), 'utf8')]),
);

const asLf = (text: string): string => text.replaceAll('\r\n', '\n');
const asCrLf = (text: string): string => asLf(text).replaceAll('\n', '\r\n');

describe('line ends', () => {
  it('make no difference to a build', () => {
    fc.assert(
      fc.property(builds, ({ text }) => {
        expect(linesOf(judge(asCrLf(text)).judgement)).toEqual(linesOf(judge(asLf(text)).judgement));
      }),
      runs(100),
    );
  });

  it('make no difference to a part file, nor to broken texts', () => {
    fc.assert(
      fc.property(partFiles, broken(builds), ({ text }, other) => {
        // A lone carriage return is a line end too; with a line feed put before or behind it, it is another text.
        const plain = other.replaceAll('\r', '');
        expect(linesOf(judge(asCrLf(text), partName).judgement)).toEqual(
          linesOf(judge(asLf(text), partName).judgement),
        );
        expect(linesOf(judge(asCrLf(plain)).judgement)).toEqual(linesOf(judge(asLf(plain)).judgement));
      }),
      runs(80),
    );
  });

  it('make no difference to a part that a build uses', async () => {
    const turned = Object.fromEntries(Object.entries(samples).map(([name, text]) => [name, asCrLf(text)]));
    const words = ['check', '--working', '--from', 'unknown'];
    expect((await fettle(turned, ...words)).out).toBe((await fettle(samples, ...words)).out);
  });
});

it('a byte order mark makes no difference but to the columns of its line', () => {
  fc.assert(
    fc.property(builds, ({ text }) => {
      const bare = `# first\n${text.replace(/^\ufeff/, '')}`;
      expect(linesOf(judge(`\ufeff${bare}`).judgement)).toEqual(linesOf(judge(bare).judgement));
    }),
    runs(60),
  );
});

it('the order in which files are found makes no difference', async () => {
  const words = ['check', '--working', '--from', 'unknown'];
  const expected = await fettle(samples, ...words);
  await fc.assert(
    fc.asyncProperty(
      fc.shuffledSubarray(Object.keys(samples), { minLength: Object.keys(samples).length }),
      async (names) => {
        expect(await fettle(Object.fromEntries(names.map((name) => [name, samples[name]!])), ...words)).toEqual(
          expected,
        );
      },
    ),
    runs(2),
  );
});

describe('typed and freshly opened', () => {
  const edits = fc.array(
    fc.record({
      at: fc.nat(),
      cut: fc.nat({ max: 20 }),
      put: fc.constantFrom(
        '',
        'x',
        '\n',
        '\r\n',
        '\r',
        '  ',
        ': ',
        '- ',
        '🌊',
        '"',
        '# ',
        '{',
        '}',
        '158 mm',
        'use: tarn/mid-3',
      ),
    }),
    { minLength: 1, maxLength: 8 },
  );
  let client: TypingClient;
  beforeAll(async () => {
    client = new TypingClient(samples);
    await client.begin();
  });
  afterAll(() => client.dispose());

  it('give the same findings', async () => {
    await fc.assert(
      fc.asyncProperty(builds, edits, async ({ text }, changes) => {
        const typed = await client.typed('made.pcbuild.yaml', text, changes);
        const opened = await client.opened('made.pcbuild.yaml', typed.text);
        expect(typed.findings).toEqual(opened);
      }),
      runs(40),
    );
  });

  it('give the same findings where it is a part file or the house that is typed', async () => {
    const desk = samples['survey-desk.pcbuild.yaml']!;
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom('parts/boreas/tower-168.part.yaml', 'parts/norrvik/b7-forge.part.yaml', 'fettle.yaml'),
        edits,
        async (name, changes) => {
          const typed = await client.besides('made.pcbuild.yaml', desk, name, samples[name]!, changes);
          expect(typed.after).toEqual(typed.fresh);
        },
      ),
      runs(12),
    );
  });

  it('are what the command says', async () => {
    const { out } = await fettle(samples, 'check', '--format', 'json');
    const said = JSON.parse(out) as {
      files: {
        file: string;
        findings: { id: string; grade: string; message: string; range: object; accepted?: unknown }[];
      }[];
    };
    for (const { file: path, findings } of said.files) {
      const shown = (await client.opened(path, samples[path]!)).filter(({ code }) => code !== 'fact-not-stated');
      const told = findings.filter(({ grade, accepted }) => grade !== 'unknown' && !accepted);
      expect(shown.filter(({ severity }) => severity !== 4).map(lspOf)).toEqual(
        told.map(({ id, message, range }) => ({ id, message, range })),
      );
    }
    expect(said.files.flatMap(({ findings }) => findings).length).toBeGreaterThan(30);
  });
});

describe('as a process', () => {
  let program: Built;
  beforeAll(() => void (program = built()));
  afterAll(() => program.remove());

  it('locale, time zone and terminal make no difference', () => {
    const words = ['check', '.', '--working', '--from', 'unknown', '--on', '2026-11-25'];
    const plain = runCommand(program, samplesFolder, words);
    expect(plain.out.length).toBeGreaterThan(10_000);
    const environments: Record<string, string>[] = [
      { LC_ALL: 'tr_TR.UTF-8', LANG: 'tr_TR.UTF-8', TZ: 'Pacific/Kiritimati' },
      { LC_ALL: 'de_DE.UTF-8', TZ: 'Pacific/Pago_Pago', COLUMNS: '40', TERM: 'dumb' },
    ];
    for (const env of environments) {
      const other = runCommand(program, samplesFolder, words, env);
      expect([other.status, other.out, other.err]).toEqual([plain.status, plain.out, plain.err]);
    }
  });
});
