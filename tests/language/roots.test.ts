// A window with several folders: settings by folder, and workspaces inside workspaces.
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { TestClient } from '../support/client';

const build = (name: string): string => `format: 1
build: ${name}
parts:
  cooler: { use: boreas/tower }
  case: { cooler-height: 150 mm, hieght: 1 mm }
`;
const cooler = (mm: number): string => `kind: cooler\nmaker: Boreas\nmodel: Tower\nheight: ${mm} mm\n`;
const files = {
  'ws/fettle.yaml': 'format: 1\nparts: [parts]\n',
  'ws/desk.pcbuild.yaml': build('Desk'),
  'ws/parts/boreas/tower.part.yaml': cooler(155),
  'ws/annex/fettle.yaml': 'format: 1\nparts: [shelf]\n',
  'ws/annex/desk.pcbuild.yaml': build('Annex desk'),
  'ws/annex/shelf/boreas/tower.part.yaml': cooler(140),
  'boat/fettle.yaml': 'format: 1\n',
  'boat/desk.pcbuild.yaml': build('Boat desk'),
  'boat/parts/boreas/tower.part.yaml': cooler(170),
};

let client: TestClient;
beforeEach(() => void (client = new TestClient(files)));
afterEach(() => client.dispose());

const workspaceFolders = ['file:///ws', 'file:///boat'].map((uri) => ({ uri, name: uri }));
const found = async (base: string, name: string): Promise<unknown[]> => {
  client.base = base;
  return (await client.findings(name)).map(({ code }) => code);
};
const open = async (base: string, name: string): Promise<void> => {
  client.base = base;
  await client.open(name, files[`${base.slice('file:///'.length)}/${name}` as keyof typeof files]);
};

describe('settings', () => {
  test('hold in the folder they are made for, and change there alone', async () => {
    const from: Record<string, string> = { 'file:///boat': 'stop' };
    let questions = 0;
    client.connection.onRequest('workspace/configuration', ({ items }: { items: { scopeUri?: string }[] }) => {
      questions++;
      return items.map(({ scopeUri = '' }) => ({ from: from[scopeUri] ?? 'unknown' }));
    });
    await client.start({ workspace: { configuration: true, workspaceFolders: true } }, { workspaceFolders });
    await open('file:///ws', 'desk.pcbuild.yaml');
    await open('file:///boat', 'desk.pcbuild.yaml');
    await expect.poll(() => found('file:///boat', 'desk.pcbuild.yaml')).not.toContain('parts-left-out');
    expect(await found('file:///boat', 'desk.pcbuild.yaml')).toContain('cooler-too-tall');
    expect(await found('file:///ws', 'desk.pcbuild.yaml')).toContain('parts-left-out');
    from['file:///ws'] = 'harm';
    await client.connection.sendNotification('workspace/didChangeConfiguration', { settings: null });
    await expect.poll(() => found('file:///ws', 'desk.pcbuild.yaml')).toEqual([]);
    expect(await found('file:///boat', 'desk.pcbuild.yaml')).toContain('cooler-too-tall');
    expect(questions).toBe(2);
  });

  test('of a folder that comes later are asked for then', async () => {
    client.connection.onRequest('workspace/configuration', ({ items }: { items: { scopeUri?: string }[] }) =>
      items.map(({ scopeUri }) => ({ from: scopeUri === 'file:///boat' ? 'harm' : 'unknown' })),
    );
    await client.start({ workspace: { configuration: true, workspaceFolders: true } });
    await open('file:///boat', 'desk.pcbuild.yaml');
    expect(await found('file:///boat', 'desk.pcbuild.yaml')).toContain('cooler-too-tall');
    const event = { added: [workspaceFolders[1]!], removed: [] };
    await client.connection.sendNotification('workspace/didChangeWorkspaceFolders', { event });
    await expect.poll(() => found('file:///boat', 'desk.pcbuild.yaml')).toEqual([]);
  });
});

describe('a workspace inside a workspace', () => {
  test('has its own settings and parts', async () => {
    await client.start();
    await open('file:///ws', 'desk.pcbuild.yaml');
    await open('file:///ws', 'annex/desk.pcbuild.yaml');
    expect(await found('file:///ws', 'desk.pcbuild.yaml')).toContain('cooler-too-tall');
    expect(await found('file:///ws', 'annex/desk.pcbuild.yaml')).not.toContain('cooler-too-tall');
  });

  test('that goes away leaves its builds to the one around it', async () => {
    await client.start({ workspace: { didChangeWatchedFiles: { dynamicRegistration: true } } });
    await open('file:///ws', 'annex/desk.pcbuild.yaml');
    for (const name of ['fettle.yaml', 'shelf/boreas/tower.part.yaml']) client.files.delete(`ws/annex/${name}`);
    await client.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: 'file:///ws/annex/fettle.yaml', type: 3 }],
    });
    await expect.poll(() => found('file:///ws', 'annex/desk.pcbuild.yaml')).toContain('cooler-too-tall');
  });
});

describe('what is left alone', () => {
  test('the older side of a comparison is neither checked nor explained', async () => {
    await client.start();
    const uri = 'git:/ws/desk.pcbuild.yaml?%7B%22path%22%3A%22%2Fws%2Fdesk.pcbuild.yaml%22%2C%22ref%22%3A%22~%22%7D';
    await client.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: 'fettle-build', version: 1, text: build('Desk').replace('parts:', 'prats:') },
    });
    await open('file:///ws', 'desk.pcbuild.yaml');
    expect(await found('file:///ws', 'desk.pcbuild.yaml')).toContain('cooler-too-tall');
    expect(client.published.map((one) => one.uri)).not.toContain(uri);
    const position = { line: 3, character: 4 };
    expect(await client.connection.sendRequest('textDocument/hover', { textDocument: { uri }, position })).toBeNull();
  });

  test('what a version control ignores is checked all the same: nothing unread may pass for checked', async () => {
    client.files.set('ws/.gitignore', '*.pcbuild.yaml\n');
    await client.start();
    const checked = await client.connection.sendRequest('fettle/checkWorkspace');
    expect(checked).toMatchObject({ files: 6 });
  });

  test('another tool’s part file has one note and nothing else', async () => {
    await client.start();
    await client.open('parts/blinds.part.yaml', 'layers: [front]\nlayers: *nope\nmaterial: linen\n', 'fettle-part');
    expect(await found('file:///ws', 'parts/blinds.part.yaml')).toEqual(['part-file-of-another-tool']);
  });
});
