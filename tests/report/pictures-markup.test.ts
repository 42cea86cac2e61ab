// The pictures as markup: well-formed, plain text whatever a build says, nothing beyond the page, reachable by keyboard.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { Build } from '../../server/src/core/build/build';
import { checks } from '../../server/src/core/checks/all';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { Doc } from '../../server/src/core/parts/doc';
import { pageWidth } from '../../server/src/report/sheet/pictures/draw';
import { pictures } from '../../server/src/report/sheet/pictures/index';
import { widthOf } from '../../server/src/report/sheet/pictures/measure';
import type { Picture } from '../../server/src/report/sheet/pictures/picture';
import { pictureStyle } from '../../server/src/report/sheet/pictures/style';
import { bench } from '../support/bench';
import { findIn, readSamples } from '../support/samples';
import { elementsOf, ofClass, readXml, textOf, type Element } from '../support/xml';

const samples = readSamples();
const draw = (build: Build): readonly Picture[] => pictures(build, judgeBuild(build).findings);
const all = samples.builds.flatMap((build) =>
  draw(build).map((picture) => [`${picture.id} of ${build.doc.name}`, picture] as const),
);

const elements = new Set(['svg', 'title', 'desc', 'g', 'text', 'rect', 'line', 'path', 'circle']);
const attributes =
  /^(?:xmlns|class|data-[a-z]+|role|aria-label|viewBox|tabindex|x|y|x1|x2|y1|y2|cx|cy|r|d|width|height|text-anchor)$/;

/** What every picture keeps to, whatever it is drawn from. */
function expectSound({ svg, words }: Picture): Element {
  const root = readXml(svg);
  expect(svg).not.toMatch(/NaN|Infinity|undefined|\[object/);
  expect(words.join('\n')).not.toMatch(/NaN|undefined|\[object/);
  for (const one of elementsOf(root)) {
    expect(elements, one.name).toContain(one.name);
    for (const name of Object.keys(one.attributes)) expect(name).toMatch(attributes);
  }
  return root;
}

describe.each(all)('the picture of %s', (_, picture) => {
  const root = readXml(picture.svg);
  const things = ofClass(root, 'p-thing');

  it('is well-formed and brings nothing but shapes and text', () => {
    expectSound(picture);
    expect(root.attributes).toMatchObject({ 'data-picture': picture.id, role: 'group', 'aria-label': picture.title });
  });

  it('has its things on places of the build, named, none inside another', () => {
    expect(things.length).toBeGreaterThan(0);
    for (const one of things) {
      expect(one.attributes).toMatchObject({ role: 'link', tabindex: '0' });
      expect(one.attributes['data-place']).toMatch(/^(?:parts|place|expect)\b/);
      expect(elementsOf(one).filter(({ name }) => name === 'title')).toHaveLength(1);
      expect(ofClass(one, 'p-thing')).toHaveLength(1);
    }
  });

  it('keeps all text on the page', () => {
    const [, , width, height] = root.attributes.viewBox!.split(' ').map(Number);
    expect(width).toBe(pageWidth);
    for (const one of elementsOf(root).filter(({ name }) => name === 'text')) {
      const { x, y, class: look, 'text-anchor': anchor } = one.attributes;
      const size = look!.includes('p-small') ? 12.5 : 13.5;
      const wide = widthOf(textOf(one), size);
      const from = Number(x) - (anchor === 'end' ? wide : anchor === 'middle' ? wide / 2 : 0);
      expect(from, textOf(one)).toBeGreaterThan(-1);
      expect(from + wide, textOf(one)).toBeLessThan(pageWidth + 1);
      expect(Number(y)).toBeLessThanOrEqual(height!);
    }
  });

  it('says in words what it shows of findings', () => {
    const shown = textOf(root);
    for (const line of picture.words.filter((one) => /^\d+\. /.test(one))) {
      const [, number, grade] = /^(\d+)\. (\w+)/.exec(line)!;
      expect(shown).toContain(`${number} ${grade}`);
      expect(ofClass(root, `p-${grade}`).length, line).toBeGreaterThan(0);
    }
  });
});

it('is the same for the same build, read again', () => {
  for (const build of samples.builds) {
    const again = new Build(
      new Doc(build.doc.name, 'build', build.doc.text),
      findIn(samples.docs),
      samples.house,
      build.today,
    );
    expect(draw(again)).toEqual(draw(build));
  }
});

it('shows findings of checks that exist, each in one place at least', () => {
  const folder = join(__dirname, '../../server/src/report/sheet/pictures');
  const ids = readdirSync(folder).flatMap((file) =>
    [...readFileSync(join(folder, file), 'utf8').matchAll(/^ {2}'([a-z0-9.]+(?:-[a-z0-9.]+)+)'/gm)].map(
      ([, id]) => id!,
    ),
  );
  const known = new Set(checks.map(({ id }) => id));
  expect(ids.length).toBeGreaterThan(40);
  expect(ids.filter((id) => !known.has(id))).toEqual([]);
});

describe('a build that means harm', () => {
  const evil =
    '</title><script>alert(1)</script><img src=x onerror=alert(1)>&amp;"\'` ]]> \u202e\u0000\u0007\ud800 {{x}} ${x}';
  const name = JSON.stringify(evil);
  const { build } = bench([
    {
      name: 'evil.pcbuild.yaml',
      text: `format: 1
build: ${name}
parts:
  board: { model: ${name}, slots: { ${name}: { kind: M.2, carries: [PCIe 4 x4], from: chipset } }, chipset-link: PCIe 4 x4,
    display-outputs: { ${name}: { link: HDMI 2.0 } }, depth: 170 mm }
  processor: { model: ${name}, power: { sustained: 65 W }, lanes: 20, graphics: true }
  cooler: { model: ${name}, height: 170 mm }
  memory: [{ name: ${name}, height: 44 mm }]
  drives: [{ name: ${name}, bus: NVMe, slot: ${name}, link: PCIe 4 x4 }]
  graphics: [{ name: ${name}, length: 400 mm, connectors: { ${name}: 1 } }]
  supply: { model: ${name}, rating: 300 W }
  case: { model: ${name}, cooler-height: 160 mm, card-length: 300 mm, supply-depth: 200 mm }
  displays: [{ name: ${name}, port: ${name} }]
expect:
  displays: [{ mode: 3840x2160 @ 120 Hz, depth: 10 bit, port: ${name} }]
`,
    },
  ]);

  it('is plain text in every picture', () => {
    const pages = draw(build!);
    expect(pages.map(({ id }) => id)).toEqual(['power', 'lanes', 'clearance', 'heat', 'displays']);
    for (const page of pages) {
      const root = expectSound(page);
      expect(textOf(root)).toContain('<script>');
      expect(textOf(root)).toContain('\\u{202e}');
      expect(page.svg + page.words.join('')).not.toMatch(/[\u0000-\u001f\u202e]/);
    }
  });
});

describe('a build beyond all measure', () => {
  const many = (one: (i: number) => string): string =>
    Array.from({ length: 90 }, (_, i) => `    - ${one(i)}`).join('\n');
  const text = (watts: string, length: string, degrees: string): string => `format: 1
place: { ambient: ${degrees}, mains: { voltage: 230 V, circuit: 16 A } }
parts:
  board: { depth: ${length}, chipset-link: PCIe 4 x4 }
  processor: { power: { sustained: ${watts} }, die-to-lid: 0.2 K/W, hottest: ${degrees} }
  cooler: { height: ${length}, thermal-resistance: 0.2 K/W }
  drives:
${many((i) => `{ name: d${i % 80}, bus: SATA, shape: 3.5 in, draw: { running: ${watts} }, rise: 10 K, hottest: ${degrees} }`)}
  graphics:
${many(() => `{ length: ${length}, height: ${length}, link: PCIe 5 x16, power: { sustained: ${watts} }, connectors: { 16-pin: 1 } }`)}
  supply: { rating: ${watts}, depth: ${length} }
  case: { cooler-height: ${length}, card-length: ${length}, supply-depth: ${length}, board-depth: ${length} }
  displays:
${many(() => '{ port: DP_1 }')}
`;

  it.each([
    ['0 W', '0 mm', '0 °C'],
    ['1e-9 W', '0.001 mm', '-270 °C'],
    ['999999999 W', '999999999 mm', '9999999 °C'],
    ['-5 W', '-5 mm', '-5 °C'],
    ['10 to 4000 W', '10 to 900 mm', '10 to 90 °C'],
    ['at least 10 W', 'at most 300 mm', 'at least 20 °C'],
  ])('is drawn, and stays small: %s, %s, %s', (watts, length, degrees) => {
    const { build } = bench([{ name: 'huge.pcbuild.yaml', text: text(watts, length, degrees) }]);
    for (const page of draw(build!)) {
      expectSound(page);
      expect(page.svg.length, page.id).toBeLessThan(150_000);
    }
  });

  it('is drawn with nothing in it', () => {
    for (const nothing of [
      '',
      'format: 1\n',
      'parts:\n',
      'parts: { board: {} }\n',
      'parts: { drives: [{}], displays: [{}] }\n',
    ])
      for (const page of draw(bench([{ name: 'a.pcbuild.yaml', text: nothing }]).build!)) expectSound(page);
  });
});

it('is drawn whichever single line of a build or of its parts is missing', () => {
  const build = samples.builds.find(({ doc }) => doc.name.startsWith('flood-gauge'))!;
  const names = [build.doc.name, ...[...build.dependsOn].map((name) => `parts/${name}.part.yaml`)];
  let tried = 0;
  for (const name of names) {
    const from = samples.docs.get(name)!;
    const lines = from.text.split('\n').slice(0, 40);
    for (let i = 0; i < lines.length; i++) {
      const doc = new Doc(name, from.kind, lines.filter((_, at) => at !== i).join('\n'));
      const own = doc.kind === 'build' ? doc : build.doc;
      for (const page of pictures(new Build(own, findIn(samples.docs, doc), samples.house, build.today), [])) {
        readXml(page.svg);
        expect(page.svg).not.toMatch(/NaN|Infinity|undefined/);
      }
      tried++;
    }
  }
  expect(tried).toBeGreaterThan(200);
});

it('has a style that needs nothing from outside and names no element by id', () => {
  expect(pictureStyle).not.toMatch(/url\(|@import|#[a-z][\w-]*\s*\{|<|expression/i);
  for (const line of pictureStyle.split('}').filter((rule) => rule.includes('{') && !rule.includes('@media')))
    expect(line.trim()).toMatch(/^\.sheet-picture/);
});
