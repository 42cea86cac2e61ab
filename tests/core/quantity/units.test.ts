// The table of units, the dimensions, and conversion between a unit and its base.
import { describe, expect, it } from 'vitest';
import {
  currencyCodes,
  dimensions,
  inUnit,
  readQuantity,
  toBase,
  units,
  type Dimension,
  type UnitName,
} from '../../../server/src/core/quantity';
import { unitNamed, unitSpelled } from '../../../server/src/core/quantity/units';

const all = [...units];

describe('the table of units', () => {
  it('reads every spelling of every unit as that unit, without a word about it', () => {
    for (const [name, { dimension, spellings }] of all) {
      for (const spelling of spellings) {
        const { quantity, problem } = readQuantity(`3 ${spelling}`, dimension);
        expect({ spelling, unit: quantity?.unit, lo: quantity?.lo, hi: quantity?.hi, problem }).toEqual({
          spelling,
          unit: name,
          lo: toBase(3, name),
          hi: toBase(3, name),
          problem: undefined,
        });
      }
    }
  });

  it('has no spelling twice within a dimension', () => {
    const seen = all.flatMap(([, { dimension, spellings }]) => spellings.map((spelling) => `${dimension} ${spelling}`));
    expect(seen.filter((each, index) => seen.indexOf(each) !== index)).toEqual([]);
  });

  it('writes every unit by its name, but for the two whose sign means something else elsewhere', () => {
    expect(
      all.filter(([name, { spellings }]) => spellings[0] !== name).map(([name, { spellings }]) => [name, spellings[0]]),
    ).toEqual([
      ['kelvin', 'K'],
      ['bel', 'B'],
    ]);
  });

  it('goes to the base unit and back', () => {
    for (const [name] of all) expect(inUnit(toBase(7.25, name), name)).toBeCloseTo(7.25, 9);
  });

  it('are kept to 15 digits, whole numbers too', () => {
    expect(toBase(1_234_567_890_123_456, 'mm')).toBe(1_234_567_890_123_460);
    expect(toBase(999_999_999_999_999, 'mm')).toBe(999_999_999_999_999);
    expect(toBase(3.5, 'in')).toBe(88.9);
  });

  it('states a factor that agrees with its inverse', () => {
    for (const [, { factor, per }] of all) if (per !== undefined) expect(factor * per).toBeCloseTo(1, 12);
  });

  it('tells how data was counted', () => {
    const notations = (wanted: string): UnitName[] =>
      all.filter(([, { notation }]) => notation === wanted).map(([name]) => name);
    expect(notations('bits')).toEqual([
      'bit',
      'kbit',
      'Mbit',
      'Gbit',
      'Tbit',
      'Kibit',
      'Mibit',
      'Gibit',
      'b/s',
      'kb/s',
      'Mb/s',
      'Gb/s',
      'Tb/s',
      'Mibit/s',
      'Gibit/s',
    ]);
    expect(notations('decimal')).toEqual(['kB', 'MB', 'GB', 'TB', 'PB']);
    expect(notations('binary')).toEqual(['KiB', 'MiB', 'GiB', 'TiB', 'PiB', 'KiB/s', 'MiB/s', 'GiB/s', 'TiB/s']);
    expect(notations('bytes')).toEqual(['B', 'B/s', 'kB/s', 'MB/s', 'GB/s', 'TB/s']);
  });

  it('knows one sign in two dimensions apart', () => {
    expect([
      unitSpelled('B', 'data-size'),
      unitSpelled('B', 'sound-power'),
      unitSpelled('K', 'temperature'),
      unitSpelled('K', 'temperature-difference'),
    ]).toEqual(['B', 'bel', 'kelvin', 'K']);
    expect(unitSpelled('constructor', 'length')).toBeUndefined();
  });

  it('refuses a name that its type does not allow', () => {
    expect(() => unitNamed('cubit' as UnitName)).toThrow(new RangeError('no unit is named cubit'));
  });

  it('holds the currency codes in order, each once', () => {
    expect([...new Set(currencyCodes)].sort()).toEqual([...currencyCodes]);
    expect(currencyCodes.every((code) => /^[A-Z]{3}$/.test(code))).toBe(true);
  });
});

describe('dimensions', () => {
  const entries = Object.entries(dimensions) as [Dimension, (typeof dimensions)[Dimension]][];

  it('names only its own units', () => {
    for (const [dimension, { base, usual, bare, shown }] of entries) {
      const named = [base, ...usual, ...(bare === undefined ? [] : [bare]), ...shown.map(([name]) => name)];
      expect(named.filter((name) => unitNamed(name).dimension !== dimension)).toEqual([]);
    }
  });

  it('has a base unit of size one and without an offset', () => {
    for (const [, { base }] of entries) expect([inUnit(1, base), toBase(1, base)]).toEqual([1, 1]);
  });

  it('shows figures in rising units, each from at least a tenth of itself', () => {
    for (const [dimension, { shown }] of entries) {
      const froms = shown.map(([, from]) => from);
      expect([dimension, froms]).toEqual([dimension, [...froms].sort((one, other) => one - other)]);
      for (const [name, from] of shown.slice(1)) expect(from).toBeGreaterThanOrEqual(toBase(1, name) / 10);
    }
  });

  it('states for each what it is, its base unit and the unit offered to a bare number', () => {
    expect(
      Object.fromEntries(entries.map(([name, { base, what, bare, least }]) => [name, [what, base, bare, least]])),
    ).toEqual({
      length: ['a length', 'mm', 'mm', undefined],
      area: ['an area', 'mm²', 'mm²', 0],
      volume: ['a volume', 'mm³', undefined, 0],
      mass: ['a mass', 'g', undefined, 0],
      power: ['a power', 'W', 'W', 0],
      'apparent-power': ['an apparent power', 'VA', 'VA', 0],
      current: ['a current', 'A', undefined, undefined],
      voltage: ['a voltage', 'V', 'V', undefined],
      resistance: ['a resistance', 'Ω', undefined, 0],
      energy: ['an energy', 'J', undefined, undefined],
      charge: ['a battery charge', 'Ah', undefined, 0],
      frequency: ['a frequency', 'Hz', undefined, 0],
      time: ['a time', 's', undefined, 0],
      temperature: ['a temperature', '°C', '°C', -273.15],
      'temperature-difference': ['a temperature difference', 'K', 'K', undefined],
      'thermal-resistance': ['a thermal resistance', 'K/W', 'K/W', 0],
      conductivity: ['a thermal conductivity', 'W/m·K', 'W/m·K', 0],
      'data-size': ['an amount of data', 'B', undefined, 0],
      'data-rate': ['a data rate', 'B/s', undefined, 0],
      'transfer-rate': ['a transfer rate', 'T/s', undefined, 0],
      flow: ['a flow', 'm³/h', undefined, 0],
      pressure: ['a pressure', 'Pa', undefined, undefined],
      'rotation-speed': ['a speed of rotation', 'rpm', 'rpm', 0],
      'sound-level': ['a sound level', 'dBA', 'dBA', undefined],
      'sound-power': ['a declared sound power', 'bel', undefined, undefined],
      percent: ['a percentage', '%', '%', undefined],
      money: ['a sum of money', 'EUR', undefined, undefined],
      angle: ['an angle', '°', '°', undefined],
      force: ['a force', 'N', 'N', undefined],
      torque: ['a torque', 'N·m', undefined, undefined],
    });
  });
});

describe('conversion', () => {
  it.each<[number, UnitName, number]>([
    [1.1, 'mA', 0.0011],
    [8, 'Gb/s', 1e9],
    [6000, 'MT/s', 6e9],
    [3.5, 'in', 88.9],
    [1, 'GiB', 1_073_741_824],
    [5, 'year', 157_680_000],
    [77, '°F', 25],
    [0, 'kelvin', -273.15],
    [2, 'week', 1_209_600],
    [250, 'l/h', 0.25],
    [1, 'W/m·K', 1],
    [2400, 'EUR', 2400],
  ])('takes %d %s to %d of the base unit, and back', (value, unit, base) => {
    expect(toBase(value, unit)).toBe(base);
    expect(inUnit(base, unit)).toBe(value);
  });
});
