// The pixel clocks that a display mode may run with: those of the formula, and those of the table for televisions.
import type { DisplayMode } from './display';
import { cvtTiming, hasTiming, rb3ClockMHz, type CvtBlanking } from './timing';

/** The timing of a mode: full or reduced blanking by the formula, or the fixed one of CTA-861. */
export type Blanking = CvtBlanking | 'CVT-RB3' | 'CTA-861';
export const BLANKINGS: readonly Blanking[] = ['CVT-RB3', 'CVT-RB2', 'CVT-RB1', 'CVT', 'CTA-861'];

type Clocks = readonly (readonly [refreshHz: number, clockMHz: number])[];
/**
 * Progressive modes without repeated pixels, by size: rate in Hz and clock in MHz. A rate of 60 Hz stands for 59.94 Hz
 * too, and so on. Source: CTA-861-H, table of video identification codes, as `edid-decode --list-vics` prints it.
 */
export const CTA_CLOCKS: ReadonlyMap<string, Clocks> = new Map<string, Clocks>([
  ['640x480', [[60, 25.175]]],
  [
    '720x480',
    [
      [60, 27],
      [120, 54],
      [240, 108],
    ],
  ],
  [
    '720x576',
    [
      [50, 27],
      [100, 54],
      [200, 108],
    ],
  ],
  [
    '1280x720',
    [
      [24, 59.4],
      [25, 74.25],
      [30, 74.25],
      [48, 90],
      [50, 74.25],
      [60, 74.25],
      [100, 148.5],
      [120, 148.5],
    ],
  ],
  [
    '1680x720',
    [
      [24, 59.4],
      [25, 59.4],
      [30, 59.4],
      [48, 99],
      [50, 82.5],
      [60, 99],
      [100, 165],
      [120, 198],
    ],
  ],
  [
    '1920x1080',
    [
      [24, 74.25],
      [25, 74.25],
      [30, 74.25],
      [48, 148.5],
      [50, 148.5],
      [60, 148.5],
      [100, 297],
      [120, 297],
    ],
  ],
  [
    '2560x1080',
    [
      [24, 99],
      [25, 90],
      [30, 118.8],
      [48, 198],
      [50, 185.625],
      [60, 198],
      [100, 371.25],
      [120, 495],
    ],
  ],
  [
    '3840x2160',
    [
      [24, 297],
      [25, 297],
      [30, 297],
      [48, 594],
      [50, 594],
      [60, 594],
      [100, 1188],
      [120, 1188],
    ],
  ],
  [
    '4096x2160',
    [
      [24, 297],
      [25, 297],
      [30, 297],
      [48, 594],
      [50, 594],
      [60, 594],
      [100, 1188],
      [120, 1188],
    ],
  ],
  [
    '5120x2160',
    [
      [24, 396],
      [25, 396],
      [30, 396],
      [48, 742.5],
      [50, 742.5],
      [60, 742.5],
      [100, 1485],
      [120, 1485],
    ],
  ],
  [
    '7680x4320',
    [
      [24, 1188],
      [25, 1188],
      [30, 1188],
      [48, 2376],
      [50, 2376],
      [60, 2376],
      [100, 4752],
      [120, 4752],
    ],
  ],
  [
    '10240x4320',
    [
      [24, 1485],
      [25, 1485],
      [30, 1485],
      [48, 2970],
      [50, 2970],
      [60, 2970],
      [100, 5940],
      [120, 5940],
    ],
  ],
]);

/** A rate and its thousandth less, as 60 and 59.94 Hz, share their clock but for that thousandth. */
const SHARED_HZ = 0.11;

/** The clock of CTA-861 for a mode, in MHz; undefined where its table has no such mode. */
export function ctaClockMHz({ widthPx, heightPx, refreshHz }: DisplayMode): number | undefined {
  const clocks = CTA_CLOCKS.get(`${widthPx}x${heightPx}`);
  return clocks?.find(([hz]) => Math.abs(hz - refreshHz) <= SHARED_HZ)?.[1];
}

/** The least and the greatest clock in MHz, of one timing or of whichever the mode may have; undefined for none. */
export function clockBoundsMHz(mode: DisplayMode, blanking?: Blanking): readonly [number, number] | undefined {
  const clocks = (blanking ? [blanking] : BLANKINGS).flatMap((one) => clocksOf(mode, one));
  return clocks.length === 0 ? undefined : [Math.min(...clocks), Math.max(...clocks)];
}

function clocksOf(mode: DisplayMode, blanking: Blanking): readonly number[] {
  const { widthPx, heightPx, refreshHz } = mode;
  if (blanking === 'CTA-861') {
    const clock = ctaClockMHz(mode);
    return clock === undefined ? [] : [clock];
  }
  if (!hasTiming(widthPx, heightPx, refreshHz)) return [];
  if (blanking === 'CVT-RB3')
    return [rb3ClockMHz(widthPx, heightPx, refreshHz, 'least'), rb3ClockMHz(widthPx, heightPx, refreshHz, 'most')];
  return [cvtTiming(widthPx, heightPx, refreshHz, blanking).pixelClockMHz];
}
