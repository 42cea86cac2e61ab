// The life of a connection: refusals before and after it, one answer a request, cancelling, faults that are told.
import { languageFor } from '../../server/src/core/words/languages';
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { PassThrough } from 'node:stream';
import { setImmediate } from 'node:timers/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { StreamMessageReader, StreamMessageWriter, type Message } from 'vscode-languageserver-protocol/node';
import { serve } from '../../server/src/language/serve';
import { guarded } from '../../server/src/language/guard';
import { MemoryAddresses } from '../support/client';
import { today } from '../support/bench';

/** How long an answer may take on a busy machine before it counts as none. */
const patience = { timeout: 15_000, interval: 2 };

interface Answer {
  id: number;
  result?: unknown;
  error?: { code: number; message: string };
}

/** Raw messages in and out, so that nothing is smoothed over by a client library. */
class Wire {
  readonly answers: Answer[] = [];
  readonly logged: string[] = [];
  /** What happens the next time that the server lets others have their turn, once. */
  pausing: (() => void) | undefined;
  pauses = 0;
  private readonly writer: StreamMessageWriter;

  constructor(files: Record<string, string> = {}) {
    const up = new PassThrough();
    const down = new PassThrough();
    serve(new StreamMessageReader(up), new StreamMessageWriter(down), {
      languageFor,
      makeHost: () => new MemoryAddresses(new Map(Object.entries(files))),
      version: '0',
      today: () => today,
      pause: () => this.pause(),
      after: () => () => undefined,
    });
    this.writer = new StreamMessageWriter(up);
    new StreamMessageReader(down).listen((message) => {
      if (!('method' in message)) this.answers.push(message as unknown as Answer);
      else if (message.method === 'window/logMessage')
        this.logged.push((message as unknown as { params: { message: string } }).params.message);
    });
  }

  private async pause(): Promise<void> {
    this.pauses++;
    this.pausing?.();
    this.pausing = undefined;
    await setImmediate();
  }

  send(message: object): void {
    void this.writer.write({ jsonrpc: '2.0', ...message } as Message);
  }

  /** Sends a request and waits for its answer. */
  async ask(id: number, method: string, params: object | null = {}): Promise<Answer> {
    this.send({ id, method, ...(params === null ? {} : { params }) });
    await expect.poll(() => this.answers.some((answer) => answer.id === id), patience).toBe(true);
    return this.answers.find((answer) => answer.id === id)!;
  }
}

const initialize = { processId: null, rootUri: null, capabilities: {} };
const hover = { textDocument: { uri: 'file:///ws/desk.pcbuild.yaml' }, position: { line: 0, character: 0 } };

describe('messages that have not their shape', () => {
  const folder = { uri: 'file:///ws', name: 'ws' };
  const files = { 'ws/desk.pcbuild.yaml': 'format: 1\n' };
  const begin = async (wire: Wire): Promise<void> => {
    await wire.ask(1, 'initialize', {
      ...initialize,
      workspaceFolders: [folder],
      capabilities: { workspace: { workspaceFolders: true } },
    });
    wire.send({ method: 'initialized', params: {} });
  };

  test.each([
    ['workspace/didChangeWorkspaceFolders', { event: { added: [{}], removed: [] } }],
    ['workspace/didChangeWorkspaceFolders', { event: { added: [{ uri: 7 }], removed: [] } }],
    ['workspace/didChangeWorkspaceFolders', { event: null }],
    ['workspace/didChangeWorkspaceFolders', {}],
    ['workspace/didChangeWatchedFiles', { changes: [{ uri: null, type: 1 }] }],
    ['textDocument/didOpen', { textDocument: { uri: 7, languageId: 'x', version: 1, text: 'format: 1\n' } }],
    ['textDocument/didOpen', { textDocument: { uri: 'file:///ws/a.part.yaml', languageId: 'x', version: 1 } }],
    ['textDocument/didChange', { textDocument: { uri: 'file:///ws/a.part.yaml', version: 2 }, contentChanges: [null] }],
    ['textDocument/didClose', {}],
    ['textDocument/didSave', { textDocument: null }],
    ['textDocument/willSave', { textDocument: { uri: 'file:///a.md' }, reason: 'by hand' }],
    ['workspace/didChangeConfiguration', [7]],
    ['$/cancelRequest', { id: {} }],
  ])('as notification %s %j are told and change nothing', async (method, params) => {
    const wire = new Wire(files);
    await begin(wire);
    wire.send({ method, params });
    await expect
      .poll(() => wire.logged.join('\n'), patience)
      .toContain(`${method}: the parameters are not of their shape`);
    expect(await wire.ask(2, 'fettle/checkWorkspace', null)).toMatchObject({ result: { files: 1 } });
    expect((await wire.ask(3, 'textDocument/hover', hover)).error).toBeUndefined();
  });

  test('as `initialize` are refused, and a proper one is taken', async () => {
    const wire = new Wire(files);
    const wrong = { ...initialize, workspaceFolders: [{ uri: 7 }] };
    expect((await wire.ask(5, 'initialize', wrong)).error?.code).toBe(-32602);
    await begin(wire);
    expect(await wire.ask(2, 'fettle/checkWorkspace', null)).toMatchObject({ result: { files: 1 } });
  });

  test('as requests are refused with what is wrong', async () => {
    const wire = new Wire(files);
    await begin(wire);
    expect((await wire.ask(2, 'textDocument/hover', { textDocument: 7 })).error).toMatchObject({
      code: -32602,
      message: expect.stringContaining("must have required property 'position'"),
    });
  });
});

describe('requests', () => {
  let wire: Wire;
  beforeEach(() => void (wire = new Wire()));

  test('before `initialize` each is refused, known or not, and nothing else is harmed', async () => {
    expect((await wire.ask(1, 'textDocument/hover', hover)).error?.code).toBe(-32002);
    expect((await wire.ask(2, 'no/such/request')).error?.code).toBe(-32002);
    expect((await wire.ask(3, 'shutdown', null)).error?.code).toBe(-32002);
    wire.send({
      method: 'textDocument/didOpen',
      params: { textDocument: { uri: hover.textDocument.uri, languageId: 'x', version: 1, text: 'format: 1\n' } },
    });
    expect((await wire.ask(4, 'initialize', initialize)).result).toMatchObject({ serverInfo: { name: 'fettle' } });
    // The file was sent too early, so it is not open.
    expect((await wire.ask(5, 'textDocument/hover', hover)).result).toBeNull();
  });

  test('after `shutdown` each is refused', async () => {
    await wire.ask(1, 'initialize', initialize);
    expect(await wire.ask(2, 'shutdown', null)).toMatchObject({ result: null });
    expect((await wire.ask(3, 'textDocument/hover', hover)).error?.code).toBe(-32600);
    expect((await wire.ask(4, 'initialize', initialize)).error?.code).toBe(-32600);
    expect((await wire.ask(5, 'shutdown', null)).error?.code).toBe(-32600);
  });

  test('a second `initialize` is refused', async () => {
    await wire.ask(1, 'initialize', initialize);
    expect((await wire.ask(2, 'initialize', initialize)).error?.code).toBe(-32600);
  });

  test('each is answered once, whatever its parameters are', async () => {
    await wire.ask(1, 'initialize', initialize);
    const methods = [
      'textDocument/hover',
      'textDocument/completion',
      'textDocument/codeAction',
      'textDocument/definition',
      'textDocument/references',
      'textDocument/documentHighlight',
      'textDocument/prepareRename',
      'textDocument/rename',
      'textDocument/documentSymbol',
      'textDocument/diagnostic',
      'workspace/diagnostic',
      'workspace/executeCommand',
      'fettle/explain',
      'fettle/checkWorkspace',
      'no/such/request',
    ];
    const shapes = [
      null,
      {},
      { textDocument: 7 },
      { textDocument: { uri: 'nonsense' }, position: {} },
      { ...hover, range: null, context: null },
    ];
    let id = 10;
    for (const method of methods) for (const params of shapes) await wire.ask(id++, method, params);
    await wire.ask(id++, 'shutdown', null);
    const ids = wire.answers.map((answer) => answer.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toHaveLength(methods.length * shapes.length + 2);
  });

  test('one without parameters is served like any other', async () => {
    await wire.ask(1, 'initialize', { ...initialize, workspaceFolders: [{ uri: 'file:///ws', name: 'ws' }] });
    expect(await wire.ask(2, 'fettle/checkWorkspace', null)).toMatchObject({ result: { files: 0 } });
  });

  test('one that is cancelled is answered as cancelled', async () => {
    await wire.ask(1, 'initialize', { ...initialize, workspaceFolders: [{ uri: 'file:///ws', name: 'ws' }] });
    wire.send({ id: 2, method: 'fettle/checkWorkspace', params: null });
    wire.send({ method: '$/cancelRequest', params: { id: 2 } });
    await expect.poll(() => wire.answers.find(({ id }) => id === 2)?.error?.code, patience).toBe(-32800);
  });

  test('code actions over many findings are given up between two of them, by a cancel or a change of the text', async () => {
    const uri = 'file:///ws/desk.pcbuild.yaml';
    const text = `format: 1\nbuild: Desk\nparts:\n  drives:\n${Array.from({ length: 300 }, (_, i) => `    - { name: d${i}, cpacity: 1 TB }\n`).join('')}`;
    const ask = (id: number) =>
      wire.send({
        id,
        method: 'textDocument/codeAction',
        params: {
          textDocument: { uri },
          range: { start: { line: 0, character: 0 }, end: { line: 300, character: 0 } },
          context: { diagnostics: [], only: ['quickfix'] },
        },
      });
    const code = (id: number) =>
      expect.poll(() => wire.answers.find((answer) => answer.id === id)?.error?.code, patience);
    await wire.ask(1, 'initialize', {
      ...initialize,
      capabilities: {
        textDocument: { codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: [] } } } },
      },
    });
    wire.send({
      method: 'textDocument/didOpen',
      params: { textDocument: { uri, languageId: 'fettle-build', version: 1, text } },
    });
    await wire.ask(2, 'textDocument/hover', hover);
    wire.pausing = () => wire.send({ method: '$/cancelRequest', params: { id: 3 } });
    ask(3);
    await code(3).toBe(-32800);
    wire.pausing = () =>
      wire.send({
        method: 'textDocument/didChange',
        params: { textDocument: { uri, version: 2 }, contentChanges: [{ text: `${text}# more\n` }] },
      });
    ask(4);
    await code(4).toBe(-32801);
    expect(wire.pauses).toBeLessThan(20);
  });
});

test('a handler that throws is logged with its method and answered as a fault', async () => {
  const logged: string[] = [];
  const handler = guarded(
    'textDocument/hover',
    (text) => void logged.push(text),
    () => {
      throw new Error('broken on purpose');
    },
  );
  const token = { isCancellationRequested: false, onCancellationRequested: () => ({ dispose: () => undefined }) };
  await expect(handler({}, token)).rejects.toMatchObject({
    code: -32603,
    message: expect.stringContaining('broken on purpose'),
  });
  expect(logged[0]).toContain('textDocument/hover');
});

const built = join(__dirname, '../../dist/server.js');

describe.skipIf(!existsSync(built))('the built server as a process', () => {
  let server: ReturnType<typeof spawn>;
  const answers: { id?: number }[] = [];
  const send = (message: object): void => {
    const text = JSON.stringify({ jsonrpc: '2.0', ...message });
    server.stdin!.write(`Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`);
  };
  const ended = (): Promise<number | null> => new Promise((resolve) => server.once('exit', resolve));

  beforeEach(() => {
    answers.length = 0;
    server = spawn(process.execPath, [built, '--stdio'], { stdio: ['pipe', 'pipe', 'ignore'] });
    new StreamMessageReader(server.stdout!).listen((message) => void answers.push(message as { id?: number }));
  });
  afterEach(() => void server.kill());

  test('exits with 0 after `shutdown` and `exit`', async () => {
    send({ id: 1, method: 'initialize', params: initialize });
    send({ id: 2, method: 'shutdown' });
    await expect.poll(() => answers.some(({ id }) => id === 2), patience).toBe(true);
    const done = ended();
    send({ method: 'exit' });
    expect(await done).toBe(0);
  });

  test.each(['stays', 'goes'])(
    'answers `shutdown` with `exit` right behind it, though its client %s',
    async (client) => {
      const done = ended();
      send({ id: 1, method: 'initialize', params: initialize });
      send({ id: 2, method: 'shutdown' });
      send({ method: 'exit' });
      if (client === 'goes') server.stdin!.end();
      expect(await done).toBe(0);
      await expect.poll(() => answers.find(({ id }) => id === 2), patience).toMatchObject({ result: null });
    },
  );

  test('hands over the head of a message together with its body', async () => {
    const pieces: string[] = [];
    server.stdout!.on('data', (piece: Buffer) => void pieces.push(piece.toString('utf8')));
    for (let id = 1; id <= 50; id++) send({ id, method: 'textDocument/hover', params: {} });
    await expect.poll(() => answers.length, patience).toBe(50);
    expect(pieces.filter((piece) => piece.endsWith('\r\n\r\n'))).toEqual([]);
  });

  test('exits with 1 on `exit` without `shutdown`, even before `initialize`', async () => {
    const done = ended();
    send({ method: 'exit' });
    expect(await done).toBe(1);
  });

  test('exits with 1 when its client goes without a word', async () => {
    const done = ended();
    server.stdin!.end();
    expect(await done).toBe(1);
  });
});
