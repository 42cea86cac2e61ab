// Versions of a text that are followed by the next before their turn: taken in, and not judged.
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { TestClient } from '../support/client';
import { Clock } from '../support/clock';

const build = `format: 1
build: Tide hut logger
parts:
  cooler: { use: boreas/tower-155 }
  case: { use: tarn/mid-3 }
`;
const files = {
  'ws/fettle.yaml': 'format: 1\nparts: [parts]\n',
  'ws/hut.pcbuild.yaml': build,
  'ws/mast.pcbuild.yaml': build,
  'ws/parts/boreas/tower-155.part.yaml': 'kind: cooler\nmaker: Boreas\nmodel: Tower 155\nheight: 155 mm\n',
  'ws/parts/tarn/mid-3.part.yaml': 'kind: case\nmaker: Tarn\nmodel: Mid 3\ncooler-height: 150 mm\n',
};
const hut = 'hut.pcbuild.yaml';
const mast = 'mast.pcbuild.yaml';
const cooler = 'parts/boreas/tower-155.part.yaml';

let client: TestClient;
afterEach(() => client.dispose());

/** Versions of a file that findings were pushed for. */
const pushed = (name: string): unknown[] =>
  client.published.filter(({ uri }) => uri === client.uri(name)).map(({ version }) => version);
const codes = async (name: string): Promise<unknown[]> => (await client.findings(name)).map(({ code }) => code);

/** Writes a text letter by letter behind another, all sent before the first has its turn. */
async function typeAtOnce(name: string, after: string, text: string): Promise<void> {
  const at = client.text(name).indexOf(after) + after.length;
  await Promise.all([...text].map((letter, i) => client.put(name, at + i, letter)));
}

describe('with every key shown', () => {
  beforeEach(async () => {
    client = new TestClient(files);
    await client.start();
    await client.open(hut);
    await client.findings(hut);
  });

  test('the newest version is judged alone', async () => {
    await typeAtOnce(hut, 'logger', '\nnotse: x');
    expect(await codes(hut)).toContain('unknown-key');
    expect(pushed(hut)).toEqual([1, 10]);
  });

  test('a request between two changes is answered for the text as it stood there', async () => {
    const at = client.text(hut).indexOf('logger');
    const names = (): Promise<{ name: string }[]> =>
      client.connection.sendRequest('textDocument/documentSymbol', { textDocument: { uri: client.uri(hut) } });
    const end = client.text(hut).length;
    const [, between, , after] = await Promise.all([
      client.put(hut, end, 'place: {}\n'),
      names(),
      client.put(hut, at, 'deep '),
      names(),
    ]);
    expect(between.map(({ name }) => name)).toContain('place');
    expect(between.map(({ name }) => name)).toEqual(after.map(({ name }) => name));
    expect(await codes(hut)).toEqual(expect.arrayContaining(['cooler-too-tall']));
  });

  test('changes of another file overtake none', async () => {
    await client.open(mast);
    await client.findings(mast);
    await Promise.all([client.type(hut, 'logger', 'loggers'), client.type(mast, 'logger', 'loggers')]);
    await client.findings(mast);
    expect([pushed(hut), pushed(mast)]).toEqual([
      [1, 2],
      [1, 2],
    ]);
  });

  test('builds are judged with the newest version of a part', async () => {
    await client.open(cooler);
    const at = client.text(cooler).indexOf('155 mm');
    await Promise.all([
      client.put(cooler, at, '1', 3),
      client.put(cooler, at + 1, '4'),
      client.put(cooler, at + 2, '9'),
    ]);
    expect(await codes(hut)).not.toContain('cooler-too-tall');
  });

  test('a file that is closed and opened again owes nothing to what overtook it', async () => {
    const textDocument = { uri: client.uri(hut) };
    await Promise.all([
      client.type(hut, 'logger', 'a'),
      client.connection.sendNotification('textDocument/didClose', { textDocument }),
      client.type(hut, 'hut a', 'hut b'),
      client.open(hut),
    ]);
    expect(await codes(hut)).toContain('cooler-too-tall');
    await client.type(hut, '  case:', '  cse:');
    expect(await codes(hut)).toContain('unknown-key');
  });
});

test('what was shown stays where it moved to over overtaken versions, and what is new waits as ever', async () => {
  const clock = new Clock();
  client = new TestClient(files, clock.after);
  await client.start();
  await client.open(hut);
  await client.findings(hut);
  await typeAtOnce(hut, 'logger', '\nnotse: x');
  const found = await client.findings(hut);
  expect(found.map(({ code }) => code)).not.toContain('unknown-key');
  expect(found.find(({ code }) => code === 'cooler-too-tall')?.range.start).toEqual(client.at(hut, 'boreas'));
  clock.pass();
  expect(await codes(hut)).toContain('unknown-key');
});

test('where the client pulls, only the versions that it could ask for are judged', async () => {
  const clock = new Clock();
  client = new TestClient(files, clock.after);
  await client.start({ textDocument: { diagnostic: {} } });
  await client.open(hut);
  const pull = (): Promise<{ items: { code: string }[] }> =>
    client.connection.sendRequest('textDocument/diagnostic', { textDocument: { uri: client.uri(hut) } });
  const pulled = async (): Promise<string[]> => (await pull()).items.map(({ code }) => code);
  expect(await pulled()).toContain('cooler-too-tall');
  await typeAtOnce(hut, 'logger', '\nnotse: x');
  expect(await pulled()).not.toContain('unknown-key');
  clock.pass();
  expect(await pulled()).toEqual(expect.arrayContaining(['unknown-key', 'cooler-too-tall']));
});
