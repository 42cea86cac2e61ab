// The rows of a sheet kept as JSON: maps of labels and values, lists of pairs, one map a variant.
import { Lines } from '../text';
import { readJson, type MapNode, type Node } from '../yaml';
import { labelKey, plainLine } from './clean';
import { sheetLimits, type Sheet, type SheetRow } from './sheet';

const LABELS = ['label', 'name', 'title', 'key', 'attribute', 'property', 'spec', 'feature', 'merkmal', 'bezeichnung'];
const VALUES = ['value', 'values', 'text', 'content', 'wert', 'val'];
const UNITS = ['unit', 'units', 'einheit', 'uom'];

export const isJson = (text: string): boolean => /^\s*[[{]/.test(text) && /[\]}]\s*$/.test(text);

/** `formFactor`, `form_factor`: the words of a name. */
const wordsOf = (key: string): string => plainLine(key.replace(/_/g, ' ').replace(/(?<=[a-z])(?=[A-Z][a-z])/g, ' '));

/** Undefined where the text is no whole JSON. */
export function jsonSheet(text: string): Sheet | undefined {
  const root = readJson(text)?.root;
  if (!root) return undefined;
  const reader = new JsonRows(new Lines(text));
  reader.read(root, '');
  reader.nameLast();
  return { ...(reader.title ? { title: reader.title } : {}), rows: reader.rows, loose: [], notes: new Map() };
}

class JsonRows {
  readonly rows: SheetRow[] = [];
  title: string | undefined;
  private table = 0;
  private named: { readonly text: string; readonly span: Node['span'] } | undefined;

  constructor(private readonly lines: Lines) {}

  read(root: Node, above: string): void {
    const work: { readonly node: Node; readonly heading: string }[] = [{ node: root, heading: above }];
    while (work.length > 0 && this.rows.length < sheetLimits.rows) {
      const { node, heading } = work.shift()!;
      if (node.type === 'map') work.unshift(...this.map(node, heading, node === root));
      else if (node.type === 'list') work.unshift(...this.list(node.items, heading));
    }
  }

  /** The name that heads all is the model’s, where no row tells that. */
  nameLast(): void {
    if (this.named && !this.rows.some(({ label }) => /^(?:model|modell|modelo|part n|product n)/i.test(label)))
      this.push('Product name', '', [this.named.text], this.named);
  }

  private map(map: MapNode, heading: string, isRoot: boolean): { node: Node; heading: string }[] {
    const pair = this.pair(map);
    if (pair) {
      this.push(pair.label, heading, [pair.value], map);
      return [];
    }
    const deeper: { node: Node; heading: string }[] = [];
    for (const { key, value, keySpan } of map.entries) {
      const label = wordsOf(key);
      const isName = isRoot && /^(?:name|product)$/i.test(key);
      if ((isName || /^(?:title|titel)$/i.test(key)) && value.type === 'scalar') this.title ??= plainLine(value.text);
      if (isName && value.type === 'scalar') this.named = { text: plainLine(value.text), span: keySpan };
      const text = this.textOf(value);
      if (text !== undefined) this.push(label, heading, [text], { span: keySpan });
      else deeper.push({ node: value, heading: label });
    }
    return deeper;
  }

  /** `{ label: …, value: …, unit: … }`. */
  private pair(map: MapNode): { readonly label: string; readonly value: string } | undefined {
    const of = (names: readonly string[]): string | undefined => {
      const entry = map.entries.find(({ key }) => names.includes(labelKey(key)));
      return entry && this.textOf(entry.value);
    };
    const [label, value, unit] = [of(LABELS), of(VALUES), of(UNITS)];
    if (label === undefined || value === undefined || map.entries.length > 6) return undefined;
    return { label, value: unit !== undefined && /\d$/.test(value) ? `${value} ${unit}` : value };
  }

  /** Maps with the same keys are variants: a row a key, a cell a map. */
  private list(items: readonly Node[], heading: string): { node: Node; heading: string }[] {
    const maps = items.filter((item) => item.type === 'map') as MapNode[];
    const [first] = maps;
    const isTable =
      maps.length > 1 &&
      maps.length === items.length &&
      !this.pair(first!) &&
      maps.every((map) => map.entries.some(({ key }) => first!.get(key) !== undefined));
    if (isTable && maps.every((map) => this.headOf(map) !== undefined))
      return maps.flatMap((map) =>
        map.entries
          .filter(({ value }) => value.type === 'map' || value.type === 'list')
          .map(({ value }) => ({ node: value, heading: this.headOf(map)! })),
      );
    if (!isTable || maps.length > sheetLimits.cells) return items.map((node) => ({ node, heading }));
    this.table++;
    for (const { key, keySpan } of first!.entries) {
      const cells = maps.map((map) => (map.get(key) ? (this.textOf(map.get(key)!.value) ?? '') : ''));
      this.push(wordsOf(key), heading, cells, { span: keySpan });
    }
    this.table++;
    return [];
  }

  /** `{ group: …, data: { … } }`: what heads the rest of a map. */
  private headOf({ entries }: MapNode): string | undefined {
    const deep = entries.filter(({ value }) => this.textOf(value) === undefined);
    const flat = entries.filter(({ value }) => value.type === 'scalar');
    return deep.length === 1 && flat.length === 1 ? this.textOf(flat[0]!.value) : undefined;
  }

  /** A scalar, or a list of scalars, in one line. */
  private textOf(node: Node): string | undefined {
    if (node.type === 'scalar') return node.text === 'null' && node.style === 'plain' ? '' : plainLine(node.text);
    if (node.type === 'list' && node.items.every((item) => item.type === 'scalar')) {
      return node.items.map((item) => plainLine((item as { text: string }).text)).join(', ');
    }
    return undefined;
  }

  private push(label: string, heading: string, cells: readonly string[], at: { span: Node['span'] }): void {
    const line = this.lines.positionAt(at.span.start).line + 1;
    this.rows.push({ label, heading, cells: cells.slice(0, sheetLimits.cells), line, table: this.table });
  }
}
