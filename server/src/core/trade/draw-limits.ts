// The most a part of a class draws, for parts that do not say: bounds from standards, and from common practice.

export interface DrawLimit {
  readonly mostW: number;
  readonly source: string;
}

/** A fan on a header of the board. Source: 4-wire fan specification, 1.5 A at 12 V for as long as it runs. */
export const FAN_CURRENT_A = 1.5;
export const FAN_SOURCE = '4-wire PWM fan specification: at most 1.5 A at 12 V';

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
