// How values are written for people: prefix, digits, ranges, and pairs that must not change order.
import { describe, expect, it } from 'vitest';
import { formatQuantity, type FormatOptions } from '../../../server/src/core/quantity/format';
import type { Dimension } from '../../../server/src/core/quantity';

describe('formatQuantity', () => {
  it.each<[number, Dimension, string]>([
    [158, 'length', '158 mm'],
    [999.9, 'length', '999.9 mm'],
    [999.96, 'length', '1 m'],
    [1000, 'length', '1 m'],
    [0.1, 'length', '0.1 mm'],
    [0.05, 'length', '50 µm'],
    [4e7, 'length', '40 km'],
    [9_000_000, 'length', '9000 m'],
    [31, 'temperature', '31 °C'],
    [-5, 'temperature', '-5 °C'],
    [-0, 'temperature', '0 °C'],
    [4.9e9, 'data-rate', '4.9 GB/s'],
    [750, 'power', '750 W'],
    [1200, 'power', '1200 W'],
    [9999, 'power', '9999 W'],
    [9999.6, 'power', '10 kW'],
    [10_000, 'power', '10 kW'],
    [0.5, 'power', '500 mW'],
    [0, 'power', '0 W'],
    [2e12, 'data-size', '2 TB'],
    [64e9, 'data-size', '64 GB'],
    [999.96e6, 'data-size', '1 GB'],
    [0, 'data-size', '0 B'],
    [45, 'volume', '45 mm³'],
    [0.29, 'thermal-resistance', '0.29 K/W'],
    [0.085, 'resistance', '85 mΩ'],
    [1e6, 'resistance', '1 MΩ'],
    [6e9, 'transfer-rate', '6000 MT/s'],
    [16e9, 'transfer-rate', '16 GT/s'],
    [0.95, 'voltage', '0.95 V'],
    [0.09, 'voltage', '90 mV'],
    [1 / 3, 'thermal-resistance', '0.3333 K/W'],
    [1e-7, 'thermal-resistance', '0.0000001 K/W'],
    [12_345, 'rotation-speed', '12350 rpm'],
    [1e24, 'rotation-speed', '1000000000000000000000000 rpm'],
    [157_680_000, 'time', '5 years'],
    [31_536_000, 'time', '365 days'],
    [172_800, 'time', '2 days'],
    [86_400, 'time', '24 h'],
    [90, 'time', '90 s'],
    [32, 'sound-level', '32 dBA'],
    [4.6, 'sound-power', '4.6 B'],
    [22, 'percent', '22 %'],
    [NaN, 'length', 'not a number'],
  ])('%d of %s is written %s', (value, dimension, text) => {
    expect(formatQuantity(value, value, dimension)).toBe(text);
  });

  it.each<[number, number, Dimension, string]>([
    [150, 160, 'length', '150 to 160 mm'],
    [-Infinity, 160, 'length', 'at most 160 mm'],
    [5e9, Infinity, 'data-rate', 'at least 5 GB/s'],
    [-Infinity, Infinity, 'length', 'a length of any size'],
    [0.5, 750, 'power', '0.5 to 750 W'],
    [-20, 5, 'temperature', '-20 to 5 °C'],
    [155.04, 155.1, 'length', '155.04 to 155.1 mm'],
    [155, 155.000_000_01, 'length', '155 mm'],
    [900, 1100, 'length', '0.9 to 1.1 m'],
  ])('from %d to %d of %s is written %s', (lo, hi, dimension, text) => {
    expect(formatQuantity(lo, hi, dimension)).toBe(text);
  });

  it.each<[number, Dimension, FormatOptions, string]>([
    [88.9, 'length', { unit: 'in' }, '3.5 in'],
    [25, 'temperature', { unit: '°F' }, '77 °F'],
    [25, 'temperature', { unit: 'kelvin', digits: 5 }, '298.15 K'],
    [1e9, 'data-rate', { unit: 'Gb/s' }, '8 Gb/s'],
    [2400, 'money', { currency: 'EUR' }, '2400 EUR'],
    [12_345.678, 'money', { currency: 'EUR' }, '12345.68 EUR'],
    [12_345.678, 'money', { currency: 'EUR', digits: 3 }, '12300 EUR'],
    [20, 'money', { unit: 'SEK' }, '20 SEK'],
    [20, 'money', {}, '20'],
    [155.0449, 'length', { digits: 2 }, '160 mm'],
    [155.0449, 'length', { digits: 6 }, '155.045 mm'],
    [155.04494949, 'length', { digits: 12 }, '155.0449 mm'],
    [155, 'length', { digits: 0 }, '200 mm'],
    [31_536_000, 'time', { unit: 'year' }, '1 year'],
    [1_209_600, 'time', { unit: 'week' }, '2 weeks'],
    [86_400, 'time', { unit: 'day' }, '1 day'],
  ])('%d of %s with %o is written %s', (value, dimension, opts, text) => {
    expect(formatQuantity(value, value, dimension, opts)).toBe(text);
  });
});
