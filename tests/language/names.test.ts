// Names over the wire: uses, highlights and rename, and the words in which a rename is refused.
import { afterEach, beforeEach, expect, test } from 'vitest';
import { TestClient } from '../support/client';

const desk = 'desk.pcbuild.yaml';
const text = `format: 1
parts:
  drives: [{ name: scratch }, { name: archive }]
expect:
  drives: { scratch: { capacity: 2 TB } }
`;
const position = { line: 4, character: 14 };

let client: TestClient;
beforeEach(() => void (client = new TestClient({ [`ws/${desk}`]: text })));
afterEach(() => client.dispose());

test('a drive’s name is found, shown and renamed everywhere in its build', async () => {
  await client.start({ textDocument: { rename: { prepareSupport: true } }, workspace: { workspaceEdit: {} } });
  await client.open(desk);
  const at = { textDocument: { uri: client.uri(desk) }, position };
  const ask = (method: string, more: object = {}): Promise<unknown> =>
    client.connection.sendRequest(method, { ...at, ...more });
  expect(await ask('textDocument/references', { context: { includeDeclaration: true } })).toHaveLength(2);
  expect(await ask('textDocument/documentHighlight')).toHaveLength(2);
  expect(await ask('textDocument/prepareRename')).toMatchObject({ placeholder: 'scratch' });
  const edit = (await ask('textDocument/rename', { newName: 'fast' })) as { changes: Record<string, unknown[]> };
  expect(edit.changes[client.uri(desk)]).toHaveLength(2);
  await expect(ask('textDocument/rename', { newName: 'archive' })).rejects.toThrow(
    'Another part is called archive already.',
  );
});
