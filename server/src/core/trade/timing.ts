// Display timings by the VESA CVT formula: how fast pixels must be sent for a mode, blanking included.
import { needCount, needWithin } from './numbers';

/** Full blanking (CVT), reduced blanking of the first (RB1) and of the second version (RB2). */
export type CvtBlanking = 'CVT' | 'CVT-RB1' | 'CVT-RB2';

export interface Timing {
  readonly pixelClockMHz: number;
  /** Pixels of a line and lines of a frame, blanking included. */
  readonly horizontalTotalPx: number;
  readonly verticalTotalLines: number;
  /** The rate that these figures really give; a little below the one asked for. */
  readonly refreshHz: number;
}

/** Source: VESA Coordinated Video Timings Standard 1.2, constants of the formula. */
const CELL_PX = 8;
const MIN_SYNC_AND_BACK_PORCH_US = 550;
const MIN_BLANK_US = 460;
const FRONT_PORCH_LINES = 3;
const MIN_BACK_PORCH_LINES = 7;
const RB2_SYNC_LINES = 8;
const RB2_FRONT_PORCH_LINES = 1;
const RB2_BACK_PORCH_LINES = 6;
const DUTY_OFFSET_PERCENT = 30;
const DUTY_GRADIENT = 300;
const DUTY_LEAST_PERCENT = 20;
const RB1_BLANK_PX = 160;
const RB2_BLANK_PX = 80;
/** What the third version leaves to the display: blanking of a line in pixels, of a frame in microseconds. */
const RB3_BLANK = { least: { px: 80, us: 300 }, most: { px: 200, us: 920 } };
const STEPS_PER_MHZ = { CVT: 4, 'CVT-RB1': 4, 'CVT-RB2': 1000 };

const OTHER_SYNC_LINES = 10;

/**
 * Lines of vertical sync by the picture's shape, width to height. Source: VESA CVT Standard 1.2, table of sync
 * widths.
 */
const SYNC_LINES: readonly { across: number; down: number; lines: number }[] = [
  { across: 4, down: 3, lines: 4 },
  { across: 16, down: 9, lines: 5 },
  { across: 16, down: 10, lines: 6 },
  { across: 5, down: 4, lines: 7 },
  { across: 15, down: 9, lines: 7 },
];

function syncLines(widthPx: number, heightPx: number): number {
  const shape = SYNC_LINES.find(({ across, down }) => Math.floor((heightPx * across) / down) === widthPx);
  return shape?.lines ?? OTHER_SYNC_LINES;
}

function timing(pixelClockMHz: number, horizontalTotalPx: number, verticalTotalLines: number): Timing {
  const refreshHz = (pixelClockMHz * 1e6) / (horizontalTotalPx * verticalTotalLines);
  return { pixelClockMHz, horizontalTotalPx, verticalTotalLines, refreshHz };
}

/** Full blanking: the line's share of blanking follows from the line's period. */
function fullBlanking(widthPx: number, heightPx: number, refreshHz: number, sync: number): Timing {
  const frameUs = 1e6 / refreshHz;
  const lineUs = (frameUs - MIN_SYNC_AND_BACK_PORCH_US) / (heightPx + FRONT_PORCH_LINES);
  const syncAndBackPorch = Math.max(Math.floor(MIN_SYNC_AND_BACK_PORCH_US / lineUs) + 1, sync + MIN_BACK_PORCH_LINES);
  const dutyPercent = Math.max(DUTY_OFFSET_PERCENT - (DUTY_GRADIENT * lineUs) / 1000, DUTY_LEAST_PERCENT);
  const pair = 2 * CELL_PX;
  const blankPx = Math.floor((widthPx * dutyPercent) / (100 - dutyPercent) / pair) * pair;
  const totalPx = widthPx + blankPx;
  const steps = STEPS_PER_MHZ.CVT;
  const clockMHz = Math.floor((totalPx / lineUs) * steps) / steps;
  return timing(clockMHz, totalPx, heightPx + syncAndBackPorch + FRONT_PORCH_LINES);
}

/** Reduced blanking: a fixed number of pixels a line, and at least 460 µs a frame. */
function reducedBlanking(
  heightPx: number,
  refreshHz: number,
  totalPx: number,
  leastBlankLines: number,
  steps: number,
): Timing {
  const lineUs = (1e6 / refreshHz - MIN_BLANK_US) / heightPx;
  const blankLines = Math.max(Math.floor(MIN_BLANK_US / lineUs) + 1, leastBlankLines);
  const totalLines = heightPx + blankLines;
  // Cut to whole steps from hertz, so that a clock which is a whole number of steps stays one.
  const clockMHz = Math.floor((refreshHz * totalLines * totalPx) / (1e6 / steps)) / steps;
  return timing(clockMHz, totalPx, totalLines);
}

const LEAST_HZ = 1;
const MOST_HZ = 1000;

/** Whether the formula is meant for a mode: sizes from one cell on, at 1 to 1000 Hz. Source: common practice. */
export const hasTiming = (widthPx: number, heightPx: number, refreshHz: number): boolean =>
  widthPx >= CELL_PX && heightPx >= CELL_PX && refreshHz >= LEAST_HZ && refreshHz <= MOST_HZ;

/**
 * The timing of a progressive mode without borders.
 * Source: VESA Coordinated Video Timings Standard 1.2 (RB1, RB2); edid-decode computes the same.
 * Except in RB2 a width is cut to whole cells of eight pixels.
 * Throws RangeError unless width and height are whole numbers from 8 and the rate lies within 1 to 1000 Hz.
 */
export function cvtTiming(widthPx: number, heightPx: number, refreshHz: number, blanking: CvtBlanking): Timing {
  needCount('widthPx', widthPx, CELL_PX);
  needCount('heightPx', heightPx, CELL_PX);
  needWithin('refreshHz', refreshHz, LEAST_HZ, MOST_HZ);
  const steps = STEPS_PER_MHZ[blanking];
  if (blanking === 'CVT-RB2') {
    const leastLines = RB2_FRONT_PORCH_LINES + RB2_SYNC_LINES + RB2_BACK_PORCH_LINES;
    return reducedBlanking(heightPx, refreshHz, widthPx + RB2_BLANK_PX, leastLines, steps);
  }
  const sync = syncLines(widthPx, heightPx);
  const cellsPx = Math.floor(widthPx / CELL_PX) * CELL_PX;
  if (blanking === 'CVT') return fullBlanking(cellsPx, heightPx, refreshHz, sync);
  const leastLines = FRONT_PORCH_LINES + sync + MIN_BACK_PORCH_LINES;
  return reducedBlanking(heightPx, refreshHz, cellsPx + RB1_BLANK_PX, leastLines, steps);
}

/**
 * The clock of the third version of reduced blanking in MHz, at the least or at the most blanking it allows; cut up to
 * whole kilohertz. Source: VESA Coordinated Video Timings Standard 2.0, as in edid-decode of v4l-utils.
 * Throws RangeError as `cvtTiming` does.
 */
export function rb3ClockMHz(widthPx: number, heightPx: number, refreshHz: number, blank: 'least' | 'most'): number {
  needCount('widthPx', widthPx, CELL_PX);
  needCount('heightPx', heightPx, CELL_PX);
  needWithin('refreshHz', refreshHz, LEAST_HZ, MOST_HZ);
  const { px, us } = RB3_BLANK[blank];
  const lineUs = (1e6 / refreshHz - us) / heightPx;
  const leastLines = RB2_FRONT_PORCH_LINES + RB2_SYNC_LINES + RB2_BACK_PORCH_LINES;
  const totalLines = heightPx + Math.max(Math.floor(us / lineUs) + 1, leastLines);
  const totalPx = Math.floor(widthPx / CELL_PX) * CELL_PX + px;
  return Math.ceil((refreshHz * totalLines * totalPx) / 1000) / 1000;
}
