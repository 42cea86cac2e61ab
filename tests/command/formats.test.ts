// What `check` writes for other programs, over a workspace whose texts try to be something else, and after a base; and
// the matchers of the extension.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { error, notice, warning } from '@actions/core';
import { describe, expect, it, vi } from 'vitest';
import { kindOfFile } from '../../server/src/core/parts/doc';
import { fettle, fettleAmong } from '../support/command';
import { hostileFiles } from '../support/hostile';
import { commandsIn, readJunit, readQuality, readSarif, type LogCommand } from '../support/readers';

const root = join(__dirname, '../..');
const read = (path: string): string => readFileSync(join(root, path), 'utf8');
const hostile = hostileFiles();
const among = (format: string) => fettle(hostile, 'check', '--format', format, '--from', 'unknown');

describe('hostile texts', () => {
  it.each(['text', 'lines', 'json', 'sarif', 'code-quality', 'junit-xml'])(
    'start no command of a log: %s',
    async (format) => {
      const { out, err, status } = await among(format);
      expect(commandsIn(`${out}\n${err}`)).toEqual([]);
      expect(status).toBe(1);
    },
  );

  it('start no command of a log by the name of a file', async () => {
    const odd = Object.fromEntries(
      ['::error::a', ' ::error::b', '##[error]c'].map((name) => [`${name}.pcbuild.yaml`, '[']),
    );
    const { out } = await fettle(odd, 'check', '--format', 'lines');
    expect(out.trimEnd().split('\n').length).toBeGreaterThan(3);
    expect(commandsIn(out)).toEqual([]);
  });

  it('are annotations and nothing else: what the runner’s own package writes for the same', async () => {
    const { out } = await among('annotations');
    const commands = commandsIn(out);
    expect(commands).toHaveLength(out.trimEnd().split('\n').length);
    for (const command of commands.slice(0, -1)) expect(command).toEqual(anew(command));
    expect(out).not.toMatch(/[^\x20-\x7e\n]*[\x00-\x09\x0b-\x1f\x7f\u202e\u2028]/);
  });

  it('are read as texts by the readers of SARIF, JUnit XML and code quality', async () => {
    const [run] = readSarif((await among('sarif')).out).runs;
    const uris = run!.results!.flatMap(({ locations }) => locations!.map(({ physicalLocation }) => physicalLocation!));
    for (const { artifactLocation } of uris)
      expect(artifactLocation!.uri).toMatch(/^[\w.~!*'()%-]+(\/[\w.~!*'()%-]+)*$/);
    expect(run!.results!.filter(({ message }) => /\]\(/.test(message.text!))).toEqual([]);
    const reasons = run!.results!.flatMap(({ suppressions }) =>
      suppressions!.map(({ justification }) => justification),
    );
    expect(reasons.some((reason) => reason!.includes('javascript:boom'))).toBe(true);
    expect(readJunit((await among('junit-xml')).out).every(({ name }) => name !== 'x')).toBe(true);
    expect(readQuality((await among('code-quality')).out).length).toBeGreaterThan(Object.keys(hostile).length);
  });
});

/** A command as the runner’s own package writes it, read again. */
function anew({ name, properties, data }: LogCommand): LogCommand {
  let line = '';
  const spy = vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    line += String(text);
    return true;
  });
  try {
    const { file, title, line: startLine, endLine, col, endColumn } = properties;
    const at = { file, title, startLine, endLine, startColumn: col, endColumn } as object;
    ({ error, warning, notice })[name as 'error'](data, at);
  } finally {
    spy.mockRestore();
  }
  return commandsIn(line)[0]!;
}

it('tells blocks of a guide apart that say the same', async () => {
  const block = '```pcbuild\nformat: 1\nbuild: Desk\nparts:\n  cooler: { odd: 1 }\n```\n';
  const guide = { 'desk.md': `# Desk\n\n${block}\n${block}` };
  const [run] = readSarif((await fettle(guide, 'check', '--format', 'sarif')).out).runs;
  const odd = run!.results!.filter(({ ruleId }) => ruleId === 'unknown-key');
  expect(odd).toHaveLength(2);
  expect(new Set(odd.map(({ partialFingerprints }) => partialFingerprints!.primaryLocationLineHash)).size).toBe(2);
  expect(readQuality((await fettle(guide, 'check', '--format', 'code-quality')).out).length).toBeGreaterThan(1);
  const names = readJunit((await fettle(guide, 'check', '--format', 'junit-xml')).out).map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
});

describe('what was not read', () => {
  const files = { 'a.pcbuild.yaml': 'format: 1\nbuild: A\nparts: {\n' };
  it.each(['sarif', 'annotations', 'code-quality', 'junit-xml'])('is said and fails: %s', async (format) => {
    const { out, status } = await fettle(files, 'check', 'a.pcbuild.yaml', 'nowhere', '--format', format);
    expect(out).toContain('there is no such file or folder.');
    expect(status).toBe(2);
    if (format === 'sarif') expect(readSarif(out).runs[0]!.invocations![0]!.executionSuccessful).toBe(false);
    if (format === 'annotations')
      expect(commandsIn(out)[0]).toMatchObject({ name: 'error', data: expect.stringContaining('no such file') });
    if (format === 'junit-xml') expect(readJunit(out).filter(({ end }) => end === 'error')).toHaveLength(2);
    if (format === 'code-quality') expect(readQuality(out).at(-1)!.severity).toBe('blocker');
  });
});

describe('after a base', () => {
  const desk = (height: string, more = ''): Record<string, string> => ({
    'desk.pcbuild.yaml': `format: 1\nbuild: Desk\nparts:\n  cooler: { height: ${height}${more} }\n  case: { cooler-height: 160 mm }\n`,
  });
  const sarif = async (before: Record<string, string>, after: Record<string, string>) => {
    const { out } = await fettleAmong({ main: before }, after, 'check', '--only-new', 'main', '--format', 'sarif');
    return readSarif(out).runs[0]!.results!;
  };

  it('each result says whether it is new or grew', async () => {
    expect((await sarif(desk('155 mm'), desk('170 mm'))).map(({ baselineState }) => baselineState)).toEqual(['new']);
    expect((await sarif(desk('165 mm'), desk('170 mm'))).map(({ baselineState }) => baselineState)).toEqual([
      'updated',
    ]);
  });

  it('keeps the fingerprints that a run over everything gives', async () => {
    const two = desk('155 mm', ', odd: 1, odder: 2');
    const { out } = await fettle(two, 'check', '--format', 'sarif');
    const prints = (results: readonly { partialFingerprints?: Record<string, string> }[]) =>
      results.map(({ partialFingerprints }) => partialFingerprints!['finding/v1']);
    const news = prints(await sarif(desk('155 mm', ', odd: 1'), two));
    expect(news).toHaveLength(1);
    expect(prints(readSarif(out).runs[0]!.results!)).toContain(news[0]);
  });
});

describe('the matchers of the extension', () => {
  interface Matcher {
    readonly name: string;
    readonly severity: string;
    readonly pattern: {
      readonly regexp: string;
      readonly file: number;
      readonly line: number;
      readonly column: number;
      readonly message: number;
      readonly code: number;
    };
  }
  const { problemMatchers } = (
    JSON.parse(read('client/package.json')) as { contributes: { problemMatchers: Matcher[] } }
  ).contributes;

  it('read each finding of all samples from its line, once, with its place, sentence and check', async () => {
    const samples: Record<string, string> = Object.fromEntries(
      readdirSync(join(root, 'samples'), { recursive: true, encoding: 'utf8' })
        .map((path) => path.replaceAll('\\', '/'))
        .filter((path) => kindOfFile(path) !== undefined)
        .map((path) => [path, read(`samples/${path}`)]),
    );
    const { out } = await fettle(samples, 'check', '--format', 'lines', '--from', 'note');
    const lines = out.trimEnd().split('\n');
    expect(lines.length).toBeGreaterThan(50);
    const severities = new Set<string>();
    for (const text of lines) {
      const matched = problemMatchers.flatMap(({ severity, pattern }) => {
        const match = new RegExp(pattern.regexp).exec(text);
        return match ? [{ severity, pattern, match }] : [];
      });
      expect(matched, text).toHaveLength(1);
      const { severity, pattern, match } = matched[0]!;
      severities.add(severity);
      expect(samples[match[pattern.file]!]!.split('\n')[Number(match[pattern.line]) - 1], text).toBeDefined();
      expect(text).toContain(`${match[pattern.message]} (${match[pattern.code]})`);
    }
    expect([...severities].sort()).toEqual(['error', 'info', 'warning']);
  });

  it('are those that the task names', () => {
    const named = [...read('client/src/task.ts').matchAll(/'\$([\w-]+)'/g)].map(([, name]) => name);
    expect(named).toEqual(problemMatchers.map(({ name }) => name));
  });
});
