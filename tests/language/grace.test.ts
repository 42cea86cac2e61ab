// What is being written raises nothing until it is left, a pause is made or the file is saved; what was there stays.
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Diagnostic } from 'vscode-languageserver-protocol';
import { TestClient } from '../support/client';
import { Clock } from '../support/clock';

const build = `format: 1
build: Counter PC
place:
  ambient: 24 °C
parts:
  cooler: { use: boreas/tower-155 }
  case: { use: tarn/mid-3 }
`;
const files = {
  'ws/fettle.yaml': 'format: 1\nparts: [parts]\n',
  'ws/desk.pcbuild.yaml': build,
  'ws/parts/boreas/tower-155.part.yaml': 'kind: cooler\nmaker: Boreas\nmodel: Tower 155\nheight: 155 mm\n',
  'ws/parts/boreas/tower-1.part.yaml': 'kind: cooler\nmaker: Boreas\nmodel: Tower 1\nheight: 140 mm\n',
  'ws/parts/tarn/mid-3.part.yaml': 'kind: case\nmaker: Tarn\nmodel: Mid 3\ncooler-height: 150 mm\n',
};
const desk = 'desk.pcbuild.yaml';
const cooler = 'parts/boreas/tower-155.part.yaml';
const broken = (found: readonly Diagnostic[]): unknown[] =>
  found.filter(({ severity }) => severity !== 4).map(({ code }) => code);

let client: TestClient;
let clock: Clock;
beforeEach(() => {
  clock = new Clock();
  client = new TestClient(files, clock.after);
});
afterEach(() => client.dispose());

const save = (name: string): Promise<void> =>
  client.connection.sendNotification('textDocument/didSave', { textDocument: { uri: client.uri(name) } });
const goTo = (name: string, position: object | null): Promise<void> =>
  client.connection.sendNotification('fettle/cursor', { uri: client.uri(name), position });
const shown = async (name = desk): Promise<unknown[]> => broken(await client.findings(name));

describe('pushed', () => {
  beforeEach(async () => {
    await client.start();
    await client.open(desk);
  });

  /** Makes the key `ambient` one that means nothing. */
  const misspell = async (): Promise<void> => {
    expect(await shown()).not.toContain('unknown-key');
    await client.type(desk, 'ambient', 'ambent');
    expect(await shown()).not.toContain('unknown-key');
  };

  test('what is wrong with an entry waits for a pause', async () => {
    await misspell();
    clock.pass();
    expect(await shown()).toContain('unknown-key');
  });

  test('each key puts the pause off', async () => {
    await misspell();
    const early = clock;
    await client.type(desk, 'ambent', 'ambnt');
    await shown();
    early.pass();
    expect(await shown()).toContain('unknown-key');
  });

  test('a save by the editor itself, after a delay, ends nothing; the next one by hand does', async () => {
    const textDocument = { uri: client.uri(desk) };
    await misspell();
    await client.connection.sendNotification('textDocument/willSave', { textDocument, reason: 2 });
    await save(desk);
    expect(await shown()).not.toContain('unknown-key');
    await client.connection.sendNotification('textDocument/willSave', { textDocument, reason: 1 });
    await save(desk);
    expect(await shown()).toContain('unknown-key');
  });

  test('it waits for a save', async () => {
    await misspell();
    await save(desk);
    expect(await shown()).toContain('unknown-key');
  });

  test('it waits until something else is written', async () => {
    await misspell();
    await client.type(desk, 'Counter PC', 'Counter');
    expect(await shown()).toContain('unknown-key');
  });

  test('it waits until the cursor leaves the entry, not until it moves within it', async () => {
    await misspell();
    await goTo(desk, client.at(desk, '24', 1));
    expect(await shown()).not.toContain('unknown-key');
    await goTo(desk, client.at(desk, 'Counter'));
    expect(await shown()).toContain('unknown-key');
  });

  test('it waits until the cursor leaves the file, or another is written in', async () => {
    await misspell();
    await goTo(desk, null);
    expect(await shown()).toContain('unknown-key');
    await client.type(desk, 'ambent', 'ambient');
    await client.type(desk, '24 °C', '24');
    expect(await shown()).not.toContain('unit-missing');
    await client.open(cooler);
    await client.type(cooler, '155 mm', '154 mm');
    expect(await shown()).toContain('unit-missing');
  });

  test('a cursor that is told of out of any shape is logged and changes nothing', async () => {
    await misspell();
    await client.connection.sendNotification('fettle/cursor', { uri: client.uri(desk), position: { line: -1 } });
    expect(await shown()).not.toContain('unknown-key');
    expect(client.logged.join('\n')).toContain('fettle/cursor');
  });

  test('what was shown stays, where it moved to, while a line is half typed and breaks the text', async () => {
    expect(await shown()).toContain('cooler-too-tall');
    await client.type(desk, '  ambient', '  hum\n  ambient');
    const found = await client.findings(desk);
    expect(broken(found)).toContain('cooler-too-tall');
    expect(broken(found)).not.toContain('yaml-syntax');
    expect(found.find(({ code }) => code === 'cooler-too-tall')?.range.start).toEqual(client.at(desk, 'boreas'));
    clock.pass();
    expect(await shown()).toContain('yaml-syntax');
  });

  test('what is mended from another place is not shown first', async () => {
    const rest = ['board: {}', 'processor: {}', 'memory: [{}]', 'drives: [{}]', 'supply: {}'];
    await client.connection.sendNotification('textDocument/didClose', { textDocument: { uri: client.uri(desk) } });
    await client.open(desk, `${build}${rest.map((line) => `  ${line}\n`).join('')}`);
    expect(await shown()).toContain('cooler-too-tall');
    // A key broken in two takes the cooler away, which is told as a whole once nobody writes.
    await client.type(desk, 'cooler:', 'coo\n  ler:');
    await goTo(desk, client.at(desk, 'Counter'));
    expect(await shown()).not.toContain('parts-left-out');
    await client.type(desk, 'coo\n  ler:', 'cooler:');
    expect(await shown()).not.toContain('parts-left-out');
    clock.pass();
    expect(await shown()).toContain('cooler-too-tall');
    expect(await shown()).not.toContain('parts-left-out');
  });

  test('what a key mends is gone with that key', async () => {
    expect(await shown()).toContain('cooler-too-tall');
    await client.type(desk, 'tower-155', 'tower-1');
    expect(await shown()).not.toContain('cooler-too-tall');
  });

  test('a name that is half typed clears nothing and raises nothing', async () => {
    await client.type(desk, 'tower-155', 'tow');
    expect(await shown()).toContain('cooler-too-tall');
    expect(await shown()).not.toContain('part-not-found');
    clock.pass();
    expect(await shown()).not.toContain('cooler-too-tall');
    expect(await shown()).toContain('part-not-found');
  });

  test('what was shown of a key follows the key as it is written on', async () => {
    await misspell();
    clock.pass();
    await client.type(desk, 'ambent', 'ambients');
    const found = (await client.findings(desk)).filter(({ code }) => code === 'unknown-key');
    expect(found.map(({ message }) => message)).toEqual([expect.stringContaining('ambients')]);
  });

  test('a part file that is half typed says nothing in the builds that use it', async () => {
    await client.open(cooler);
    await client.type(cooler, '155 mm', '1');
    expect(await shown()).toContain('cooler-too-tall');
    expect(await shown(cooler)).not.toContain('unit-missing');
    clock.pass();
    expect(await shown()).not.toContain('cooler-too-tall');
    expect(await shown(cooler)).toContain('unit-missing');
  });

  test('a text that is sent whole is written where it differs', async () => {
    const text = client.text(desk).replace('24 °C', '24');
    await client.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri: client.uri(desk), version: 2 },
      contentChanges: [{ text }],
    });
    expect(await shown()).not.toContain('unit-missing');
    await goTo(desk, client.at(desk, '24', 1));
    expect(await shown()).not.toContain('unit-missing');
    clock.pass();
    expect(await shown()).toContain('unit-missing');
  });

  test('with a pause of 0 everything is shown with every key', async () => {
    await client.connection.sendNotification('workspace/didChangeConfiguration', {
      settings: { fettle: { pause: 0 } },
    });
    await client.type(desk, 'ambient', 'ambent');
    expect(await shown()).toContain('unknown-key');
  });

  test('a closed file takes what waited along', async () => {
    await misspell();
    await client.connection.sendNotification('textDocument/didClose', { textDocument: { uri: client.uri(desk) } });
    clock.pass();
    expect(await client.findings(desk)).toEqual([]);
  });
});

describe('pulled', () => {
  const pull = async (): Promise<unknown[]> => {
    const { items } = (await client.connection.sendRequest('textDocument/diagnostic', {
      textDocument: { uri: client.uri(desk) },
    })) as { items: Diagnostic[] };
    return broken(items);
  };

  test('what waits is left out, and the client asked to pull again once it does not wait any more', async () => {
    let asked = 0;
    client.connection.onRequest('workspace/diagnostic/refresh', () => void asked++);
    await client.start({ textDocument: { diagnostic: {} }, workspace: { diagnostics: { refreshSupport: true } } });
    await client.open(desk);
    expect(await pull()).toContain('cooler-too-tall');
    await client.type(desk, 'ambient', 'ambent');
    expect(await pull()).not.toContain('unknown-key');
    expect(asked).toBe(0);
    clock.pass();
    await expect.poll(() => asked).toBe(1);
    expect(await pull()).toContain('unknown-key');
    expect(client.published).toEqual([]);
  });

  test('an entry that was left is shown though nobody pulled while it was written', async () => {
    await client.start({ textDocument: { diagnostic: {} } });
    await client.open(desk);
    await pull();
    for (const [old, by] of [
      ['ambient', 'ambent'],
      ['24 °C', '24'],
      ['Counter PC', 'Counter'],
    ] as const)
      await client.type(desk, old, by);
    expect(await pull()).toEqual(expect.arrayContaining(['unknown-key']));
  });
});

test('whatever was typed, after the pause a text says what it says when it is opened', async () => {
  await client.start();
  const pieces = [
    '\n',
    '  ',
    '- ',
    'use: ',
    'boreas/tower-155',
    'fans:',
    ' 1',
    '{',
    '}',
    ', ',
    'é',
    '#',
    '"',
    '155 mm',
  ];
  const edit = fc.record({
    at: fc.nat(200),
    length: fc.integer({ min: 0, max: 12 }),
    by: fc.constantFrom('', ...pieces),
  });
  const key = ({ range, code, message, severity }: Diagnostic): string =>
    `${JSON.stringify(range)} ${code} ${message} ${severity}`;
  let files = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(edit, { minLength: 1, maxLength: 12 }), async (edits) => {
      const [typed, opened] = [`typed-${++files}.pcbuild.yaml`, `opened-${files}.pcbuild.yaml`];
      await client.open(typed, build);
      for (const { at, length, by } of edits) {
        const text = client.text(typed);
        const start = Math.min(at, text.length);
        await client.put(typed, start, by, Math.min(length, text.length - start));
        await client.shown(typed);
      }
      clock.pass();
      await client.open(opened, client.text(typed));
      expect((await client.findings(typed)).map(key).sort()).toEqual((await client.findings(opened)).map(key).sort());
    }),
    { numRuns: 40 },
  );
}, 60_000);
