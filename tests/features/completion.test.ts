// Completion: keys of the place, values of the field, names that the board, the parts folder and the build give.
import { describe, expect, test } from 'vitest';
import { partNamed } from '../../server/src/core/build/named-things';
import { handedOver } from '../../server/src/core/manifest/acceptance';
import { STEP_KINDS } from '../../server/src/core/trade/steps';
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

function offered(
  marked: string,
  name?: string,
  snippets = false,
): { items: CompletionItem[]; labels: string[]; take: (label: string) => string } {
  const { view: judged, position, text, candidates } = view(marked, parts, name);
  const items = completion(judged, position, {
    markup: 'plaintext',
    snippets,
    parts: (kind) => candidates(kind).map((one) => one.name),
  });
  return {
    items,
    labels: items.map(({ label }) => label),
    take: (label) => edited(text, [items.find((item) => item.label === label)!.textEdit]),
  };
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
    expect(offered('parts:\n  cooler: { hei¦: 158 mm }\n').take('height')).toBe(
      'parts:\n  cooler: { height: 158 mm }\n',
    );
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
    const height = (snippets: boolean) =>
      offered(marked, 'parts/a/b.part.yaml', snippets).items.find(({ label }) => label === 'height')!;
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
    expect(offered('kind: board\nfirmware:\n  update-without-processor: ¦\n', 'parts/a/b.part.yaml').labels).toEqual([
      'true',
      'false',
    ]);
  });

  test('of a part reference are the parts of that kind', () => {
    expect(offered('parts:\n  cooler: { use: ¦ }\n').labels).toEqual(['boreas/tower-155', 'boreas/low-90']);
    expect(offered('parts:\n  cooler: { use: boreas/t¦ }\n').take('boreas/tower-155')).toBe(
      'parts:\n  cooler: { use: boreas/tower-155 }\n',
    );
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
    expect(offered('parts:\n  drives:\n    - name: "yes"\nexpect:\n  drives:\n    ¦\n').take('yes')).toContain(
      '"yes": ',
    );
  });
});

describe('the order of work and what follows it', () => {
  const work =
    'parts:\n  board: { use: norrvik/b7-forge }\n  drives:\n    - { name: scratch, slot: M2_1 }\n    - { ' +
    'use: a/b, slot: M2_2 }\n    - { use: a/b, slot: M2_3 }\n';

  test('a step is a text of the list, in a block or in brackets, begun or not', () => {
    for (const steps of [
      'steps:\n  - ¦\n',
      'steps:\n  - fit board\n  - ¦\n',
      'steps: [¦]\n',
      'steps: [fit board, ¦]\n',
      'steps:\n  - fit pro¦\n',
      'steps:\n  - do: ¦\n',
      'steps: [{ do: ¦ }]\n',
    ]) {
      expect(offered(steps).labels, steps).toEqual(expect.arrayContaining([...STEP_KINDS]));
    }
    expect(offered('steps:\n  - ¦\n').take('fit processor')).toBe('steps:\n  - fit processor\n');
    expect(offered('steps:\n  - fit pro¦\n').take('fit processor')).toBe('steps:\n  - fit processor\n');
    expect(offered('steps:\n  -¦\n').take('fit processor')).toBe('steps:\n  - fit processor\n');
  });

  test('a step may be written out instead', () => {
    expect(offered('steps:\n  - ¦\n').labels).toEqual(
      expect.arrayContaining(['do', 'part', 'note', 'after', 'caution']),
    );
    expect(offered('steps:\n  - do: fit board\n    after: [¦]\n').labels).toEqual([
      'fit board',
      ...STEP_KINDS.filter((kind) => kind !== 'fit board'),
    ]);
    expect(offered('steps:\n  - caution: { word: ¦ }\n').labels).toEqual(['DANGER', 'WARNING', 'CAUTION', 'NOTICE']);
  });

  test('a group without a text of its own is offered no texts', () => {
    expect(offered('accept:\n  - ¦\n').items.every(({ kind }) => kind === 10)).toBe(true);
  });

  test('a step’s part goes by its name, its part file or its slot, and means that part', () => {
    const { labels, take } = offered(`${work}steps:\n  - { do: fit M.2 drive, part: ¦ }\n`);
    expect(labels).toEqual(['norrvik/b7-forge', 'scratch', 'M2_2', 'M2_3']);
    const { view: judged } = view(take('M2_3'), parts);
    expect(partNamed(judged.build!, 'M2_3')?.path).toBe('parts.drives[2]');
  });

  test('acceptance and hand-over know their keys, choices and the drives’ names', () => {
    expect(offered('acceptance:\n  ¦\n').labels).toEqual(
      expect.arrayContaining(['memory-test', 'drive-tests', 'wall-power']),
    );
    expect(offered(`${work}acceptance:\n  drive-tests:\n    - drive: ¦\n`).labels).toEqual(['scratch']);
    expect(offered('acceptance:\n  drive-tests:\n    - { test: ¦ }\n').labels).toContain('long self-test');
    expect(offered('hand-over:\n  includes: [serials, ¦]\n').labels).toEqual(expect.arrayContaining([...handedOver]));
    expect(offered('hand-over:\n  includes:\n    - ¦\n').take('firmware')).toBe(
      'hand-over:\n  includes:\n    - firmware\n',
    );
    expect(offered('hand-over: { cards: ¦ }\n').labels).toEqual(['fitted', 'taken out']);
  });

  test('a promised display goes to an output that is there, an update to a version of the board’s list', () => {
    expect(offered(`${board}expect:\n  displays:\n    - { port: ¦ }\n`).labels).toEqual(['HDMI']);
    const listed =
      'parts:\n  board: { firmware: { versions: ["1.08", "1.20"] } }\nbench: { firmware-update: { to: ¦ } }\n';
    expect(offered(listed).labels).toEqual(['1.20', '1.08']);
    expect(offered(listed).take('1.20')).toBe(listed.replace('¦', '"1.20"'));
  });
});

test('in a comment nothing is offered', () => {
  expect(offered('build: Desk # ¦\n').items).toEqual([]);
});
