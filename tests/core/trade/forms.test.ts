// Forms: board sizes and holes, cards, supplies, drives, fans, radiators.
import { describe, expect, it } from 'vitest';
import {
  ALL_HOLES,
  BOARD_HOLES,
  BOARD_OUTLINES,
  FAN_HOLE_PITCH_MM,
  HOLE_POSITIONS,
  classTakes,
  caseTakesBoard,
  fanHolePitchMm,
  parseBoardSize,
  radiatorClass,
  standoffsOffHoles,
} from '../../../server/src/core/trade/forms';
import type { BoardSize } from '../../../server/src/core/trade/forms';

describe('board sizes', () => {
  it.each([
    ['ATX', 'ATX'],
    ['atx', 'ATX'],
    ['microATX', 'microATX'],
    ['Micro-ATX', 'microATX'],
    ['micro ATX', 'microATX'],
    ['mATX', 'microATX'],
    ['uATX', 'microATX'],
    ['µATX', 'microATX'],
    ['Mini-ITX', 'Mini-ITX'],
    ['mini ITX', 'Mini-ITX'],
    ['mITX', 'Mini-ITX'],
    ['SSI-EEB', 'SSI-EEB'],
    ['SSI EEB', 'SSI-EEB'],
    ['EEB', 'SSI-EEB'],
  ])('reads %s', (text, size) => expect(parseBoardSize(text)).toBe(size));

  it.each(['', 'E-ATX', 'XL-ATX', 'Mini-ATX', 'constructor'])('leaves %j undefined', (text) =>
    expect(parseBoardSize(text)).toBeUndefined(),
  );
  it('puts a smaller size where a larger goes', () => {
    expect(caseTakesBoard(['ATX'], 'microATX')).toBe(true);
    expect(caseTakesBoard(['ATX'], 'Mini-ITX')).toBe(true);
    expect(caseTakesBoard(['microATX'], 'microATX')).toBe(true);
    expect(caseTakesBoard(['microATX', 'Mini-ITX'], 'ATX')).toBe(false);
    expect(caseTakesBoard(['Mini-ITX'], 'microATX')).toBe(false);
    expect(caseTakesBoard(['ATX'], 'SSI-EEB')).toBe(false);
    expect(caseTakesBoard(['SSI-EEB'], 'ATX')).toBe(true);
    expect(caseTakesBoard([], 'ATX')).toBe(false);
  });

  it('cannot tell from a vague or unknown size alone', () => {
    expect(caseTakesBoard(['E-ATX'], 'SSI-EEB')).toBeUndefined();
    expect(caseTakesBoard(['E-ATX', 'ATX'], 'ATX')).toBe(true);
    expect(caseTakesBoard(['Mini-ITX', 'Wide'], 'ATX')).toBeUndefined();
  });
});

describe('standoffs', () => {
  it('finds those off the holes of a board with holes of its own', () => {
    const outline = { widthMm: 305, depthMm: 277 };
    expect(standoffsOffHoles(ALL_HOLES, ['A', 'B', 'C', 'F', 'G', 'H', 'J', 'K', 'L', 'M'], outline)).toEqual([
      'R',
      'S',
    ]);
    expect(standoffsOffHoles(['B', 'K'], [], { widthMm: 209.55, depthMm: 10.16 })).toEqual(['B']);
    expect(standoffsOffHoles(['B'], [], { widthMm: 209.5, depthMm: 10.16 })).toEqual([]);
    expect(standoffsOffHoles(['B'], [], { widthMm: 209.55, depthMm: 10.1 })).toEqual([]);
  });

  it('puts every hole of a size within its outline', () => {
    for (const [size, holes] of Object.entries(BOARD_HOLES)) {
      for (const hole of holes) {
        expect(HOLE_POSITIONS[hole].xMm).toBeLessThan(BOARD_OUTLINES[size as BoardSize].widthMm);
        expect(HOLE_POSITIONS[hole].yMm).toBeLessThan(BOARD_OUTLINES[size as BoardSize].depthMm);
      }
    }
    expect(ALL_HOLES).toEqual(['A', 'B', 'C', 'F', 'G', 'H', 'J', 'K', 'L', 'M', 'R', 'S']);
  });
});
describe('fans and radiators', () => {
  it('knows the pitch of usual frames', () => {
    expect([...FAN_HOLE_PITCH_MM.keys()]).toEqual([80, 92, 120, 140]);
    expect(fanHolePitchMm(120)).toBe(105);
    expect(fanHolePitchMm(200)).toBeUndefined();
    expect(() => fanHolePitchMm(0)).toThrow(/frameMm must be/);
  });

  it.each([
    [120, 1, 120],
    [240, 2, 120],
    [360, 3, 120],
    [480, 4, 120],
    [140, 1, 140],
    [280, 2, 140],
    [420, 3, 140],
    [560, 4, 140],
  ])('%i is %i fans of %i', (nominal, fans, frameMm) => expect(radiatorClass(nominal)).toEqual({ fans, frameMm }));

  it.each([1, 100, 200, 275, 600, 700, 840])('%i is no row of fans', (nominal) =>
    expect(radiatorClass(nominal)).toBeUndefined(),
  );

  it('refuses what is no length', () => {
    expect(() => radiatorClass(0)).toThrow(/nominalMm must be/);
    expect(() => radiatorClass(240.5)).toThrow(RangeError);
    expect(() => radiatorClass(NaN)).toThrow(RangeError);
  });
});

it.each([
  ['360', '240', true],
  ['240', '360', false],
  ['280', '240', false],
  ['280', '280', true],
  ['slim', '240', false],
])('a place for a %s takes a %s: %s', (place, own, takes) => expect(classTakes(place, own)).toBe(takes));
