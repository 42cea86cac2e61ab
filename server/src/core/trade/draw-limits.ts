// The most a part of a class draws, for parts that do not say: bounds from standards, and from common practice.

export interface DrawLimit {
  readonly mostW: number;
  readonly source: string;
}

/** A fan on a header of the board. Source: 4-wire fan specification, 1.5 A at 12 V for as long as it runs. */
export const FAN_CURRENT_A = 1.5;
export const FAN_SOURCE = '4-wire PWM fan specification: at most 1.5 A at 12 V';

/** What a header for fans supplies at the least, A. Source: common practice, handbooks of boards. */
export const HEADER_CURRENT_A = 1;
export const HEADER_SOURCE = 'common practice: a fan header supplies at least 1 A';

/** How many times its current at full speed a fan takes at most while it starts. Source: common practice. */
export const FAN_START_TIMES = 3;
export const FAN_START_SOURCE = 'common practice: a fan starts on at most three times its current at full speed';

/** Short peaks of a part that states none: how many times its steady draw, and for how long. */
export interface UsualPeak {
  readonly times: number;
  readonly lastsS: number;
  readonly source: string;
}

/** A card that draws at most what slot and connectors carry. Source: common practice, measured cards. */
export const CARD_PEAK: UsualPeak = {
  times: 2,
  lastsS: 0.01,
  source: 'common practice: a card’s peaks reach twice what it draws, for less than 10 ms',
};

/** A processor by its steady power. Source: common practice: base power against the turbo power that makers print. */
export const PROCESSOR_PEAK: UsualPeak = {
  times: 1.5,
  lastsS: 60,
  source: 'common practice: a processor’s peaks reach one and a half times its steady power, for less than a minute',
};

/** A board with its chipset, converters and what hangs on its USB ports. Source: common practice. */
export const BOARD_DRAW: DrawLimit = { mostW: 80, source: 'common practice: a board draws at most 80 W' };

/** One memory module. Source: common practice. */
export const MODULE_DRAW: DrawLimit = { mostW: 15, source: 'common practice: a module draws at most 15 W' };

/**
 * A drive that runs, by its shape. Source: common practice, from manuals of disks of 3.5 in (5 to 10 W at work); a
 * 2.5 in drive by its SATA connector, 4.5 A at 5 V, Serial ATA specification; M.2 by common practice.
 */
export const DRIVE_DRAW: Readonly<Record<string, DrawLimit>> = {
  '3.5 in': { mostW: 15, source: 'common practice: a 3.5 in disk at work draws at most 15 W' },
  '2.5 in': { mostW: 22.5, source: 'Serial ATA specification: 4.5 A at 5 V' },
  'M.2': { mostW: 15, source: 'common practice: an M.2 module draws at most 15 W' },
};

/**
 * A drive while it starts. Source: manuals of three 3.5 in disks, 2.8 to 2.9 A at 12 V at the peak, some 39 W with what
 * they take at 5 V; a 2.5 in drive by its SATA connector, 4.5 A at 5 V.
 */
export const DRIVE_START: Readonly<Record<string, DrawLimit>> = {
  '3.5 in': { mostW: 39, source: 'manuals of 3.5 in disks: 2.8 to 2.9 A at 12 V while they start' },
  '2.5 in': { mostW: 22.5, source: 'Serial ATA specification: 4.5 A at 5 V' },
};

/** What a 3.5 in disk takes at 5 V while it starts, A, at most. Source: the same manuals, 39 W less 34 W at 12 V. */
export const DISK_START_5V_A = 1;
