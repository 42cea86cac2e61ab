// What is made ready before anybody asks: it may only save time, so that answers are those of a server that was asked at once.
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { CompletionList } from 'vscode-languageserver-protocol/node';
import { TestClient } from '../support/client';

const desk = 'desk.pcbuild.yaml';
const files = {
  'ws/fettle.yaml': 'format: 1\nparts: [parts]\n',
  [`ws/${desk}`]: 'parts:\n  cooler:\n    use: none\n    setting: quiet\n  case: { use: tarn/mid-3 }\n',
  'ws/parts/tarn/mid-3.part.yaml': 'kind: case\ncooler-height: 150 mm\n',
  ...Object.fromEntries(
    Array.from({ length: 30 }, (_, i) => [`ws/parts/low/n${i}.part.yaml`, `kind: cooler\nheight: ${i + 20} mm\n`]),
  ),
};

let client: TestClient;
beforeEach(() => void (client = new TestClient(files)));
afterEach(() => client.dispose());

const start = (watches = true): Promise<unknown> =>
  client.start({
    workspace: { didChangeWatchedFiles: { dynamicRegistration: watches } },
    textDocument: { completion: { completionItem: { labelDetailsSupport: true } } },
  });

const asked = (at: string): Promise<CompletionList> =>
  client.connection.sendRequest('textDocument/completion', {
    textDocument: { uri: client.uri(desk) },
    position: client.at(desk, at),
  });

const names = ({ items }: CompletionList): string[] => items.map(({ label }) => label);

/** Each answer lets the server have a turn. */
async function quiet(): Promise<void> {
  for (let i = 0; i < 100; i++)
    await client.connection.sendRequest('textDocument/documentSymbol', { textDocument: { uri: client.uri(desk) } });
}

describe('the part that the cursor rests at', () => {
  test.each(['cooler:', 'none', 'setting'])(
    'has been tried when it is asked for, with the cursor at %s',
    async (at) => {
      await start();
      await client.open(desk);
      await client.connection.sendNotification('fettle/cursor', {
        uri: client.uri(desk),
        position: client.at(desk, at),
      });
      await quiet();
      const list = await asked('none');
      expect(list.isIncomplete).toBe(false);
      expect(list.items[0]!.labelDetails!.description).toMatch(/to spare/);
    },
  );

  test('is one of few that are tried where no cursor was told of', async () => {
    await start();
    await client.open(desk);
    await quiet();
    expect((await asked('none')).isIncomplete).toBe(true);
  });
});

describe('kinds that were noted', () => {
  test('are those of the files as they stand: one that changes on disk, one that comes, one that is open', async () => {
    await start();
    await client.open(desk);
    await quiet();
    client.files.set('ws/parts/low/n0.part.yaml', 'kind: fan\n');
    client.files.set('ws/parts/tarn/mid-4.part.yaml', 'kind: case\n');
    await client.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [
        { uri: client.uri('parts/low/n0.part.yaml'), type: 2 },
        { uri: client.uri('parts/tarn/mid-4.part.yaml'), type: 1 },
      ],
    });
    await client.open('parts/low/n1.part.yaml', 'kind: case\n');
    expect(names(await asked('tarn/mid-3')).sort()).toEqual(['low/n1', 'tarn/mid-3', 'tarn/mid-4']);
    expect(names(await asked('none'))).not.toContain('low/n0');
    expect(names(await asked('none'))).toHaveLength(28);
  });

  test('miss no part that comes where the client tells of none', async () => {
    await start(false);
    await client.open(desk);
    await quiet();
    client.files.set('ws/parts/tarn/mid-4.part.yaml', 'kind: case\n');
    expect(names(await asked('tarn/mid-3')).sort()).toEqual(['tarn/mid-3', 'tarn/mid-4']);
  });
});
