// Names across the files of a workspace, over the wire: uses and renames of part files and of what they list.
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  CancellationTokenSource,
  WorkDoneProgress,
  type ClientCapabilities,
  type Location,
  type WorkspaceEdit,
} from 'vscode-languageserver-protocol/node';
import { TestClient } from '../support/client';
import { busyFactor, cpuMsOf } from '../support/cpu';

const board = 'parts/norrvik/b7-forge.part.yaml';
const boardText = `kind: board
maker: Norrvik
model: B7 Forge
firmware: { versions: ["1.02", "1.20"] }
processors: [{ family: Calder C7, since: "1.20" }]
slots:
  M2_1: { kind: M.2 }
  M2_2: { kind: M.2, takes-from: [SATA_5] }
  PCIE_1: { kind: PCIe, halves: [M2_2] }
ports: { SATA_5: {} }
`;
const build = (name: string, rest = ''): string => `format: 1
build: ${name}
parts:
  board: { use: norrvik/b7-forge, firmware: "1.02" }   # old stock
  drives:
    - { name: scratch, use: lumen/rapid-2t, slot: M2_2 }
${rest}`;
const files = {
  'ws/fettle.yaml': 'format: 1\nparts: [parts]\n',
  [`ws/${board}`]: boardText,
  'ws/parts/lumen/rapid-2t.part.yaml': 'kind: drive\nmaker: Lumen\nmodel: Rapid 2T\n',
  'ws/parts/norrvik/b5-quay.part.yaml': 'kind: board\nslots: { M2_2: {}, M2_3: {} }\n',
  'ws/desk.pcbuild.yaml': build('Desk', 'steps: [label the case]\n'),
  'ws/shed/counter.pcbuild.yaml': build('Counter', 'steps: [fit board, label the case]\n'),
  'ws/other.pcbuild.yaml': build('Other').replace('b7-forge', 'b5-quay'),
  'ws/apart/fettle.yaml': 'format: 1\n',
  'ws/apart/apart.pcbuild.yaml': build('Apart'),
};
const desk = 'desk.pcbuild.yaml';
const whole: ClientCapabilities = {
  textDocument: { rename: { prepareSupport: true } },
  workspace: {
    workspaceEdit: { documentChanges: true, resourceOperations: ['rename'] },
    fileOperations: { willRename: true, didRename: true },
  },
};

let client: TestClient;
beforeEach(() => void (client = new TestClient(files)));
afterEach(() => client.dispose());

const ask = <T>(method: string, name: string, text: string, more: object = {}, into = 1): Promise<T> =>
  client.connection.sendRequest(method, {
    textDocument: { uri: client.uri(name) },
    position: client.at(name, text, into),
    ...more,
  });
const uses = async (name: string, text: string, includeDeclaration = true): Promise<string[]> => {
  const found = await ask<Location[]>('textDocument/references', name, text, { context: { includeDeclaration } });
  return found.map(({ uri, range }) => `${uri.slice(client.base.length + 1)}:${range.start.line + 1}`).sort();
};
const rename = (name: string, text: string, newName: string): Promise<WorkspaceEdit> =>
  ask('textDocument/rename', name, text, { newName });
const touched = ({ documentChanges = [] }: WorkspaceEdit): string[] =>
  documentChanges
    .map((one) => ('textDocument' in one ? one.textDocument.uri : one.kind))
    .map((uri) => uri.replace(`${client.base}/`, ''))
    .sort();

describe('uses', () => {
  test('of a part are found from a build and from its file alike, in its own workspace', async () => {
    await client.start(whole);
    await client.open(desk);
    await client.open(board);
    const all = ['desk.pcbuild.yaml:4', `${board}:1`, 'shed/counter.pcbuild.yaml:4'];
    expect(await uses(desk, 'norrvik/b7-forge')).toEqual(all);
    expect(await uses(board, 'model')).toEqual(all);
    expect(await uses(board, 'kind', false)).toEqual(['desk.pcbuild.yaml:4', 'shed/counter.pcbuild.yaml:4']);
  });

  test('of a slot or a firmware version are found in the board’s file and in every build on that board', async () => {
    await client.start(whole);
    await client.open(desk);
    await client.open(board);
    const slot = ['desk.pcbuild.yaml:6', `${board}:8`, `${board}:9`, 'shed/counter.pcbuild.yaml:6'];
    expect(await uses(desk, 'M2_2')).toEqual(slot);
    expect(await uses(board, 'M2_2')).toEqual(slot);
    expect(await uses(board, '"1.20"')).toEqual([`${board}:4`, `${board}:5`]);
    expect(await uses(board, '"1.02"')).toHaveLength(3);
  });

  test('follow what is typed and what comes to lie on disk', async () => {
    await client.start(whole);
    await client.open(desk);
    expect(await uses(desk, 'norrvik/b7-forge')).toHaveLength(3);
    await client.open('shed/counter.pcbuild.yaml');
    await client.type('shed/counter.pcbuild.yaml', 'norrvik/b7-forge', 'norrvik/b5-quay');
    expect(await uses(desk, 'norrvik/b7-forge')).toHaveLength(2);
    client.files.set('ws/new.pcbuild.yaml', build('New'));
    await client.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: client.uri('new.pcbuild.yaml'), type: 1 }],
    });
    expect(await uses(desk, 'norrvik/b7-forge')).toHaveLength(3);
    client.files.set('ws/new.pcbuild.yaml', 'build: New\n');
    await client.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: client.uri('new.pcbuild.yaml'), type: 2 }],
    });
    expect(await uses(desk, 'norrvik/b7-forge')).toHaveLength(2);
  });
});

describe('rename', () => {
  test('of a part used in 500 builds is one change, within two seconds', async () => {
    for (let i = 0; i < 500; i++) client.files.set(`ws/many/b${i}.pcbuild.yaml`, build(`Number ${i}`));
    await client.start(whole);
    await client.open(desk);
    let edit: WorkspaceEdit = {};
    const spent = await cpuMsOf(async () => (edit = await rename(desk, 'norrvik/b7-forge', 'norrvik/b7-anvil')));
    expect(spent).toBeLessThan(2_000 * busyFactor);
    expect(edit.documentChanges).toHaveLength(503);
    expect(edit.documentChanges!.at(-1)).toEqual({
      kind: 'rename',
      oldUri: client.uri(board),
      newUri: client.uri('parts/norrvik/b7-anvil.part.yaml'),
    });
    for (const name of [desk, 'shed/counter.pcbuild.yaml', 'many/b0.pcbuild.yaml', 'many/b499.pcbuild.yaml'])
      expect(client.applied(name, edit), name).toBe(client.text(name).replace('b7-forge', 'b7-anvil'));
    expect(touched(edit)).not.toContain('apart/apart.pcbuild.yaml');
  });

  test('of a slot changes the board and the builds on it, and no other board’s slot of that name', async () => {
    await client.start(whole);
    await client.open(board);
    const edit = await rename(board, 'M2_2', 'M2_B');
    expect(touched(edit)).toEqual([desk, board, 'shed/counter.pcbuild.yaml']);
    expect(client.applied(board, edit)).toBe(boardText.replaceAll('M2_2', 'M2_B'));
    expect(client.applied(desk, edit)).toBe(client.text(desk).replace('M2_2', 'M2_B'));
    await expect(rename(board, 'M2_2', 'M2_1')).rejects.toThrow('Another slot is called M2_1 already.');
    await client.open(desk);
    await expect(rename(desk, 'M2_2', 'PCIE_1')).rejects.toThrow('Another slot is called PCIE_1 already.');
  });

  test('of a step in words of one’s own changes it in every build', async () => {
    await client.start(whole);
    await client.open(desk);
    const edit = await rename(desk, 'label the case', 'label the lid');
    expect(touched(edit)).toEqual([desk, 'shed/counter.pcbuild.yaml']);
    await expect(rename(desk, 'label the case', 'fit board')).rejects.toThrow('is a step of the list');
  });

  test('is all or nothing: what cannot be changed safely is named', async () => {
    client.files.set('ws/alias.pcbuild.yaml', 'parts:\n  board: { use: &b norrvik/b7-forge }\n');
    await client.start(whole);
    await client.open(desk);
    await expect(rename(desk, 'norrvik/b7-forge', 'norrvik/x')).rejects.toThrow('alias.pcbuild.yaml names');
  });

  test('fits what lies on disk now, though the client does not tell of changes there', async () => {
    await client.start(whole);
    await client.open(desk);
    await rename(desk, 'norrvik/b7-forge', 'norrvik/x');
    const changed = `# A line more.\n${build('Counter')}`;
    client.files.set('ws/shed/counter.pcbuild.yaml', changed);
    const edit = await rename(desk, 'norrvik/b7-forge', 'norrvik/x');
    expect(client.applied('shed/counter.pcbuild.yaml', edit)).toBe(changed.replace('b7-forge', 'x'));
  });

  test('takes no name that another file has, and moves no file in an editor that does not', async () => {
    await client.start(whole);
    await client.open(desk);
    await expect(rename(desk, 'norrvik/b7-forge', 'norrvik/b5-quay')).rejects.toThrow('There is a part file');
    client.dispose();
    client = new TestClient(files);
    await client.start({ workspace: { workspaceEdit: { documentChanges: true } } });
    await client.open(desk);
    await expect(rename(desk, 'norrvik/b7-forge', 'norrvik/x')).rejects.toThrow('Move the part file itself');
  });
});

describe('files moved by the editor', () => {
  const moved = (from: string, to: string): Promise<WorkspaceEdit | null> =>
    client.connection.sendRequest('workspace/willRenameFiles', {
      files: [{ oldUri: client.uri(from), newUri: client.uri(to) }],
    });

  test('take along every use of the parts in them', async () => {
    const { capabilities } = await client.start(whole);
    expect(capabilities.workspace?.fileOperations?.willRename?.filters).toHaveLength(4);
    await client.open(desk);
    const edit = await moved(board, 'parts/norrvik/boards/b7.part.yaml');
    expect(touched(edit!)).toEqual([desk, 'shed/counter.pcbuild.yaml']);
    expect(client.applied(desk, edit!)).toContain('use: norrvik/boards/b7,');
    const folder = await moved('parts/norrvik', 'parts/norvik');
    expect(touched(folder!)).toEqual([desk, 'other.pcbuild.yaml', 'shed/counter.pcbuild.yaml']);
    expect(client.applied('other.pcbuild.yaml', folder!)).toContain('use: norvik/b5-quay,');
  });

  test('bring nothing more where a rename has just asked for the move', async () => {
    await client.start(whole);
    await client.open(desk);
    await rename(desk, 'norrvik/b7-forge', 'norrvik/b7-anvil');
    expect(await moved(board, 'parts/norrvik/b7-anvil.part.yaml')).toBeNull();
    expect(await moved(board, 'parts/norrvik/b7-other.part.yaml')).not.toBeNull();
  });

  test('take along the settings that name a parts folder, and then no name of a part', async () => {
    await client.start(whole);
    const edit = await moved('parts', 'stock');
    expect(touched(edit!)).toEqual(['fettle.yaml']);
    expect(client.applied('fettle.yaml', edit!)).toBe('format: 1\nparts: [stock]\n');
  });

  test('bring nothing where no build finds them afterwards, or none used them', async () => {
    await client.start(whole);
    expect(await moved(board, 'attic/b7.part.yaml')).toBeNull();
    expect(await moved('shed', 'barn')).toBeNull();
  });

  test('are known by their new name at once', async () => {
    await client.start(whole);
    await client.open(desk);
    await client.findings(desk);
    client.files.set('ws/parts/norrvik/b7.part.yaml', client.files.get(`ws/${board}`)!);
    client.files.delete(`ws/${board}`);
    await client.connection.sendNotification('workspace/didRenameFiles', {
      files: [{ oldUri: client.uri(board), newUri: client.uri('parts/norrvik/b7.part.yaml') }],
    });
    await client.type(desk, 'norrvik/b7-forge', 'norrvik/b7');
    expect((await client.findings(desk)).map(({ code }) => code)).not.toContain('part-not-found');
  });
});

describe('symbols of the workspace', () => {
  const symbols = async (query: string): Promise<string[]> => {
    const found = await client.connection.sendRequest<{ name: string; containerName: string }[]>('workspace/symbol', {
      query,
    });
    return found.map(({ name, containerName }) => `${name} in ${containerName}`).sort();
  };

  test('are builds, parts and the names that builds give, in every workspace below the folder', async () => {
    await client.start(whole);
    expect(await symbols('Desk')).toEqual(['Desk in desk.pcbuild.yaml']);
    expect(await symbols('forge')).toEqual(['norrvik/b7-forge in board']);
    expect(await symbols('scratch')).toHaveLength(4);
    expect(await symbols('scratch')).toContain('scratch in Counter · drives');
    expect(await symbols('')).toHaveLength(11);
    expect(await symbols('nothing of the kind')).toEqual([]);
  });

  test('follow unsaved text', async () => {
    await client.start(whole);
    await client.open(desk);
    await client.type(desk, 'name: scratch', 'name: fast one');
    expect(await symbols('fast one')).toEqual(['fast one in Desk · drives']);
  });
});

describe('call-outs', () => {
  interface Item {
    name: string;
    uri: string;
  }
  const prepare = (name: string, text: string): Promise<Item[]> => ask('textDocument/prepareCallHierarchy', name, text);

  test('lead from a part to the builds that use it, and back', async () => {
    await client.start(whole);
    await client.open(desk);
    await client.open(board);
    const [item] = await prepare(board, 'slots');
    expect(item).toMatchObject({ name: 'norrvik/b7-forge', uri: client.uri(board) });
    expect(await prepare(desk, 'norrvik/b7-forge')).toEqual([item]);
    const calls = await client.connection.sendRequest<{ from: Item; fromRanges: { start: { line: number } }[] }[]>(
      'callHierarchy/incomingCalls',
      { item },
    );
    expect(calls.map(({ from, fromRanges }) => [from.name, fromRanges.map(({ start }) => start.line)])).toEqual([
      ['Desk', [3]],
      ['Counter', [3]],
    ]);
    const [build] = await prepare(desk, 'build');
    const out = await client.connection.sendRequest<{ to: Item }[]>('callHierarchy/outgoingCalls', { item: build });
    expect(out.map(({ to }) => to.name)).toEqual(['norrvik/b7-forge', 'lumen/rapid-2t']);
  });
});

test('links lead to part files that are there', async () => {
  await client.start(whole);
  await client.open(desk);
  await client.type(desk, 'lumen/rapid-2t', 'lumen/none');
  const links = await client.connection.sendRequest('textDocument/documentLink', {
    textDocument: { uri: client.uri(desk) },
  });
  expect(links).toMatchObject([{ target: client.uri(board), range: { start: { line: 3 } } }]);
});

test('links and definitions lead from records to their builds', async () => {
  client.files.set('ws/fettle.yaml', 'known: [old.known.yaml, none.known.yaml]\n');
  client.files.set(
    'ws/old.known.yaml',
    `format: 1
files:
  desk.pcbuild.yaml:
    findings: [{ finding: cooler-too-tall, at: parts.board, grade: stop, by: workshop, until: 2027-06-30 }]
`,
  );
  client.files.set('ws/desk.asbuilt.yaml', 'format: 1\nbuild: desk.pcbuild.yaml\n');
  await client.start(whole);
  const linksOf = (name: string) =>
    client.connection.sendRequest('textDocument/documentLink', { textDocument: { uri: client.uri(name) } });
  for (const name of ['old.known.yaml', 'desk.asbuilt.yaml']) {
    await client.open(name);
    expect(await linksOf(name)).toMatchObject([{ target: client.uri(desk) }]);
    const led = await ask<Location>('textDocument/definition', name, desk, {});
    expect(led).toMatchObject({ uri: client.uri(desk), range: { start: { line: 0 } } });
  }
  await client.open('fettle.yaml');
  expect(await linksOf('fettle.yaml')).toMatchObject([{ target: client.uri('old.known.yaml') }]);
  const found = await ask<Location>('textDocument/definition', 'old.known.yaml', 'at: parts.board', {});
  expect(found).toMatchObject({ uri: client.uri(desk), range: { start: { line: 3 } } });
});

test('progress is reported to a client that offers to show it, and what is cancelled ends', async () => {
  for (let i = 0; i < 800; i++) client.files.set(`ws/many/b${i}.pcbuild.yaml`, build(`Number ${i}`));
  const told: string[] = [];
  client.connection.onProgress(WorkDoneProgress.type, 'token', ({ kind }) => void told.push(kind));
  await client.start({ ...whole, window: { workDoneProgress: true } });
  await client.open(desk);
  const context = { includeDeclaration: false };
  const more = { context, workDoneToken: 'token' };
  expect(await ask('textDocument/references', desk, 'norrvik/b7-forge', more)).toHaveLength(802);
  expect(told[0]).toBe('begin');
  expect(told.at(-1)).toBe('end');
  const source = new CancellationTokenSource();
  const asked = client.connection.sendRequest(
    'textDocument/references',
    { textDocument: { uri: client.uri(desk) }, position: client.at(desk, 'norrvik/b7-forge', 1), context },
    source.token,
  );
  source.cancel();
  await expect(asked).rejects.toThrow('cancelled');
  // The open file is served meanwhile.
  expect(await uses(desk, 'scratch')).toHaveLength(1);
});
