// A part file drafted from a sheet's text, as the server hands it to an editor that shows and saves it.
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { ToServer } from '../../server/src/language/requests';
import { TestClient } from '../support/client';

type Answer = ToServer['fettle/draftPart']['result'];

let client: TestClient;
beforeEach(async () => {
  client = new TestClient({ 'ws/fettle.yaml': 'format: 1\nparts: [shelf]\n' });
  await client.start();
});
afterEach(() => client.dispose());

const ask = (text: string, more: object = {}): Promise<Answer> =>
  client.connection.sendRequest('fettle/draftPart', { text, name: 'sheet.txt', ...more });

test('a sheet is drafted, and says what is to be asked where it is not plain', async () => {
  const sheet =
    'Boreas F92 case fan\nBrand\tBoreas\nModel\tF92\nSize\t92 x 92 x 25 mm\nSpeed\t2200 RPM\nColour\tgrey\n';
  const drafted = await ask(sheet);
  expect(drafted).toMatchObject({ name: 'boreas/f92', facts: 5, unread: 2 });
  expect('text' in drafted && drafted.text).toMatch(/^speed: 2200 rpm +# line 5: Speed: 2200 RPM$/m);
  expect(await ask('Weight: 3 kg\n')).toEqual({ kinds: [] });
  const table = '<h1>Lumen Flat SSD</h1><table><tr><td>Capacity</td><td>500 GB</td><td>1 TB</td></tr></table>';
  expect(await ask(table)).toEqual({ variants: ['500 GB', '1 TB'] });
  expect(await ask(table, { variant: '1 TB' })).toMatchObject({ facts: 1 });
});

test('a part has its place by its name', async () => {
  const place = (name: string) =>
    client.connection.sendRequest('fettle/partPlace', { near: 'file:///ws/fettle.yaml', name });
  expect(await place('boreas/f92')).toEqual({ uri: 'file:///ws/shelf/boreas/f92.part.yaml' });
  expect(await place('../f92')).toHaveProperty('problem');
});
