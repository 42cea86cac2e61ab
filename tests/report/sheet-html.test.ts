// The bench sheet as HTML, read by a parser of browsers: what it may hold, and that every text of a file stays text.
import { createHash } from 'node:crypto';
import { parse, type DefaultTreeAdapterTypes } from 'parse5';
import { describe, expect, it } from 'vitest';
import { sheetBlocks, sheetPage } from '../../server/src/report/sheet/html';
import { papers } from '../../server/src/report/sheet/style';
import { visible } from '../../server/src/core/text';
import { oneLine } from '../../server/src/report/sheet/model';
import { readSamples } from '../support/samples';
import { hostile, hostileSheet, sheetFor } from '../support/sheets';

type Element = DefaultTreeAdapterTypes.Element;
type Node = DefaultTreeAdapterTypes.ChildNode;

const { builds } = readSamples();
const page = (html: string): Element[] => elementsIn(parse(html).childNodes);
const isElement = (node: Node): node is Element => 'tagName' in node;
const elementsIn = (nodes: readonly Node[]): Element[] =>
  nodes.flatMap((node) => (isElement(node) ? [node, ...elementsIn(node.childNodes)] : []));
const attribute = ({ attrs }: Element, name: string): string | undefined =>
  attrs.find((one) => one.name === name)?.value;
const textOf = (node: Node): string =>
  node.nodeName === '#text'
    ? (node as DefaultTreeAdapterTypes.TextNode).value
    : 'childNodes' in node
      ? node.childNodes.map(textOf).join('')
      : '';

const pieces = 'a b body caption details div figcaption figure h1 h2 h3 head header html input label li main meta';
const more = 'ol p section span strong style summary table tbody td th thead title tr ul';
const drawn = 'svg g rect path line circle text tspan desc';
const allowed = new Set(`${pieces} ${more} ${drawn}`.split(' '));
const named =
  'aria-hidden aria-labelledby charset class content data-place href http-equiv id lang name scope type value';
const drawing =
  'xmlns viewBox role aria-label x y x1 y1 x2 y2 cx cy r d width height text-anchor data-picture data-scale';
const attributes = new Set(`${named} ${drawing}`.split(' '));

/** What a page holds that it must not: elements, attributes, addresses. */
function wrong(html: string): string[] {
  return page(html).flatMap((element) => [
    ...(allowed.has(element.tagName) ? [] : [element.tagName]),
    ...element.attrs.filter(({ name }) => !attributes.has(name)).map(({ name }) => `${element.tagName} ${name}`),
    ...element.attrs
      .filter(({ name, value }) => name === 'href' && !/^#finding-\d+$/.test(value))
      .map(({ value }) => `href ${value}`),
  ]);
}

describe.each(hostile)('a build whose every text is %j', (text) => {
  const sheet = hostileSheet(text);
  const html = sheetPage(sheet, { paper: 'a4' });

  it('is text on the page and nothing else', () => {
    expect(wrong(html)).toEqual([]);
    const [heading] = page(html).filter(({ tagName }) => tagName === 'h1');
    expect(textOf(heading!)).toBe(visible(oneLine(text)));
    const shown = textOf(parse(html) as unknown as Node);
    expect(shown.split(visible(oneLine(text))).length).toBeGreaterThan(25);
  });

  it('reaches no attribute but the keys of places', () => {
    const keys = ['data-place', 'id', 'aria-labelledby'];
    const marks = page(html).flatMap(({ attrs }) => attrs.filter(({ name }) => !keys.includes(name)));
    const ours = (value: string): boolean => !value.includes('alert') && !value.includes('__init__');
    expect(marks.filter(({ value }) => !ours(value))).toEqual([]);
  });
});

describe.each(builds.map((build) => [build.doc.name, build] as const))('the page of %s', (_, build) => {
  const sheet = sheetFor(build);
  const html = sheetPage(sheet, { paper: 'a4' });
  const elements = page(html);

  it('loads and runs nothing, and says so by a policy that names its one style', () => {
    const [style, ...more] = elements.filter(({ tagName }) => tagName === 'style');
    expect(more).toEqual([]);
    const hash = createHash('sha256').update(textOf(style!)).digest('base64');
    const policy = elements.find((one) => attribute(one, 'http-equiv') === 'Content-Security-Policy')!;
    expect(attribute(policy, 'content')).toBe(
      `default-src 'none'; style-src 'sha256-${hash}'; base-uri 'none'; form-action 'none'`,
    );
    expect(textOf(style!)).not.toMatch(/url\(|@import/);
    expect(wrong(html)).toEqual([]);
  });

  it('is told by a screen reader: language, headings in order, labels, heads of tables, ids that are one each', () => {
    expect(attribute(elements.find(({ tagName }) => tagName === 'html')!, 'lang')).toBe('en');
    const levels = elements.flatMap(({ tagName }) => (/^h\d$/.test(tagName) ? [Number(tagName[1])] : []));
    expect(levels[0]).toBe(1);
    expect(levels.filter((level, i) => i > 0 && level - levels[i - 1]! > 1)).toEqual([]);
    const labelled = elements
      .filter(({ tagName }) => tagName === 'label')
      .flatMap(({ childNodes }) => elementsIn(childNodes));
    const boxes = elements.filter(({ tagName }) => tagName === 'input');
    expect(boxes.length).toBeGreaterThan(20);
    expect(boxes.filter((box) => !labelled.includes(box))).toEqual([]);
    for (const table of elements.filter(({ tagName }) => tagName === 'table')) {
      const inside = elementsIn(table.childNodes);
      expect(inside[0]!.tagName).toBe('caption');
      for (const row of inside.filter(({ tagName }) => tagName === 'tr'))
        expect(elementsIn(row.childNodes).filter(({ tagName }) => tagName === 'th').length).toBeGreaterThan(0);
    }
    const ids = elements.flatMap((one) => attribute(one, 'id') ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    for (const link of elements.filter(({ tagName }) => tagName === 'a'))
      expect(ids).toContain(attribute(link, 'href')!.slice(1));
  });

  it('says each caution before its step', () => {
    for (const item of elements.filter(({ tagName, parentNode }) => tagName === 'li' && isIn(parentNode, 'steps'))) {
      const own = elementsIn(item.childNodes);
      const step = own.findIndex((one) => attribute(one, 'class') === 'step');
      const cautions = own.map((one, i) => (attribute(one, 'class')?.startsWith('caution ') ? i : -1));
      expect(Math.max(...cautions)).toBeLessThan(step);
    }
  });

  it('is made of the blocks that a panel puts in one by one', () => {
    const blocks = sheetBlocks(sheet);
    expect(blocks.map(({ id }) => id)).toEqual(['head', ...sheet.blocks.map(({ id }) => id)]);
    const still = (one: string): string => one.replaceAll(' role="link" tabindex="0"', '');
    for (const block of blocks) expect(html).toContain(still(block.html));
    expect(blocks.some((one) => one.html !== still(one.html))).toBe(true);
  });
});

const isIn = (node: DefaultTreeAdapterTypes.ParentNode | null, name: string): boolean =>
  node !== null && 'attrs' in node && attribute(node, 'class') === name;

describe('paper', () => {
  const sheet = sheetFor(builds[0]!);

  it.each([
    ['a4', 'size: A4'],
    ['letter', 'size: letter'],
  ] as const)('of %s has its size', (paper, size) => {
    expect(sheetPage(sheet, { paper })).toContain(size);
    expect(papers).toContain(paper);
  });

  it('changes the style and nothing else', () => {
    const body = (html: string): string => html.slice(html.indexOf('<body>'));
    expect(body(sheetPage(sheet, { paper: 'a4' }))).toBe(body(sheetPage(sheet, { paper: 'letter' })));
  });
});
