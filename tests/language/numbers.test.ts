// Hints and lenses over the wire: settings by folder, tooltips when they are looked at, and what an unsaved part file does.
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { ClientCapabilities, CodeLens, InlayHint } from 'vscode-languageserver-protocol/node';
import { TestClient } from '../support/client';
import { Clock } from '../support/clock';

const build = (name: string): string =>
  `format: 1\nbuild: ${name}\nparts:\n  cooler: { use: boreas/tower }\n  case: { use: tarn/mid }\n`;
const files = {
  'ws/fettle.yaml': 'format: 1\n',
  'ws/desk.pcbuild.yaml': build('Desk'),
  'ws/counter.pcbuild.yaml': build('Counter'),
  'ws/parts/boreas/tower.part.yaml': 'kind: cooler\nheight: 150 mm\ndraw: { peak: 4 W }\n',
  'ws/parts/tarn/mid.part.yaml': 'kind: case\ncooler-height: 155 mm\n',
};
const desk = 'desk.pcbuild.yaml';
const cooler = 'parts/boreas/tower.part.yaml';

let client: TestClient;
beforeEach(() => void (client = new TestClient(files)));
afterEach(() => client.dispose());

const hints = async (name = desk): Promise<InlayHint[]> =>
  (await client.connection.sendRequest<InlayHint[] | null>('textDocument/inlayHint', {
    textDocument: { uri: client.uri(name) },
    range: { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } },
  })) ?? [];
const labels = async (): Promise<unknown[]> => (await hints()).map(({ label }) => label);
const lens = async (name: string): Promise<CodeLens> => {
  const [found] = await client.connection.sendRequest<CodeLens[]>('textDocument/codeLens', {
    textDocument: { uri: client.uri(name) },
  });
  return client.connection.sendRequest('codeLens/resolve', found);
};

describe('hints', () => {
  test('come with their working, or bring it when they are looked at', async () => {
    const { capabilities } = await client.start();
    expect(capabilities.inlayHintProvider).toEqual({ resolveProvider: false });
    await client.open(desk);
    expect(await labels()).toEqual(['4 W · 5 mm to spare']);
    expect((await hints())[0]).toMatchObject({ tooltip: { value: expect.stringContaining('155 mm') } });
    client.dispose();
    client = new TestClient(files);
    await client.start({ textDocument: { inlayHint: { resolveSupport: { properties: ['tooltip'] } } } });
    await client.open(desk);
    const [gap] = await hints();
    expect(gap!.tooltip).toBeUndefined();
    expect(await client.connection.sendRequest('inlayHint/resolve', gap)).toMatchObject({
      tooltip: { value: expect.stringContaining('155 mm') },
    });
    await client.type(desk, 'tower', 'none');
    expect(await client.connection.sendRequest('inlayHint/resolve', gap)).toEqual(gap);
  });

  test('are switched off kind by kind: by the settings of each folder, or by those at the start', async () => {
    const asked: unknown[] = [];
    let power = false;
    client.connection.onRequest('workspace/configuration', ({ items }: { items: { scopeUri?: string }[] }) => {
      asked.push(...items.map(({ scopeUri }) => scopeUri));
      return items.map(({ scopeUri }) => (scopeUri === undefined ? null : { hints: { power } }));
    });
    await client.start({ workspace: { configuration: true } });
    await client.open(desk);
    expect(await labels()).toEqual(['5 mm to spare']);
    await expect.poll(() => asked).toContain(undefined);
    expect(await labels()).toEqual(['5 mm to spare']);
    const { length } = asked;
    expect(asked).toContain(client.base);
    expect(await labels()).toEqual(['5 mm to spare']);
    expect(asked).toHaveLength(length);
    power = true;
    await client.connection.sendNotification('workspace/didChangeConfiguration', { settings: null });
    await expect.poll(labels).toEqual(['4 W · 5 mm to spare']);
    client.dispose();
    client = new TestClient(files);
    await client.start({}, { initializationOptions: { settings: { hints: { clearance: false } } } });
    await client.open(desk);
    expect(await labels()).toEqual(['4 W']);
    await client.connection.sendNotification('workspace/didChangeConfiguration', {
      settings: { fettle: { hints: { power: 'yes' } } },
    });
    expect(await labels()).toEqual(['4 W · 5 mm to spare']);
    expect(client.logged.join('\n')).toContain('fettle.hints.power');
  });

  test('are asked for anew when a file changes that others rest on', async () => {
    const asked: string[] = [];
    client.connection.onRequest('workspace/inlayHint/refresh', () => void asked.push('hints'));
    client.connection.onRequest('workspace/codeLens/refresh', () => void asked.push('lenses'));
    const refreshes: ClientCapabilities = {
      workspace: { inlayHint: { refreshSupport: true }, codeLens: { refreshSupport: true } },
    };
    await client.start(refreshes);
    await client.open(desk);
    await client.findings(desk);
    const before = asked.length;
    await client.type(desk, 'Desk', 'Desk 2');
    await client.findings(desk);
    expect(asked).toHaveLength(before);
    await client.open(cooler);
    await client.type(cooler, '150 mm', '152 mm');
    expect(await labels()).toEqual(['4 W · 3 mm to spare']);
    await expect.poll(() => asked.slice(before)).toEqual(expect.arrayContaining(['hints', 'lenses']));
  });
});

describe('lenses', () => {
  test('above a build say what it comes to; a client of ours is led to the findings', async () => {
    await client.start({}, { initializationOptions: { lenses: true } });
    await client.open(desk);
    expect((await lens(desk)).range.start).toEqual({ line: 1, character: 0 });
    expect((await lens(desk)).command).toMatchObject({
      title: expect.stringMatching(/worst|nothing/),
      command: 'fettle.showFindings',
    });
  });

  test('above a build are as calm as its findings while someone writes', async () => {
    client.dispose();
    const clock = new Clock();
    client = new TestClient(files, clock.after);
    let asked = 0;
    client.connection.onRequest('workspace/codeLens/refresh', () => void asked++);
    await client.start({ workspace: { codeLens: { refreshSupport: true } } });
    await client.open(desk);
    const before = (await lens(desk)).command!.title;
    await client.type(desk, 'cooler:', 'coolr:');
    expect(before).toBe('worst: note (1)');
    expect((await lens(desk)).command!.title).toBe(before);
    expect(asked).toBe(0);
    clock.pass();
    await expect.poll(() => asked).toBe(1);
    expect((await lens(desk)).command!.title).toMatch(/^worst: stop/);
  });

  test('above a part file say who uses it, and what its unsaved text does to them', async () => {
    await client.start({}, { initializationOptions: { lenses: true } });
    await client.open(cooler);
    const { command } = await lens(cooler);
    expect(command).toMatchObject({ title: 'used by 2 builds', command: 'fettle.showUses' });
    expect((command!.arguments as unknown[])[2]).toMatchObject([{ uri: client.uri('counter.pcbuild.yaml') }, {}]);
    await client.type(cooler, '150 mm', '170 mm');
    expect((await lens(cooler)).command?.title).toBe('used by 2 builds · unsaved: breaks cooler-too-tall in 2 builds');
    client.files.set(`ws/${cooler}`, client.text(cooler));
    expect((await lens(cooler)).command?.title).toBe('used by 2 builds');
    await client.type(cooler, '170 mm', '140 mm');
    expect((await lens(cooler)).command?.title).toBe('used by 2 builds · unsaved: heals cooler-too-tall in 2 builds');
  });

  test('say nothing that leads nowhere, and stand above nothing else', async () => {
    await client.start();
    await client.open(cooler);
    expect((await lens(cooler)).command).toMatchObject({ title: 'used by 2 builds', command: '' });
    await client.open('fettle.yaml');
    const none = await client.connection.sendRequest('textDocument/codeLens', {
      textDocument: { uri: client.uri('fettle.yaml') },
    });
    expect(none).toBeNull();
  });
});
