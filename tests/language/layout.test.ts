// Format Document and the indentation of a new line, over the wire.
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { TextEdit } from 'vscode-languageserver-protocol';
import { TestClient } from '../support/client';
import { edited } from '../support/view';

let client: TestClient;
let shown: string[];
beforeEach(async () => {
  client = new TestClient({});
  shown = [];
  client.connection.onNotification(
    'window/showMessage',
    ({ message }: { message: string }) => void shown.push(message),
  );
  await client.start();
});
afterEach(() => client.dispose());

const desk = 'desk.pcbuild.yaml';
const options = { tabSize: 2, insertSpaces: true };
const format = (): Promise<TextEdit[]> =>
  client.connection.sendRequest('textDocument/formatting', { textDocument: { uri: client.uri(desk) }, options });

test('a text is laid out by edits of its blanks', async () => {
  await client.open(desk, 'format: 1\r\nplace:\r\n    ambient:   31 °C # warm\r\n');
  const edits = await format();
  expect(edits.every(({ newText }) => newText.trim() === '')).toBe(true);
  expect(edited(client.text(desk), edits)).toBe('format: 1\r\nplace:\r\n  ambient: 31 °C # warm\r\n');
  expect(shown).toEqual([]);
});

test('a text that is doubtful is left as it is, and why is said', async () => {
  await client.open(desk, 'place: {\nfloor: carpet\n');
  expect(await format()).toEqual([]);
  expect(shown).toEqual([expect.stringMatching(/^This file is left as it is: /)]);
});

test('a new line below a key is indented', async () => {
  await client.open(desk, 'format: 1\nplace:\n');
  const edits: TextEdit[] = await client.connection.sendRequest('textDocument/onTypeFormatting', {
    textDocument: { uri: client.uri(desk) },
    position: { line: 2, character: 0 },
    ch: '\n',
    options,
  });
  expect(edited(client.text(desk), edits)).toBe('format: 1\nplace:\n  ');
});

test('a client that sends Markdown has texts of our own languages laid out, and no others', async () => {
  const markdown = new TestClient({});
  const registered: { method: string; registerOptions: { documentSelector?: { language: string }[] } }[] = [];
  const all = new Promise<void>((resolve) =>
    markdown.connection.onRequest('client/registerCapability', ({ registrations }: { registrations: never[] }) => {
      registered.push(...registrations);
      if (registered.some(({ method }) => method === 'textDocument/onTypeFormatting')) resolve();
      return null;
    }),
  );
  const { capabilities } = await markdown.start({}, { initializationOptions: { guides: true } });
  expect(capabilities.documentFormattingProvider).toBeUndefined();
  await all;
  for (const method of ['textDocument/formatting', 'textDocument/onTypeFormatting']) {
    const found = registered.find((one) => one.method === method);
    expect(found?.registerOptions.documentSelector?.map(({ language }) => language)).toEqual([
      'fettle-build',
      'fettle-part',
      'fettle-settings',
    ]);
  }
  markdown.dispose();
});
