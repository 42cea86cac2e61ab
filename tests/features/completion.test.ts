// Completion: keys of the place, values of the field, names that the board, the parts folder and the build give.
import { describe, expect, test } from 'vitest';
import { completion, type CompletionItem } from '../../server/src/features/completion';
import { edited, view } from '../support/view';

const parts = {
  'parts/norrvik/b7-forge.part.yaml': `kind: board
memory: { slots: [A1, A2] }
slots:
  PCIE_1: { kind: PCIe, length: x16 }
  M2_1: { kind: M.2, carries: [PCIe 4 x4] }
ports: { SATA_1: {}, SATA_2: {} }
headers: { CPU_FAN: { kind: fan }, F_AUDIO: { kind: front audio } }
display-outputs: { HDMI: { link: HDMI 2.0 } }
`,
  'parts/boreas/tower-155.part.yaml': 'kind: cooler\n',
  'parts/boreas/low-90.part.yaml': 'kind: cooler\n',
  'parts/tarn/mid-3.part.yaml': 'kind: case\n',
};
const board = 'parts:\n  board: { use: norrvik/b7-forge }\n';

function offered(marked: string, name?: string, snippets = false): { items: CompletionItem[]; labels: string[]; take: (label: string) => string } {
  const { view: judged, position, text, candidates } = view(marked, parts, name);
  const items = completion(judged, position, { markup: 'plaintext', snippets, parts: (kind) => candidates(kind).map((one) => one.name) });
  return { items, labels: items.map(({ label }) => label), take: (label) => edited(text, [items.find((item) => item.label === label)!.textEdit]) };
}

describe('keys', () => {
  test('of an empty file are those of its kind', () => {
    expect(offered('¦').labels).toEqual(expect.arrayContaining(['format', 'build', 'parts', 'expect']));
    expect(offered('¦', 'fettle.yaml').labels).toEqual(expect.arrayContaining(['margins', 'grades']));
  });

  test('that stand there already are left out, the one at the cursor is not', () => {
    const { labels } = offered('build: Desk\n¦\nformat: 1\n');
    expect(labels).not.toContain('build');
    expect(labels).toContain('place');
    expect(offered('bui¦ld: Desk\n').labels).toContain('build');
  });

  test('of a part are its place’s and its kind’s, with meaning, unit and example', () => {
    const { items, labels } = offered('parts:\n  cooler:\n    use: boreas/tower-155\n    ¦\n');
    expect(labels).toEqual(expect.arrayContaining(['height', 'header']));
    expect(labels).not.toContain('use');
    const height = items.find(({ label }) => label === 'height')!;
    expect(height.documentation?.value).toMatch(/for example/);
    expect(height.detail).toBe('mm');
  });

  test('replace the key at the cursor and keep its colon', () => {
    expect(offered('parts:\n  cooler: { hei¦: 158 mm }\n').take('height')).toBe('parts:\n  cooler: { height: 158 mm }\n');
  });

  test('are offered on the line below a key, and in flow', () => {
    expect(offered('parts:\n  cooler:\n    ¦\n').labels).toContain('height');
    expect(offered('parts:\n  drives:\n    - ¦\n').labels).toContain('bus');
    expect(offered('place: { ¦ }\n').labels).toContain('ambient');
    expect(offered('parts:\n  ¦\n').labels).toContain('processor');
    expect(offered('parts:\n  co¦\n').labels).toContain('cooler');
  });

  test('bring a place for the number before its unit only to clients that know snippets', () => {
    const marked = 'kind: cooler\n¦\n';
    const height = (snippets: boolean) => offered(marked, 'parts/a/b.part.yaml', snippets).items.find(({ label }) => label === 'height')!;
    expect(height(false)).toMatchObject({ textEdit: { newText: 'height: ' } });
    expect(height(true)).toMatchObject({ insertTextFormat: 2, textEdit: { newText: 'height: ${1} mm' } });
  });

  test('of promises are the drives’ own names, and of grades the checks’', () => {
    expect(offered('parts:\n  drives:\n    - name: scratch\nexpect:\n  drives:\n    ¦\n').labels).toEqual(['scratch']);
    expect(offered('grades:\n  ¦\n', 'fettle.yaml').labels).toContain('cooler-too-tall');
  });
});

describe('values', () => {
  test('of a field with choices', () => {
    expect(offered('bench: { surface: ¦ }\n').labels).toContain('wood');
    expect(offered('bench:\n  surface:¦\n').take('wood')).toBe('bench:\n  surface: wood\n');
    expect(offered('bench:\n  surface: wo¦\n').take('wood')).toBe('bench:\n  surface: wood\n');
    expect(offered('kind: board\nfirmware:\n  update-without-processor: ¦\n', 'parts/a/b.part.yaml').labels).toEqual(['true', 'false']);
  });

  test('of a part reference are the parts of that kind', () => {
    expect(offered('parts:\n  cooler: { use: ¦ }\n').labels).toEqual(['boreas/tower-155', 'boreas/low-90']);
    expect(offered('parts:\n  cooler: { use: boreas/t¦ }\n').take('boreas/tower-155')).toBe('parts:\n  cooler: { use: boreas/tower-155 }\n');
  });

  test('are the names printed on the board', () => {
    expect(offered(`${board}  drives:\n    - slot: ¦\n`).labels).toEqual(['PCIE_1', 'M2_1']);
    expect(offered(`${board}  graphics:\n    - slot: ¦\n`).labels).toEqual(['PCIE_1']);
    expect(offered(`${board}  drives:\n    - port: ¦\n`).labels).toEqual(['SATA_1', 'SATA_2']);
    expect(offered(`${board}  fans:\n    - header: ¦\n`).labels).toEqual(['CPU_FAN']);
    expect(offered(`${board}  displays:\n    - port: ¦\n`).labels).toEqual(['HDMI']);
    expect(offered(`${board}  memory:\n    - slots: [¦]\n`).labels).toEqual(['A1', 'A2']);
    expect(offered(`${board}  memory:\n    - slots: [A1, ¦]\n`).labels).toContain('A2');
  });

  test('of an accepted finding are what was found first, and its places', () => {
    const marked = 'parts:\n  cooler: { hieght: 1 mm }\naccept:\n  - finding: ¦\n    at: x\n';
    expect(offered(marked).labels.slice(0, 3)).toContain('unknown-key');
    expect(offered(marked.replace('¦', 'y').replace('at: x', 'at: ¦')).labels).toContain('parts.cooler.hieght');
  });

  test('that YAML would read as something else are quoted', () => {
    expect(offered('parts:\n  drives:\n    - name: "yes"\nexpect:\n  drives:\n    ¦\n').take('yes')).toContain('"yes": ');
  });
});

test('in a comment nothing is offered', () => {
  expect(offered('build: Desk # ¦\n').items).toEqual([]);
});
