// The language of the server’s messages: by the client’s locale, or by what the client says of itself.
import { expect, it } from 'vitest';
import { TestClient } from '../support/client';
import { pseudo } from '../support/pseudo';

const name = 'desk.pcbuild.yaml';
const files = {
  [`ws/${name}`]: 'format: 1\nbuild: Desk\nparts:\n  board: { socket: LGA1851 }\n  processor: { socket: AM5 }\n',
};

async function messages(client: TestClient, more: object): Promise<readonly string[]> {
  await client.start({}, more);
  await client.open(name);
  const diagnostics = await client.findings(name);
  return diagnostics.filter(({ code }) => code === 'socket-differs').map(({ message }) => String(message));
}

const inGerman = ['Der Prozessor passt in AM5; das Mainboard hat LGA1851.'];

it('follows the locale of the client', async () => {
  expect(await messages(new TestClient(files), { locale: 'de-CH' })).toEqual(inGerman);
  expect(await messages(new TestClient(files), { locale: 'en' })).toEqual([
    'The processor fits AM5; the board has LGA1851.',
  ]);
});

it('follows what the client asks for by itself, before its locale', async () => {
  expect(await messages(new TestClient(files), { locale: 'en', initializationOptions: { language: 'de' } })).toEqual(
    inGerman,
  );
});

it('says in it too why a new file or a draft has no place', async () => {
  const client = new TestClient(files);
  await client.start({}, { locale: 'de' });
  const near = 'file:///ws';
  const [place, build] = await Promise.all([
    client.connection.sendRequest('fettle/partPlace', { near, name: 'one' }),
    client.connection.sendRequest('fettle/new', { near, what: 'build', name: '../x' }),
  ]);
  expect(place).toEqual({ problem: expect.stringContaining('hersteller/modell') });
  expect(build).toEqual({ problem: expect.stringContaining('Buchstaben') });
  client.dispose();
});

it('says in it why a name cannot be changed, and what was not read', async () => {
  const client = new TestClient({ [`ws/${name}`]: `${files[`ws/${name}`]}  drives:\n    - { name: tides }\n` });
  await client.start({}, { locale: 'de' });
  await client.open(name);
  const textDocument = { uri: `file:///ws/${name}` };
  const drive = { line: 6, character: 15 };
  await expect(
    client.connection.sendRequest('textDocument/rename', { textDocument, position: drive, newName: ' ' }),
  ).rejects.toThrow('Ein Name kann nicht leer sein.');
  await expect(
    client.connection.sendRequest('textDocument/rename', {
      textDocument,
      position: { line: 0, character: 2 },
      newName: 'x',
    }),
  ).rejects.toThrow('Hier ist nichts genannt');
  client.dispose();
  const unread = new TestClient({ [`ws/${name}`]: files[`ws/${name}`]!, 'ws/fettle.yaml': 'parts: [../elsewhere]\n' });
  await unread.start({}, { locale: 'de' });
  await unread.open(name);
  const found = (await unread.findings(name)).filter(({ code }) => code === 'file-not-read');
  expect(found.map(({ message }) => message)).toEqual([
    'fettle.yaml nennt einen Teileordner, der nicht darunter liegt, "../elsewhere"; er wird nicht gelesen.',
  ]);
  unread.dispose();
});

it('says everything through the catalogue', async () => {
  const client = new TestClient(files, undefined, () => pseudo());
  await client.start();
  await client.open(name);
  const diagnostics = await client.findings(name);
  expect(diagnostics.length).toBeGreaterThan(1);
  expect(diagnostics.filter(({ message }) => !String(message).includes('⟦'))).toEqual([]);
});
