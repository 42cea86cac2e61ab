// M.2 keys, sizes and limits against module makers' manuals.
import { describe, expect, it } from 'vitest';
import {
  M2_COMPONENTS_MM,
  M2_KEYS,
  M2_LENGTHS_MM,
  M2_WIDTHS_MM,
  m2KeyFits,
  parseM2Keys,
  parseM2Size,
} from '../../server/src/core/trade/m2';

describe('published M.2 facts', () => {
  // Source: the same leaflet: "2280" is a module of 22 x 80 mm.
  it('2280 is 22 × 80 mm', () => expect(parseM2Size('2280')).toEqual({ widthMm: 22, lengthMm: 80 }));

  // Source: the same leaflet: standard widths and lengths.
  it('has four widths and eight lengths', () => {
    expect(M2_WIDTHS_MM).toEqual([12, 16, 22, 30]);
    expect(M2_LENGTHS_MM).toEqual([16, 26, 30, 38, 42, 60, 80, 110]);
  });

  // Source: PCI Express M.2 Specification, revision 1.0: modules with notches B and M fit sockets of either key, with
  // two lanes.
  // Source: the same specification: modules with notches A and E fit sockets of either key, and no socket with B or M.
  it('an A+E module fits A and E alone', () => {
    const keys = parseM2Keys('A+E')!;
    expect(M2_KEYS.filter((key) => m2KeyFits(keys, key))).toEqual(['A', 'E']);
    expect(parseM2Keys('A+M')).toBeUndefined();
  });

  // A conflict worth keeping: the same key carries PCIe on one board and SATA on another.
  // Source: makers' M.2 module manuals: components at most 1.5 mm a side.
  it('components stand out 1.5 mm at most', () => expect(M2_COMPONENTS_MM).toBe(1.5));

  // Source: makers' data sheets, which print the type as M.2 2280-S3-M or 22 x 80 mm.
  it.each(['M.2 2280', 'M.2 (2280)', '2280-S3-M', '22 x 80 mm', '22 × 80'])('reads %s as 22 × 80 mm', (text) =>
    expect(parseM2Size(text)).toEqual({ widthMm: 22, lengthMm: 80 }),
  );
});
