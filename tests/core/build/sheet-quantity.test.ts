// Quantities in a data sheet's way of writing, and numbers whose mark may part thousands or decimals.
import { describe, expect, it } from 'vitest';
import { length, quantity, type QuantityField } from '../../../server/src/core/parts/field';
import { readScalar } from '../../../server/src/core/parts/scalar';
import { inUnit, type Quantity } from '../../../server/src/core/quantity';

const fields = {
  height: length('A height.', '158 mm'),
  room: length('Room.', '158 mm', { room: true }),
  rate: quantity('data-rate', 'MB/s', 'A rate.', '7 GB/s'),
  endurance: quantity('data-size', 'TB', 'Written.', '600 TB'),
  speed: quantity('rotation-speed', 'rpm', 'Speed.', '1200 rpm'),
  pressure: quantity('pressure', 'mmH₂O', 'Pressure.', '2 mmH₂O'),
  level: quantity('sound-level', 'dBA', 'Level.', '24 dBA'),
  voltage: quantity('voltage', 'V', 'Voltage.', '12 V'),
  memory: quantity('transfer-rate', 'MT/s', 'Speed.', '6000 MT/s'),
  power: quantity('power', 'W', 'Power.', '65 W'),
} as const;

const ends = (field: QuantityField, text: string): unknown => {
  const { value, slip } = readScalar(field, text);
  const { lo, hi } = (value ?? {}) as Quantity;
  return slip ? slip.code : [lo, hi].map((end) => Number(inUnit(end, field.unit).toPrecision(10)));
};

const read: [keyof typeof fields, string, number, number][] = [
  ['height', '160 ± 2 mm', 158, 162],
  ['height', '160±2mm', 158, 162],
  ['height', '160 mm ± 2 mm', 158, 162],
  ['height', '160 +/- 2 mm', 158, 162],
  ['height', '=155mm', 155, 155],
  ['height', '150~160 mm', 150, 160],
  ['height', 'max. 160 mm', -Infinity, 160],
  ['height', '160 mm (max)', -Infinity, 160],
  ['height', 'Max 160 mm', -Infinity, 160],
  ['height', '> 160 mm', 160, Infinity],
  ['height', '< 160 mm', -Infinity, 160],
  ['height', 'min. 160 mm', 160, Infinity],
  ['height', '9.6-in', 243.84, 243.84],
  ['room', 'up to 160 mm', 160, 160],
  ['room', '≤ 160 mm', 160, 160],
  ['room', '≤160mm', 160, 160],
  ['room', 'max. 160 mm', 160, 160],
  ['room', '160 mm max', 160, 160],
  ['room', 'below 160 mm', 160, 160],
  ['room', '> 160 mm', 160, Infinity],
  ['room', '150 to 160 mm', 150, 160],
  ['endurance', '600 TBW', 600, 600],
  ['endurance', '600TBW', 600, 600],
  ['endurance', 'TBW 600', 600, 600],
  ['speed', '1850 R.P.M', 1850, 1850],
  ['speed', '1850 rpm ±10 %', 1665, 2035],
  ['speed', '500~1850 RPM', 500, 1850],
  ['speed', '1.850 rpm', 1850, 1850],
  ['speed', '1,850 rpm', 1850, 1850],
  ['pressure', '2.1 mmAq', 2.1, 2.1],
  ['pressure', '2.1 mm-H2O', 2.1, 2.1],
  ['pressure', '2.1 mm/H2O', 2.1, 2.1],
  ['pressure', '2.1 mm H20', 2.1, 2.1],
  ['level', '27 dB-A', 27, 27],
  ['level', '27 dB (A)', 27, 27],
  ['level', '≤25 dB(A)', -Infinity, 25],
  ['voltage', '12V DC', 12, 12],
  ['voltage', 'DC 12V', 12, 12],
  ['memory', 'DDR5-6000', 6000, 6000],
  ['memory', 'DDR4 3200', 3200, 3200],
  ['memory', '6.000 MT/s', 6000, 6000],
  ['power', '600W', 600, 600],
];

const asked: [keyof typeof fields, string, string, readonly string[]][] = [
  ['rate', '7.450 MB/s', 'number-odd', ['7450 MB/s', '7.45 MB/s']],
  ['rate', '7,300 MB/s', 'number-odd', ['7300 MB/s', '7.3 MB/s']],
  ['endurance', '1.200 GB', 'number-odd', ['1200 GB', '1.2 GB']],
  ['level', '27 dB', 'unit-unknown', []],
];

describe('a sheet’s way of writing', () => {
  it.each(read)('%s %j', (field, text, lo, hi) => expect(ends(fields[field], text)).toEqual([lo, hi]));
  it.each(asked)('%s %j is asked about', (field, text, code, instead) => {
    const { value, slip } = readScalar(fields[field], text);
    expect([value, slip?.code, slip?.instead]).toEqual([undefined, code, instead]);
  });
  it.each([
    'max mm',
    '± 2 mm',
    '160 ± mm',
    '1.2.3 mm',
    'max. max. 160 mm',
    'about 160 mm',
    '160 ± 2 kg',
    '1,2,3 mm',
    '~',
    '=',
  ])('%j stays a finding', (text) => expect(readScalar(fields.height, text).slip).toBeDefined());
});
