// Completion over the wire: ranked by what each part would bring, more of an item on asking, and words in the place where a client shows them.
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { CompletionItem, CompletionList } from 'vscode-languageserver-protocol/node';
import { TestClient } from '../support/client';

const files = {
  'ws/fettle.yaml': 'format: 1\nparts: [parts]\n',
  'ws/desk.pcbuild.yaml': 'parts:\n  cooler: { use: tall }\n  case: { use: tarn/mid-3 }\n',
  'ws/parts/boreas/a-tall.part.yaml': 'kind: cooler\nheight: 165 mm\nmass: 700 g\n',
  'ws/parts/boreas/b-low.part.yaml': 'kind: cooler\nheight: 90 mm\nmass: 400 g\n',
  'ws/parts/tarn/mid-3.part.yaml': 'kind: case\ncooler-height: 150 mm\n',
};
const desk = 'desk.pcbuild.yaml';

let client: TestClient;
beforeEach(() => void (client = new TestClient(files)));
afterEach(() => client.dispose());

async function asked(completionItem: object, initializationOptions = {}): Promise<CompletionItem[]> {
  await client.start({ textDocument: { completion: { completionItem } } }, { initializationOptions });
  await client.open(desk);
  const list = await client.connection.sendRequest<CompletionList>('textDocument/completion', {
    textDocument: { uri: client.uri(desk) },
    position: client.at(desk, 'tall }'),
  });
  expect(list.isIncomplete).toBe(false);
  return list.items;
}

describe('parts', () => {
  test('that fit come first, with few words beside them where the client shows those', async () => {
    const items = await asked({ labelDetailsSupport: true });
    expect(items.map(({ label, labelDetails }) => [label, labelDetails?.description])).toEqual([
      ['boreas/b-low', '60 mm to spare'],
      ['boreas/a-tall', '15 mm too tall'],
    ]);
  });

  test('of which there are many are tried a few at once, and the rest while nobody asks', async () => {
    for (let i = 0; i < 150; i++)
      client.files.set(`ws/parts/many/n${1000 + i}.part.yaml`, `kind: cooler\nheight: ${i + 10} mm\nmass: 300 g\n`);
    await client.start({ textDocument: { completion: { completionItem: { labelDetailsSupport: true } } } });
    await client.open(desk);
    const ask = (): Promise<CompletionList> =>
      client.connection.sendRequest('textDocument/completion', {
        textDocument: { uri: client.uri(desk) },
        position: client.at(desk, 'tall }'),
      });
    const first = await ask();
    expect(first.isIncomplete).toBe(true);
    expect(first.items.length).toBe(152);
    await expect.poll(async () => (await ask()).isIncomplete).toBe(false);
    const { items } = await ask();
    // One is just as high as there is room for, which leaves nothing to tell.
    expect(items.flatMap(({ label, labelDetails }) => (labelDetails ? [] : [label]))).toEqual(['many/n1140']);
    expect(items.findIndex(({ label }) => label === 'many/n1141')).toBeGreaterThan(140);
  });

  test('are told of in full once they are looked at, where the client asks', async () => {
    const items = await asked({ resolveSupport: { properties: ['documentation'] } });
    const last = items.at(-1)!;
    expect(last.documentation).toBeUndefined();
    const whole = await client.connection.sendRequest<CompletionItem>('completionItem/resolve', last);
    expect((whole.documentation as { value: string }).value).toMatch(/^It would bring:[^]*165 mm/);
  });

  test('carry nothing to ask by for a client that does not ask, and a foreign item comes back as it is', async () => {
    const items = await asked({});
    expect(items.every(({ data }) => data === undefined)).toBe(true);
    expect(await client.connection.sendRequest('completionItem/resolve', { label: 'x' })).toEqual({ label: 'x' });
  });
});
