// Reading quantities: plain ones, ranges, and what is said about each doubtful way of writing.
import { describe, expect, it } from 'vitest';
import { readQuantity, type Dimension, type UnitName } from '../../../server/src/core/quantity';
import type { QuantityProblemCode } from '../../../server/src/core/quantity/types';

describe('a value with its unit', () => {
  it.each<[string, Dimension, number, UnitName]>([
    ['6000 MT/s', 'transfer-rate', 6e9, 'MT/s'],
    ['158 mm', 'length', 158, 'mm'],
    ['158mm', 'length', 158, 'mm'],
    ['  158   mm ', 'length', 158, 'mm'],
    ['+5 mm', 'length', 5, 'mm'],
    ['0 mm', 'length', 0, 'mm'],
    ['-2 m', 'length', -2000, 'm'],
    ['3.5 in', 'length', 88.9, 'in'],
    ['5.25"', 'length', 133.35, 'in'],
    ['31 °C', 'temperature', 31, '°C'],
    ['-5 °C', 'temperature', -5, '°C'],
    ['-273.15 °C', 'temperature', -273.15, '°C'],
    ['77 °F', 'temperature', 25, '°F'],
    ['22 %', 'percent', 22, '%'],
    ['1 MΩ', 'resistance', 1e6, 'MΩ'],
    ['1 M\u2126', 'resistance', 1e6, 'MΩ'],
    ['5 \u03BCs', 'time', 5e-6, 'µs'],
    ['300 \u212A', 'temperature', 26.85, 'kelvin'],
    ['2 N\u22C5m', 'torque', 2, 'N·m'],
    ['32 dB(A)', 'sound-level', 32, 'dBA'],
    ['4.6 B', 'sound-power', 4.6, 'bel'],
    ['1200 1/min', 'rotation-speed', 1200, 'rpm'],
    ['10l', 'volume', 1e7, 'l'],
    ['60 mm3', 'volume', 60, 'mm³'],
    ['2 mm H2O', 'pressure', 19.6133, 'mmH₂O'],
    ['-0 W', 'power', 0, 'W'],
    ['5 years', 'time', 157_680_000, 'year'],
    ['1.200 V', 'voltage', 1.2, 'V'],
  ])('%s', (text, dimension, base, unit) => {
    expect(readQuantity(text, dimension)).toEqual({ quantity: { dimension, lo: base, hi: base, unit, text } });
  });

  it('keeps the currency of money', () => {
    expect(readQuantity('2400 EUR', 'money')).toEqual({
      quantity: { dimension: 'money', lo: 2400, hi: 2400, unit: 'EUR', text: '2400 EUR', currency: 'EUR' },
    });
    expect(readQuantity('-20 SEK', 'money').quantity).toMatchObject({ lo: -20, currency: 'SEK' });
  });

  it('keeps whether data was counted in bits or bytes', () => {
    expect(readQuantity('5 Gb/s', 'data-rate').quantity).toEqual({
      dimension: 'data-rate',
      lo: 625e6,
      hi: 625e6,
      unit: 'Gb/s',
      text: '5 Gb/s',
      notation: 'bits',
    });
    expect(readQuantity('5 GB/s', 'data-rate').quantity).toMatchObject({ lo: 5e9, notation: 'bytes' });
    expect(readQuantity('5 Gbit/s', 'data-rate').quantity).toMatchObject({ lo: 625e6, unit: 'Gb/s' });
    expect(readQuantity('2 GiB', 'data-size').quantity).toMatchObject({ lo: 2_147_483_648, notation: 'binary' });
    expect(readQuantity('2 GB', 'data-size').quantity).toMatchObject({ lo: 2e9, notation: 'decimal' });
  });

  it('has the keys of what is there only', () => {
    expect(Object.keys(readQuantity('1 mm', 'length').quantity ?? {})).toEqual([
      'dimension',
      'lo',
      'hi',
      'unit',
      'text',
    ]);
  });
});

describe('a range', () => {
  it.each<[string, Dimension, number, number, UnitName]>([
    ['150 mm to 160 mm', 'length', 150, 160, 'mm'],
    ['150 to 160 mm', 'length', 150, 160, 'mm'],
    ['150–160 mm', 'length', 150, 160, 'mm'],
    ['150-160 mm', 'length', 150, 160, 'mm'],
    ['150 - 160mm', 'length', 150, 160, 'mm'],
    ['150  to  160 mm', 'length', 150, 160, 'mm'],
    ['1 cm to 160 mm', 'length', 10, 160, 'mm'],
    ['160 to 160 mm', 'length', 160, 160, 'mm'],
    ['at most 160 mm', 'length', -Infinity, 160, 'mm'],
    ['up to 160 mm', 'length', -Infinity, 160, 'mm'],
    ['≤ 160 mm', 'length', -Infinity, 160, 'mm'],
    ['≤160 mm', 'length', -Infinity, 160, 'mm'],
    ['<= 160 mm', 'length', -Infinity, 160, 'mm'],
    ['At most 160 mm', 'length', -Infinity, 160, 'mm'],
    ['at least 150 mm', 'length', 150, Infinity, 'mm'],
    ['≥ 150 mm', 'length', 150, Infinity, 'mm'],
    ['>=150 mm', 'length', 150, Infinity, 'mm'],
    ['-10 to -5 °C', 'temperature', -10, -5, '°C'],
    ['-10–-5 °C', 'temperature', -10, -5, '°C'],
    ['-10-5 °C', 'temperature', -10, 5, '°C'],
    ['0 to 2 W', 'power', 0, 2, 'W'],
  ])('%s', (text, dimension, lo, hi, unit) => {
    expect(readQuantity(text, dimension)).toEqual({ quantity: { dimension, lo, hi, unit, text } });
  });
});

type Problem = [
  text: string,
  dimension: Dimension,
  code: QuantityProblemCode,
  at: [number, number],
  message: string,
  suggestions: string[],
  usual?: UnitName,
];

function expectProblem(
  text: string,
  dimension: Dimension,
  code: QuantityProblemCode,
  [start, end]: [number, number],
  message: string,
  suggestions: string[],
  usual?: UnitName,
): void {
  expect(readQuantity(text, dimension, { usual })).toEqual({ problem: { code, message, start, end, suggestions } });
}

describe('a problem instead of a value', () => {
  it.each<Problem>([
    ['158', 'length', 'unit-missing', [0, 3], '`158` has no unit; write `158 mm`.', ['158 mm'], 'mm'],
    ['158', 'length', 'unit-missing', [0, 3], '`158` has no unit; write `158 mm`.', ['158 mm']],
    ['2', 'length', 'unit-missing', [0, 1], '`2` has no unit; write `2 m`.', ['2 m'], 'm'],
    [
      ' 2',
      'data-size',
      'unit-missing',
      [1, 2],
      '`2` has no unit; add the one that is meant, such as `GB` or `TB` or `MB`.',
      [],
    ],
    ['300', 'temperature', 'unit-missing', [0, 3], '`300` has no unit; write `300 K`.', ['300 K'], 'kelvin'],
    [
      'at most 158',
      'length',
      'unit-missing',
      [8, 11],
      '`158` has no unit; write `at most 158 mm`.',
      ['at most 158 mm'],
    ],
    [
      '150 mm to 160',
      'length',
      'unit-missing',
      [10, 13],
      '`160` has no unit; write `150 mm to 160 mm`.',
      ['150 mm to 160 mm'],
      'm',
    ],
    [
      '150 to 160',
      'length',
      'unit-missing',
      [7, 10],
      '`160` has no unit; write `150 to 160 mm`.',
      ['150 to 160 mm'],
      'mm',
    ],
  ])('missing unit: %s', expectProblem);

  it.each<Problem>([
    [
      '5 gb/s',
      'data-rate',
      'unit-unknown',
      [2, 6],
      '`gb/s` can mean `GB/s` or `Gb/s`, bytes or bits, which differ eightfold; write `5 GB/s` or `5 Gb/s`.',
      ['5 GB/s', '5 Gb/s'],
    ],
    [
      '5gbps',
      'data-rate',
      'unit-unknown',
      [1, 5],
      '`gbps` can mean `GB/s` or `Gb/s`, bytes or bits, which differ eightfold; write `5 GB/s` or `5 Gb/s`.',
      ['5 GB/s', '5 Gb/s'],
    ],
    [
      '5 GBps',
      'data-rate',
      'unit-unknown',
      [2, 6],
      '`GBps` is not how a data rate is written; write `5 GB/s`.',
      ['5 GB/s'],
    ],
    [
      '5 Mbps',
      'data-rate',
      'unit-unknown',
      [2, 6],
      '`Mbps` is not how a data rate is written; write `5 Mb/s`.',
      ['5 Mb/s'],
    ],
    [
      '5 GB/sec',
      'data-rate',
      'unit-unknown',
      [2, 8],
      '`GB/sec` is not how a data rate is written; write `5 GB/s`.',
      ['5 GB/s'],
    ],
    [
      '5 MB/second',
      'data-rate',
      'unit-unknown',
      [2, 11],
      '`MB/second` is not how a data rate is written; write `5 MB/s`.',
      ['5 MB/s'],
    ],
    [
      '8 Gb',
      'data-size',
      'unit-unknown',
      [2, 4],
      '`Gb` can mean `GB` or `Gbit`, bytes or bits, which differ eightfold; write `8 GB` or `8 Gbit`.',
      ['8 GB', '8 Gbit'],
    ],
    [
      '8 KB',
      'data-size',
      'unit-unknown',
      [2, 4],
      '`KB` can mean `kB` or `KiB` or `kbit`, bytes or bits, which differ eightfold; write `8 kB` or `8 ' +
        'KiB` or `8 kbit`.',
      ['8 kB', '8 KiB', '8 kbit'],
    ],
    [
      '12 mw',
      'power',
      'unit-unknown',
      [3, 5],
      '`mw` can mean `mW` or `MW`; write `12 mW` or `12 MW`.',
      ['12 mW', '12 MW'],
    ],
    [
      '3 Mhz',
      'frequency',
      'unit-unknown',
      [2, 5],
      '`Mhz` is not how a frequency is written; write `3 MHz`.',
      ['3 MHz'],
    ],
    ['1.2 KW', 'power', 'unit-unknown', [4, 6], '`KW` is not how a power is written; write `1.2 kW`.', ['1.2 kW']],
    [
      '6000 Mt/s',
      'transfer-rate',
      'unit-unknown',
      [5, 9],
      '`Mt/s` is not how a transfer rate is written; write `6000 MT/s`.',
      ['6000 MT/s'],
    ],
    [
      '6000 MT',
      'transfer-rate',
      'unit-unknown',
      [5, 7],
      '`MT` is not how a transfer rate is written; write `6000 MT/s`.',
      ['6000 MT/s'],
    ],
    [
      '31 c',
      'temperature',
      'unit-unknown',
      [3, 4],
      '`c` is not how a temperature is written; write `31 °C`.',
      ['31 °C'],
    ],
    [
      '31 °',
      'temperature',
      'unit-unknown',
      [3, 4],
      '`°` can mean `°C` or `°F`; write `31 °C` or `31 °F`.',
      ['31 °C', '31 °F'],
    ],
    [
      '32 db(a)',
      'sound-level',
      'unit-unknown',
      [3, 8],
      '`db(a)` is not how a sound level is written; write `32 dBA`.',
      ['32 dBA'],
    ],
    ['5 m', 'time', 'unit-unknown', [2, 3], '`m` is not how a time is written; write `5 min`.', ['5 min']],
    [
      '2400 eur',
      'money',
      'unit-unknown',
      [5, 8],
      '`eur` is not how a sum of money is written; write `2400 EUR`.',
      ['2400 EUR'],
    ],
    [
      '€2400',
      'money',
      'unit-unknown',
      [0, 1],
      '`€` is not how a sum of money is written; write `2400 EUR`.',
      ['2400 EUR'],
    ],
    [
      '5 parsec',
      'length',
      'unit-unknown',
      [2, 8],
      '`parsec` is not a unit in which a length is read; use `mm` or `cm` or `m`.',
      [],
    ],
    [
      '5 constructor',
      'length',
      'unit-unknown',
      [2, 13],
      '`constructor` is not a unit in which a length is read; use `mm` or `cm` or `m`.',
      [],
    ],
    [
      '5 constructor',
      'data-size',
      'unit-unknown',
      [2, 13],
      '`constructor` is not a unit in which an amount of data is read; use `GB` or `TB` or `MB`.',
      [],
    ],
    [
      '5 mm/s',
      'length',
      'unit-unknown',
      [2, 6],
      '`mm/s` is not a unit in which a length is read; use `mm` or `cm` or `m`.',
      [],
    ],
    [
      '5 mm/s',
      'data-size',
      'unit-unknown',
      [2, 6],
      '`mm/s` is not a unit in which an amount of data is read; use `GB` or `TB` or `MB`.',
      [],
    ],
    [
      '5 GBxx',
      'data-size',
      'unit-unknown',
      [2, 6],
      '`GBxx` is not a unit in which an amount of data is read; use `GB` or `TB` or `MB`.',
      [],
    ],
    [
      '32 dB(C)',
      'sound-level',
      'unit-unknown',
      [3, 8],
      '`dB(C)` is not a unit in which a sound level is read; use `dBA`.',
      [],
    ],
  ])('wrong unit word: %s', expectProblem);

  it.each<Problem>([
    [
      '6000 MHz',
      'transfer-rate',
      'unit-of-other-dimension',
      [5, 8],
      "`6000 MHz` is a frequency, and a memory's clock runs at half its transfer rate; write the transfers " +
        'per second, in `MT/s`.',
      [],
    ],
    [
      '5 GB',
      'data-rate',
      'unit-of-other-dimension',
      [2, 4],
      '`5 GB` is an amount of data; expected a rate; write `5 GB/s`.',
      ['5 GB/s'],
    ],
    [
      '5 GB/s',
      'data-size',
      'unit-of-other-dimension',
      [2, 6],
      '`5 GB/s` is a data rate; expected an amount of data; write `5 GB`.',
      ['5 GB'],
    ],
    [
      '40 °C',
      'temperature-difference',
      'unit-of-other-dimension',
      [3, 5],
      '`40 °C` is a temperature; expected a difference of temperatures; write `40 K`.',
      ['40 K'],
    ],
    [
      '40 °F',
      'temperature-difference',
      'unit-of-other-dimension',
      [3, 5],
      '`40 °F` is a temperature; expected a temperature difference, in `K`.',
      [],
    ],
    [
      '46 dB',
      'sound-power',
      'unit-of-other-dimension',
      [3, 5],
      '`46 dB` may be a level at the ear; a declared sound power is written in bels, `B`, one for every 10 dB.',
      [],
    ],
    [
      '46 dB(A)',
      'sound-power',
      'unit-of-other-dimension',
      [3, 8],
      '`46 dB(A)` may be a level at the ear; a declared sound power is written in bels, `B`, one for every 10 dB.',
      [],
    ],
    [
      '4.6 B',
      'sound-level',
      'unit-of-other-dimension',
      [4, 5],
      '`4.6 B` is a declared sound power, which is no level at the ear; write the level in `dBA`.',
      [],
    ],
    [
      '65 VA',
      'power',
      'unit-of-other-dimension',
      [3, 5],
      '`65 VA` is an apparent power; expected a power, in `W` or `mW`.',
      [],
    ],
    ['65 W', 'length', 'unit-of-other-dimension', [3, 4], '`65 W` is a power; expected a length, in `mm` or `cm`.', []],
    [
      '100 EUR to 200 USD',
      'money',
      'unit-of-other-dimension',
      [0, 18],
      '`100 EUR to 200 USD` names two currencies.',
      [],
    ],
    [
      '5 GHz',
      'length',
      'unit-of-other-dimension',
      [2, 5],
      '`5 GHz` is a frequency; expected a length, in `mm` or `cm`.',
      [],
    ],
    [
      '40 °C',
      'length',
      'unit-of-other-dimension',
      [3, 5],
      '`40 °C` is a temperature; expected a length, in `mm` or `cm`.',
      [],
    ],
    [
      '46 dBA',
      'length',
      'unit-of-other-dimension',
      [3, 6],
      '`46 dBA` is a sound level; expected a length, in `mm` or `cm`.',
      [],
    ],
    [
      '5 W',
      'sound-power',
      'unit-of-other-dimension',
      [2, 3],
      '`5 W` is a power; expected a declared sound power, in `B`.',
      [],
    ],
    [
      '5 W',
      'sound-level',
      'unit-of-other-dimension',
      [2, 3],
      '`5 W` is a power; expected a sound level, in `dBA`.',
      [],
    ],
    [
      '4.6 B',
      'length',
      'unit-of-other-dimension',
      [4, 5],
      '`4.6 B` is an amount of data; expected a length, in `mm` or `cm`.',
      [],
    ],
    [
      '5 GiB/s',
      'data-size',
      'unit-of-other-dimension',
      [2, 7],
      '`5 GiB/s` is a data rate; expected an amount of data; write `5 GiB`.',
      ['5 GiB'],
    ],
    [
      '5 mm to 7 W',
      'length',
      'unit-of-other-dimension',
      [10, 11],
      '`7 W` is a power; expected a length, in `mm` or `cm`.',
      [],
    ],
    [
      '5 W to 7 mm',
      'length',
      'unit-of-other-dimension',
      [2, 3],
      '`5 W` is a power; expected a length, in `mm` or `cm`.',
      [],
    ],
    [
      '5 to 7 W',
      'length',
      'unit-of-other-dimension',
      [7, 8],
      '`7 W` is a power; expected a length, in `mm` or `cm`.',
      [],
    ],
  ])('unit of another dimension: %s', expectProblem);

  it.each<Problem>([
    [
      '1,200 W',
      'power',
      'number-odd',
      [0, 5],
      '`1,200` can be read with a thousands mark or with a decimal comma; write `1200 W` or `1.200 W`.',
      ['1200 W', '1.200 W'],
    ],
    ['0,200 W', 'power', 'number-odd', [0, 5], '`0,200` has a decimal comma; write `0.200 W`.', ['0.200 W']],
    [
      '1234,567 W',
      'power',
      'number-odd',
      [0, 8],
      '`1234,567` has a decimal comma; write `1234.567 W`.',
      ['1234.567 W'],
    ],
    ['1,5 V', 'voltage', 'number-odd', [0, 3], '`1,5` has a decimal comma; write `1.5 V`.', ['1.5 V']],
    ['-1,5 V', 'voltage', 'number-odd', [0, 4], '`-1,5` has a decimal comma; write `-1.5 V`.', ['-1.5 V']],
    ['1 200 W', 'power', 'number-odd', [0, 5], '`1 200` has its thousands parted; write `1200 W`.', ['1200 W']],
    ['1\u202F200 W', 'power', 'number-odd', [0, 5], '`1 200` has its thousands parted; write `1200 W`.', ['1200 W']],
    [
      '1,200,000 W',
      'power',
      'number-odd',
      [0, 9],
      '`1,200,000` has its thousands parted; write `1200000 W`.',
      ['1200000 W'],
    ],
    [
      '1.200.000 W',
      'power',
      'number-odd',
      [0, 9],
      '`1.200.000` has its thousands parted; write `1200000 W`.',
      ['1200000 W'],
    ],
    ['1,200.5 W', 'power', 'number-odd', [0, 7], '`1,200.5` has its thousands parted; write `1200.5 W`.', ['1200.5 W']],
    ['1.200,5 W', 'power', 'number-odd', [0, 7], '`1.200,5` has its thousands parted; write `1200.5 W`.', ['1200.5 W']],
    ["-1'200 V", 'voltage', 'number-odd', [0, 6], "`-1'200` has its thousands parted; write `-1200 V`.", ['-1200 V']],
    [
      '1_200_000 W',
      'power',
      'number-odd',
      [0, 9],
      '`1_200_000` has its thousands parted; write `1200000 W`.',
      ['1200000 W'],
    ],
    ['1,200 200 W', 'power', 'number-odd', [0, 9], '`1,200 200` is not a number that can be read in one way.', []],
    ['1,,5 W', 'power', 'number-odd', [0, 4], '`1,,5` is not a number that can be read in one way.', []],
    ['1.2.3 W', 'power', 'number-odd', [0, 5], '`1.2.3` is not a number that can be read in one way.', []],
    ['1,200,00 W', 'power', 'number-odd', [0, 8], '`1,200,00` is not a number that can be read in one way.', []],
    [
      '1,200 to 1,500 kw',
      'power',
      'number-odd',
      [0, 5],
      '`1,200` can be read with a thousands mark or with a decimal comma; write `1200 to 1500 kW` or ' +
        '`1.200 to 1.500 kW`.',
      ['1200 to 1500 kW', '1.200 to 1.500 kW'],
    ],
    [
      '1 to 1,500 W',
      'power',
      'number-odd',
      [5, 10],
      '`1,500` can be read with a thousands mark or with a decimal comma; write `1 to 1500 W` or `1 to 1.500 W`.',
      ['1 to 1500 W', '1 to 1.500 W'],
    ],
    ['1e21 W', 'power', 'number-odd', [0, 4], '`1e21` is too large a number.', []],
    ['-1e400 V', 'voltage', 'number-odd', [0, 6], '`-1e400` is too large a number.', []],
    ['1e-22 W', 'power', 'number-odd', [0, 5], '`1e-22` is too small a number.', []],
    ['0.5e-30 W', 'power', 'number-odd', [0, 7], '`0.5e-30` is too small a number.', []],
    ['-5 W', 'power', 'number-odd', [0, 4], '`-5 W` is below 0 W, and a power cannot be.', []],
    ['-274 °C', 'temperature', 'number-odd', [0, 7], '`-274 °C` is below -273.15 °C, and a temperature cannot be.', []],
    ['at least -5 W', 'power', 'number-odd', [9, 13], '`-5 W` is below 0 W, and a power cannot be.', []],
    ['-5', 'power', 'unit-missing', [0, 2], '`-5` has no unit.', []],
    [
      '-1,200 W',
      'power',
      'number-odd',
      [0, 6],
      '`-1,200` can be read with a thousands mark or with a decimal comma.',
      [],
    ],
    ['-5 to 7 W', 'power', 'number-odd', [0, 2], '`-5` is below 0 W, and a power cannot be.', []],
  ])('odd number: %s', expectProblem);

  it.each<Problem>([
    [
      '',
      'length',
      'not-a-number',
      [0, 0],
      'There is nothing here; write a number and its unit, such as `mm` or `cm`.',
      [],
    ],
    [
      '  ',
      'length',
      'not-a-number',
      [2, 2],
      'There is nothing here; write a number and its unit, such as `mm` or `cm`.',
      [],
    ],
    [
      'tall',
      'length',
      'not-a-number',
      [0, 4],
      '`tall` is not a length; write a number and its unit, such as `mm` or `cm`.',
      [],
    ],
    [
      'at most',
      'length',
      'not-a-number',
      [0, 7],
      '`at most` is not a length; write a number and its unit, such as `mm` or `cm`.',
      [],
    ],
    [
      '.',
      'sound-power',
      'not-a-number',
      [0, 1],
      '`.` is not a declared sound power; write a number and its unit, such as `B`.',
      [],
    ],
    [
      'EUR 24 EUR',
      'money',
      'not-a-number',
      [0, 10],
      '`EUR 24 EUR` is not a sum of money; write a number and its unit, such as `EUR` or `USD`.',
      [],
    ],
    ['½ in', 'length', 'not-a-number', [0, 1], '`½` is not a decimal number; write `0.5 in`.', ['0.5 in']],
    ['3 ½ in', 'length', 'not-a-number', [0, 3], '`3 ½` is not a decimal number; write `3.5 in`.', ['3.5 in']],
    ['-¼ in', 'length', 'not-a-number', [0, 2], '`-¼` is not a decimal number; write `-0.25 in`.', ['-0.25 in']],
    ['2¾ in', 'length', 'not-a-number', [0, 2], '`2¾` is not a decimal number; write `2.75 in`.', ['2.75 in']],
    [
      'at most 5 to 6 mm',
      'length',
      'not-a-number',
      [0, 17],
      '`at most 5 to 6 mm` states a limit and a range at once.',
      [],
    ],
  ])('no number: "%s"', expectProblem);

  it.each<Problem>([
    [
      '160 to 150 mm',
      'length',
      'range-reversed',
      [0, 13],
      '`160 to 150 mm` begins with its greater end; write `150 to 160 mm`.',
      ['150 to 160 mm'],
    ],
    [
      ' 160 mm–15 cm',
      'length',
      'range-reversed',
      [1, 13],
      '`160 mm–15 cm` begins with its greater end; write `15 cm–160 mm`.',
      ['15 cm–160 mm'],
    ],
    [
      '-5 to -10 °C',
      'temperature',
      'range-reversed',
      [0, 12],
      '`-5 to -10 °C` begins with its greater end; write `-10 to -5 °C`.',
      ['-10 to -5 °C'],
    ],
  ])('reversed range: %s', expectProblem);
});

describe('a value with a word about it', () => {
  const cases: [string, Dimension, number, QuantityProblemCode, [number, number], string, string][] = [
    [
      '31 °С',
      'temperature',
      31,
      'unit-look-alike',
      [4, 5],
      '`С` (U+0421) stands where `C` belongs; write `31 °C`.',
      '31 °C',
    ],
    [
      '31 ºC',
      'temperature',
      31,
      'unit-look-alike',
      [3, 4],
      '`º` (U+00BA) stands where `°` belongs; write `31 °C`.',
      '31 °C',
    ],
    [
      '31 ˚C',
      'temperature',
      31,
      'unit-look-alike',
      [3, 4],
      '`˚` (U+02DA) stands where `°` belongs; write `31 °C`.',
      '31 °C',
    ],
    [
      '31 ℃',
      'temperature',
      31,
      'unit-look-alike',
      [3, 4],
      '`℃` (U+2103) stands where `°C` belongs; write `31 °C`.',
      '31 °C',
    ],
    [
      '5 К',
      'temperature-difference',
      5,
      'unit-look-alike',
      [2, 3],
      '`К` (U+041A) stands where `K` belongs; write `5 K`.',
      '5 K',
    ],
    [
      '158 мм',
      'length',
      158,
      'unit-look-alike',
      [4, 5],
      '`м` (U+043C) stands where `m` belongs; write `158 mm`.',
      '158 mm',
    ],
    ['５ mm', 'length', 5, 'unit-look-alike', [0, 1], '`５` (U+FF15) stands where `5` belongs; write `5 mm`.', '5 mm'],
    ['𝟓 mm', 'length', 5, 'unit-look-alike', [0, 2], '`𝟓` (U+1D7D3) stands where `5` belongs; write `5 mm`.', '5 mm'],
    [
      '5\u00A0mm',
      'length',
      5,
      'unit-look-alike',
      [1, 2],
      'An unusual space (U+00A0) stands here; write `5 mm`.',
      '5 mm',
    ],
    [
      '5\u2009mm',
      'length',
      5,
      'unit-look-alike',
      [1, 2],
      'An unusual space (U+2009) stands here; write `5 mm`.',
      '5 mm',
    ],
    [
      '5 mm\u200B',
      'length',
      5,
      'unit-look-alike',
      [4, 5],
      'An invisible character (U+200B) stands here; write `5 mm`.',
      '5 mm',
    ],
    [
      '−5 °C',
      'temperature',
      -5,
      'unit-look-alike',
      [0, 1],
      '`−` (U+2212) stands where `-` belongs; write `-5 °C`.',
      '-5 °C',
    ],
    [
      '–5 °C',
      'temperature',
      -5,
      'unit-look-alike',
      [0, 1],
      '`–` (U+2013) stands where `-` belongs; write `-5 °C`.',
      '-5 °C',
    ],
    [
      '5 GB∕s',
      'data-rate',
      5e9,
      'unit-look-alike',
      [4, 5],
      '`∕` (U+2215) stands where `/` belongs; write `5 GB/s`.',
      '5 GB/s',
    ],
    [
      '5.25”',
      'length',
      133.35,
      'unit-look-alike',
      [4, 5],
      '`”` (U+201D) stands where `"` belongs; write `5.25 "`.',
      '5.25 "',
    ],
    [
      '1O mm',
      'length',
      10,
      'unit-look-alike',
      [1, 2],
      '`O` (U+004F) stands where `0` belongs; write `10 mm`.',
      '10 mm',
    ],
    [
      '1o.5 mm',
      'length',
      10.5,
      'unit-look-alike',
      [1, 2],
      '`o` (U+006F) stands where `0` belongs; write `10.5 mm`.',
      '10.5 mm',
    ],
    [
      'l58 mm',
      'length',
      158,
      'unit-look-alike',
      [0, 1],
      '`l` (U+006C) stands where `1` belongs; write `158 mm`.',
      '158 mm',
    ],
    [
      '-I5 °C',
      'temperature',
      -15,
      'unit-look-alike',
      [1, 2],
      '`I` (U+0049) stands where `1` belongs; write `-15 °C`.',
      '-15 °C',
    ],
    [
      '1.2e3 W',
      'power',
      1200,
      'number-odd',
      [0, 5],
      '`1.2e3` is an unusual way to write a number; write `1200 W`.',
      '1200 W',
    ],
    [
      '1E-5 W',
      'power',
      1e-5,
      'number-odd',
      [0, 4],
      '`1E-5` is an unusual way to write a number; write `0.00001 W`.',
      '0.00001 W',
    ],
    ['-0e0 W', 'power', 0, 'number-odd', [0, 4], '`-0e0` is an unusual way to write a number; write `0 W`.', '0 W'],
    [
      '-2.5e-7 V',
      'voltage',
      -2.5e-7,
      'number-odd',
      [0, 7],
      '`-2.5e-7` is an unusual way to write a number; write `-0.00000025 V`.',
      '-0.00000025 V',
    ],
    [
      '1e-21 W',
      'power',
      1e-21,
      'number-odd',
      [0, 5],
      '`1e-21` is an unusual way to write a number; write `0.000000000000000000001 W`.',
      '0.000000000000000000001 W',
    ],
    ['.5 W', 'power', 0.5, 'number-odd', [0, 2], '`.5` is an unusual way to write a number; write `0.5 W`.', '0.5 W'],
    ['5. W', 'power', 5, 'number-odd', [0, 2], '`5.` is an unusual way to write a number; write `5 W`.', '5 W'],
    ['007 W', 'power', 7, 'number-odd', [0, 3], '`007` is an unusual way to write a number; write `7 W`.', '7 W'],
    [
      'EUR 2400',
      'money',
      2400,
      'number-odd',
      [0, 8],
      'The currency stands before the number; write `2400 EUR`.',
      '2400 EUR',
    ],
  ];

  it.each(cases)('%s', (text, dimension, base, code, [start, end], message, suggestion) => {
    const { quantity, problem } = readQuantity(text, dimension);
    expect(quantity).toMatchObject({ lo: base, hi: base, text });
    expect(problem).toEqual({ code, message, start, end, suggestions: [suggestion] });
  });

  it('keeps a limit on a sum with its currency in front', () => {
    expect(readQuantity('at most EUR 20', 'money')).toMatchObject({
      quantity: { lo: -Infinity, hi: 20, currency: 'EUR' },
      problem: { start: 8, end: 14, suggestions: ['at most 20 EUR'] },
    });
  });

  it('keeps both ends of a range', () => {
    expect(readQuantity('.5 to 1e1 W', 'power')).toEqual({
      quantity: { dimension: 'power', lo: 0.5, hi: 10, unit: 'W', text: '.5 to 1e1 W' },
      problem: {
        code: 'number-odd',
        message: '`.5` is an unusual way to write a number; write `0.5 to 10 W`.',
        start: 0,
        end: 2,
        suggestions: ['0.5 to 10 W'],
      },
    });
    expect(readQuantity('5 to 1e1 W', 'power').problem).toMatchObject({ start: 5, end: 8 });
    expect(readQuantity('l5O to l6O mm', 'length').quantity).toMatchObject({ lo: 150, hi: 160 });
  });

  it('takes letters for digits only where a whole number results and the unit stands apart', () => {
    expect(readQuantity('5lm', 'length').quantity).toBeUndefined();
    expect(readQuantity('1Omm', 'length').problem).toMatchObject({ code: 'unit-unknown', start: 1, end: 4 });
    expect(readQuantity('10l', 'length').problem).toMatchObject({ code: 'unit-of-other-dimension', start: 2, end: 3 });
    expect(readQuantity('Oil mm', 'length').problem).toMatchObject({ code: 'not-a-number' });
  });

  it('says the more serious thing where two are wrong, with both mended in the suggestion', () => {
    expect(readQuantity('1,5 КW', 'power').problem).toEqual({
      code: 'number-odd',
      message: '`1,5` has a decimal comma; write `1.5 kW`.',
      start: 0,
      end: 3,
      suggestions: ['1.5 kW'],
    });
    expect(readQuantity('\u200B5 КW', 'power').problem).toMatchObject({ code: 'unit-unknown', start: 3, end: 5 });
  });
});

describe('the edges of reading', () => {
  it('reads a range of money in one currency', () => {
    for (const text of ['100 to 200 EUR', '100 EUR to 200 EUR']) {
      expect(readQuantity(text, 'money')).toEqual({
        quantity: { dimension: 'money', lo: 100, hi: 200, unit: 'EUR', text, currency: 'EUR' },
      });
    }
  });

  it('takes a dash before a digit for a sign, behind blanks too, and no other', () => {
    expect(readQuantity(' –5 V', 'voltage')).toMatchObject({
      quantity: { lo: -5, hi: -5 },
      problem: { code: 'unit-look-alike', start: 1, end: 2, suggestions: ['-5 V'] },
    });
    expect(readQuantity('– 5 V', 'voltage').problem).toMatchObject({
      code: 'not-a-number',
      message: '`– 5 V` is not a voltage; write a number and its unit, such as `V` or `mV`.',
    });
  });

  it('reads nothing, however small its exponent, as nothing', () => {
    expect(readQuantity('0e-30 W', 'power')).toMatchObject({
      quantity: { lo: 0, hi: 0 },
      problem: { code: 'number-odd', suggestions: ['0 W'] },
    });
  });

  it('names four readings at most', () => {
    expect(readQuantity('1,200 KB', 'data-size').problem?.suggestions).toEqual([
      '1200 kB',
      '1200 KiB',
      '1200 kbit',
      '1.200 kB',
    ]);
    expect(readQuantity('1,200 KB to 1,500 gb', 'data-size').problem?.suggestions).toEqual([
      '1200 kB to 1500 GB',
      '1200 kB to 1500 Gbit',
      '1200 KiB to 1500 GB',
      '1200 KiB to 1500 Gbit',
    ]);
  });
});

describe('a level without its weighting', () => {
  it.each(['32 dB', '27dB', '20 to 32 dB'])('%s never becomes dBA', (text) => {
    const { quantity, problem } = readQuantity(text, 'sound-level');
    expect([quantity, problem?.code, problem?.suggestions]).toEqual([undefined, 'unit-unknown', []]);
    expect(problem?.message).toContain('does not state its weighting');
  });
});
