// Shapes against published drawings and tables, in millimetres.
import { describe, expect, it } from 'vitest';
import {
  BOARD_HOLES,
  BOARD_OUTLINES,
  FAN_HOLE_PITCH_MM,
  HOLE_POSITIONS,
  SLOT_PITCH_MM,
  openingsCovered,
  radiatorClass,
} from '../../server/src/core/trade/forms';
import type { BoardSize, Hole } from '../../server/src/core/trade/forms';
import { DRIVE_THREADS } from '../../server/src/core/trade/storage';
import { TOLERANCES } from './tolerances';

/**
 * Source: microATX Motherboard Interface Specification 1.2, table 3; Mini-ITX Addendum 1.1, table 1; SSI-EEB
 * Specification.
 */
const OUTLINES: [BoardSize, number, number][] = [
  ['ATX', 305, 244],
  ['microATX', 244, 244],
  ['Mini-ITX', 170, 170],
  ['SSI-EEB', 305, 330],
];

/** Source: microATX Motherboard Interface Specification 1.2; Mini-ITX Addendum 1.1. */
const HOLES: [BoardSize, string][] = [
  ['ATX', 'ACFGHJKLM'],
  ['microATX', 'BCFHJLMRS'],
  ['Mini-ITX', 'CFHJ'],
];

/** x and y. Source: ATX Specification 2.2, mounting holes. */
const POSITIONS: [Hole, number, number][] = [
  ['A', 288.29, 10.16],
  ['B', 209.55, 10.16],
  ['C', 163.83, 10.16],
  ['F', 6.35, 33.02],
  ['G', 288.29, 165.1],
  ['H', 163.83, 165.1],
  ['J', 6.35, 165.1],
  ['K', 288.29, 237.49],
  ['L', 163.83, 237.49],
  ['M', 6.35, 237.49],
];

/** Frame and pitch. Source: fan makers' drawings. */
const FANS: [number, number][] = [
  [80, 71.5],
  [92, 82.5],
  [120, 105],
  [140, 124.5],
];

describe('published board shapes', () => {
  it.each(OUTLINES)('%s is %i × %i', (size, widthMm, depthMm) =>
    expect(BOARD_OUTLINES[size]).toEqual({ widthMm, depthMm }),
  );

  it.each(HOLES)('%s has holes %s', (size, letters) => expect(BOARD_HOLES[size]?.join('')).toBe(letters));

  it.each(POSITIONS)('hole %s lies at %f, %f', (hole, xMm, yMm) => expect(HOLE_POSITIONS[hole]).toEqual({ xMm, yMm }));

  // Source: ATX Specification 2.2: holes lie on a grid of hundredths of an inch.
  it.each(Object.entries(HOLE_POSITIONS))('hole %s lies on hundredths of an inch', (_, { xMm, yMm }) => {
    for (const side of [xMm, yMm]) expect(Math.abs(side / 0.254 - Math.round(side / 0.254))).toBeLessThan(1e-6);
  });

  // Source: microATX Motherboard Interface Specification 1.2, page 10, applied to an ATX board over a full tray.
  // Source: ATX Specification 2.2 and PCI Express Card Electromechanical Specification (0.8 in).
  it('slot pitch', () => {
    expect(SLOT_PITCH_MM).toBeCloseTo(0.8 * 25.4, 9);
  });
});

// A conflict: boards of several depths are sold under one name that no standard defines, so that the name decides
// nothing.
describe('published bodies', () => {
  // A conflict: SFX is sold in two heights, so that the form's name alone does not decide.
  // Source: SFF-8201, SFF-8223 and SFF-8301.
  it('drives', () => {
    expect(DRIVE_THREADS).toEqual({ '3.5 in': '6-32 UNC', '2.5 in': 'M3' });
  });

  it.each(FANS)('a frame of %i has holes %f apart', (frame, pitch) => {
    expect(Math.abs(FAN_HOLE_PITCH_MM.get(frame)! - pitch)).toBeLessThanOrEqual(TOLERANCES.fanHolePitchMm.absolute);
  });

  // A conflict: the number in a radiator's name is not its length. Source: radiator makers' drawings, a "240" of
  // about 275 mm.
  it('a 240 is two frames of 120, and shorter than the radiator itself', () => {
    const { fans, frameMm } = radiatorClass(240)!;
    expect([fans, frameMm]).toEqual([2, 120]);
    expect(fans * frameMm).toBeLessThan(275);
  });
});

/** Source: PCI Express Card Electromechanical Specification: slots 20.32 mm (0.8 in) apart. */
describe('openings that a thickness covers', () => {
  it.each([
    [18, 1],
    [20.32, 1],
    [20.33, 2],
    [40.64, 2],
    [41, 3],
    [60.96, 3],
    [61, 4],
    [0, 1],
  ])('%f mm cover %i', (mm, openings) => expect(openingsCovered(mm)).toBe(openings));
});
