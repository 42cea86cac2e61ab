// What `decode-dimms` prints of memory modules. Serial numbers are never read.
import { endOfLines } from '../text';
import { isFiller, reading, type Reading } from './reading';

export interface SpdModule {
  /** The device it was read from, `0-0050`. */
  readonly device?: Reading<string>;
  readonly maker?: Reading<string>;
  readonly partNumber?: Reading<string>;
  /** `DDR4`; as the data name it, without `SDRAM`. */
  readonly type?: Reading<string>;
  /** `UDIMM`, `SO-DIMM`, as the data name it. */
  readonly moduleType?: Reading<string>;
  readonly capacityMB?: Reading<number>;
  readonly ranks?: Reading<number>;
  /** The standard’s speed, without a profile, MT/s. */
  readonly standardMTs?: Reading<number>;
  /** Whether its bus has bits for error correction; known only where the print goes on behind that line. */
  readonly ecc?: Reading<boolean>;
  /** A class of height, rounded up by the standard, of the bare module. */
  readonly heightMm?: Reading<number>;
  /** False where the tool says that the data’s own check sum fails: nothing else is read then. */
  readonly sound: boolean;
}

interface Row {
  readonly label: string;
  readonly value: string;
  readonly line: number;
}

/** A label and a value stand apart by two blanks, by a tab or, before a table, by a colon. */
function rowOf(text: string): Omit<Row, 'line'> | undefined {
  const ends = ['  ', '\t', ': '].map((mark) => text.indexOf(mark)).filter((at) => at > 2);
  const end = Math.min(...ends);
  const value = Number.isFinite(end) ? text.slice(end + 1).trim() : '';
  return value === '' || value.length > 200 ? undefined : { label: text.slice(0, end), value };
}

export const isSpdPrint = (text: string): boolean =>
  /^Decoding EEPROM: /m.test(text) || (/^Fundamental Memory type\s/m.test(text) && /^Module Type\s/m.test(text));

/** No print is longer; past it nothing is tried. */
const longestPrint = 1_000_000;

/** The modules of a print, in its order; nothing of a line without its end. */
export function readSpd(text: string): SpdModule[] {
  if (text.length > longestPrint) return [];
  const groups: Row[][] = [];
  const lines = text.slice(0, endOfLines(text)).split(/\r\n?|\n/);
  lines.forEach((line, index) => {
    const row = rowOf(line.trimEnd());
    if (!row) return;
    if (row.label === 'Decoding EEPROM' || groups.length === 0) groups.push([]);
    groups.at(-1)!.push({ ...row, line: index + 1 });
  });
  return groups.map(moduleOf).filter((one): one is SpdModule => one !== undefined);
}

function moduleOf(rows: readonly Row[]): SpdModule | undefined {
  const row = (start: string): Row | undefined => rows.find(({ label }) => label.startsWith(start));
  const type = row('Fundamental Memory type');
  if (!type) return undefined;
  const sums = rows.filter(({ label }) => /\b(?:CRC|[Cc]hecksum)\b/.test(label));
  if (sums.some(({ value }) => /^bad\b/i.test(value))) return { sound: false };
  const number = (start: string, form: RegExp): Reading<number> | undefined =>
    read(row(start), (value) => {
      const found = form.exec(value)?.[1];
      return found === undefined ? undefined : Number(found);
    });
  const word = (start: string): Reading<string> | undefined =>
    read(row(start), (value) => (isFiller(value) || /^invalid|^undefined/i.test(value) ? undefined : value));
  return without({
    device: read(row('Decoding EEPROM'), (value) => /([^/\s]{1,40})$/.exec(value)?.[1]),
    maker: word('Module Manufacturer'),
    partNumber: word('Part Number'),
    type: read(type, (value) => /^((?:LP)?DDR\d?X?) SDRAM$/.exec(value)?.[1]),
    moduleType: word('Module Type'),
    capacityMB: number('Size', /^(\d{2,7}) MB$/),
    ranks: number('Ranks', /^([1-8])$/),
    standardMTs: number('Maximum module speed', /^(\d{3,5}) MT\/s\b/),
    ecc: eccOf(rows),
    heightMm: number('Module Height', /^(\d{2}) mm$/),
    sound: true,
  });
}

const without = (module: { [K in keyof SpdModule]: SpdModule[K] | undefined }): SpdModule =>
  Object.fromEntries(Object.entries(module).filter(([, value]) => value !== undefined)) as unknown as SpdModule;

function read<T>(row: Row | undefined, take: (value: string) => T | undefined): Reading<T> | undefined {
  const value = row && take(row.value);
  return row && value !== undefined ? reading(value, `${row.label}: ${row.value}`, row.line) : undefined;
}

/** The line of the extra bits is printed only where there are some, straight behind the width of the bus. */
function eccOf(rows: readonly Row[]): Reading<boolean> | undefined {
  const width = rows.findIndex(({ label, value }) => label === 'Primary Bus Width' && /^\d{2} bits$/.test(value));
  const next = rows[width + 1];
  if (width < 0 || !next) return undefined;
  if (next.label.startsWith('AA-RCD')) return read(rows[width], () => false);
  if (next.label !== 'Bus Width Extension') return undefined;
  return read(next, (value) => (/^[48] bits$/.test(value) ? true : undefined));
}
