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

  test('of the place of a finding that is gone is what stands there', () => {
    const at = (path: string): string | undefined =>
      target(
        `parts:\n  supply: {}\n  drives: [{ name: a b }, { name: two.5, slot: M2_1 }]\naccept: [{ at: ¦${path} }]\n`,
      );
    expect(at('parts.supply')).toBe('desk.pcbuild.yaml:supply');
    expect(at('parts.drives.a b')).toBe('desk.pcbuild.yaml:a b');
    expect(at('parts.drives.two.5.slot')).toBe('desk.pcbuild.yaml:slot');
    expect(at('"parts.drives[1]"')).toBe('desk.pcbuild.yaml:{ name: two.5, slot: M2_1 }');
    expect(at('parts.none.slot')).toBeUndefined();
  });

  test('of a check is its page, for a client that opens such pages', () => {
    const { view: judged, position } = view('accept: [{ finding: cooler-t¦oo-tall, at: parts.cooler }]\n');
    expect(definition(judged, position, 'fettle-check')?.uri).toBe('fettle-check:/cooler-too-tall.md');
    expect(definition(judged, position)).toBeUndefined();
    const none = view('accept: [{ finding: no-s¦uch, at: parts.cooler }]\n');
    expect(definition(none.view, none.position, 'fettle-check')).toBeUndefined();
  });

  test('of a firmware version, a header, an output and a supply’s cables is the line that lists it', () => {
    const b7 =
      'kind: board\nfirmware: { versions: ["1.02", "1.20"] }\nheaders: { FAN_1: {} }\n' +
      'display-outputs: { HDMI_1: {} }\nprocessors: [{ since: "1.20" }]\n';
    const files = { 'parts/norrvik/b8.part.yaml': b7, 'parts/holm/s1.part.yaml': 'kind: supply\n' };
    const line = (marked: string, name?: string): string | undefined => {
      const { view: judged, position } = view(marked, files, name);
      const found = definition(judged, position);
      return found && `${found.uri.replace('file:///ws/', '')}:${found.range.start.line + 1}`;
    };
    const own = 'parts/norrvik/b8.part.yaml';
    const on = 'parts:\n  board: { use: norrvik/b8 }\n';
    expect(line('parts:\n  board: { use: norrvik/b8, firmware: "1.¦20" }\n')).toBe(`${own}:2`);
    expect(line(`${on}  fans: [{ header: FAN¦_1 }]\n`)).toBe(`${own}:3`);
    expect(line(`${on}  displays: [{ port: HD¦MI_1 }]\n`)).toBe(`${own}:4`);
    expect(line('parts:\n  supply: { cables: hol¦m/s1 }\n')).toBe('parts/holm/s1.part.yaml:1');
    expect(line(`${on}bench: { firmware-update: { to: "1¦.20" } }\n`)).toBe(`${own}:2`);
    expect(line(b7.replace('since: "1', 'since: "¦1'), 'parts/norrvik/b9.part.yaml')).toBe(
      'parts/norrvik/b9.part.yaml:2',
    );
  });

  test('of a name where it is given is that place', () => {
    expect(target('parts:\n  drives: [{ name: scr¦atch }]\n')).toBe('desk.pcbuild.yaml:scratch');
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
    const flat = flatSymbols(symbols(judged.doc), 'file:///ws/desk.pcbuild.yaml');
    expect(flat.find(({ name }) => name === 'scratch')).toMatchObject({
      containerName: 'drives',
      location: { uri: 'file:///ws/desk.pcbuild.yaml' },
    });
  });
});
