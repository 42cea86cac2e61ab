// The one table of units: dimension, size in the base unit, and the spellings that are read.
import type { Dimension, Notation } from './types';
import { currencyCodes, type CurrencyCode } from './currencies';

/**
 * One unit. `base = (value − offset) × factor`, worked out as `(value − offset) ÷ per` where `per` is stated,
 * so that 1.1 mA is 0.0011 A exactly.
 */
export interface Unit {
  readonly dimension: Dimension;
  /** Base units in one of this unit. */
  readonly factor: number;
  /** How many of this unit make one base unit, for units smaller than it. */
  readonly per?: number;
  /** What this unit reads where the base unit reads 0 (temperatures only). */
  readonly offset?: number;
  /** Every spelling that is read; the first is the one that is written. */
  readonly spellings: readonly [string, ...string[]];
  /** Written after any number but 1, where it differs. */
  readonly plural?: string;
  readonly notation?: Notation;
}

type Row = Omit<Unit, 'spellings'> & { readonly symbol?: string; readonly also?: readonly string[] };
type More = Partial<Pick<Row, 'symbol' | 'also' | 'plural' | 'notation' | 'offset'>>;

const big = (dimension: Dimension, factor: number, more: More = {}): Row => ({ dimension, factor, ...more });
const small = (dimension: Dimension, per: number, more: More = {}): Row => ({
  dimension,
  factor: 1 / per,
  per,
  ...more,
});
const bits = (dimension: Dimension, count: number, ...also: string[]): Row => ({
  ...(count < 8 ? small(dimension, 8 / count) : big(dimension, count / 8)),
  notation: 'bits',
  also,
});
const size = (factor: number, notation: Notation): Row => big('data-size', factor, { notation });
const rate = (factor: number, notation: Notation): Row => big('data-rate', factor, { notation });

const Ki = 1024,
  Mi = Ki ** 2,
  Gi = Ki ** 3,
  Ti = Ki ** 4,
  Pi = Ki ** 5;
/** International foot and avoirdupois pound: exact by the 1959 agreement. */
const footM = 0.3048,
  poundG = 453.59237;
/** Standard acceleration of free fall, m/s², exact; water columns are conventional: 1000 kg/m³. */
const gravity = 9.80665;
/** One BTU (International Table) in joules. */
const btuJ = 1055.05585262;

const rows = {
  mm: big('length', 1),
  µm: small('length', 1000, { also: ['um'] }),
  cm: big('length', 10),
  m: big('length', 1000),
  km: big('length', 1e6),
  in: big('length', 25.4, { also: ['″', '"'] }),
  ft: big('length', footM * 1000),

  'mm²': big('area', 1, { also: ['mm2', 'mm^2'] }),
  'cm²': big('area', 100, { also: ['cm2', 'cm^2'] }),
  'm²': big('area', 1e6, { also: ['m2', 'm^2'] }),
  'in²': big('area', 645.16, { also: ['in2', 'in^2', 'sq in'] }),

  'mm³': big('volume', 1, { also: ['mm3', 'mm^3', 'µl', 'µL', 'ul', 'uL'] }),
  ml: big('volume', 1000, { also: ['mL', 'cm³', 'cm3', 'cm^3'] }),
  l: big('volume', 1e6, { also: ['L', 'dm³', 'dm3'] }),
  'm³': big('volume', 1e9, { also: ['m3', 'm^3'] }),

  mg: small('mass', 1000),
  g: big('mass', 1),
  kg: big('mass', 1000),
  lb: big('mass', poundG),
  oz: big('mass', poundG / 16),

  µW: small('power', 1e6, { also: ['uW'] }),
  mW: small('power', 1000),
  W: big('power', 1),
  kW: big('power', 1000),
  MW: big('power', 1e6),
  'BTU/h': big('power', btuJ / 3600, { also: ['Btu/h', 'BTU/hr', 'Btu/hr'] }),
  VA: big('apparent-power', 1),
  kVA: big('apparent-power', 1000),

  nA: small('current', 1e9),
  µA: small('current', 1e6, { also: ['uA'] }),
  mA: small('current', 1000),
  A: big('current', 1),
  µV: small('voltage', 1e6, { also: ['uV'] }),
  mV: small('voltage', 1000),
  V: big('voltage', 1),
  kV: big('voltage', 1000),
  mΩ: small('resistance', 1000, { also: ['mohm'] }),
  Ω: big('resistance', 1, { also: ['ohm', 'ohms'] }),
  kΩ: big('resistance', 1000, { also: ['kohm'] }),
  MΩ: big('resistance', 1e6, { also: ['Mohm'] }),
  GΩ: big('resistance', 1e9, { also: ['Gohm'] }),
  TΩ: big('resistance', 1e12, { also: ['Tohm'] }),

  nJ: small('energy', 1e9),
  µJ: small('energy', 1e6, { also: ['uJ'] }),
  mJ: small('energy', 1000),
  J: big('energy', 1),
  kJ: big('energy', 1000),
  MJ: big('energy', 1e6),
  Wh: big('energy', 3600, { also: ['W·h', 'VAh', 'V·Ah'] }),
  kWh: big('energy', 3.6e6, { also: ['kW·h'] }),
  MWh: big('energy', 3.6e9),
  mAh: small('charge', 1000, { also: ['mA·h'] }),
  Ah: big('charge', 1, { also: ['A·h'] }),

  Hz: big('frequency', 1),
  kHz: big('frequency', 1e3),
  MHz: big('frequency', 1e6),
  GHz: big('frequency', 1e9),
  ns: small('time', 1e9),
  µs: small('time', 1e6, { also: ['us'] }),
  ms: small('time', 1000),
  s: big('time', 1, { also: ['second', 'seconds'] }),
  min: big('time', 60, { also: ['minute', 'minutes'] }),
  h: big('time', 3600, { also: ['hour', 'hours'] }),
  day: big('time', 86_400, { plural: 'days', also: ['days', 'd'] }),
  week: big('time', 604_800, { plural: 'weeks', also: ['weeks'] }),
  // A year is 365 d, as drive makers count endurance; a leap day is within every figure that uses it.
  year: big('time', 365 * 86_400, { plural: 'years', also: ['years', 'a'] }),

  '°C': big('temperature', 1),
  '°F': small('temperature', 1.8, { offset: 32 }),
  kelvin: big('temperature', 1, { symbol: 'K', offset: 273.15 }),
  K: big('temperature-difference', 1),
  'mK/W': small('thermal-resistance', 1000),
  'K/W': big('thermal-resistance', 1, { also: ['°C/W'] }),
  'W/m·K': big('conductivity', 1, { also: ['W/(m·K)', 'W/mK', 'W/m-K', 'W/(m K)', 'W/(mK)', 'W/(m*K)', 'W/m*K'] }),

  bit: bits('data-size', 1, 'bits'),
  kbit: bits('data-size', 1e3),
  Mbit: bits('data-size', 1e6),
  Gbit: bits('data-size', 1e9),
  Tbit: bits('data-size', 1e12),
  Kibit: bits('data-size', Ki),
  Mibit: bits('data-size', Mi),
  Gibit: bits('data-size', Gi),
  B: big('data-size', 1, { notation: 'bytes', also: ['byte', 'bytes'] }),
  kB: size(1e3, 'decimal'),
  MB: size(1e6, 'decimal'),
  GB: size(1e9, 'decimal'),
  TB: size(1e12, 'decimal'),
  PB: size(1e15, 'decimal'),
  KiB: size(Ki, 'binary'),
  MiB: size(Mi, 'binary'),
  GiB: size(Gi, 'binary'),
  TiB: size(Ti, 'binary'),
  PiB: size(Pi, 'binary'),

  'b/s': bits('data-rate', 1, 'bit/s'),
  'kb/s': bits('data-rate', 1e3, 'kbit/s'),
  'Mb/s': bits('data-rate', 1e6, 'Mbit/s'),
  'Gb/s': bits('data-rate', 1e9, 'Gbit/s'),
  'Tb/s': bits('data-rate', 1e12, 'Tbit/s'),
  'Mibit/s': bits('data-rate', Mi, 'Mib/s'),
  'Gibit/s': bits('data-rate', Gi, 'Gib/s'),
  'B/s': rate(1, 'bytes'),
  'kB/s': rate(1e3, 'bytes'),
  'MB/s': rate(1e6, 'bytes'),
  'GB/s': rate(1e9, 'bytes'),
  'TB/s': rate(1e12, 'bytes'),
  'KiB/s': rate(Ki, 'binary'),
  'MiB/s': rate(Mi, 'binary'),
  'GiB/s': rate(Gi, 'binary'),
  'TiB/s': rate(Ti, 'binary'),
  'T/s': big('transfer-rate', 1),
  'MT/s': big('transfer-rate', 1e6),
  'GT/s': big('transfer-rate', 1e9),

  'm³/h': big('flow', 1, { also: ['m3/h', 'm^3/h'] }),
  'm³/s': big('flow', 3600, { also: ['m3/s', 'm^3/s'] }),
  CFM: big('flow', footM ** 3 * 60, { also: ['cfm', 'ft³/min', 'ft3/min'] }),
  'l/min': big('flow', 0.06, { also: ['L/min'] }),
  'l/h': small('flow', 1000, { also: ['L/h'] }),
  'l/s': big('flow', 3.6, { also: ['L/s'] }),
  Pa: big('pressure', 1),
  hPa: big('pressure', 100),
  kPa: big('pressure', 1000),
  mbar: big('pressure', 100),
  bar: big('pressure', 1e5),
  'mmH₂O': big('pressure', gravity, { also: ['mmH2O', 'mm H₂O', 'mm H2O'] }),
  'inH₂O': big('pressure', gravity * 25.4, { also: ['inH2O', 'in H₂O', 'in H2O'] }),
  psi: big('pressure', (poundG * gravity) / 1000 / 0.0254 ** 2),
  rpm: big('rotation-speed', 1, { also: ['RPM', '1/min', 'r/min', 'min⁻¹', 'rev/min'] }),

  dBA: big('sound-level', 1, { also: ['dB(A)', 'dB (A)', 'dB A'] }),
  // Declared sound power after ISO 9296 is in bels, so that nobody takes it for a level at the ear in dB.
  bel: big('sound-power', 1, { symbol: 'B', also: ['bel', 'bels'] }),
  '%': big('percent', 1),
  '°': big('angle', 1, { also: ['deg'] }),
  mN: small('force', 1000),
  N: big('force', 1),
  kN: big('force', 1000),
  kgf: big('force', gravity),
  lbf: big('force', (poundG * gravity) / 1000),
  N·m: big('torque', 1, { also: ['Nm', 'N m', 'N*m'] }),
  N·cm: small('torque', 100, { also: ['Ncm', 'N cm', 'N*cm'] }),
  mN·m: small('torque', 1000, { also: ['mNm'] }),
  kgf·cm: big('torque', gravity / 100, { also: ['kgf cm', 'kgf*cm'] }),
  lbf·in: big('torque', (poundG * gravity * 0.0254) / 1000, { also: ['lbf in', 'in·lbf'] }),
} satisfies Record<string, Row>;

/** A unit's own name. It is what is written, but for `kelvin` (written K, absolute) and `bel` (written B). */
export type UnitName = keyof typeof rows | CurrencyCode;

/** Every unit by its name, currencies included. */
export const units: ReadonlyMap<UnitName, Unit> = new Map<UnitName, Unit>([
  ...Object.entries<Row>(rows).map(([name, { symbol = name, also = [], ...unit }]): [UnitName, Unit] => [
    name as UnitName,
    { ...unit, spellings: [symbol, ...also] },
  ]),
  ...currencyCodes.map((code): [UnitName, Unit] => [code, { ...big('money', 1), spellings: [code] }]),
]);

/** The unit of that name. Its type says that it exists. */
export function unitNamed(name: UnitName): Unit {
  const unit = units.get(name);
  if (unit === undefined) throw new RangeError(`no unit is named ${name}`);
  return unit;
}

const byDimension = new Map<Dimension, Map<string, UnitName>>();
for (const [name, { dimension, spellings }] of units) {
  const known = byDimension.get(dimension) ?? new Map<string, UnitName>();
  byDimension.set(dimension, known);
  for (const spelling of spellings) known.set(spelling, name);
}

/** The spellings read in a dimension, each with its unit's name. */
export function spellingsOf(dimension: Dimension): ReadonlyMap<string, UnitName> {
  return byDimension.get(dimension) ?? new Map<string, UnitName>();
}

/** The unit that a spelling names in a dimension: `B` is the byte in an amount of data and the bel in a sound power. */
export function unitSpelled(spelling: string, dimension: Dimension): UnitName | undefined {
  return byDimension.get(dimension)?.get(spelling);
}
