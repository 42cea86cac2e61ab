// The nodes of a page: which of them stand on lines of their own, their text, and where a page breaks off.
import type { DefaultTreeAdapterTypes as Tree } from 'parse5';
import { plainLine, trimEnds } from './clean';
import { sheetLimits } from './sheet';

export type Node = Tree.ChildNode;
export type Element = Tree.Element;

export const SKIPPED = new Set([
  'script',
  'style',
  'template',
  'noscript',
  'svg',
  'iframe',
  'nav',
  'footer',
  'form',
  'select',
  'head',
]);
export const BLOCKS = new Set([
  'p',
  'div',
  'li',
  'ul',
  'ol',
  'section',
  'article',
  'h1',
  'h2',
  'h3',
  'h4',
  'h5',
  'h6',
  'br',
  'tr',
  'dd',
  'dt',
  'caption',
  'header',
  'main',
  'pre',
  'figcaption',
]);

export const isElement = (node: Node): node is Element => 'tagName' in node;

/** Figures that are raised are marks of notes, but behind a unit they are its power. */
function raised(text: string, before: string): string {
  const power = { 2: '²', 3: '³' }[text.trim()];
  return power && /(?:m|ft|in)$/.test(before)
    ? power
    : text.trim() === ''
      ? ''
      : (RAISED[text.trim()] ?? `[${text.trim().charAt(0)}]`);
}
const RAISED: Readonly<Record<string, string>> = { 1: '¹', 2: '²', 3: '³', 4: '⁴', 5: '⁵', '*': '*', '†': '†' };

/** The text of a node in one line; what stands on lines of its own is parted by commas. */
export function textOf(root: Node): string {
  let text = '';
  const stack: Node[] = [root];
  while (stack.length > 0 && text.length < sheetLimits.cellCharacters) {
    const node = stack.pop()!;
    if ('value' in node) text += node.value;
    if (!isElement(node) || SKIPPED.has(node.tagName)) continue;
    if (node.tagName === 'sup') {
      text += raised(node.childNodes.map((child) => ('value' in child ? child.value : '')).join(''), text.trimEnd());
      continue;
    }
    if (BLOCKS.has(node.tagName) && text.trim() !== '' && !/[,;:]\s*$/.test(text)) text += ', ';
    stack.push(...node.childNodes.toReversed());
  }
  return trimEnds(plainLine(text), ', ').replace(/(?: ?, ?){2,9}/g, ', ');
}

const PAIRED = new Set(['li', 'div', 'p', 'section']);
const HALVES = new Set(['span', 'div', 'b', 'strong', 'em', 'label', 'p', 'dt', 'dd']);

/** `<li><span>Socket</span> <span>AM5</span></li>`: two elements and nothing beside them, the first a short name. */
export function pairIn(node: Element): readonly [label: string, value: string] | undefined {
  if (!PAIRED.has(node.tagName)) return undefined;
  const inner = node.childNodes.filter((child) => !('value' in child) || child.value.trim() !== '');
  const [one, other] = inner;
  if (inner.length !== 2 || !one || !other || !isElement(one) || !isElement(other)) return undefined;
  const areHalves = [one, other].every(
    (half) =>
      HALVES.has(half.tagName) && half.childNodes.every((child) => !isElement(child) || !BLOCKS.has(child.tagName)),
  );
  const label = areHalves ? trimEnds(textOf(one), ':') : '';
  const value = textOf(other);
  return label !== '' && value !== '' && label.length <= 60 && !/[.!?]$/.test(label) ? [label, value] : undefined;
}

/** What is read as one: where a page breaks off within it, none of it is whole. */
const UNITS = new Set([
  'tr',
  'td',
  'th',
  'p',
  'li',
  'dd',
  'dt',
  'h1',
  'h2',
  'h3',
  'h4',
  'h5',
  'h6',
  'pre',
  'figcaption',
]);
const HOLDERS = new Set(['html', 'body', 'table', 'thead', 'tbody', 'tfoot', 'dl', ...BLOCKS]);

/** The start of an element; one that stands for itself in no tag begins with what it holds. */
const startOf = (node: Node | undefined): number =>
  node === undefined
    ? 0
    : (node.sourceCodeLocation?.startOffset ?? (isElement(node) ? startOf(node.childNodes[0]) : 0));

/** Whether an element is still open where the text ends; one without tags of its own is whatever it holds. */
function isOpen({ sourceCodeLocation: at }: Element, length: number): boolean {
  return !at || (at.endTag === undefined && (at.endOffset ?? length) >= length);
}

/** Where a page breaks off: within a row, a paragraph or a list’s item that nothing ends. Undefined of a whole page. */
export function breakOf(root: readonly Node[], length: number): number | undefined {
  let nodes = root;
  for (let open = nodes.at(-1); open; open = nodes.at(-1)) {
    if (!isElement(open) || !HOLDERS.has(open.tagName) || !isOpen(open, length)) break;
    if (UNITS.has(open.tagName)) return startOf(open);
    const label = open.tagName === 'dl' ? open.childNodes.findLast((node) => node.nodeName === 'dt') : undefined;
    if (label) return startOf(label);
    nodes = open.childNodes;
  }
  const run = nodes.slice(nodes.findLastIndex((node) => isElement(node) && HOLDERS.has(node.tagName)) + 1);
  return run.some((node) => textOf(node) !== '') ? startOf(run[0]) : undefined;
}
