// Hover over the wire: the whole working of a finding, where the client opens pages of it.
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Hover, MarkupContent } from 'vscode-languageserver-protocol/node';
import { TestClient } from '../support/client';

const drives = Array.from({ length: 20 }, (_, i) => `    - { name: d${i}, draw: { running: ${i + 5} W } }\n`);
const files = {
  'ws/fettle.yaml': 'format: 1\nparts: [parts]\n',
  'ws/desk.pcbuild.yaml': `parts:\n  processor: { power: 65 W }\n  supply: { rating: 100 W }\n  drives:\n${drives.join('')}`,
};
const desk = 'desk.pcbuild.yaml';

let client: TestClient;
beforeEach(() => void (client = new TestClient(files)));
afterEach(() => client.dispose());

async function hovered(initializationOptions: object): Promise<string> {
  await client.start({ textDocument: { hover: { contentFormat: ['markdown'] } } }, { initializationOptions });
  await client.open(desk);
  const hover = await client.connection.sendRequest<Hover>('textDocument/hover', {
    textDocument: { uri: client.uri(desk) },
    position: client.at(desk, 'supply', 2),
  });
  return (hover.contents as MarkupContent).value;
}

describe('the whole working', () => {
  test('is a page that the client asks for by what a finding carries; gone once its finding is', async () => {
    const said = await hovered({ workings: 'Fettle: Show the Whole Working' });
    expect(said).toContain('more: `Fettle: Show the Whole Working` shows the whole working.');
    const found = (await client.findings(desk)).find(({ code }) => code === 'supply-overloaded')!;
    const asked = { uri: client.uri(desk), ...(found.data as object) };
    const page = await client.connection.sendRequest<{ markdown: string }>('fettle/working', asked);
    expect(page.markdown).toContain('d19');
    await client.type(desk, 'supply: { rating: 100 W }', 'cooler: { height: 100 mm }');
    expect(await client.connection.sendRequest('fettle/working', asked)).toBeNull();
  });

  test('is named by its command line to a client that shows none, or names none', async () => {
    expect(await hovered({ workings: '`x` <b>' })).toContain('`fettle check --working` shows the whole working');
  });
});

test('what the client shows above a hover is not said once more, but where nothing is underlined', async () => {
  await client.start({}, { initializationOptions: { showsFindings: true } });
  await client.open(desk);
  const found = (await client.findings(desk)).find(({ code }) => code === 'supply-overloaded')!;
  const above = async (line: number, character: number): Promise<string> => {
    const hover = await client.connection.sendRequest<Hover>('textDocument/hover', {
      textDocument: { uri: client.uri(desk) },
      position: { line, character },
    });
    return (hover.contents as MarkupContent).value;
  };
  const { start } = found.range;
  expect(await above(start.line, start.character)).not.toContain(String(found.message).split('\n')[0]);
  expect(await above(start.line, start.character)).toContain('supply-overloaded');
  client.dispose();
  client = new TestClient(files);
  await client.start();
  await client.open(desk);
  expect(await above(start.line, start.character)).toContain(String(found.message).split('\n')[0]);
});
