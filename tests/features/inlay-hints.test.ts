// Inlay hints: what they say of known, bounded and unknown figures, where they stand, and what their tooltips hold.
import { describe, expect, test } from 'vitest';
import { hintKinds, hintsIn, printed, tooltipOf, type HintKind } from '../../server/src/features/inlay-hints';
import { view } from '../support/view';

const parts = {
  'parts/norrvik/b7.part.yaml':
    'kind: board\nprocessors: [{ family: Calder C7, since: "1.20" }]\ndraw: { peak: 60 W }\n' +
    'slots:\n  M2_1: { kind: M.2, carries: [PCIe 4 x4], generation: 4, lanes: 4 }\n  M2_2: { kind: M.2 }\n',
  'parts/calder/c7.part.yaml': 'kind: processor\nfamily: Calder C7\nmodel: C7 840\npower: { sustained: 125 W }\n',
  'parts/boreas/tower.part.yaml': 'kind: cooler\nheight: 162 mm\ndraw: { peak: 4 W }\n',
  'parts/tarn/mid.part.yaml': 'kind: case\ncooler-height: 155 mm\nsupply-depth: 180 mm\n',
  'parts/holm/s750.part.yaml': 'kind: supply\ndepth: 160 mm\n',
  'parts/orrery/g.part.yaml': 'kind: graphics\n',
  'parts/lumen/rapid.part.yaml':
    'kind: drive\nbus: NVMe\nshape: M.2\nlink: PCIe 4 x4\nendurance: 600 TB\ndraw: { running: 8 W }\n',
};
const text = `parts:
  board: { use: norrvik/b7 }
  processor: { use: calder/c7 }
  cooler: { use: boreas/tower }
  drives:
    - { name: scratch, use: lumen/rapid, slot: M2_1 }
    - { name: other, use: lumen/rapid, slot: M2_2 }
  graphics: [{ use: orrery/g }]
  supply: { use: holm/s750 }
  case: { use: tarn/mid }
expect:
  drives: { scratch: { written-per-day: 400 GB } }
`;

/** The hints as a reader sees them: the end of what stands before each, and its words. */
function hints(of: string, shown: readonly HintKind[] = hintKinds, lines?: [number, number]): string[] {
  const { view: judged } = view(of, parts);
  const whole = judged.doc.lines.rangeOf({ start: 0, end: of.length });
  const range = lines ? { start: { line: lines[0], character: 0 }, end: { line: lines[1], character: 0 } } : whole;
  return hintsIn(judged, range, (kind) => shown.includes(kind)).map((told) => {
    const { position, label } = printed(judged, told);
    const before = of.split('\n')[position.line]!.slice(0, position.character);
    return `${before.split(' ').at(-1)} | ${label}`;
  });
}

describe('hints', () => {
  test('stand behind the value that they are about, and say what it comes to', () => {
    expect(hints(text)).toEqual([
      'norrvik/b7 | 60 W',
      'calder/c7 | 125 W · starts from 1.20',
      'boreas/tower | 4 W · 7 mm too much',
      'lumen/rapid | 8 W',
      'M2_1 | 0.5 to 7.88 GB/s',
      'lumen/rapid | 8 W',
      'M2_2 | at most 7.88 GB/s',
      'orrery/g | ? W',
      'holm/s750 | 20 mm to spare',
      'GB | 4.1 years',
    ]);
  });

  test('of each kind are left out where they are not wished', () => {
    for (const kind of hintKinds) expect(hints(text, [kind]).length, kind).toBeGreaterThan(0);
    const each = hintKinds.map((kind) => hints(text, [kind]).length);
    expect(each.reduce((a, b) => a + b)).toBe(hints(text).join(' · ').split(' · ').length);
    expect(hints(text, [])).toEqual([]);
  });

  test('are those of the lines that are looked at', () => {
    expect(hints(text, hintKinds, [2, 3])).toEqual(['calder/c7 | 125 W · starts from 1.20']);
  });

  test('say unknown where it is, and nothing of a part that is not there', () => {
    expect(
      hints('parts: { drives: [{ name: a, use: lumen/rapid }] }\nexpect: { drives: { a: { written-per-day: ~ } } }\n', [
        'endurance',
      ]),
    ).toEqual([]);
    const lacks = text.replace('endurance', 'x').replace('lumen/rapid,', 'orrery/g,');
    expect(hints(lacks, ['endurance'])).toEqual(['GB | ? years']);
    expect(hints('parts: { board: { use: norrvik/none } }\n')).toEqual([]);
    expect(hints('bui')).toEqual([]);
  });

  test('carry their working, down to the line of the file, and what is missing', () => {
    const { view: judged } = view(text, parts);
    const told = hintsIn(judged, judged.doc.lines.rangeOf({ start: 0, end: text.length }), () => true);
    const tip = (label: string): string =>
      tooltipOf(judged, told.find((one) => one.label === label)!, 'plaintext').value;
    expect(tip('4 W · 7 mm too much')).toContain(
      'height of boreas/tower: 162 mm (parts/boreas/tower.part.yaml, line 2)',
    );
    expect(tip('4.1 years')).toContain('endurance ÷ (a day × 365)');
    expect(tip('? W')).toContain('Not stated: ');
  });
});
