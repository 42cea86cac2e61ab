// No input makes the command or the server exit, hang or swell, and limits are said (promises P1, P2, P24): each text
// of
// the corpus through a process of its own, and all of them through one server.
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { built, runCommand, ServerProcess, write, type Built } from './support/built';
import { corpus } from './support/corpus';
import { busyFactor } from '../support/cpu';

/** What is promised; time is that of the processor, since a busy machine says nothing of the program. */
const mostMs = 2_000;
const mostMb = 1_000;
/** What a wait on a busy machine may come to before it counts as a hang. */
const mostWaitMs = 30_000;

let program: Built;
let top: string;

beforeAll(() => {
  program = built();
  top = mkdtempSync(join(tmpdir(), 'fettle-nasty-'));
  corpus.forEach(({ bytes }, i) => {
    mkdirSync(join(top, `${i}/parts/a`), { recursive: true });
    write(join(top, `${i}/desk.pcbuild.yaml`), bytes);
  });
});
afterAll(() => {
  rmSync(top, { recursive: true, force: true });
  program.remove();
});

const trace = /^\s+at .*[:(]\d+/m;

describe('the command', () => {
  it.each(corpus.map((nasty, i) => [nasty.name, i, nasty] as const))('ends well on %s', (_, i, { limit, bytes }) => {
    const ran = runCommand(program, join(top, `${i}`), [
      'check',
      'desk.pcbuild.yaml',
      '--working',
      '--from',
      'unknown',
    ]);
    expect({ signal: ran.signal, status: [0, 1, 2].includes(ran.status ?? -1) }, ran.err.slice(0, 2_000)).toEqual({
      signal: null,
      status: true,
    });
    expect(ran.err + ran.out).not.toMatch(trace);
    expect(ran.err).not.toMatch(/fault of its own/);
    expect(ran.cpuMs).toBeLessThan(mostMs * busyFactor);
    expect(ran.peakMb).toBeLessThan(mostMb);
    if (limit) {
      expect(ran.status).not.toBe(0);
      expect(ran.out + ran.err).toMatch(/limits-reached|is larger than 2 000 000 bytes/);
    }
    if (typeof bytes !== 'string') expect(ran.status).toBe(2);
  });

  it.each(
    corpus
      .filter(({ bytes }) => typeof bytes === 'string')
      .map((nasty) => [nasty.name, nasty] as const)
      .filter((_, i) => i % 6 === 0),
  )('ends well on a part file and house settings of %s', (_, { bytes }) => {
    const folder = mkdtempSync(join(top, 'used-'));
    mkdirSync(join(folder, 'parts/a'), { recursive: true });
    write(
      join(folder, 'desk.pcbuild.yaml'),
      'format: 1\nbuild: A\nparts:\n  cooler: { use: a/b }\n  case: { cooler-height: 155 mm }\n',
    );
    write(join(folder, 'parts/a/b.part.yaml'), bytes);
    write(join(folder, 'fettle.yaml'), bytes);
    const ran = runCommand(program, folder, ['check', '--working', '--from', 'unknown']);
    expect([ran.signal, [0, 1, 2].includes(ran.status ?? -1)], ran.err.slice(0, 2_000)).toEqual([null, true]);
    expect(ran.err + ran.out).not.toMatch(trace);
    expect(ran.cpuMs).toBeLessThan(2 * mostMs * busyFactor);
    expect(ran.peakMb).toBeLessThan(mostMb);
  });
});

describe('the server', () => {
  it('answers on all of them, one after the other, and ends in order', async () => {
    const server = new ServerProcess(program, top);
    const slow: string[] = [];
    try {
      await server.start(pathToFileURL(top).href);
      for (const [i, { name, bytes }] of corpus.entries()) {
        const textDocument = { uri: pathToFileURL(join(top, `${i}/desk.pcbuild.yaml`)).href };
        const text = typeof bytes === 'string' ? bytes : Buffer.from(bytes).toString('latin1');
        const begun = performance.now();
        await server.connection.sendNotification('textDocument/didOpen', {
          textDocument: { ...textDocument, languageId: 'fettle-build', version: 1, text },
        });
        const line = Math.floor((text.match(/\n/g)?.length ?? 0) / 2);
        const position = { line, character: 3 };
        await server.connection.sendRequest('textDocument/hover', { textDocument, position });
        await server.connection.sendRequest('textDocument/completion', { textDocument, position });
        await server.connection.sendNotification('textDocument/didChange', {
          textDocument: { ...textDocument, version: 2 },
          contentChanges: [{ range: { start: position, end: position }, text: 'x' }],
        });
        await server.connection.sendRequest('textDocument/documentSymbol', { textDocument });
        const read = performance.now() - begun;
        const asked = performance.now();
        await server.connection.sendRequest('textDocument/codeAction', {
          textDocument,
          range: { start: position, end: position },
          context: { diagnostics: [] },
        });
        const acted = performance.now() - asked;
        // The command holds the time of one judging; here are two and five answers, on a machine that may be busy.
        if (read > mostWaitMs || acted > mostWaitMs)
          slow.push(`${name}: ${Math.round(read)} ms to read, ${Math.round(acted)} ms to act`);
        expect(server.published.has(textDocument.uri), name).toBe(true);
        await server.connection.sendNotification('textDocument/didClose', { textDocument });
        expect(server.ended, `${name}: ${server.err}`).toBeUndefined();
      }
      expect(slow).toEqual([]);
      const told = await server.stop();
      expect(told.status).toBe(0);
      expect(told.peakMb).toBeLessThan(mostMb);
      expect(server.err).toBe('');
    } finally {
      server.kill();
    }
  }, 300_000);

  it.each([
    ['no JSON', 'Content-Length: 5\r\n\r\n{nope'],
    ['no header', 'hello\r\n\r\n'],
    ['an empty message', 'Content-Length: 2\r\n\r\n{}'],
    ['a list', 'Content-Length: 2\r\n\r\n[]'],
    ['a wrong length', 'Content-Length: x\r\n\r\n{}'],
  ])('outlives %s on its stream', async (_, bytes) => {
    const server = new ServerProcess(program, top);
    try {
      server.process.stdin.write(bytes);
      await new Promise((resolve) => setTimeout(resolve, 150));
      expect(server.err).not.toMatch(trace);
      server.process.stdin.end();
      await expect.poll(() => server.ended, { timeout: 30_000 }).toBeDefined();
    } finally {
      server.kill();
    }
  });
});
