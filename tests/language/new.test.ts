// New builds and part files, as the server hands them to an editor that writes them.
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { kindNames } from '../../server/src/core/parts/kinds';
import type { ToServer } from '../../server/src/language/requests';
import { TestClient } from '../support/client';

const files = {
  'ws/fettle.yaml': 'format: 1\nparts: [shelf]\n',
  'ws/desks/desk.pcbuild.yaml': 'format: 1\nbuild: Desk\n',
  'bare/notes.txt': '',
};

let client: TestClient;
beforeEach(async () => {
  client = new TestClient(files);
  await client.start();
});
afterEach(() => client.dispose());

const ask = (near: string, what: string, name: string): Promise<ToServer['fettle/new']['result']> =>
  client.connection.sendRequest('fettle/new', { near: `file:///${near}`, what, name });
const made = async (near: string, what: string, name: string) => {
  const answer = await ask(near, what, name);
  if ('problem' in answer) throw new Error(answer.problem);
  return answer;
};

describe('a new build', () => {
  test('lies beside the open one; where settings are there already none come along', async () => {
    const { files: written, at } = await made('ws/desks/desk.pcbuild.yaml', 'build', 'Tide desk');
    expect(written.map(({ uri }) => uri)).toEqual(['file:///ws/desks/Tide-desk.pcbuild.yaml']);
    const line = written[0]!.text.split('\n')[at.line]!;
    expect(line.slice(0, at.character)).toBe('  cooler: { ');
  });

  test('in a folder that is no workspace yet makes it one', async () => {
    const { files: written } = await made('bare', 'build', 'Tide desk');
    expect(written.map(({ uri }) => uri.replace('file:///bare/', ''))).toEqual([
      'Tide-desk.pcbuild.yaml',
      'fettle.yaml',
      'parts/example/tower.part.yaml',
    ]);
  });

  test('needs a name that is no path, and a folder that is there', async () => {
    expect(await ask('ws', 'build', '../x')).toHaveProperty('problem');
    expect(await ask('nowhere', 'build', 'x')).toHaveProperty('problem');
  });
});

describe('a new part', () => {
  test.each(kindNames)(
    'of kind %s goes to the first parts folder; its maker is the first thing to fill in',
    async (kind) => {
      const { files: written, at } = await made('ws/desks/desk.pcbuild.yaml', kind, 'holm/one');
      expect(written.map(({ uri }) => uri)).toEqual(['file:///ws/shelf/holm/one.part.yaml']);
      expect(written[0]!.text.split('\n')[at.line]!.slice(0, at.character)).toBe('maker: ');
      expect(written[0]!.text).toContain(`\nkind: ${kind}\n`);
    },
  );

  test('is of one of our kinds, which are listed, and is named by its path', async () => {
    expect(await client.connection.sendRequest('fettle/kinds')).toEqual(kindNames);
    expect(await ask('ws', 'engine', 'holm/one')).toHaveProperty('problem');
    expect(await ask('ws', 'fan', 'one')).toHaveProperty('problem');
    expect(await ask('ws', 'fan', '../../one/two')).toHaveProperty('problem');
  });
});
