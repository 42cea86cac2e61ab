// The bench sheet over the wire: what changed, the last good one, places both ways, and files.
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Location } from 'vscode-languageserver-protocol/node';
import type { SheetAnswer, ToServer } from '../../server/src/language/requests';
import { today } from '../support/bench';
import { TestClient } from '../support/client';
import { fettle } from '../support/command';
import { hostile } from '../support/sheets';

const files = {
  'ws/fettle.yaml': 'format: 1\n',
  'ws/desk.pcbuild.yaml': [
    'format: 1',
    'build: Desk',
    'parts:',
    '  board: { use: norrvik/quay }',
    '  cooler: { use: boreas/tower }',
    '  case: { use: tarn/mid }',
    '  drives:',
    '    - name: scratch',
    '      capacity: 2 TB',
    '      slot: M2_1',
    'steps:',
    '  - fit cooler',
    '  - { do: fit drive, part: scratch }',
    '',
  ].join('\n'),
  'ws/parts/norrvik/quay.part.yaml': 'kind: board\nslots:\n  M2_1: { kind: M.2 }\n',
  'ws/parts/boreas/tower.part.yaml': 'kind: cooler\nheight: 150 mm\ndraw: { peak: 4 W }\n',
  'ws/parts/tarn/mid.part.yaml': 'kind: case\ncooler-height: 155 mm\n',
};
const desk = 'desk.pcbuild.yaml';
const tower = 'parts/boreas/tower.part.yaml';

let client: TestClient;
let told: string[];
let expired: () => void;

beforeEach(() => {
  expired = () => undefined;
  client = new TestClient(files, (_, done) => {
    expired = done;
    return () => (expired = () => undefined);
  });
  told = [];
  client.connection.onNotification('fettle/sheetChanged', ({ uri }: { uri: string }) => void told.push(uri));
});
afterEach(() => client.dispose());

const ask = <M extends keyof ToServer>(method: M, params: object): Promise<ToServer[M]['result']> =>
  client.connection.sendRequest(method, { textDocument: { uri: client.uri(desk) }, ...params });
const sheet = async (have?: string): Promise<SheetAnswer> =>
  (await ask('fettle/sheet', have === undefined ? {} : { have }))!;
const html = ({ blocks }: SheetAnswer): string => blocks.map((block) => block.html).join('\n');
const lineOf = (name: string, { range }: Location): string => client.text(name).split('\n')[range.start.line]!.trim();

describe('a sheet', () => {
  test('is sent whole, then as what changed alone', async () => {
    await client.start();
    await client.open(desk);
    const first = await sheet();
    expect(first).toMatchObject({ version: 1, title: 'Desk', old: false, whole: true });
    expect(first.blocks.map(({ id }) => id)).toEqual(first.order);
    expect(await sheet(first.id)).toMatchObject({ id: first.id, whole: false, blocks: [] });
    await client.type(desk, 'build: Desk', 'build: Desk by the window');
    const next = await sheet(first.id);
    expect(next).toMatchObject({ version: 2, whole: false, title: 'Desk by the window' });
    expect(next.blocks.map(({ id }) => id)).toEqual(['head']);
    expect(await sheet('of somebody else')).toMatchObject({ whole: true });
  });

  test('tells its reader once that there is another: by its own text, by a part’s, by a file on disk', async () => {
    await client.start();
    await client.open(desk);
    await client.type(desk, 'Desk', 'Desks');
    await client.findings(desk);
    expect(told).toEqual([]);
    const first = await sheet();
    await client.type(desk, 'Desks', 'Desk');
    await client.type(desk, 'Desk', 'Desks');
    await client.findings(desk);
    expect(told).toEqual([client.uri(desk)]);
    await sheet();
    await client.open(tower, undefined, 'fettle-part');
    await client.type(tower, '150 mm', '154 mm');
    await client.findings(tower);
    expect(told).toHaveLength(2);
    const taller = await sheet(first.id);
    expect(html(taller)).toContain('154 mm');
    client.files.set('ws/parts/tarn/mid.part.yaml', 'kind: case\ncooler-height: 159 mm\n');
    await client.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: client.uri('parts/tarn/mid.part.yaml'), type: 2 }],
    });
    await expect.poll(() => told.length).toBe(3);
    expect(html(await sheet())).toContain('159 mm');
  });

  test('tells its reader before what was typed is judged', async () => {
    await client.start();
    await client.open(desk);
    await client.findings(desk);
    await sheet();
    const heard: string[] = [];
    client.connection.onNotification('fettle/sheetChanged', () => void heard.push('sheet'));
    client.connection.onNotification('textDocument/publishDiagnostics', () => void heard.push('findings'));
    await client.type(desk, '- fit cooler', '- fit coolers');
    await expect.poll(() => heard).toEqual(['sheet', 'findings']);
  });

  test('brings changed pictures before the rest, to whoever asks for it so', async () => {
    await client.start();
    await client.open(desk);
    await client.open(tower, undefined, 'fettle-part');
    const first = await sheet();
    await client.type(tower, '150 mm', '154 mm');
    const next = async (have: string): Promise<SheetAnswer> =>
      (await ask('fettle/sheet', { have, picturesFirst: true }))!;
    const pictures = await next(first.id);
    expect(pictures).toMatchObject({ more: true, whole: false, order: first.order });
    expect(pictures.blocks.map(({ id }) => id)).toEqual(['picture-clearance']);
    const rest = await next(pictures.id);
    expect(rest).toMatchObject({ more: false, whole: false });
    const shown = new Map([first, pictures, rest].flatMap(({ blocks }) => blocks.map(({ id, html }) => [id, html])));
    const whole = await sheet();
    expect(whole.more).toBe(false);
    expect(whole.blocks.map(({ html }) => html)).toEqual(whole.order.map((id) => shown.get(id)));
    await client.type(tower, '154 mm', '150 mm');
    expect((await next(whole.id)).more).toBe(true);
    // A text that cannot be read has nothing more to come.
    await client.type(desk, 'build: Desk', 'build: "Desk');
    expect(await next(whole.id)).toMatchObject({ more: false, old: true });
  });

  test('stays as it was while the text is broken, and says so', async () => {
    await client.start();
    await client.open(desk);
    const good = await sheet();
    await client.type(desk, 'build: Desk', 'build: "Desk');
    expect(await sheet(good.id)).toMatchObject({ id: good.id, version: 1, old: true, blocks: [] });
    expect(html(await sheet())).toBe(html(good));
    await client.type(desk, 'build: "Desk', 'build: "Desk"');
    expect(await sheet(good.id)).toMatchObject({ version: 3, old: false });
  });

  test('of a text that was never whole shows what can be read of it', async () => {
    await client.start();
    await client.open(desk, 'build: "Desk\nparts:\n');
    expect(await sheet()).toMatchObject({ old: false, version: 1 });
  });

  test('keeps a part while another is being named, and leaves out what its writer is still at', async () => {
    await client.start();
    await client.open(desk);
    const good = await sheet();
    await client.put(desk, client.text(desk).indexOf('boreas/tower') + 'boreas/tower'.length, 's');
    expect(await sheet(good.id)).toMatchObject({ id: good.id, old: true });
    told.length = 0;
    expired();
    await expect.poll(() => told).toEqual([client.uri(desk)]);
    const settled = await sheet(good.id);
    expect(settled.old).toBe(false);
    expect(html(settled)).toContain('part-not-found');
  });

  test('of what is no build is none', async () => {
    await client.start();
    expect(await client.connection.sendRequest('fettle/sheet', { textDocument: { uri: client.uri(tower) } })).toBe(
      null,
    );
    expect(
      await client.connection.sendRequest('fettle/sheet', { textDocument: { uri: client.uri('no.pcbuild.yaml') } }),
    ).toBe(null);
  });

  test('is refused where its parameters have not their shape', async () => {
    await client.start();
    await expect(client.connection.sendRequest('fettle/sheet', { textDocument: 7 })).rejects.toMatchObject({
      code: -32602,
    });
    await expect(ask('fettle/sheetFile', { form: 'pdf' })).rejects.toMatchObject({ code: -32602 });
    await expect(ask('fettle/sheetPlace', { place: 3 })).rejects.toMatchObject({ code: -32602 });
  });
});

describe('places', () => {
  const place = async (key: string, definition?: boolean): Promise<Location | null> =>
    ask('fettle/sheetPlace', { place: key, ...(definition === undefined ? {} : { definition }) });

  test.each([
    ['parts.drives.scratch', '- name: scratch', 'slot', 'M2_1: { kind: M.2 }'],
    ['parts.drives.scratch.slot', 'slot: M2_1', 'slot', 'M2_1: { kind: M.2 }'],
    ['parts.drives[0]', '- name: scratch', 'slot', 'M2_1: { kind: M.2 }'],
    ['steps.1', '- { do: fit drive, part: scratch }', 'part', '- name: scratch'],
  ])('%s lands on its line, then where what it names is described', async (key, use, _, described) => {
    await client.start();
    await client.open(desk);
    expect(lineOf(desk, (await place(key))!)).toBe(use);
    const second = (await place(key, true))!;
    const name = second.uri.slice(client.uri('').length);
    expect(lineOf(name, second)).toBe(described);
  });

  test('of a part and of a fact of it: first where the build uses it, then in its file', async () => {
    await client.start();
    await client.open(desk);
    for (const key of ['parts.cooler', 'boreas/tower::height', 'boreas/tower::not.there']) {
      expect((await place(key))!.uri).toBe(client.uri(desk));
      expect(lineOf(desk, (await place(key, false))!)).toBe('cooler: { use: boreas/tower }');
      expect((await place(key, true))!.uri).toBe(client.uri(tower));
    }
    expect(lineOf(tower, (await place('boreas/tower::height', true))!)).toBe('height: 150 mm');
    // Nothing describes it: the second jump stays on the first’s line.
    expect(lineOf(desk, (await place('steps.0', true))!)).toBe('- fit cooler');
  });

  test('that lead nowhere are none', async () => {
    await client.start();
    await client.open(desk);
    for (const key of ['nothing', 'no/file::height', '', '::', '__proto__', 'constructor::x'])
      expect(await place(key)).toBe(null);
    expect(lineOf(desk, (await place('parts.drives.scratch.bus'))!)).toBe('- name: scratch');
  });

  const on = async (name: string, text: string): Promise<ToServer['fettle/sheetPlaces']['result']> => {
    const uri = client.uri(name);
    return client.connection.sendRequest('fettle/sheetPlaces', {
      textDocument: { uri },
      position: client.at(name, text),
      build: client.uri(desk),
    });
  };

  test('of a line are what begins on it, and what it lies in', async () => {
    await client.start();
    await client.open(desk);
    const slot = await on(desk, 'slot: M2_1');
    expect(slot.on).toContain('parts.drives.scratch.slot');
    expect(slot.around.slice(0, 2).sort()).toEqual(['parts.drives.scratch', 'parts.drives[0]']);
    expect(slot.around.at(-1)).toBe('parts');
    expect((await on(desk, '- fit cooler')).on).toContain('steps.0');
    expect((await on(desk, 'cooler: {')).on).toEqual(expect.arrayContaining(['parts.cooler', 'parts.cooler.use']));
  });

  test('of a line of a part file are those of its facts, then of the part in the build', async () => {
    await client.start();
    await client.open(desk);
    await client.open(tower, undefined, 'fettle-part');
    expect(await on(tower, 'height')).toEqual({ on: ['boreas/tower::height'], around: ['parts.cooler'] });
    expect((await on(tower, 'peak')).on).toEqual(['boreas/tower::draw', 'boreas/tower::draw.peak']);
  });

  test('lead back to the line they are of', async () => {
    await client.start();
    await client.open(desk);
    for (const [line, text] of client.text(desk).split('\n').entries()) {
      if (text === '') continue;
      const { on: keys } = await ask('fettle/sheetPlaces', { position: { line, character: 0 } });
      expect(keys.length, text).toBeGreaterThan(0);
      for (const key of keys) expect((await place(key))!.range.start.line, key).toBe(line);
    }
  });
});

describe('as a file', () => {
  test('it is one page, or Markdown; of a hostile build too', async () => {
    await client.start();
    await client.open(desk);
    const page = (await ask('fettle/sheetFile', { form: 'html', paper: 'letter' }))!.text;
    expect(page).toMatch(/^<!DOCTYPE html>/);
    expect(page).toContain('size: letter');
    expect((await ask('fettle/sheetFile', { form: 'markdown' }))!.text).toMatch(/^# Desk\n/);
    await client.type(desk, 'build: Desk', `build: ${JSON.stringify(hostile[0])}`);
    expect((await ask('fettle/sheetFile', { form: 'html' }))!.text).not.toMatch(/<script|<img/);
    expect(html(await sheet())).not.toMatch(/<script|<img/);
  });

  test('it is what the command prints, with the fixes that are proven', async () => {
    await client.start();
    await client.open(desk);
    await client.type(desk, 'slot: M2_1', 'slot: M2_2');
    const files = Object.fromEntries([...client.files].map(([name, text]) => [name.replace(/^ws\//, ''), text]));
    files[desk] = client.text(desk);
    const { out } = await fettle(files, 'sheet', desk, '--on', today);
    expect(out).toContain('<ul class="mends">');
    expect((await ask('fettle/sheetFile', { form: 'html' }))!.text).toBe(out);
  });

  test('its look is sent by itself', async () => {
    await client.start();
    expect((await client.connection.sendRequest<{ css: string }>('fettle/sheetStyle')).css).toContain('.sheet');
  });
});
