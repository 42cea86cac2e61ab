// What can be measured: base unit, plain words, usual units, and the units a figure is shown in.
import type { Dimension } from './types';
import type { UnitName } from './units';

export interface DimensionFacts {
  /** The unit of plain numbers in code. */
  readonly base: UnitName;
  /** With its article, for sentences: “a length”. */
  readonly what: string;
  /** Units people write, most usual first: for hover, schema documentation and completion. */
  readonly usual: readonly UnitName[];
  /** The unit offered to a bare number; absent where the trade writes several. */
  readonly bare?: UnitName;
  /** The least value that can be, in the base unit; absent where negative values mean something. */
  readonly least?: number;
  /**
   * Units a figure is shown in, with the base value from which each is used, rising; the first is used for all below.
   */
  readonly shown: readonly (readonly [UnitName, number])[];
}

const dayS = 86_400;

export const dimensions: Readonly<Record<Dimension, DimensionFacts>> = {
  length: {
    base: 'mm',
    what: 'a length',
    usual: ['mm', 'cm', 'm', 'in'],
    bare: 'mm',
    shown: [
      ['µm', 0],
      ['mm', 0.1],
      ['m', 1000],
      ['km', 1e7],
    ],
  },
  area: {
    base: 'mm²',
    what: 'an area',
    usual: ['mm²', 'cm²', 'm²'],
    bare: 'mm²',
    least: 0,
    shown: [
      ['mm²', 0],
      ['cm²', 1e4],
      ['m²', 1e6],
    ],
  },
  volume: {
    base: 'mm³',
    what: 'a volume',
    usual: ['mm³', 'ml', 'l'],
    least: 0,
    shown: [
      ['mm³', 0],
      ['ml', 1000],
      ['l', 1e6],
    ],
  },
  mass: {
    base: 'g',
    what: 'a mass',
    usual: ['g', 'kg'],
    least: 0,
    shown: [
      ['mg', 0],
      ['g', 0.1],
      ['kg', 1000],
    ],
  },
  power: {
    base: 'W',
    what: 'a power',
    usual: ['W', 'mW', 'kW'],
    bare: 'W',
    least: 0,
    shown: [
      ['mW', 0],
      ['W', 1],
      ['kW', 1e4],
    ],
  },
  'apparent-power': {
    base: 'VA',
    what: 'an apparent power',
    usual: ['VA', 'kVA'],
    bare: 'VA',
    least: 0,
    shown: [
      ['VA', 0],
      ['kVA', 1e4],
    ],
  },
  current: {
    base: 'A',
    what: 'a current',
    usual: ['A', 'mA'],
    shown: [
      ['µA', 0],
      ['mA', 0.001],
      ['A', 1],
    ],
  },
  voltage: {
    base: 'V',
    what: 'a voltage',
    usual: ['V', 'mV', 'kV'],
    bare: 'V',
    shown: [
      ['µV', 0],
      ['mV', 0.001],
      ['V', 0.1],
      ['kV', 1000],
    ],
  },
  resistance: {
    base: 'Ω',
    what: 'a resistance',
    usual: ['Ω', 'mΩ', 'kΩ', 'MΩ'],
    least: 0,
    shown: [
      ['mΩ', 0],
      ['Ω', 1],
      ['kΩ', 1000],
      ['MΩ', 1e6],
      ['GΩ', 1e9],
      ['TΩ', 1e12],
    ],
  },
  energy: {
    base: 'J',
    what: 'an energy',
    usual: ['J', 'mJ', 'Wh', 'kWh'],
    shown: [
      ['nJ', 0],
      ['µJ', 1e-6],
      ['mJ', 0.001],
      ['J', 1],
      ['kJ', 1000],
      ['kWh', 3.6e6],
    ],
  },
  charge: {
    base: 'Ah',
    what: 'a battery charge',
    usual: ['mAh', 'Ah'],
    least: 0,
    shown: [
      ['mAh', 0],
      ['Ah', 1],
    ],
  },
  frequency: {
    base: 'Hz',
    what: 'a frequency',
    usual: ['Hz', 'kHz', 'MHz', 'GHz'],
    least: 0,
    shown: [
      ['Hz', 0],
      ['kHz', 1e3],
      ['MHz', 1e6],
      ['GHz', 1e9],
    ],
  },
  time: {
    base: 's',
    what: 'a time',
    usual: ['s', 'min', 'h', 'day', 'year'],
    least: 0,
    shown: [
      ['ns', 0],
      ['µs', 1e-6],
      ['ms', 0.001],
      ['s', 1],
      ['min', 120],
      ['h', 7200],
      ['day', 2 * dayS],
      ['year', 730 * dayS],
    ],
  },
  temperature: {
    base: '°C',
    what: 'a temperature',
    usual: ['°C', '°F', 'kelvin'],
    bare: '°C',
    least: -273.15,
    shown: [['°C', 0]],
  },
  'temperature-difference': { base: 'K', what: 'a temperature difference', usual: ['K'], bare: 'K', shown: [['K', 0]] },
  'thermal-resistance': {
    base: 'K/W',
    what: 'a thermal resistance',
    usual: ['K/W'],
    bare: 'K/W',
    least: 0,
    shown: [['K/W', 0]],
  },
  conductivity: {
    base: 'W/m·K',
    what: 'a thermal conductivity',
    usual: ['W/m·K'],
    bare: 'W/m·K',
    least: 0,
    shown: [['W/m·K', 0]],
  },
  'data-size': {
    base: 'B',
    what: 'an amount of data',
    usual: ['GB', 'TB', 'MB', 'kB', 'GiB', 'MiB'],
    least: 0,
    shown: [
      ['B', 0],
      ['kB', 1e3],
      ['MB', 1e6],
      ['GB', 1e9],
      ['TB', 1e12],
      ['PB', 1e15],
    ],
  },
  'data-rate': {
    base: 'B/s',
    what: 'a data rate',
    usual: ['GB/s', 'MB/s', 'Gb/s', 'Mb/s', 'GiB/s'],
    least: 0,
    shown: [
      ['B/s', 0],
      ['kB/s', 1e3],
      ['MB/s', 1e6],
      ['GB/s', 1e9],
      ['TB/s', 1e12],
    ],
  },
  'transfer-rate': {
    base: 'T/s',
    what: 'a transfer rate',
    usual: ['MT/s', 'GT/s'],
    least: 0,
    shown: [
      ['T/s', 0],
      ['MT/s', 1e6],
      ['GT/s', 1e10],
    ],
  },
  flow: { base: 'm³/h', what: 'a flow', usual: ['m³/h', 'CFM', 'l/min', 'l/h'], least: 0, shown: [['m³/h', 0]] },
  pressure: {
    base: 'Pa',
    what: 'a pressure',
    usual: ['Pa', 'mmH₂O', 'hPa', 'kPa', 'bar'],
    shown: [
      ['Pa', 0],
      ['kPa', 1e4],
    ],
  },
  'rotation-speed': {
    base: 'rpm',
    what: 'a speed of rotation',
    usual: ['rpm'],
    bare: 'rpm',
    least: 0,
    shown: [['rpm', 0]],
  },
  'sound-level': { base: 'dBA', what: 'a sound level', usual: ['dBA'], bare: 'dBA', shown: [['dBA', 0]] },
  'sound-power': { base: 'bel', what: 'a declared sound power', usual: ['bel'], shown: [['bel', 0]] },
  percent: { base: '%', what: 'a percentage', usual: ['%'], bare: '%', shown: [['%', 0]] },
  money: { base: 'EUR', what: 'a sum of money', usual: ['EUR', 'USD', 'GBP'], shown: [] },
  angle: { base: '°', what: 'an angle', usual: ['°'], bare: '°', shown: [['°', 0]] },
  force: { base: 'N', what: 'a force', usual: ['N'], bare: 'N', shown: [['N', 0]] },
  torque: { base: 'N·m', what: 'a torque', usual: ['N·m', 'N·cm'], shown: [['N·m', 0]] },
};
