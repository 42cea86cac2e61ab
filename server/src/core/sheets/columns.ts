// The columns of a sheet’s tables: which are variants of the part, and which only say more of one value.
import { readQuantity } from '../quantity';
import { RAIL_WORDS } from '../trade/supply-sheet-words';
import { wordOf } from '../trade/vocabulary';
import { isBlank, isHedged, labelKey, plainLine, withoutMarks, wordSet } from './clean';
import type { Sheet, SheetRow } from './sheet';

/** A label with the one value that it has for the part in question. */
export interface Line {
  readonly label: string;
  readonly heading: string;
  readonly text: string;
  readonly line: number;
  readonly isLoose: boolean;
  /** Whether a note beside it takes its plainness away. */
  readonly isUnsure: boolean;
  /** The table or block that it stands in; absent of what no row says. */
  readonly table?: number;
}

export interface Columns {
  readonly lines: readonly Line[];
  /** Names of the variants that the tables tell apart; none where there are none. */
  readonly variants: readonly string[];
  /** Rows whose value hangs on the variant, where none was chosen. */
  readonly undecided: readonly SheetRow[];
}

const HEADS = new Set(
  (
    '|specification|specifications|spec|specs|feature|features|parameter|item|merkmal|eigenschaft|' +
    'attribut|attribute|property|variant|variante|version|model|modell|sku|capacity|kapazität|' +
    'part number|artikelnummer|bezeichnung|name|model name|product|produkt|description|beschreibung|' +
    'position|rail|output|dc output|ausgang|schiene|location|label|field|feld'
  )
    .split('|')
    .map(labelKey),
);

/** The label of a row that names the columns, without the mark of a note. */
const headKey = (label: string): string => labelKey(withoutMarks(plainLine(label)).text);
const isHeadLabel = (label: string): boolean => HEADS.has(headKey(label));

const UNIT_HEADS = /^(?:units?|einheit(?:en)?|uom)$/i;
const NOTE_HEADS = /^(?:notes?|remarks?|comments?|bemerkung(?:en)?|hinweise?|anmerkung(?:en)?|kommentar|conditions?)$/i;
const COUNT_HEADS = /^(?:quantity|qty\.?|anzahl|menge|stück|pcs\.?)$/i;
/** What heads a list of things, each with how many there are. */
const COUNTED_HEADS = /^(?:cables?|connectors?|connector type|kabel|stecker|anschluss|anschlüsse)$/i;
const VALUE_HEADS =
  /^(?:values?|werte?|specifications?|specs?|description|beschreibung|details?|metric|metrisch|si|angabe)$/i;
const IMPERIAL_HEADS = /^(?:imperial|us|english|zoll|inch(?:es)?)$/i;
const LIMIT_HEADS = /^(?:min\.?|minimum|typ\.?|typical|typisch|max\.?|maximum|nom\.?|nominal)$/i;
const UNIT = wordSet(
  'mm|cm|in|inch|g|kg|w|v|a|ma|rpm|u/min|dba|db(a)|cfm|m³/h|m3/h|°c|mb/s|gb/s|gb|tb|mt/s|mhz|mmh2o|pa|ms|hz|%|pcs|' +
    'stk|stück',
);
const isUnit = (cell: string): boolean => UNIT.has(cell.trim().toLowerCase());
const SIZE = /^\d{2,3} ?mm$/i;

/** The value of each row for one variant, named or by its number; without a choice, what all variants share. */
export function chooseColumns(sheet: Sheet, variant: string | undefined): Columns {
  const lines: Line[] = [];
  const undecided: SheetRow[] = [];
  const variants: string[] = [];
  for (const table of tablesOf(sheet.rows)) {
    const other = sheet.isOfParts && variant !== undefined ? onlyOther(table, variant) : undefined;
    if (other !== undefined) {
      variants.push(other);
      undecided.push(...table);
      continue;
    }
    const read = new TableReader(table);
    for (const name of read.variants) if (!variants.includes(name)) variants.push(name);
    const chosen = variant === undefined ? undefined : read.chosen(variant);
    for (const row of read.rows) {
      const line = read.lineOf(row, chosen);
      if (line === 'undecided') undecided.push(row);
      else lines.push(...line);
    }
  }
  return { lines, variants, undecided };
}

/** The name of the only part of a table of parts, where it is another than the one that is asked for. */
function onlyOther(table: readonly SheetRow[], wanted: string): string | undefined {
  if (table.some(({ cells }) => cells.length > 1)) return undefined;
  const heads = table.filter(({ label }) => isHeadLabel(label));
  const names = (heads.length > 0 ? heads : table).flatMap(({ cells }) => cells.filter((cell) => !isBlank(cell)));
  return names.some((name) => indexOf([name], wanted) !== undefined) ? undefined : names[0];
}

/** By its name without case, blanks and marks, by the only name that holds it, or by its number from 1. */
export function indexOf(names: readonly string[], wanted: string): number | undefined {
  const key = labelKey(wanted);
  const same = names.findIndex((name) => labelKey(name) === key);
  if (same >= 0) return same;
  const holding = names.flatMap((name, index) => (key !== '' && labelKey(name).includes(key) ? [index] : []));
  if (holding.length === 1) return holding[0];
  const number = /^\d{1,2}$/.test(wanted) ? Number(wanted) : 0;
  return holding.length === 0 && number >= 1 && number <= names.length ? number - 1 : undefined;
}

/** The column that a value alone tells, in a row where each has its own: `750 W`. */
function onlyCell(rows: readonly SheetRow[], wanted: string): number | undefined {
  const key = labelKey(wanted);
  const keys = rows.map(({ cells }) => cells.map(labelKey)).filter((own) => new Set(own).size === own.length);
  const found = new Set(keys.map((own) => own.indexOf(key)).filter((at) => at >= 0));
  return key !== '' && found.size === 1 ? [...found][0] : undefined;
}

function tablesOf(rows: readonly SheetRow[]): SheetRow[][] {
  const tables = new Map<number, SheetRow[]>();
  for (const row of rows) tables.set(row.table, [...(tables.get(row.table) ?? []), row]);
  return [...tables.values()].flatMap(partedAtRails);
}

/** A row of rails heads a table of its own, whatever stands above it. */
function partedAtRails(table: SheetRow[]): SheetRow[][] {
  const at = table.findIndex(
    ({ label, cells }) =>
      isHeadLabel(label) && cells.filter((cell) => wordOf(RAIL_WORDS, cell) !== undefined).length > 1,
  );
  return at > 0 ? [table.slice(0, at), table.slice(at)] : [table];
}

class TableReader {
  readonly variants: readonly string[];
  readonly rows: readonly SheetRow[];
  private readonly head: readonly string[];
  private readonly width: number;

  constructor(table: readonly SheetRow[]) {
    this.width = widthOf(table.map(({ cells }) => cells.length));
    const [first] = table;
    const isCounted = first !== undefined && COUNTED_HEADS.test(first.label) && countAt(first.cells) >= 0;
    const isHead = first !== undefined && first.cells.length === this.width && (isHeadLabel(first.label) || isCounted);
    const isOnlyHead =
      isHead && !/^(?:model|modell|modelname|capacity|kapazitat|kapazität|product|produkt)/.test(headKey(first.label));
    this.head = isHead && (this.width > 1 || isRole(first.cells[0]!)) ? first.cells.map(plainLine) : [];
    const rows = this.head.length > 0 && (isOnlyHead || isRole(this.head[0]!)) ? table.slice(1) : table;
    const measured = first && isHead && isOnlyHead ? measuredBy(first.cells) : undefined;
    this.rows = measured ? [{ ...first!, label: measured }, ...table.slice(1)] : rows;
    this.variants = this.width > 1 && !this.saysMoreOfOne() ? this.names(table) : [];
  }

  private names(table: readonly SheetRow[]): string[] {
    const named =
      this.head.length > 0
        ? this.head
        : (table.find((row) => isHeadLabel(row.label) && row.cells.length === this.width)?.cells ??
          namesAbove(table[0]));
    return Array.from({ length: this.width }, (_, index) => plainLine(named[index] ?? '') || `column ${index + 1}`);
  }

  /** Whether the columns are no variants: a unit, a note, the same in inches, ends of a range, rails, sizes. */
  private saysMoreOfOne(): boolean {
    if (this.head.some((one) => isRole(one))) return true;
    if (this.isOf((one) => wordOf(RAIL_WORDS, one) !== undefined) || this.isOf((one) => SIZE.test(one))) return true;
    if (this.rows.filter(({ label }) => wordOf(RAIL_WORDS, label) !== undefined).length > 1) return true;
    const second = this.rows.flatMap(({ cells }) => (cells.length > 1 ? [cells[1]!] : []));
    if (this.width !== 2 || second.length === 0) return false;
    if (second.every((cell) => isUnit(cell) || isBlank(cell))) return true;
    return this.rows.filter(({ cells }) => cells.length > 1).every(({ cells }) => isSameMeasure(cells[0]!, cells[1]!));
  }

  /** A variant by its name, or by what its column says of name, capacity and the like. */
  chosen(variant: string): number | undefined {
    const own = indexOf(this.variants, variant);
    if (own !== undefined || this.variants.length === 0) return own;
    const full = this.rows.filter(({ cells }) => cells.length === this.width);
    const aliases = full.filter(({ label }) => isHeadLabel(label)).map(({ cells }) => indexOf(cells, variant));
    return aliases.find((index) => index !== undefined) ?? onlyCell(full, variant);
  }

  private isOf(test: (one: string) => boolean): boolean {
    return this.head.length > 1 && this.head.filter(test).length >= 2;
  }

  /** The lines that a row comes to; `undecided` where its variants differ and none was chosen. */
  lineOf(row: SheetRow, chosen: number | undefined): readonly Line[] | 'undecided' {
    const { cells } = row;
    if (cells.length === 2 && ofModules(cells[0]!)) return [lineOf(row, cells.join(' '))];
    if (this.variants.length === 0 && this.width > 1) return this.inOne(row);
    if (cells.length <= 1 || this.variants.length === 0) return [lineOf(row, cells[0] ?? '')];
    if (chosen !== undefined) return cells.length > this.width ? 'undecided' : [lineOf(row, cells[chosen] ?? '')];
    const same = cells.length === this.width && cells.every((cell) => labelKey(cell) === labelKey(cells[0]!));
    return same ? [lineOf(row, cells[0]!)] : 'undecided';
  }

  private inOne(row: SheetRow): Line[] {
    const { cells, label } = row;
    if (
      this.isOf((one) => wordOf(RAIL_WORDS, one) !== undefined) &&
      /\b(?:peak|spitze\w{0,8}|min(?:\.|imum)?)\b/i.test(label)
    )
      return [];
    if (cells.length > 1 && this.isOf((one) => wordOf(RAIL_WORDS, one) !== undefined))
      return cells.map((cell, index) => ({ ...lineOf(row, cell), label: this.head[index] ?? '', heading: label }));
    if (this.isOf((one) => SIZE.test(one))) {
      const places = cells.flatMap((cell, index) =>
        /^\d$/.test(cell) && cell !== '0' ? [`${cell} x ${this.head[index]}`] : [],
      );
      return [lineOf(row, places.join(' / '))];
    }
    if (wordOf(RAIL_WORDS, label) !== undefined) return this.railLine(row);
    return [this.merged(row)];
  }

  private railLine(row: SheetRow): Line[] {
    const at = this.head.findIndex((one) => /current|strom|ampere|\bA\b|load/i.test(one));
    const cell = at >= 0 ? row.cells[at] : row.cells.find((one) => /^\d+(?:[.,]\d+)? ?A$/i.test(one));
    return cell === undefined ? [] : [lineOf(row, /\d$/.test(cell) ? `${cell} A` : cell)];
  }

  /** Value and unit side by side; a note that takes its plainness away; of several limits the one that stands alone. */
  private merged(row: SheetRow): Line {
    const { cells } = row;
    const counted = countAt(this.head);
    if (counted >= 0) return lineOf(row, cells[counted] ?? '');
    const head = (index: number): string => this.head[index] ?? '';
    const unit = cells.find((cell, index) => UNIT_HEADS.test(head(index)) || (index > 0 && isUnit(cell))) ?? '';
    const notes = cells.filter((_, index) => NOTE_HEADS.test(head(index)));
    const rest = cells.filter(
      (cell, index) =>
        cell !== unit && !NOTE_HEADS.test(head(index)) && !IMPERIAL_HEADS.test(head(index)) && !isBlank(cell),
    );
    const isLimits = this.head.some((one) => LIMIT_HEADS.test(one));
    const value = isLimits && rest.length > 1 ? '' : (rest[0] ?? '');
    const most = isLimits && value !== '' && /^max/i.test(head(cells.indexOf(value))) ? ' max.' : '';
    const isBare = /\d$/.test(value);
    return {
      ...lineOf(row, `${value}${unit !== '' && isBare ? ` ${unit}` : ''}${most}`),
      isUnsure: notes.some((note) => isHedged(note)) || (isLimits && /^min/i.test(head(cells.indexOf(value)))),
    };
  }
}

/** What the first row says of each column, where it says of each another thing. */
const namesAbove = (first: SheetRow | undefined): readonly string[] =>
  first !== undefined && new Set(first.cells.map(labelKey)).size === first.cells.length ? first.cells : [];

/** How many columns most rows of a table have, of those that have several; a stray line is none of them. */
function widthOf(widths: readonly number[]): number {
  const several = widths.filter((width) => width > 1);
  const times = (width: number): number => several.filter((one) => one === width).length;
  const widest = Math.max(1, ...several);
  const usual = several.toSorted((a, b) => times(b) - times(a) || b - a)[0] ?? 1;
  return times(usual) >= 3 && times(usual) >= 3 * times(widest) ? usual : widest;
}

/** How many modules of how many ranks: `2x1R`, `2x1R, 4x2R`. */
const ofModules = (cell: string): boolean => /^\d ?x ?[12]R(?:, \d ?x ?[12]R){0,7}$/i.test(cell);

/** What heads of columns say by themselves: `500 GB`, `1 TB`; `650 W`, `750 W`. */
function measuredBy(cells: readonly string[]): string | undefined {
  if (cells.length > 0 && cells.every((cell) => /^\d{1,4}(?:[.,]\d)? ?[GT]B$/i.test(cell))) return 'Capacity';
  return cells.length > 1 && cells.every((cell) => /^\d{3,4} ?W(?:att)?$/i.test(cell)) ? 'Rated power' : undefined;
}

const countAt = (heads: readonly string[]): number => heads.findIndex((one) => COUNT_HEADS.test(one));

const isRole = (head: string): boolean =>
  [UNIT_HEADS, NOTE_HEADS, COUNT_HEADS, VALUE_HEADS, IMPERIAL_HEADS, LIMIT_HEADS].some((role) => role.test(head));

const lineOf = ({ label, heading, line, table, isLoose = false }: SheetRow, text: string): Line => ({
  label,
  heading,
  text,
  line,
  isLoose,
  isUnsure: false,
  table,
});

/** `285 mm` and `11.2 in`, within what rounding makes of it. */
function isSameMeasure(one: string, other: string): boolean {
  for (const dimension of ['length', 'mass'] as const) {
    const [a, b] = [one, other].map((text) => readQuantity(text, dimension, {}).quantity);
    if (a && b && a.unit !== b.unit) return Math.abs(a.hi - b.hi) <= Math.abs(a.hi) * 0.03;
  }
  return false;
}
