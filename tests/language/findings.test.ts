// The server in conversation: findings come at once, follow unsaved part files, and are never reported twice.
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { TestClient } from '../support/client';

const build = `format: 1
build: Counter PC
parts:
  cooler: { use: boreas/tower-155 }
  case: { use: tarn/mid-3 }
`;
const files = {
  'ws/fettle.yaml': 'format: 1\nparts: [parts]\n',
  'ws/desk.pcbuild.yaml': build,
  'ws/parts/boreas/tower-155.part.yaml': 'kind: cooler\nmaker: Boreas\nmodel: Tower 155\nheight: 155 mm\n',
  'ws/parts/tarn/mid-3.part.yaml': 'kind: case\nmaker: Tarn\nmodel: Mid 3\ncooler-height: 150 mm\n',
};
const desk = 'desk.pcbuild.yaml';
const cooler = 'parts/boreas/tower-155.part.yaml';
const codes = (findings: readonly { code?: unknown }[]): unknown[] => findings.map(({ code }) => code);

let client: TestClient;
beforeEach(() => void (client = new TestClient(files)));
afterEach(() => client.dispose());

describe('the page on a check', () => {
  const hrefs = async (): Promise<unknown[]> => {
    await client.open(desk);
    return (await client.findings(desk)).flatMap(({ codeDescription }) => codeDescription?.href ?? []);
  };

  test('is linked under the scheme that a client opens, for findings that a page explains', async () => {
    await client.start({}, { initializationOptions: { pages: 'fettle-check' } });
    expect(await hrefs()).toContain('fettle-check:/cooler-too-tall.md');
    expect(await hrefs()).not.toContain('fettle-check:/fact-not-stated.md');
  });

  test('is linked nowhere for a client that opens none, or names no scheme', async () => {
    await client.start({}, { initializationOptions: { pages: 'javascript:' } });
    expect(await hrefs()).toEqual([]);
  });
});

describe('of one place', () => {
  // Too tall for the case, and of the cooler no more is known than its height.
  const atCooler = async (initializationOptions: object): Promise<{ source?: string; starts: number }[]> => {
    await client.start({}, { initializationOptions });
    await client.open(desk);
    const found = (await client.findings(desk)).filter(({ range }) => range.start.line === 3);
    return found.map(({ source, range }) => ({ source, starts: range.start.character }));
  };
  const at = build.split('\n')[3]!.indexOf('boreas');

  test('the worse grade comes first', async () => {
    const found = await atCooler({});
    expect(found[0]).toEqual({ source: 'fettle · stop', starts: at });
    expect(found.slice(1).map(({ source }) => source)).toContain('fettle · unknown');
    expect(new Set(found.map(({ starts }) => starts))).toEqual(new Set([at]));
  });

  test('a hint stands at the key of a value with something worse, for a client that shows hints above', async () => {
    const [worst, ...others] = await atCooler({ hintsAbove: true });
    expect(worst).toEqual({ source: 'fettle · stop', starts: at });
    expect(others.length).toBeGreaterThan(0);
    const key = build.split('\n')[3]!.indexOf('use');
    expect(others.map(({ source, starts }) => `${source} ${starts}`)).toEqual(
      others.map(() => `fettle · unknown ${key}`),
    );
  });
});

describe('pushed to a client that does not pull', () => {
  beforeEach(
    async () => void (await client.start({ textDocument: { publishDiagnostics: { relatedInformation: true } } })),
  );

  test('a build is judged with its part files when it is opened', async () => {
    await client.open(desk);
    const found = (await client.findings(desk)).find(({ code }) => code === 'cooler-too-tall');
    expect(found).toMatchObject({ source: 'fettle · stop', severity: 1 });
    expect(found?.message).toContain('155 mm');
    expect(found?.relatedInformation?.map(({ location }) => location.uri)).toContain(
      client.uri('parts/tarn/mid-3.part.yaml'),
    );
  });

  test('unsaved text of a part file counts, until it is closed', async () => {
    await client.open(desk);
    await client.open(cooler);
    await client.type(cooler, '155 mm', '149 mm');
    expect(codes(await client.findings(desk))).not.toContain('cooler-too-tall');
    await client.connection.sendNotification('textDocument/didClose', { textDocument: { uri: client.uri(cooler) } });
    expect(codes(await client.findings(desk))).toContain('cooler-too-tall');
  });

  test('all that a part’s file does not state is one hint, which names the checks waiting for it', async () => {
    const ofCooler = async (): Promise<{ severity?: number; code?: unknown; message: unknown }[]> =>
      (await client.findings(desk)).filter(({ message }) => String(message).includes('of boreas/tower-155'));
    await client.open(cooler);
    await client.open(desk);
    const before = await ofCooler();
    await client.type(cooler, 'height: 155 mm\n', '');
    const hints = await ofCooler();
    expect([before.length, hints.length]).toEqual([1, 1]);
    expect(hints[0]).toMatchObject({ severity: 4, code: 'fact-not-stated' });
    expect(hints[0]!.message).toMatch(
      /^Not stated of boreas\/tower-155: .*\bheight\b.* checks wait for them: .*cooler-too-tall/,
    );
  });

  test('everything about a part that is not found, or not named yet, is one hint', async () => {
    const hints = async (): Promise<string[]> =>
      (await client.findings(desk)).flatMap(({ code, message }) =>
        code === 'fact-not-stated' ? [String(message)] : [],
      );
    await client.open(desk);
    await client.type(desk, 'boreas/tower-155', 'boreas/none');
    const unfound = (await hints()).filter((message) => message.includes('boreas/none'));
    expect(unfound).toEqual([
      expect.stringMatching(/^Not stated: everything about boreas\/none, .* checks? waits? for it/),
    ]);
    await client.type(desk, '{ use: boreas/none }', '{ use: }');
    const unnamed = (await hints()).filter((message) => message.includes('cooler'));
    expect(unnamed).toEqual([expect.stringContaining('everything about the cooler, which is not named yet')]);
  });

  test('what a merge left is one finding, and nothing else is said of the file', async () => {
    await client.open(desk);
    await client.type(desk, '  cooler', '<<<<<<< ours\n  cooler: {}\n=======\n  cooler');
    await client.type(desk, '  case', '>>>>>>> theirs\n  case');
    const found = await client.findings(desk);
    expect(codes(found)).toEqual(['yaml-syntax']);
    expect(found[0]!.range.start).toEqual(client.at(desk, '<<<<<<<'));
  });

  test('part files and house settings have findings of their own', async () => {
    await client.open(cooler, 'kind: cooler\nhieght: 155 mm\n');
    await client.open('fettle.yaml', 'format: 1\npatrs: [parts]\n');
    expect(codes(await client.findings(cooler))).toContain('unknown-key');
    expect(codes(await client.findings('fettle.yaml'))).toContain('unknown-key');
  });

  test('house settings that are typed hold at once', async () => {
    await client.open(desk);
    await client.open('fettle.yaml');
    await client.type('fettle.yaml', 'parts: [parts]', 'parts: [parts]\ngrades: { cooler-too-tall: note }');
    const found = (await client.findings(desk)).find(({ code }) => code === 'cooler-too-tall');
    expect(found?.severity).toBe(3);
  });

  test('a part file that changes or appears on disk is read again', async () => {
    client.files.delete(`ws/${cooler}`);
    await client.open(desk);
    expect(codes(await client.findings(desk))).not.toContain('cooler-too-tall');
    client.files.set(`ws/${cooler}`, 'kind: cooler\nheight: 160 mm\n');
    await client.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: client.uri(cooler), type: 1 }],
    });
    expect(codes(await client.findings(desk))).toContain('cooler-too-tall');
  });

  test('what a machine said is found in its build, and goes with the record', async () => {
    const record = 'desk.asbuilt.yaml';
    const changed = (type: number): Promise<void> =>
      client.connection.sendNotification('workspace/didChangeWatchedFiles', {
        changes: [{ uri: client.uri(record), type }],
      });
    await client.open(desk);
    expect(codes(await client.findings(desk))).not.toContain('built-part-unlisted');
    client.files.set(`ws/${record}`, 'from: [EDID]\ndisplays: [{ reports: P24 }]\n');
    await changed(1);
    expect(codes(await client.findings(desk))).toContain('built-part-unlisted');
    client.files.delete(`ws/${record}`);
    await changed(3);
    expect(codes(await client.findings(desk))).not.toContain('built-part-unlisted');
    // An editor may show the record and close it before it is taken away.
    client.files.set(`ws/${record}`, 'from: [EDID]\ndisplays: [{ reports: P24 }]\n');
    await changed(1);
    await client.open(record);
    expect(codes(await client.findings(desk))).toContain('built-part-unlisted');
    await client.connection.sendNotification('textDocument/didClose', { textDocument: { uri: client.uri(record) } });
    client.files.delete(`ws/${record}`);
    await changed(3);
    expect(codes(await client.findings(desk))).not.toContain('built-part-unlisted');
  });

  test('a file that was not saved yet is checked by its language, with the parts of the workspace', async () => {
    await client.open('untitled:Untitled-1', build);
    expect(codes(await client.findings('untitled:Untitled-1'))).toContain('cooler-too-tall');
    await client.type('untitled:Untitled-1', 'tower-155', 'tower-15');
    expect(codes(await client.findings('untitled:Untitled-1'))).toContain('part-not-found');
    await client.open('untitled:Untitled-2', 'hieght: 155 mm\nkind: cooler\n', 'fettle-part');
    expect(codes(await client.findings('untitled:Untitled-2'))).toContain('unknown-key');
    await client.open('untitled:Untitled-3', 'hieght: 1\n', 'yaml');
    expect(await client.findings('untitled:Untitled-3')).toEqual([]);
  });

  test('a closed file shows nothing any more', async () => {
    await client.open(desk);
    await client.findings(desk);
    await client.connection.sendNotification('textDocument/didClose', { textDocument: { uri: client.uri(desk) } });
    expect(await client.findings(desk)).toEqual([]);
  });

  test('a file of another kind is left alone', async () => {
    await client.open('notes.yaml', 'hieght: 1\n');
    await client.findings(desk);
    expect(client.published).toEqual([]);
  });

  test('the setting `from` leaves lighter findings out; a wrong one is said and not followed', async () => {
    await client.open(desk);
    await client.connection.sendNotification('workspace/didChangeConfiguration', {
      settings: { fettle: { from: 'stop' } },
    });
    const shown = await client.findings(desk);
    expect(codes(shown)).toContain('cooler-too-tall');
    expect(shown.every(({ severity }) => severity === 1)).toBe(true);
    await client.connection.sendNotification('workspace/didChangeConfiguration', { settings: { fettle: { from: 7 } } });
    await client.findings(desk);
    expect(client.logged.join('\n')).toContain('fettle.from');
  });

  test('the whole workspace is checked on request, and kept true', async () => {
    client.files.set('ws/other.pcbuild.yaml', build.replace('Counter PC', 'Other PC'));
    const checked = await client.connection.sendRequest('workspace/executeCommand', {
      command: 'fettle.checkWorkspace',
    });
    expect(checked).toMatchObject({ files: 5, worst: { stop: 2 } });
    const last = () =>
      codes(client.published.findLast(({ uri }) => uri === client.uri('other.pcbuild.yaml'))?.diagnostics ?? []);
    expect(last()).toContain('cooler-too-tall');
    await client.open(cooler);
    await client.type(cooler, '155 mm', '149 mm');
    await expect.poll(last).not.toContain('cooler-too-tall');
  });
});

describe('pulled by a client that pulls', () => {
  test('nothing is pushed; an unchanged file is answered as unchanged', async () => {
    const { capabilities } = await client.start({ textDocument: { diagnostic: {} } });
    expect(capabilities.diagnosticProvider).toMatchObject({ interFileDependencies: true, workspaceDiagnostics: true });
    await client.open(desk);
    const pull = (previousResultId?: string) =>
      client.connection.sendRequest('textDocument/diagnostic', {
        textDocument: { uri: client.uri(desk) },
        previousResultId,
      }) as Promise<{ kind: string; resultId: string; items: { code: string }[] }>;
    const first = await pull();
    expect(codes(first.items)).toContain('cooler-too-tall');
    expect(await pull(first.resultId)).toEqual({ kind: 'unchanged', resultId: first.resultId });
    await client.type(desk, 'tower-155', 'tower-1');
    expect((await pull(first.resultId)).kind).toBe('full');
    expect(client.published).toEqual([]);
  });

  test('a change of a part file asks the client to pull again', async () => {
    let asked = 0;
    client.connection.onRequest('workspace/diagnostic/refresh', () => void asked++);
    await client.start({ textDocument: { diagnostic: {} }, workspace: { diagnostics: { refreshSupport: true } } });
    await client.open(desk);
    await client.open(cooler);
    await client.connection.sendRequest('textDocument/diagnostic', { textDocument: { uri: client.uri(desk) } });
    await client.type(cooler, '155 mm', '149 mm');
    await expect.poll(() => asked).toBeGreaterThan(0);
  });

  test('the workspace’s files that are not open are answered to `workspace/diagnostic`', async () => {
    await client.start({ textDocument: { diagnostic: {} } });
    await client.open(cooler);
    const pull = (previousResultIds: object[]) =>
      client.connection.sendRequest('workspace/diagnostic', { previousResultIds }) as Promise<{
        items: { uri: string; kind: string; resultId: string; items?: { code: string }[] }[];
      }>;
    const first = await pull([]);
    expect(first.items.map(({ uri }) => uri)).not.toContain(client.uri(cooler));
    const own = first.items.find(({ uri }) => uri === client.uri(desk));
    expect(codes(own?.items ?? [])).toContain('cooler-too-tall');
    const again = await pull(first.items.map(({ uri, resultId }) => ({ uri, value: resultId })));
    expect(again.items.every(({ kind }) => kind === 'unchanged')).toBe(true);
    expect(client.published).toEqual([]);
  });
});

test('a fault while judging replaces what was shown, and the log says where', async () => {
  await client.start();
  await client.open(desk);
  expect(codes(await client.findings(desk))).toContain('cooler-too-tall');
  const get = client.files.get.bind(client.files);
  client.files.get = (name) => {
    if (name.includes('broken')) throw new Error('broken on purpose');
    return get(name);
  };
  await client.type(desk, 'boreas/tower-155', 'boreas/broken');
  const shown = client.published;
  await client.connection.sendRequest('textDocument/documentSymbol', { textDocument: { uri: client.uri('none.txt') } });
  expect(shown.at(-1)?.diagnostics).toMatchObject([
    { code: 'not-checked', severity: 1, message: expect.stringContaining('broken on purpose') },
  ]);
  expect(client.logged.join('\n')).toContain(client.uri(desk));
});
