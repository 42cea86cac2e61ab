// CVT timings: each kind of blanking, each picture shape, each floor.
import { describe, expect, it } from 'vitest';
import { cvtTiming } from '../../../server/src/core/trade/timing';
import type { CvtBlanking } from '../../../server/src/core/trade/timing';

// Expected values printed by edid-decode --cvt, written down so that they hold where the program is absent.
const ROWS: [number, number, number, CvtBlanking, number, number, number][] = [
  [640, 480, 60, 'CVT', 23.75, 800, 500],
  [1920, 1080, 60, 'CVT', 173, 2576, 1120],
  [1366, 768, 60, 'CVT', 84.75, 1776, 798],
  [1000, 600, 24, 'CVT', 18, 1240, 617],
  [3840, 2160, 120, 'CVT', 1498.25, 5392, 2316],
  [640, 360, 60, 'CVT-RB1', 18, 800, 375],
  [3840, 2160, 60, 'CVT-RB1', 533.25, 4000, 2222],
  [3840, 2160, 120, 'CVT-RB1', 1097.75, 4000, 2287],
  [1366, 768, 60, 'CVT-RB1', 72, 1520, 790],
  [3840, 2160, 120, 'CVT-RB2', 1075.804, 3920, 2287],
  [3840, 2160, 125, 'CVT-RB2', 1123.08, 3920, 2292],
  [1366, 768, 60, 'CVT-RB2', 68.54, 1446, 790],
];

describe('cvtTiming', () => {
  it.each(ROWS)('%i × %i at %i Hz, %s', (width, height, hz, blanking, clock, across, down) => {
    expect(cvtTiming(width, height, hz, blanking)).toEqual({
      pixelClockMHz: clock,
      horizontalTotalPx: across,
      verticalTotalLines: down,
      refreshHz: (clock * 1e6) / (across * down),
    });
  });

  // At a low rate the least blanking binds, and with it the sync width of the picture's shape.
  it.each([
    [640, 480, 14],
    [640, 360, 15],
    [640, 400, 16],
    [600, 480, 17],
    [640, 384, 17],
    [640, 482, 20],
    [640, 481, 20],
  ])('RB1 blanks %i × %i for %i lines at least', (width, height, lines) => {
    expect(cvtTiming(width, height, 24, 'CVT-RB1').verticalTotalLines - height).toBe(lines);
  });

  it('RB2 blanks fifteen lines at least, whatever the shape', () => {
    expect(cvtTiming(640, 480, 24, 'CVT-RB2').verticalTotalLines).toBe(495);
    expect(cvtTiming(641, 480, 24, 'CVT-RB2').horizontalTotalPx).toBe(721);
  });

  it('full blanking keeps sync, seven lines of back porch and three of front at least', () => {
    expect(cvtTiming(640, 480, 24, 'CVT').verticalTotalLines - 480).toBe(14);
    expect(cvtTiming(640, 482, 24, 'CVT').verticalTotalLines - 482).toBe(20);
  });

  it('full blanking takes at least a fifth of the line', () => {
    // 480 × 20 ÷ 80 = 120 pixels, cut to pairs of cells.
    expect(cvtTiming(480, 320, 24, 'CVT').horizontalTotalPx).toBe(480 + 112);
  });

  it('refuses sizes and rates out of range', () => {
    expect(() => cvtTiming(7, 480, 60, 'CVT')).toThrow(/widthPx must be/);
    expect(() => cvtTiming(640, 7, 60, 'CVT')).toThrow(/heightPx must be/);
    expect(() => cvtTiming(640.5, 480, 60, 'CVT')).toThrow(RangeError);
    expect(() => cvtTiming(640, NaN, 60, 'CVT')).toThrow(RangeError);
    expect(() => cvtTiming(640, 480, 0.99, 'CVT')).toThrow(/refreshHz must be between 1 and 1000/);
    expect(() => cvtTiming(640, 480, 1001, 'CVT')).toThrow(RangeError);
    expect(() => cvtTiming(640, 480, NaN, 'CVT')).toThrow(RangeError);
    expect(cvtTiming(8, 8, 1, 'CVT-RB2').horizontalTotalPx).toBe(88);
    expect(cvtTiming(640, 480, 1000, 'CVT-RB2').refreshHz).toBeCloseTo(1000, 1);
  });
});
