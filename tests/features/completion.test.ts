// Completion: keys of the place, values of the field, names that the board, the parts folder and the build give.
import { describe, expect, test } from 'vitest';
import { Build } from '../../server/src/core/build/build';
import { partNamed } from '../../server/src/core/build/named-things';
import { kindOfPart } from '../../server/src/core/build/placed';
import { judgeBuild } from '../../server/src/core/judge/judge';
import type { Candidate } from '../../server/src/core/judge/swaps';
import { handedOver } from '../../server/src/core/manifest/acceptance';
import { Doc } from '../../server/src/core/parts/doc';
import { STEP_KINDS } from '../../server/src/core/trade/steps';
import { english } from '../../server/src/core/words/languages';
import { completion } from '../../server/src/features/completion';
import type { CompletionItem } from '../../server/src/features/completion-item';
import { describePart } from '../../server/src/features/completion-resolve';
import { Fits } from '../../server/src/features/fit';
import { today } from '../support/bench';
import { completions } from '../support/completions';
import { findIn, readSamples } from '../support/samples';
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
  const { items } = completion(judged, position, {
    markup: 'plaintext',
    language: english(),
    snippets,
    parts: candidates,
    fits: new Fits(),
    trials: 400,
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

  test('of a part are found by what data sheets call them, from any word of that', () => {
    const { items, take } = offered('kind: fan\nGewi¦', 'parts/boreas/f92.part.yaml');
    expect(items.find(({ label }) => label === 'mass')).toMatchObject({ filterText: 'Gewicht' });
    expect(items.filter(({ filterText }) => filterText).map(({ label }) => label)).toEqual(['mass']);
    expect(take('mass')).toBe('kind: fan\nmass: ');
    const shown = offered('kind: cooler\npower¦', 'parts/boreas/low-1.part.yaml').items;
    expect(shown.every(({ filterText }) => filterText === undefined)).toBe(true);
  });

  test('that are named as is typed are found by that alone', () => {
    const typed = 'parts:\n  drives:\n    - name: scratch\n      sl¦';
    const { items, labels } = offered(typed);
    expect(labels).toContain('slot');
    expect(items.every(({ filterText }) => filterText === undefined)).toBe(true);
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

  test('a step’s words come before the keys of one that is written out', () => {
    const { items } = offered('steps:\n  - ¦\n');
    const labels = [...items]
      .sort((a, b) => ((a.sortText ?? '') < (b.sortText ?? '') ? -1 : 1))
      .map(({ label }) => label);
    expect(new Set(items.map(({ sortText }) => sortText)).size).toBe(items.length);
    expect(labels.indexOf('do')).toBeGreaterThan(labels.indexOf('fit board'));
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

describe('parts in the order of how well they would serve', () => {
  const files = {
    'parts/tarn/mid-3.part.yaml': 'kind: case\ncooler-height: 160 mm\n',
    'parts/boreas/a-high.part.yaml': 'kind: cooler\nheight: 322 mm\nprice: 20 EUR\n',
    'parts/boreas/b-dear.part.yaml': 'kind: cooler\nheight: 150 mm\nprice: 90 EUR\n',
    'parts/boreas/c-fair.part.yaml': 'kind: cooler\nheight: 152 mm\nprice: 40 EUR\n',
    'parts/boreas/d-bare.part.yaml': 'kind: cooler\nprice: 10 EUR\n',
  };
  const at = (marked: string, labelDetails = true): CompletionItem[] => {
    const { view: judged, position, candidates } = view(marked, files);
    return completions(judged, position, { parts: candidates, labelDetails });
  };
  const told = (marked: string): (string | undefined)[][] =>
    at(marked).map(({ label, labelDetails }) => [label, labelDetails?.description]);
  const open = (use: string): string => `parts:\n  cooler: { use: ${use} }\n  case: { use: tarn/mid-3 }\n`;

  test('what fits comes first, the cheaper before the dearer; what does not comes last with the reason', () => {
    expect(told(open('¦'))).toEqual([
      ['boreas/c-fair', '40 EUR, 8 mm to spare'],
      ['boreas/b-dear', '90 EUR, 10 mm to spare'],
      ['boreas/d-bare', '10 EUR, not decided: too tall'],
      ['boreas/a-high', '162 mm too tall'],
    ]);
  });

  test('beside a part that stands there already, by what each would change', () => {
    expect(told(open('boreas/b-dear¦')).slice(0, 2)).toEqual([
      ['boreas/c-fair', '−50 EUR, 8 mm to spare'],
      ['boreas/b-dear', '90 EUR, 10 mm to spare'],
    ]);
  });

  test('a client that shows no words beside an item has them as its detail', () => {
    const [first] = at(open('¦'), false);
    expect(first).toMatchObject({ label: 'boreas/c-fair', detail: '40 EUR, 8 mm to spare' });
    expect(first).not.toHaveProperty('labelDetails');
  });

  test('of many, those that match what is typed are tried first, and the list is told to be incomplete', () => {
    const many = Object.fromEntries(
      Array.from({ length: 450 }, (_, i) => [`parts/x/n${i}.part.yaml`, `kind: cooler\nheight: ${i} mm\n`]),
    );
    const { view: judged, position, candidates } = view(open('x/n449¦'), { ...files, ...many });
    const list = completion(judged, position, {
      markup: 'plaintext',
      language: english(),
      snippets: false,
      parts: candidates,
      fits: new Fits(),
      trials: 100,
    });
    expect(list.isIncomplete).toBe(true);
    expect(list.items.at(-1)!.label).not.toBe('x/n448');
    expect(list.items.find(({ label }) => label === 'x/n449')!.detail).toBe('289 mm too tall');
    expect(list.items.find(({ label }) => label === 'x/n448')!.detail).toBeUndefined();
  });

  test('what was tried is kept while a name is typed, and forgotten once anything else changes', () => {
    const fits = new Fits();
    const first = (marked: string, others: Readonly<Record<string, string>> = files): string | undefined => {
      const { view: judged, position, candidates } = view(marked, others);
      return completion(judged, position, {
        markup: 'plaintext',
        language: english(),
        snippets: false,
        parts: candidates,
        fits,
        trials: 400,
      }).items[0]?.detail;
    };
    expect(first(open('¦'))).toBe('40 EUR, 8 mm to spare');
    expect(first(open('bo¦'))).toBe('40 EUR, 8 mm to spare');
    const lower = { ...files, 'parts/tarn/mid-3.part.yaml': 'kind: case\ncooler-height: 155 mm\n' };
    expect(first(open('bo¦'), lower)).toBe('40 EUR, 3 mm to spare');
  });

  test('one that is looked at tells what the build would be with it', () => {
    const { view: judged } = view(open('boreas/b-dear'), files);
    const data = { uri: '', path: 'parts.cooler', part: 'boreas/a-high' };
    const said = describePart({ ...judged, build: judged.build! }, data, 'plaintext')!.value;
    expect(said).toMatch(/^It would bring:\n\n- stop .*322 mm/);
    expect(said).toContain('height: 322 mm');
    expect(
      describePart({ ...judged, build: judged.build! }, { ...data, part: 'no/such' }, 'plaintext'),
    ).toBeUndefined();
    expect(
      describePart({ ...judged, build: judged.build! }, { ...data, path: 'parts.x' }, 'plaintext'),
    ).toBeUndefined();
  });
});

describe('places in the order of use', () => {
  const forge = `parts:
  board:
    memory: { slots: [A1, A2, B1, B2], fill-first: [A2, B2] }
    firmware: { versions: ["1.02", "1.08", "1.20"] }
    processors: [{ family: Calder C7, since: "1.08" }]
    slots:
      PCIE_1: { kind: PCIe, length: x16 }
      M2_1: { kind: M.2, carries: [PCIe 4 x4] }
      M2_2: { kind: M.2, carries: [PCIe 4 x4] }
    ports: { SATA_1: {}, SATA_2: {} }
    headers: { PUMP: { kind: pump }, FAN_1: { kind: fan }, FAN_2: { kind: fan }, RGB_1: { kind: RGB } }
  processor: { family: Calder C7, model: C7 840 }
`;
  const told = (more: string): (string | undefined)[][] => {
    const { view: judged, position } = view(forge + more, {});
    return completions(judged, position, { labelDetails: true }).map(({ label, labelDetails }) => [
      label,
      labelDetails?.description,
    ]);
  };

  test('a slot lists only those that the drive goes into, free ones first, then those taken, and by what', () => {
    expect(
      told('  drives:\n    - { name: system, shape: M.2, slot: M2_1 }\n    - { name: scratch, shape: M.2, slot: ¦ }\n'),
    ).toEqual([
      ['M2_2', 'M.2, [PCIe 4 x4]'],
      ['M2_1', 'taken by system'],
    ]);
  });

  test('a slot in which a drive falls short for certain comes behind one that may do', () => {
    const slow = forge.replace(
      'M2_1: { kind: M.2, carries: [PCIe 4 x4] }',
      'M2_1: { kind: M.2, carries: [PCIe 3 x2] }',
    );
    const drive = '  drives: [{ name: film, bus: NVMe, shape: M.2 2280, link: PCIe 4 x4, read: 5 GB/s, slot: ¦ }]\n';
    const { view: judged, position } = view(`${slow}${drive}expect: { drives: { film: { read: 4 GB/s } } }\n`, {});
    expect(
      completions(judged, position, { labelDetails: true }).map(({ label, labelDetails }) => [
        label,
        labelDetails?.description,
      ]),
    ).toEqual([
      ['M2_2', 'M.2, [PCIe 4 x4]'],
      ['M2_1', expect.stringMatching(/^slower than promised by 2\.0\d GB\/s$/)],
    ]);
  });

  test('a port and a header too; each kind of header where it belongs', () => {
    expect(told('  drives:\n    - { name: a, port: SATA_1 }\n    - { name: b, port: ¦ }\n')).toEqual([
      ['SATA_2', undefined],
      ['SATA_1', 'taken by a'],
    ]);
    const fans = (key: string): (string | undefined)[] =>
      told(`  fans:\n    - { name: rear, header: FAN_1 }\n    - { ${key}: ¦ }\n`).map(([label]) => label);
    expect(fans('header')).toEqual(['FAN_2', 'PUMP', 'FAN_1']);
    expect(fans('light-header')).toEqual(['RGB_1']);
  });

  test('memory slots as the board is filled', () => {
    expect(told('  memory:\n    - { name: pair, slots: [A2, ¦] }\n')).toEqual([
      ['B2', undefined],
      ['A1', undefined],
      ['B1', undefined],
      ['A2', 'taken by pair'],
    ]);
  });

  test('firmware versions that start the processor before those that do not', () => {
    expect(told('bench: { firmware-update: { to: ¦ } }\n')).toEqual([
      ['1.20', expect.stringMatching(/^starts /)],
      ['1.08', expect.stringMatching(/^starts /)],
      ['1.02', expect.stringMatching(/^does not start /)],
    ]);
  });
});

describe('as someone writes', () => {
  test('keys of a part begin with its part file and its place', () => {
    expect(offered('parts:\n  board: { ¦ }\n').labels.slice(0, 2)).toEqual(['use', 'firmware']);
    expect(offered('¦').labels.slice(0, 5)).toEqual(['format', 'build', 'purpose', 'place', 'parts']);
  });

  test('what is written on behind a blank is still the same value', () => {
    const climate = (value: string) => offered(`place:\n  ambient: ${value}\n`, undefined, true);
    for (const value of ['26 ¦', '26 °¦', '26 °C¦']) {
      expect(climate(value).labels).toContain('26 °C');
      expect(climate(value).take('26 °C')).toBe('place:\n  ambient: 26 °C\n');
    }
    expect(
      offered('parts:\n  fans:\n    - { mount: front ¦ }\n').items.map(({ textEdit }) => textEdit.range.start),
    ).toEqual(offered('parts:\n  fans:\n    - { mount: front¦ }\n').items.map(({ textEdit }) => textEdit.range.start));
    const steps = offered('steps:\n  - fit M.2 ¦\n');
    expect(steps.take('fit M.2 drive')).toBe('steps:\n  - fit M.2 drive\n');
  });

  test('beside a value that is whole stands no other', () => {
    expect(offered('place:\n  ambient: ¦ 26 °C\n', undefined, true).labels).toEqual([]);
    expect(offered('parts:\n  board: { use: norrvik/b7-forge, firmware: "1.08" ¦ }\n').labels).toEqual([]);
  });

  test('a number is offered with its unit; an empty value has the unit with room for the number', () => {
    expect(offered('parts:\n  cooler: { height: 158¦ }\n').take('158 mm')).toBe(
      'parts:\n  cooler: { height: 158 mm }\n',
    );
    const [unit] = offered('parts:\n  cooler:\n    height:¦\n', undefined, true).items;
    expect(unit).toMatchObject({ label: 'mm', insertTextFormat: 2, textEdit: { newText: ' ${1} mm' } });
    expect(offered('parts:\n  cooler:\n    height: ¦\n').labels).toEqual([]);
  });

  test('a key whose values are listed asks for them once it is taken over, where the client can', () => {
    const { view: judged, position } = view('bench:\n  ¦\n');
    const items = completions(judged, position, { again: 'own.suggest' });
    expect(items.find(({ label }) => label === 'surface')!.command?.command).toBe('own.suggest');
    expect(completions(judged, position).every(({ command }) => command === undefined)).toBe(true);
  });
});

describe('every value of the samples that is one of several', () => {
  const { docs, house, builds } = readSamples();
  const all = [...docs.values()].filter(({ kind }) => kind === 'part');
  const candidates = (kind: string): readonly Candidate[] =>
    all
      .filter((doc) => kindOfPart(doc) === kind)
      .map((doc) => ({ name: doc.name.replace(/^parts\/|\.part\.yaml$/g, ''), doc }));

  test.each(builds.map(({ doc }) => [doc.name, doc] as const))('is in the list after its colon: %s', (name, doc) => {
    const erasable = [
      ...doc.text.matchAll(/(?<=[ {](?:use|slot|port|header|mount|surface|flow|floor|cables): )[^,}\n#]+/g),
    ];
    expect(erasable.length).toBeGreaterThan(8);
    for (const { 0: written, index } of erasable) {
      // A drive that no such slot takes: what is written there is a fault of the sample.
      if (written === 'WIFI') continue;
      const text = doc.text.slice(0, index) + doc.text.slice(index + written.length);
      const own = new Doc(name, 'build', text);
      const build = new Build(own, findIn(docs), house, today);
      const judged = { doc: own, build, judgement: judgeBuild(build), uriOf: () => '', versionOf: () => null };
      const items = completions(judged, own.lines.positionAt(index), { parts: candidates });
      const line = text.slice(text.lastIndexOf('\n', index) + 1, index);
      expect(
        items.map(({ label }) => label),
        line,
      ).toContain(written.trim());
    }
  });
});

describe('words with several spellings', () => {
  const found = (marked: string, label: string): string | undefined =>
    offered(marked, 'parts/a/b.part.yaml').items.find((item) => item.label === label)?.filterText;

  test('are found by the one that is typed, and written as the word itself', () => {
    expect(found('kind: supply\nbadge: 80 plus g¦\n', 'gold')).toBe('80 PLUS gold');
    expect(offered('kind: supply\nmodular: semi¦\n', 'parts/a/b.part.yaml').take('partly')).toContain(
      'modular: partly\n',
    );
    expect(found('kind: supply\nmodular: ¦\n', 'fully')).toMatch(/^fully .*full modular/);
  });

  test('are offered as names of a map that knows them', () => {
    const keys = offered('kind: supply\nconnectors:\n  ¦\n', 'parts/a/b.part.yaml');
    expect(keys.labels).toEqual(expect.arrayContaining(['24-pin', 'EPS 8-pin', 'SATA power']));
    expect(found('kind: supply\nconnectors:\n  12V-2x¦\n', '16-pin')).toBe('12V-2x6');
  });
});

test('what is indented with tabs is offered what fits, in the same places', () => {
  const tabbed = `${board.replace(/^ +/gm, '\t')}\tdrives:\n\t\t- { name: film, port: ¦ }\n`;
  const { labels, take } = offered(tabbed);
  expect(labels).toEqual(['SATA_1', 'SATA_2']);
  expect(take('SATA_2')).toBe(tabbed.replace('¦', 'SATA_2'));
  expect(offered('parts:\n\tboard: { use: norrvik/b7-forge }\n\t¦').labels).toContain('cooler');
});

test('in a comment nothing is offered', () => {
  expect(offered('build: Desk # ¦\n').items).toEqual([]);
});
