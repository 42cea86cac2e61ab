// Definition and outline.
import { describe, expect, test } from 'vitest';
import { definition } from '../../server/src/features/definition';
import { flatSymbols, symbols } from '../../server/src/features/symbols';
import { view } from '../support/view';

const parts = {
  'parts/norrvik/b7-forge.part.yaml':
    'kind: board\nmemory: { slots: [A1, A2] }\nslots:\n  M2_1: { kind: M.2 }\nports: { SATA_1: {} }\n',
};
const board = 'parts:\n  board: { use: norrvik/b7-forge }\n';

function target(marked: string): string | undefined {
  const { view: judged, position, text } = view(marked, parts);
  const found = definition(judged, position);
  if (!found) return undefined;
  const name = found.uri.replace('file:///ws/', '');
  const lines = (name in parts ? parts[name as keyof typeof parts] : text).split('\n');
  return `${name}:${lines[found.range.start.line]!.slice(found.range.start.character, found.range.end.character)}`;
}

describe('definition', () => {
  test('of a part is its file', () => {
    expect(target('parts:\n  board: { use: norr¦vik/b7-forge }\n')).toBe('parts/norrvik/b7-forge.part.yaml:');
  });

  test('of a slot, port or memory slot is the line of the board that names it', () => {
    expect(target(`${board}  drives: [{ slot: M2¦_1 }]\n`)).toBe('parts/norrvik/b7-forge.part.yaml:M2_1');
    expect(target(`${board}  drives: [{ port: SA¦TA_1 }]\n`)).toBe('parts/norrvik/b7-forge.part.yaml:SATA_1');
    expect(target(`${board}  memory: [{ slots: [A1, A¦2] }]\n`)).toBe('parts/norrvik/b7-forge.part.yaml:A2');
  });

  test('of a promised drive is the drive’s name', () => {
    expect(target('parts:\n  drives: [{ name: scratch }]\nexpect:\n  drives: { scr¦atch: { years: 5 } }\n')).toBe(
      'desk.pcbuild.yaml:scratch',
    );
  });

  test('of a drive of an array or of a test, of a step’s part and of an earlier step is where each stands', () => {
    const drives = 'parts:\n  drives: [{ name: scratch }]\n';
    for (const rest of [
      'expect:\n  arrays: { vault: { drives: [scr¦atch] } }\n',
      'acceptance:\n  drive-tests: [{ drive: scr¦atch }]\n',
      'steps:\n  - { do: fit drive, part: scr¦atch }\n',
    ])
      expect(target(drives + rest), rest).toBe('desk.pcbuild.yaml:scratch');
    expect(target('steps:\n  - fit board\n  - { do: fit cooler, after: [fit bo¦ard] }\n')).toBe(
      'desk.pcbuild.yaml:fit board',
    );
  });

  test('of a slot that the build spells out is in the build, of the others in the part file', () => {
    const spelled = 'parts:\n  board: { use: norrvik/b7-forge, slots: { M2_2: { kind: M.2 } } }\n';
    expect(target(`${spelled}  drives: [{ slot: M2¦_2 }]\n`)).toBe('desk.pcbuild.yaml:M2_2');
    expect(target(`${spelled}  drives: [{ slot: M2¦_1 }]\n`)).toBe('parts/norrvik/b7-forge.part.yaml:M2_1');
  });

  test('of the place of an accepted finding is what the finding underlines', () => {
    expect(target('accept:\n  - { finding: unknown-key, at: col¦our }\ncolour: grey\n')).toBe(
      'desk.pcbuild.yaml:colour',
    );
  });

  test('of anything else is nothing', () => {
    expect(target(`${board}  drives: [{ slot: M¦2_9 }]\n`)).toBeUndefined();
    expect(target('bui¦ld: Desk\n')).toBeUndefined();
    expect(target('parts:\n  board: { use: norr¦vik/none }\n')).toBeUndefined();
  });
});

describe('outline', () => {
  const { view: judged } = view(
    'build: Desk\nparts:\n  drives:\n    - { name: scratch, use: lumen/rapid-2t }\n    - { use: ' +
      'lumen/slow-8t }\n  board: { use: norrvik/b7-forge }\n',
    parts,
  );

  test('is the tree of keys, with the names of parts', () => {
    const [name, partsOf] = symbols(judged.doc);
    expect(name).toMatchObject({ name: 'build', detail: 'Desk' });
    expect(partsOf?.children?.map((child) => [child.name, child.detail])).toEqual([
      ['drives', undefined],
      ['board', 'norrvik/b7-forge'],
    ]);
    expect(partsOf?.children?.[0]?.children?.map((child) => child.name)).toEqual(['scratch', 'lumen/slow-8t']);
  });

  test('is a flat list for clients that know no tree', () => {
    const flat = flatSymbols(judged.doc, 'file:///ws/desk.pcbuild.yaml');
    expect(flat.find(({ name }) => name === 'scratch')).toMatchObject({
      containerName: 'drives',
      location: { uri: 'file:///ws/desk.pcbuild.yaml' },
    });
  });
});
