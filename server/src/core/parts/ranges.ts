// What a quantity of a build can be, in base units: a range a dimension, and narrower ones where the field is known.
import type { Dimension } from '../quantity';

export type Range = readonly [least: number, most: number];

/**
 * Wide enough for any personal computer, and for the room it stands in; past it a number was written wrongly, and sums
 * with it would overflow or lose their sense. Source: common practice.
 */
export const ranges: Readonly<Record<Dimension, Range>> = {
  length: [0, 10_000],
  area: [1, 1e6],
  volume: [0, 1e9],
  mass: [0, 1e6],
  power: [0, 1e5],
  'apparent-power': [0, 1e5],
  current: [0, 1e4],
  voltage: [0.1, 1000],
  resistance: [0, 1e12],
  energy: [0, 1e9],
  charge: [0, 1e4],
  frequency: [0, 1e12],
  time: [0, 3.2e9],
  temperature: [-80, 200],
  'temperature-difference': [0, 200],
  'thermal-resistance': [0, 100],
  conductivity: [0.01, 5000],
  'data-size': [0, 1e18],
  'data-rate': [0, 1e15],
  'transfer-rate': [0, 1e12],
  flow: [0, 1e5],
  pressure: [0, 1e6],
  'rotation-speed': [0, 1e5],
  'sound-level': [-20, 140],
  'sound-power': [-2, 14],
  percent: [0, 100],
  money: [0, 1e9],
  angle: [-360, 360],
  force: [0, 1e6],
  torque: [0, 1e6],
};

/** Air where people and machines work. */
export const airC: Range = [-60, 80];
/** Air that is perfectly dry has no dew point. */
export const humidityPercent: Range = [1, 100];
/** From the shores of the lowest lake to past the highest town. */
export const altitudeMm: Range = [-500_000, 9_000_000];
/** A share of something that comes out: none at all is no source of power. */
export const efficiencyPercent: Range = [1, 100];
/** A load or a margin, of a rating that short peaks may pass. */
export const loadPercent: Range = [0, 1000];
export const mainsV: Range = [50, 500];
export const hoursADayS: Range = [0, 86_400];
/** How much warmer air gets on its way: with no rise at all no flow would do. */
export const airRiseK: Range = [0.1, 100];
/** Where sound is measured, in mm: at no distance there is no level. */
export const hearingMm: Range = [10, 100_000];
/** A layer of paste after pressing, in mm: less than a grain of its filler, up to a thick pad. */
export const layerMm: Range = [0.0001, 10];
/** What stands out from an M.2 module, in mm: none at all, up to a tower of a heat sink. */
export const moduleHeightMm: Range = [0, 100];
/** What starts the platters of one disk, in amperes on one rail. */
export const spinUpA: Range = [0, 10];
/** How long that takes, in seconds. */
export const spinUpS: Range = [0.1, 120];
