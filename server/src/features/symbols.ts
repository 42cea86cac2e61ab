// The outline of a file: its keys, its parts by role, their names.
import type { Guide } from '../core/guide/guide';
import type { Doc, DocKind } from '../core/parts/doc';
import { visible } from '../core/text';
import type { Entry, MapNode, Node } from '../core/yaml';
import type { Language } from '../core/words/language';
import { symbolKinds, type Location, type Range } from './shapes';

export interface DocumentSymbol {
  name: string;
  detail?: string;
  kind: number;
  range: Range;
  selectionRange: Range;
  children?: DocumentSymbol[];
}
export interface SymbolInformation {
  name: string;
  kind: number;
  location: Location;
  containerName?: string;
}

const deepest = 4;
const longestDetail = 80;

/** The outline as a tree. */
export function symbols(doc: Doc): DocumentSymbol[] {
  const { root } = doc.parsed;
  return root?.type === 'map' ? ofMap(doc, root, 1) : [];
}

/** The fenced blocks of a guide, each with its own outline below what it calls itself. */
export const blockSymbols = ({ blocks }: Guide, language: Language): DocumentSymbol[] =>
  blocks.map(({ doc }) => {
    const own = doc.topText(doc.kind === 'build' ? 'build' : 'model');
    const range = doc.lines.rangeOf({ start: 0, end: doc.text.length });
    return {
      name: own ? visible(own.text) : wordOf(doc.kind, language),
      detail: wordOf(doc.kind, language),
      kind: symbolKinds.object,
      range,
      selectionRange: { start: range.start, end: range.start },
      children: symbols(doc),
    };
  });

function wordOf(kind: DocKind, language: Language): string {
  switch (kind) {
    case 'build':
      return language.word('build');
    case 'part':
      return language.word('part');
    case 'house':
      return language.word('settings');
    case 'known':
      return language.word('known findings');
    case 'asbuilt':
      return language.word('machine');
    case 'guide':
      return language.word('guide');
    case 'output':
      return language.word('output of a tool');
  }
}

/** Symbols as a list, for clients that know no tree. */
export function flatSymbols(these: readonly DocumentSymbol[], uri: string): SymbolInformation[] {
  const flat: SymbolInformation[] = [];
  const add = (these: readonly DocumentSymbol[], containerName?: string): void => {
    for (const { name, kind, range, children } of these) {
      flat.push({ name, kind, location: { uri, range }, ...(containerName === undefined ? {} : { containerName }) });
      add(children ?? [], name);
    }
  };
  add(these);
  return flat;
}

function ofMap(doc: Doc, map: MapNode, depth: number): DocumentSymbol[] {
  return map.entries.filter((entry) => !entry.merged).map((entry) => ofEntry(doc, entry, depth));
}

function ofEntry(doc: Doc, entry: Entry, depth: number): DocumentSymbol {
  const { lines } = doc;
  return {
    name: visible(entry.key) || '(empty)',
    ...detailOf(entry.value),
    kind: kindOf(entry.value),
    range: lines.rangeOf({ start: entry.span.start, end: Math.max(entry.span.end, entry.keySpan.end) }),
    selectionRange: lines.rangeOf(entry.keySpan),
    ...(depth < deepest ? childrenOf(doc, entry.value, depth + 1) : {}),
  };
}

function childrenOf(doc: Doc, node: Node, depth: number): { children?: DocumentSymbol[] } {
  if (node.type === 'map') return { children: ofMap(doc, node, depth) };
  if (node.type !== 'list') return {};
  return { children: node.items.flatMap((item, i) => (item.type === 'map' ? [ofItem(doc, item, i, depth)] : [])) };
}

function ofItem(doc: Doc, item: MapNode, index: number, depth: number): DocumentSymbol {
  const named = ['name', 'use', 'finding', 'model', 'kind']
    .map((key) => item.get(key)?.value)
    .find((value) => value?.type === 'scalar' && value.text !== '');
  const range = doc.lines.rangeOf(item.span);
  return {
    name: named?.type === 'scalar' ? visible(named.text) : `${index + 1}`,
    kind: symbolKinds.object,
    range,
    selectionRange: range,
    ...(depth < deepest ? { children: ofMap(doc, item, depth + 1) } : {}),
  };
}

function detailOf(node: Node): { detail?: string } {
  const text = node.type === 'scalar' ? node.text : node.type === 'map' ? useOf(node) : '';
  return text === '' ? {} : { detail: visible(text.slice(0, longestDetail)) };
}

function useOf(map: MapNode): string {
  const value = map.get('use')?.value;
  return value?.type === 'scalar' ? value.text : '';
}

function kindOf(node: Node): number {
  return node.type === 'map' ? symbolKinds.object : node.type === 'list' ? symbolKinds.array : symbolKinds.key;
}
