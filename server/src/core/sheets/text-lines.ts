// The rows of a plain text: a table’s pasted columns, `label: value`, a label with its value on the next line.
import { across, areLabels, areParts } from './across';
import { isBlank, isElsewhere, trimEnds } from './clean';
import { notesOf, pairOf, rawLines, type RawLine } from './raw-line';
import { isCounted } from './takers/board-things';
import { lastLineOf, sheetLimits, type IsLabel, type LooseLine, type Sheet, type SheetRow } from './sheet';

/** Reads the lines of a text. */
export function textSheet(text: string, isLabel: IsLabel): Sheet {
  const lines = rawLines(text.slice(0, sheetLimits.characters).split(/\r\n?|\n|\f/));
  return { ...new Assembly(lines.slice(0, sheetLimits.rows), isLabel).run(), ...lastLineOf(text) };
}

/** Lines of other ways of reading, such as the paragraphs of a page. */
export function linesSheet(lines: readonly LooseLine[], isLabel: IsLabel): Sheet {
  const raw = rawLines(lines.map(({ text }) => text));
  return new Assembly(
    raw.map((one, at) => ({ ...one, line: lines[at]!.line })),
    isLabel,
  ).run();
}

/** What a heading ends with: `Product information` states no product. */
const HEADING_END = /^(?:information|specifications?|details|data|overview|features|daten|übersicht)$/i;

class Assembly {
  private readonly rows: SheetRow[] = [];
  private readonly loose: LooseLine[] = [];
  private heading = '';
  /** The indentation of a heading that ends with a colon: it ends where lines stand as far out. */
  private headingIndent = -1;
  private table = 0;
  /** The last line of a row of columns, or of what goes on with one. */
  private columnsAt = -1;
  /** Where that row’s values stand, told apart by blanks. */
  private valuesAt = -1;
  /** What the lines that follow in one row hang on: the chipset, the processor. */
  private source = '';
  private title: string | undefined;

  constructor(
    private readonly lines: readonly RawLine[],
    private readonly isLabel: IsLabel,
  ) {}

  run(): Sheet {
    for (let at = 0; at < this.lines.length; at++) at += this.take(at);
    return {
      ...(this.title === undefined ? {} : { title: this.title }),
      rows: this.rows,
      loose: this.loose,
      notes: notesOf(this.lines),
    };
  }

  /** Takes the line at an index; gives how many lines behind it were taken with it. */
  private take(at: number): number {
    const raw = this.lines[at]!;
    const [label = '', ...cells] = raw.cells;
    if (raw.text === '') {
      this.table++;
      if (this.headingIndent >= 0) this.endHeading();
      return 0;
    }
    if (this.headingIndent >= 0 && raw.indent < this.headingIndent) this.endHeading();
    const turned = this.partsAt(at);
    if (turned > 0) return turned;
    const heads = this.headsAt(at);
    if (heads) {
      this.push('', heads, raw.line);
      return 0;
    }
    if (raw.hasColumns && label === '') {
      this.carryOn(raw);
      return 0;
    }
    if (this.goesOn(raw) && this.lines[at - 1]?.line === this.columnsAt) return this.sayMore(raw);
    if (raw.hasColumns) [this.columnsAt, this.valuesAt, this.source] = [raw.line, raw.valueAt, ''];
    if (cells.length > 0 && cells.some((cell) => cell !== '')) {
      this.pushColumns(raw, label, cells);
      return 0;
    }
    return this.alone(label, at, cells.length > 0);
  }

  /** A table of parts, one a line, below a line of labels: how many lines stand below that. */
  private partsAt(at: number): number {
    const head = this.lines[at]!;
    if (!head.hasColumns || !areLabels(head.cells, this.isLabel)) return 0;
    const parts = this.lines.slice(at + 1, this.lines.findIndex(({ hasColumns }, i) => i > at && !hasColumns) >>> 0);
    if (!areParts(head, parts, this.isLabel)) return 0;
    this.rows.push(...across(head, parts, ++this.table, this.heading));
    this.table++;
    return parts.length;
  }

  /** Cells without a label that are the heads of the columns below: nothing of their table stands above them. */
  private headsAt(at: number): readonly string[] | undefined {
    const { cells, hasColumns, indent, line } = this.lines[at]!;
    const next = this.lines[at + 1];
    if (!hasColumns || !next?.hasColumns || next.cells[0] === '' || this.columnsAt === line - 1) return undefined;
    const heads = cells[0] === '' ? cells.slice(1) : indent >= 8 ? cells : [];
    return heads.length > 1 && next.cells.length === heads.length + 1 ? heads : undefined;
  }

  /** Whether a line stands in the column of values of the row above. */
  private goesOn({ isCarried, hasColumns, indent }: RawLine): boolean {
    return isCarried || (!hasColumns && indent >= 4 && Math.abs(indent - this.valuesAt) <= 2);
  }

  /** A row of columns; one whose only value is a label with its own value is told by that label. */
  private pushColumns({ hasColumns, line }: RawLine, label: string, all: readonly string[]): void {
    const [cells, beside] = hasColumns ? this.pairsBeside(all) : [all, []];
    const own = hasColumns && cells.length === 1 && !this.isLabel(label) ? this.pairIn(cells[0]!) : undefined;
    if (!hasColumns && this.rows.length === 0 && label.includes(' ') && !this.isLabel(label)) this.title ??= label;
    if (own) this.rows.push({ label: own[0], heading: label, cells: [own[1]], line, table: this.table });
    else this.push(label, cells, line);
    for (const [name, value] of beside) this.push(name, [value], line);
    if (hasColumns && cells.length === 1 && SOURCE.test(cells[0]!)) this.source = trimEnds(cells[0]!, ':');
  }

  /** `8.2 kg` and, in one line with it, `Gross weight 9.9 kg`, `Length: 300 mm`: cells that are pairs themselves. */
  private pairsBeside(cells: readonly string[]): [cells: readonly string[], pairs: readonly [string, string][]] {
    const pairs = cells.map((cell, at) => (at === 0 ? undefined : this.pairOfOwn(cell)));
    const first = pairs.findIndex((pair) => pair !== undefined);
    if (first < 0 || !pairs.slice(first).every((pair) => pair !== undefined)) return [cells, []];
    return [cells.slice(0, first), pairs.filter((pair) => pair !== undefined)];
  }

  private pairOfOwn(text: string): [string, string] | undefined {
    const [label = '', value] = pairOf(text);
    const [, words, rest] = value === undefined ? (/^(\p{L}[\p{L} .]{2,30}?) (\d.{0,40})$/u.exec(text) ?? []) : [];
    const [name, said] = words === undefined ? [label, value] : [words, rest];
    const isNamed = this.isLabel(name) || (words !== undefined && isElsewhere(name));
    return said !== undefined && said !== '' && isNamed ? [name, said] : undefined;
  }

  private pairIn(text: string): [string, string] | undefined {
    const [label, value] = pairOf(text);
    return value !== undefined && value !== '' && this.isLabel(label!) ? [label!, value] : undefined;
  }

  private endHeading(): void {
    this.heading = '';
    this.headingIndent = -1;
  }

  private push(label: string, cells: readonly string[], line: number, isLoose = false): void {
    const row = { label, heading: this.heading, cells, line, table: this.table, ...(isLoose ? { isLoose } : {}) };
    this.rows.push(row);
  }

  /** A value without a label belongs to the label above. */
  private carryOn(raw: RawLine): void {
    const last = this.rows.at(-1);
    const cells = raw.cells.slice(1);
    if (!last || last.table !== this.table || cells.length !== last.cells.length) return this.tell(raw);
    this.rows[this.rows.length - 1] = {
      ...last,
      cells: last.cells.map((cell, index) => (cells[index] === '' ? cell : `${cell}, ${cells[index]}`)),
    };
  }

  /** A line that goes on with the row above: one more of what is counted there, else more of its value. */
  private sayMore({ text, line }: RawLine): number {
    const last = this.rows.at(-1)!;
    this.columnsAt = line;
    const own = this.pairIn(text);
    const isOfM2 = /^M\.2 (?:form factor|key|size)s?: /i.test(text) && /^M\.2 /i.test(last.cells[0] ?? '');
    if (isOfM2) this.append(` • ${text}`);
    else if (SOURCE.test(text)) this.source = trimEnds(text, ':');
    else if (own)
      this.rows.push({ ...last, label: own[0], heading: last.heading || last.label, cells: [own[1]], line });
    else if (isCounted(text) || /^(?:M\.?2|PCI)/i.test(text))
      this.rows.push({ ...last, heading: this.source || last.heading, cells: [text], line, isLoose: true });
    else if (last.cells.length === 1) this.append(` • ${text}`);
    else this.loose.push({ text, line });
    return 0;
  }

  /** A line of one piece: the label of the line below, a heading, a label and a value with one blank, or prose. */
  private alone(text: string, at: number, hasColon: boolean): number {
    const raw = this.lines[at]!;
    const next = this.lines[at + 1];
    if (next && isCounted(next.text) && !isCounted(text) && (hasColon || this.isLabel(text))) {
      this.openHeading(text, raw, next, hasColon);
      return 0;
    }
    if (this.isLabel(text) && next && this.isValue(next)) {
      if (next.indent > raw.indent) this.heading = bareHeading(text);
      this.push(text, [next.text], raw.line);
      return 1;
    }
    const known = this.knownStart(text);
    if (known && this.title === undefined && this.rows.length === 0 && !hasColon) this.title = text;
    if (hasColon || this.isHeading(text, next)) {
      if (known) this.push(known[0], [known[1]], raw.line, true);
      const isTitle = this.title === undefined && this.rows.length === 0 && !hasColon;
      if (isTitle) this.title = text;
      if (!isTitle || text.split(' ').length < 3) this.openHeading(text, raw, next, hasColon);
      return 0;
    }
    if (known) this.push(known[0], [known[1]], raw.line, true);
    else this.tell(raw);
    return 0;
  }

  private openHeading(text: string, raw: RawLine, next: RawLine | undefined, hasColon: boolean): void {
    this.heading = bareHeading(text);
    this.headingIndent = hasColon && next && next.indent > raw.indent ? next.indent : hasColon ? 0 : -1;
  }

  /** More of the last row’s value. */
  private append(text: string): void {
    const last = this.rows.at(-1)!;
    this.rows[this.rows.length - 1] = { ...last, cells: [`${last.cells[0]}${text}`] };
  }

  /** `HDMI x 1 (…)` right below `Output: DisplayPort x 3`. */
  private isMoreOutputs({ text, line }: RawLine): boolean {
    const last = this.rows.at(-1);
    return last?.line === line - 1 && last.cells.length === 1 && OUTPUT.test(text) && OUTPUT.test(last.cells[0]!);
  }

  private tell(raw: RawLine): void {
    if (this.title === undefined && this.rows.length === 0 && raw.text.length <= 100) this.title = raw.text;
    else if (this.isMoreOutputs(raw)) return this.append(`, ${raw.text}`);
    else if (isCounted(raw.text) && !this.isLabel(this.heading)) return this.push('', [raw.text], raw.line, true);
    if (this.heading !== '' && this.isLabel(this.heading)) this.pushUnder(raw);
    else this.loose.push({ text: raw.text, line: raw.line });
  }

  /** A line below a heading that is itself a label says more of it. */
  private pushUnder({ text, line }: RawLine): void {
    this.rows.push({ label: this.heading, heading: '', cells: [text], line, table: this.table, isLoose: true });
  }

  private isValue({ cells, text, hasColumns }: RawLine): boolean {
    return (
      text !== '' && !hasColumns && cells.length === 1 && (!this.isLabel(text) || /\d/.test(text)) && text.length <= 160
    );
  }

  /** Short, no sentence, no figures, and something stands below it. */
  private isHeading(text: string, next: RawLine | undefined): boolean {
    const bare = bareHeading(text);
    const isShort = bare !== '' && bare.length <= 50 && bare.split(' ').length <= 6;
    return (
      isShort &&
      !/[.!?;]$|\d/.test(bare) &&
      next !== undefined &&
      (next.text === '' || next.cells.length > 1 || this.isLabel(next.text) || /\d/.test(next.text))
    );
  }

  /** The longest known label that a line begins with, and the rest of the line. */
  private knownStart(text: string): [string, string] | undefined {
    const words = text.split(' ');
    for (let count = Math.min(words.length - 1, 6); count > 0; count--) {
      const label = words.slice(0, count).join(' ');
      const rest = words.slice(count).join(' ');
      if (this.isLabel(label) && !isBlank(rest) && !HEADING_END.test(rest)) return [label, rest];
    }
    return undefined;
  }
}

/** An output of a display with how many there are, which is no label and value. */
const OUTPUT = /^(?:HDMI|Display ?Port|DVI(?:-[DI])?|VGA|USB-C)(?: \d\.\d[ab]?)? ?[x×*] ?\d\b/i;

/** What stands above things of a board that hang on one chip: `K860 Chipset`, `Calder C7 Series Processors`. */
const SOURCE = /^(?:[\w- ,/&]{1,60} )?(?:chipset|chipsatz|PCH|CPU|prozessor(?:en)?|processors?):?$/i;

const bareHeading = (text: string): string => trimEnds(text, '#=-*_: []').trim();
