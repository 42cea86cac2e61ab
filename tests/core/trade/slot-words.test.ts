// Openings, splits and risers as data sheets write them.
import { describe, expect, it } from 'vitest';
import {
  parseCardOpenings,
  parseCaseOpenings,
  parseRiser,
  parseSplit,
} from '../../../server/src/core/trade/slot-words';

describe('openings of a card', () => {
  it.each([
    ['2', 2],
    ['2.5', 2.5],
    ['2,5 slots', 2.5],
    ['2.5 slots', 2.5],
    ['2.5-slot', 2.5],
    ['dual slot', 2],
    ['Dual-slot', 2],
    ['3-slot', 3],
    ['3 slots', 3],
    ['3 openings', 3],
    ['single slot', 1],
    ['Triple-Slot design', 3],
    ['2-slot wide', 2],
  ])('%s', (text, openings) => expect(parseCardOpenings(text)).toBe(openings));
  it.each(['0', '0.5', '7', '25', 'slots', 'some slots', 'low slot', '-2', '2 x', ''])('%j is none', (text) =>
    expect(parseCardOpenings(text)).toBeUndefined(),
  );
});

describe('openings of a case', () => {
  it.each([
    ['7', 7],
    ['7 slots', 7],
    ['7+2', 7],
    ['7 + 2', 7],
    ['7 (+2 vertical)', 7],
    ['8 + 3 vertical', 8],
    ['0', 0],
  ])('%s', (text, openings) => expect(parseCaseOpenings(text)).toBe(openings));
  it.each(['seven', '7+', '7-2', '777', ''])('%j is none', (text) => expect(parseCaseOpenings(text)).toBeUndefined());
});

describe('splits', () => {
  it.each([
    ['4x4', [4, 4, 4, 4]],
    ['2x8', [8, 8]],
    ['8x8', [8, 8]],
    ['8+8', [8, 8]],
    ['x8/x8', [8, 8]],
    ['8+4+4', [8, 4, 4]],
    ['x8/x4/x4', [8, 4, 4]],
    ['x4x4x4x4', [4, 4, 4, 4]],
    ['4×4', [4, 4, 4, 4]],
    ['x16', [16]],
    ['x4 / x4', [4, 4]],
  ])('%s', (text, widths) => expect(parseSplit(text)).toEqual(widths));
  it.each(['yes', '3x4+', '16x16', '5+5', 'x8/x16', '', 'x'])('%j is none', (text) =>
    expect(parseSplit(text)).toBeUndefined(),
  );
});

describe('risers', () => {
  it.each([
    ['PCIe 4', 4],
    ['PCIe 4.0', 4],
    ['pcie 4.0 x16', 4],
    ['PCIe Gen4', 4],
    ['PCIe Gen 3 x16', 3],
    ['PCI Express 5.0 ×16', 5],
    ['PCI-E 3.0', 3],
    ['Gen4', 4],
  ])('%s', (text, generation) => expect(parseRiser(text)).toBe(generation));
  it.each(['4', 'PCIe', 'PCIe 7', 'PCIe 3 x1', 'riser', ''])('%j is none', (text) =>
    expect(parseRiser(text)).toBeUndefined(),
  );
});
