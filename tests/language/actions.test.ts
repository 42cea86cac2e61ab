// Code actions over the wire: edits are handed over once an action is chosen, where the client asks for them then.
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { CodeAction } from 'vscode-languageserver-protocol/node';
import { TestClient } from '../support/client';

const files = {
  'ws/fettle.yaml': 'format: 1\nparts: [parts]\n',
  'ws/desk.pcbuild.yaml': 'build: Desk\nparts:\n  cooler: { hieght: 155 mm }\n  case: { cooler-height: 160 mm }\n',
};
const desk = 'desk.pcbuild.yaml';
const literals = { codeActionLiteralSupport: { codeActionKind: { valueSet: ['quickfix'] } } };
const lazily = { ...literals, dataSupport: true, resolveSupport: { properties: ['edit'] } };

let client: TestClient;
beforeEach(() => void (client = new TestClient(files)));
afterEach(() => client.dispose());

async function offered(codeAction: object): Promise<CodeAction> {
  const { capabilities } = await client.start({
    textDocument: { codeAction },
    workspace: { workspaceEdit: { documentChanges: true } },
  });
  expect((capabilities.codeActionProvider as { resolveProvider?: boolean }).resolveProvider).toBe(
    codeAction === lazily,
  );
  await client.open(desk);
  const at = client.at(desk, 'hieght');
  const all = await client.connection.sendRequest<CodeAction[]>('textDocument/codeAction', {
    textDocument: { uri: client.uri(desk) },
    range: { start: at, end: at },
    context: { diagnostics: [] },
  });
  return all.find(({ isPreferred }) => isPreferred)!;
}

describe('an action', () => {
  test('comes whole to a client that asks for nothing more', async () => {
    const action = await offered(literals);
    expect(client.applied(desk, action.edit!)).toContain('{ height: 155 mm }');
    expect(action.data).toBeUndefined();
    expect(await client.connection.sendRequest('codeAction/resolve', action)).toEqual(action);
  });

  test('has its edit handed over once it is chosen', async () => {
    const action = await offered(lazily);
    expect(action.edit).toBeUndefined();
    const whole = await client.connection.sendRequest<CodeAction>('codeAction/resolve', action);
    expect(whole).toMatchObject({ title: action.title, kind: 'quickfix' });
    expect(client.applied(desk, whole.edit!)).toContain('{ height: 155 mm }');
  });

  test('is refused once the text it was made for has changed, and when it was never offered', async () => {
    const action = await offered(lazily);
    await client.type(desk, 'Desk', 'Till');
    await expect(client.connection.sendRequest('codeAction/resolve', action)).rejects.toMatchObject({ code: -32801 });
    const other = { title: 'x', data: { answer: 99, at: 0 } };
    await expect(client.connection.sendRequest('codeAction/resolve', other)).rejects.toMatchObject({ code: -32801 });
  });
});
