// Hover: meaning of keys, values and where they come from, parts, findings with reason and working.
import { english } from '../../server/src/core/words/languages';
import { describe, expect, test } from 'vitest';
import { relatedTo } from '../../server/src/core/judge/finding';
import { workingOf, type Step } from '../../server/src/core/judge/working-steps';
import { dataOfFindings } from '../../server/src/features/diagnostic-data';
import { diagnosticOf } from '../../server/src/features/diagnostics';
import { hover } from '../../server/src/features/hover';
import { wholeWorking } from '../../server/src/features/hover-working';
import { view } from '../support/view';

const parts = {
  'parts/boreas/tower-155.part.yaml':
    'kind: cooler\nmaker: Boreas\nmodel: Tower 155\nsource: { title: Boreas data sheet, revision: 2, read: ' +
    '2026-10-03 }\nheight: 155 mm\n',
  'parts/tarn/mid-3.part.yaml': 'kind: case\nmaker: Tarn\nmodel: Mid 3\ncooler-height: 150 mm\n',
};

function words(marked: string, kind: 'markdown' | 'plaintext' = 'plaintext', name?: string): string | undefined {
  const { view: judged, position } = view(marked, parts, name);
  return hover(judged, position, { kind })?.contents.value;
}

describe('on a key', () => {
  test('its meaning, unit and example', () => {
    const said = words('kind: board\nwi¦dth: 244 mm\n', 'plaintext', 'parts/a/b.part.yaml');
    expect(said).toContain('width: Edge along the ');
    expect(said).toMatch(/length with its unit, usually mm; for example \d+ mm/);
  });

  test('the values it may have', () => {
    expect(words('bench:\n  sur¦face: wood\n')).toContain('One of wood, cardboard');
  });

  test('the spellings that are read as them, and as which a value is', () => {
    const said = words('kind: supply\nmodular: semi-mod¦ular\n', 'plaintext', 'parts/a/b.part.yaml');
    expect(said).toContain('partly (teilmodular, semi-modular)');
    expect(said).toContain('semi-modular is read as partly.');
    expect(words('kind: supply\nra¦ils: {}\n', 'plaintext', 'parts/a/b.part.yaml')).toContain('known are +12V (12V, ');
  });

  test('of a role, what it holds', () => {
    expect(words('parts:\n  coo¦ler: {}\n')).toContain('The processor cooler.');
  });

  test('that is unknown, nothing of its meaning', () => {
    expect(words('parts:\n  cooler: { zzzzzzzzz¦z: 1 }\n')).not.toContain('for example');
  });

  test('where a figure comes from that it enters, with the working', () => {
    const said = words('parts:\n  cooler: { use: boreas/tower-155, height: 1¦60 mm }\n  case: { use: tarn/mid-3 }\n');
    expect(said).toContain('Spelled out here; it replaces 155 mm of parts/boreas/tower-155.part.yaml');
    expect(said).toContain('- cooler-too-tall is broken');
    expect(said).toMatch(/160 mm \(line 2\)/);
    expect(said).toMatch(/150 mm \(parts\/tarn\/mid-3\.part\.yaml, line 4\)/);
  });
});

describe('on the slot of a drive', () => {
  const build = (slot: string): string => `parts:
  board:
    slots:
      M2_2: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 4 x2, SATA], from: chipset }
  drives:
    - { name: scratch, shape: M.2, bus: NVMe, key: M, size: 2280, link: PCIe 4 x4, read: 7 GB/s, slot: ${slot} }
expect: { drives: { scratch: { read: 5 GB/s } } }
`;

  test('the rate that it decides', () => {
    const said = words(build('M2_¦2'));
    expect(said).toContain('- drive-slower-than-promised is broken');
    expect(said).toContain('parts.drives.scratch.slot: M2_2 (line 6)');
  });

  test('is in the working and among the related lines of the finding that hangs on it', () => {
    const { judgement } = view(build('M2_2¦')).view;
    const slow = judgement.findings.find(({ id }) => id === 'drive-slower-than-promised')!;
    expect(relatedTo(slow).map(({ what }) => what)).toContain('parts.drives.scratch.slot: M2_2');
    const steps = (all: readonly Step[]): Step[] => all.flatMap((step) => [step, ...steps(step.inputs)]);
    expect(steps(workingOf(slow)).find(({ label }) => label === 'parts.drives.scratch.slot')?.value).toBe('M2_2');
  });
});

describe('on a part reference', () => {
  test('maker, model, key facts, file and source', () => {
    const said = words('parts:\n  cooler: { use: boreas/to¦wer-155 }\n');
    expect(said).toContain('Boreas Tower 155 (cooler)');
    expect(said).toContain('- height: 155 mm');
    expect(said).toContain(
      'From parts/boreas/tower-155.part.yaml; read in Boreas data sheet, revision 2, on 2026-10-03.',
    );
  });

  test('that leads to no file, so much', () => {
    expect(words('parts:\n  cooler: { use: boreas/to¦wer-1 }\n')).toContain('No part file of the name boreas/tower-1');
  });
});

test('on a finding: grade, sentence, reason, check and source', () => {
  const said = words('parts:\n  cooler: { use: boreas/tow¦er-155 }\n  case: { use: tarn/mid-3 }\n');
  expect(said).toMatch(/^stop .*155 mm/m);
  expect(said).toContain('keeps the case from closing');
  expect(said).toMatch(/^cooler-too-tall; source: /m);
});

describe('in its order', () => {
  const marked = 'parts:\n  cooler: { use: boreas/tow¦er-155 }\n  case: { use: tarn/mid-3 }\n';

  test('the finding comes first, then the meaning, then the working', () => {
    const said = words(marked)!;
    const at = ['stop ', 'Boreas Tower 155 (cooler)', 'mid-3.part.yaml, line 4'].map((text) => said.indexOf(text));
    expect(said.startsWith('stop ')).toBe(true);
    expect([...at].sort((a, b) => a - b)).toEqual(at);
    expect(at).not.toContain(-1);
  });

  test('the working links each line to its file, and only where links are followed', () => {
    expect(words(marked, 'markdown')).toContain(
      '[parts/tarn/mid-3\\.part\\.yaml, line 4](file:///ws/parts/tarn/mid-3.part.yaml#L4)',
    );
    expect(words(marked)).toContain('(parts/tarn/mid-3.part.yaml, line 4)');
  });
});

describe('a long working', () => {
  const drives = Array.from(
    { length: 30 },
    (_, i) => `    - { name: d${i}, draw: { peak: ${i + 10} W, running: ${i + 5} W } }\n`,
  );
  const marked = `parts:\n  processor: { power: 65 W }\n  sup¦ply: { rating: 100 W }\n  drives:\n${drives.join('')}`;
  const { view: judged, position } = view(marked);
  const lines = (said: string): number => said.split('\n').filter((line) => /^ *- /.test(line)).length;
  const said = (kind: 'markdown' | 'plaintext', workings?: string): string =>
    hover(judged, position, { kind, ...(workings ? { workings } : {}) })!.contents.value;

  test('rests on as many lines as are asked for, those that decide first', () => {
    const [finding] = judged.judgement.findings;
    const all = relatedTo(finding!);
    expect(all.length).toBeGreaterThan(30);
    for (const most of [0, 1, 2, 5, 30]) expect(relatedTo(finding!, most)).toEqual(all.slice(0, most));
  });

  test('ends after twelve lines, and says how many are left and where they are', () => {
    expect(said('plaintext')).toMatch(/^harm /);
    expect(said('plaintext')).toContain('- rating of supply: 100 W (line 3)');
    expect(lines(said('plaintext'))).toBe(12);
    expect(said('plaintext')).toMatch(/\d+ lines more: fettle check --working shows the whole working\./);
    expect(said('markdown')).toContain('`fettle check --working` shows the whole working');
  });

  test('leads to a page with all of it, where the client shows such pages', () => {
    expect(said('markdown', 'Show It')).toContain('lines more: `Show It` shows the whole working.');
    const found = judged.judgement.findings.find(({ id }) => id === 'supply-overloaded')!;
    const asked = dataOfFindings(judged.judgement.findings).get(found)!;
    const page = wholeWorking(judged, asked)!;
    expect(lines(page)).toBeGreaterThan(30);
    expect(page).toContain('d29');
    expect(wholeWorking(judged, { ...asked, subject: 'parts.none' })).toBeUndefined();
  });

  test('a finding shows five related lines at most, those that decide first', () => {
    const found = judged.judgement.findings.find(({ id }) => id === 'supply-overloaded')!;
    const { relatedInformation: related } = diagnosticOf(judged, found, { related: true, language: english() });
    expect(related).toHaveLength(5);
    expect(
      related!
        .slice(0, 3)
        .map(({ message }) => message)
        .join('\n'),
    ).toMatch(/d29/);
  });
});

test('in a comment, in a gap and past the end, nothing', () => {
  expect(words('build: Desk # com¦ment\n')).toBeUndefined();
  expect(words('build: Desk\n\n¦\n')).toBeUndefined();
});

test('text from a file is no Markdown', () => {
  const said = words('parts:\n  cooler: { use: "boreas/[a](command:x)<b>¦" }\n', 'markdown');
  expect(said).toContain('`boreas/[a](command:x)<b>`');
});
