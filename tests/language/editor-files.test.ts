// Files that only the client can reach: asked for by our own requests, each answer checked by its shape.
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { TestClient } from '../support/client';

const files: Record<string, string> = {
  'fettle.yaml': 'format: 1\nparts: [parts]\n',
  'parts/boreas/tower-155.part.yaml': 'kind: cooler\nheight: 155 mm\n',
  'parts/tarn/mid-3.part.yaml': 'kind: case\ncooler-height: 150 mm\n',
  'desk.pcbuild.yaml': 'parts:\n  cooler: { use: boreas/tower-155 }\n  case: { use: tarn/mid-3 }\n',
};
const base = 'vfs://station/ws';
const desk = 'desk.pcbuild.yaml';

let client: TestClient;
let asked: string[];

beforeEach(() => {
  client = new TestClient({});
  client.base = base;
  asked = [];
  const nameOf = (uri: string): string => decodeURIComponent(uri.slice(base.length + 1));
  client.connection.onRequest('fettle/findPath', ({ uri }: { uri: string }) => {
    if (uri === base) return { kind: 'folder', bound: base };
    if (nameOf(uri) in files) return { kind: 'file', bound: base };
    return Object.keys(files).some((name) => name.startsWith(`${nameOf(uri)}/`))
      ? { kind: 'folder', bound: base }
      : null;
  });
  client.connection.onRequest('fettle/readFile', ({ uri }: { uri: string }) => {
    asked.push(nameOf(uri));
    const text = files[nameOf(uri)];
    return text === undefined ? null : { base64: Buffer.from(text).toString('base64') };
  });
  client.connection.onRequest('fettle/listFolder', ({ uri }: { uri: string }) => {
    const folder = uri === base ? '' : `${nameOf(uri)}/`;
    const steps = Object.keys(files)
      .filter((name) => name.startsWith(folder))
      .map((name) => name.slice(folder.length).split('/'));
    return [
      ...new Map(
        steps.map(([step, ...rest]) => [step, { name: step, kind: rest.length > 0 ? 'folder' : 'file' }]),
      ).values(),
    ];
  });
});
afterEach(() => client.dispose());

const codes = async (): Promise<unknown[]> => (await client.findings(desk)).map(({ code }) => code);

describe('a client that offers its files', () => {
  beforeEach(async () => void (await client.start({}, { initializationOptions: { files: true } })));

  test('has its builds judged with their part files, each read once', async () => {
    await client.open(desk, files[desk]);
    await expect.poll(codes).toContain('cooler-too-tall');
    await client.type(desk, 'mid-3', 'mid-4');
    await client.type(desk, 'mid-4', 'mid-3');
    await expect.poll(codes).toContain('cooler-too-tall');
    expect(asked.filter((name) => name.startsWith('parts/tarn/mid-3'))).toHaveLength(1);
  });

  test('has its part files followed to the builds that use them, and its moves', async () => {
    const cooler = 'parts/boreas/tower-155.part.yaml';
    await client.open(cooler, files[cooler]);
    const textDocument = { uri: client.uri(cooler) };
    const [lens] = await client.connection.sendRequest<object[]>('textDocument/codeLens', { textDocument });
    expect(await client.connection.sendRequest('codeLens/resolve', lens)).toMatchObject({
      command: { title: 'used by 1 build' },
    });
    const edit = await client.connection.sendRequest<{ changes: object }>('workspace/willRenameFiles', {
      files: [{ oldUri: client.uri('parts/boreas'), newUri: client.uri('parts/boréas') }],
    });
    expect(edit.changes).toEqual({ [client.uri(desk)]: [expect.objectContaining({ newText: 'boréas/tower-155' })] });
  });

  test('has its whole workspace checked', async () => {
    expect(await client.connection.sendRequest('fettle/checkWorkspace')).toMatchObject({
      files: 4,
      worst: { stop: 1 },
    });
  });

  test.each([
    [
      'text in UTF-16',
      { base64: Buffer.from('\ufeffkind: case\n', 'utf16le').toString('base64') },
      'is written in UTF-16; save it as UTF-8.',
    ],
    ['zero bytes', { base64: Buffer.from('kind: \0\n').toString('base64') }, 'holds zero bytes, so it is no text.'],
    ['bytes that are no text', { base64: Buffer.from([0xb5]).toString('base64') }, 'is not text in UTF-8.'],
    ['what is no Base64', { base64: '%' }, 'cannot be read: the editor’s answer has not the right shape.'],
    ['too much', { refused: 'large' }, 'is larger than 2 000 000 bytes, so it is not read; split it.'],
    [
      'what lies behind a link',
      { refused: 'link' },
      'is reached through a link, which the editor cannot follow to its end, so it is not read.',
    ],
    ['what is no file', { refused: 'no-file' }, 'is no regular file, so it is not opened.'],
  ])('that gives %s is told so in the words of every host, and the file counts as unread', async (_, answer, why) => {
    const served = files['parts/tarn/mid-3.part.yaml']!;
    client.connection.onRequest('fettle/readFile', ({ uri }: { uri: string }): object | null => {
      const text = files[decodeURIComponent(uri.slice(base.length + 1))];
      return text === served ? answer : text === undefined ? null : { base64: Buffer.from(text).toString('base64') };
    });
    expect(await client.connection.sendRequest('fettle/checkWorkspace')).toMatchObject({
      files: 3,
      troubles: [`${base}/parts/tarn/mid-3.part.yaml ${why}`],
    });
  });

  test('a byte order mark is taken off', async () => {
    client.connection.onRequest('fettle/readFile', ({ uri }: { uri: string }) => {
      const text = files[decodeURIComponent(uri.slice(base.length + 1))];
      return text === undefined ? null : { base64: Buffer.from(`\ufeff${text}`).toString('base64') };
    });
    expect(await client.connection.sendRequest('fettle/checkWorkspace')).toMatchObject({
      files: 4,
      worst: { stop: 1 },
    });
  });

  test('whose answer has another shape is told, and nothing is made of it', async () => {
    client.connection.onRequest('fettle/readFile', () => ({ text: 7 }));
    await client.open(desk, files[desk]);
    await expect
      .poll(async () => (await client.findings(desk)).map(({ message }) => message).join('\n'))
      .toContain('the editor’s answer has not the right shape');
    expect(await codes()).not.toContain('cooler-too-tall');
  });
});

test('a client that offers none is asked for none', async () => {
  await client.start();
  await client.open(desk, files[desk]);
  await client.findings(desk);
  expect(asked).toEqual([]);
});
