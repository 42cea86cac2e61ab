// The rows of a sheet kept as a page: tables, definition lists, and the lines of all else.
import { parse } from 'parse5';
import { across, areLabels, areParts } from './across';
import { BLOCKS, breakOf, isElement, pairIn, SKIPPED, textOf, type Element, type Node } from './page-nodes';
import { sheetLimits, type IsLabel, type LooseLine, type Sheet, type SheetRow } from './sheet';
import { linesSheet } from './text-lines';

export const isMarkup = (text: string): boolean =>
  /^(?:<!doctype html|<html|<table|<dl|<body|<div|<section|<h[1-6]|<ul|<article|<main|<p)\b/i.test(text.trimStart());

/** Where an element begins; one that stands for itself in no tag, where what it holds begins. */
const lineOf = (node: Node | undefined): number =>
  node === undefined ? 1 : (node.sourceCodeLocation?.startLine ?? (isElement(node) ? lineOf(node.childNodes[0]) : 1));
const attribute = ({ attrs }: Element, name: string): string => attrs.find((one) => one.name === name)?.value ?? '';

class PageReader {
  readonly rows: SheetRow[] = [];
  readonly lines: LooseLine[] = [];
  title: string | undefined;
  page: string | undefined;
  caption: string | undefined;
  private heading = '';
  private table = 1000;
  private open: LooseLine | undefined;

  constructor(private readonly isLabel: IsLabel) {}

  /** Walks with a stack of its own: a page may be nested deeper than the engine’s. */
  walk(roots: readonly Node[]): void {
    const stack: Node[] = roots.toReversed();
    while (stack.length > 0 && this.rows.length < sheetLimits.rows) {
      const node = stack.pop()!;
      if ('value' in node) this.inline(node.value, node.sourceCodeLocation?.startLine ?? 1);
      if (!isElement(node)) continue;
      if (node.tagName === 'title' && this.page === undefined) {
        this.page = textOf(node);
        this.title ??= this.page;
      }
      if (SKIPPED.has(node.tagName) && node.tagName !== 'head') continue;
      if (this.isTaken(node)) continue;
      if (BLOCKS.has(node.tagName)) this.flush();
      stack.push(...node.childNodes.toReversed());
    }
    this.flush();
  }

  private isTaken(node: Element): boolean {
    if (/^h[1-6]$/.test(node.tagName)) this.headed(node);
    else if (node.tagName === 'table') this.tableRows(node);
    else if (node.tagName === 'dl') this.definitions(node);
    else return this.paired(node);
    return true;
  }

  private paired(node: Element): boolean {
    const pair = pairIn(node);
    if (!pair) return false;
    this.flush();
    this.add(pair[0], this.heading, [pair[1]], lineOf(node));
    return true;
  }

  private headed(node: Element): void {
    this.flush();
    const text = textOf(node);
    if (node.tagName === 'h1') this.title = text;
    this.heading = node.tagName === 'h1' ? '' : text;
  }

  private inline(text: string, line: number): void {
    const at = line + (/^\s*/.exec(text)![0].split('\n').length - 1);
    if (this.open) this.open = { text: this.open.text + text, line: this.open.line };
    else if (text.trim() !== '') this.open = { text, line: at };
  }

  private flush(): void {
    if (this.open && this.open.text.trim() !== '')
      this.lines.push({ ...this.open, text: this.open.text.replace(/\s+/g, ' ') });
    this.open = undefined;
  }

  private definitions(list: Element): void {
    this.flush();
    this.table++;
    let label: Element | undefined;
    for (const node of elementsIn(list, ['dt', 'dd'])) {
      if (node.tagName === 'dt') label = node;
      else if (label) this.add(textOf(label), this.heading, [textOf(node)], lineOf(label));
    }
  }

  private add(label: string, heading: string, cells: readonly string[], line: number): void {
    const last = this.rows.at(-1);
    if (last && last.line === line && last.label === label && last.table === this.table && cells.length === 1) {
      this.rows[this.rows.length - 1] = { ...last, cells: [`${last.cells[0]}, ${cells[0]}`] };
    } else this.rows.push({ label, heading, cells, line, table: this.table });
  }

  /** `100 W` across the columns of two rails is the limit that they share. */
  private sharedLimit(table: Element, cells: readonly Element[], line: number): void {
    cells.forEach((cell, at) => {
      if (at === 0 || spanOf(cell, 'colspan') !== 2 || !/^\d{2,4} ?W$/.test(textOf(cell))) return;
      const rails = railsAbove(table, cells, at);
      if (rails.length === 2 && rails.every((one) => /^\+[\d.,]{1,3} ?V$/.test(one)))
        this.rows.push({ label: `${rails.join(' & ')} combined`, heading: '', cells: [textOf(cell)], line, table: -1 });
    });
  }

  /** A table with labels in its first row and a part in each other, of plain cells alone. */
  private turned(table: Element, heading: string): boolean {
    const rows = elementsIn(table, ['tr']).map((row) => ({ row, cells: elementsIn(row, ['th', 'td']) }));
    const isPlain = rows.every(({ cells }) =>
      cells.every(
        (cell) => nestedIn(cell).length === 0 && spanOf(cell, 'colspan') === 1 && spanOf(cell, 'rowspan') === 1,
      ),
    );
    if (!isPlain || rows.length < 2 || rows.length > sheetLimits.cells) return false;
    const [head, ...parts] = rows.map(({ row, cells }) => ({ cells: cells.map(textOf), line: lineOf(row) }));
    if (!areLabels(head!.cells, this.isLabel) || !areParts(head!, parts, this.isLabel)) return false;
    this.rows.push(...across(head!, parts, this.table, heading));
    return true;
  }

  /** Rows of a table; a table in a cell is read by itself, under the label of its row. */
  private tableRows(table: Element, above = this.heading, depth = 0): void {
    this.flush();
    this.table++;
    let heading = above;
    const [caption] = elementsIn(table, ['caption']);
    if (caption) this.caption ??= textOf(caption);
    if (this.turned(table, heading)) return;
    let spanning: { readonly text: string; rows: number } | undefined;
    for (const row of elementsIn(table, ['tr'])) {
      const cells = elementsIn(row, ['th', 'td']);
      const inner = cells.map((cell) => nestedIn(cell));
      if (depth < deepest && inner.some((tables) => tables.length > 0)) {
        const label = cells.length > 1 && inner[0]!.length === 0 ? textOf(cells[0]!) : heading;
        for (const one of inner.flat()) this.tableRows(one, label, depth + 1);
        this.table++;
        continue;
      }
      const texts = cells.flatMap((cell) => Array<string>(spanOf(cell, 'colspan')).fill(textOf(cell)));
      this.sharedLimit(table, cells, lineOf(row));
      const rowsSpanned = cells[0] ? spanOf(cells[0], 'rowspan') : 1;
      if (cells.length === 1) {
        heading = texts[0] ?? heading;
        continue;
      }
      if (rowsSpanned > 1 && cells.length > 2) {
        spanning = { text: texts[0]!, rows: rowsSpanned };
        texts.shift();
      }
      const [label = '', ...rest] = texts;
      if (rest.some((cell) => cell !== ''))
        this.add(label, spanning?.text ?? heading, rest.slice(0, sheetLimits.cells), lineOf(row));
      if (spanning && --spanning.rows <= 0) spanning = undefined;
    }
  }
}

/** Rails that stand above one cell, in the table’s first row. */
function railsAbove(table: Element, cells: readonly Element[], at: number): readonly string[] {
  const [first] = elementsIn(table, ['tr']);
  const heads = first ? elementsIn(first, ['th', 'td']).map(textOf) : [];
  const before = cells.slice(0, at).reduce((sum, cell) => sum + spanOf(cell, 'colspan'), 0);
  return heads.slice(before, before + spanOf(cells[at]!, 'colspan'));
}

/** Tables within tables are read no deeper. */
const deepest = 8;

/** The tables of a cell, not those within them. */
function nestedIn(cell: Element): Element[] {
  const found: Element[] = [];
  const stack: Node[] = cell.childNodes.toReversed();
  while (stack.length > 0) {
    const node = stack.pop()!;
    if (!isElement(node) || SKIPPED.has(node.tagName)) continue;
    if (node.tagName === 'table') found.push(node);
    else stack.push(...node.childNodes.toReversed());
  }
  return found;
}

const spanOf = (cell: Element, name: 'colspan' | 'rowspan'): number => {
  const span = Number(attribute(cell, name));
  return Number.isInteger(span) && span > 1 && span <= sheetLimits.cells ? span : 1;
};

/** Elements of some names below one, those of a table within a cell left out. */
function elementsIn(root: Element, names: readonly string[]): Element[] {
  const found: Element[] = [];
  const stack: Node[] = root.childNodes.toReversed();
  while (stack.length > 0) {
    const node = stack.pop()!;
    if (!isElement(node) || SKIPPED.has(node.tagName) || node.tagName === 'table') continue;
    if (names.includes(node.tagName)) found.push(node);
    else stack.push(...node.childNodes.toReversed());
  }
  return found;
}

/** Reads a page. */
export function markupSheet(whole: string, isLabel: IsLabel): Sheet {
  const text = whole.slice(0, sheetLimits.characters);
  const page = new PageReader(isLabel);
  const { childNodes } = parse(text, { sourceCodeLocationInfo: true });
  page.walk(childNodes);
  const brokenAt = breakOf(childNodes, text.length);
  const lines = linesSheet(page.lines, isLabel);
  const title = page.title ?? lines.title ?? page.caption;
  const rows = [...page.rows, ...lines.rows].toSorted((a, b) => a.line - b.line);
  return {
    ...(title === undefined || title === '' ? {} : { title }),
    ...(page.page === undefined ? {} : { page: page.page }),
    rows,
    loose: lines.loose,
    notes: lines.notes,
    ...(brokenAt === undefined ? {} : { brokenAt }),
  };
}
