// Badges between and outside their points, wall power, cost.
import { describe, expect, it } from 'vitest';
import {
  badgeEfficiency,
  badgeMains,
  BADGES,
  energyKWh,
  measuredEfficiency,
  runningCost,
  wallPowerW,
} from '../../../server/src/core/trade/efficiency';
import { expectRefusal, expectRefusesBad } from './refuses';

const NOTHING = { low: 0, high: 1 };

describe('badges', () => {
  it('are measured at three loads, titanium at 10 % too', () => {
    for (const mains of ['115 V', '230 V'] as const) {
      for (const [badge, points] of Object.entries(BADGES[mains])) {
        const loads = points.map((point) => point.loadPercent);
        expect(loads).toEqual(badge === 'titanium' ? [10, 20, 50, 100] : [20, 50, 100]);
      }
      expect(badgeEfficiency('titanium', mains, 10)).toEqual({ low: 0.9, high: 1 });
    }
  });

  it('promise a straight line between the points', () => {
    expect(badgeEfficiency('gold', '230 V', 35).low).toBeCloseTo(0.91, 12);
    expect(badgeEfficiency('gold', '230 V', 75).low).toBeCloseTo(0.905, 12);
    expect(badgeEfficiency('gold', '230 V', 90).low).toBeCloseTo(0.896, 12);
    expect(badgeEfficiency('titanium', '115 V', 15).low).toBeCloseTo(0.91, 12);
    expect(badgeEfficiency('gold', '230 V', 35).high).toBe(1);
  });

  it.each([20, 50, 100])('promise the point itself at %i %%', (load) => {
    const table: Record<number, number> = { 20: 0.85, 50: 0.88, 100: 0.85 };
    expect(badgeEfficiency('bronze', '230 V', load)).toEqual({ low: table[load], high: 1 });
  });

  it('promise nothing below the first point and above the last', () => {
    for (const load of [0, 19.9, 100.1]) expect(badgeEfficiency('gold', '230 V', load)).toEqual(NOTHING);
    expect(badgeEfficiency('titanium', '230 V', 9.9)).toEqual(NOTHING);
  });

  it('refuse a load that cannot be', () => {
    expectRefusesBad('notNegative', 'load (%)', (value) => badgeEfficiency('gold', '230 V', value));
  });

  it.each([
    [0, undefined],
    [89.9, undefined],
    [90, '115 V'],
    [135, '115 V'],
    [135.1, undefined],
    [179.9, undefined],
    [180, '230 V'],
    [265, '230 V'],
    [265.1, undefined],
  ])('%f V belong to table %s', (mainsV, table) => expect(badgeMains(mainsV)).toBe(table));

  it('refuse a mains that cannot be', () => expectRefusesBad('notNegative', 'mains voltage (V)', badgeMains));
});

describe('from the wall', () => {
  it('divides the load by the efficiency', () => {
    expect(wallPowerW(450, 0.9)).toBe(500);
    expect(wallPowerW(450, 1)).toBe(450);
    expect(wallPowerW(0, 0.5)).toBe(0);
  });

  it('is open where load or efficiency are', () => {
    expect(wallPowerW(450, 0)).toBe(Infinity);
    expect(wallPowerW(Infinity, 0.9)).toBe(Infinity);
    expect(wallPowerW(0, 0)).toBeNaN();
  });

  it('refuses what cannot be', () => {
    expectRefusesBad('bound', 'load (W)', (value) => wallPowerW(value, 1));
    expectRefusal(() => wallPowerW(1, -0.1), 'efficiency must be between 0 and 1, not -0.1');
    expectRefusal(() => wallPowerW(1, 1.1), 'efficiency must be between 0 and 1, not 1.1');
    expectRefusal(() => wallPowerW(1, NaN), 'efficiency must be between 0 and 1, not NaN');
  });

  it('energy and cost', () => {
    expect(energyKWh(500, 8)).toBe(4);
    expect(runningCost(500, 8, 0.25)).toBe(1);
    expect(runningCost(Infinity, 8, 0.25)).toBe(Infinity);
    expectRefusesBad('bound', 'power (W)', (value) => energyKWh(value, 8));
    expectRefusesBad('bound', 'hours', (value) => energyKWh(500, value));
    expectRefusesBad('bound', 'price per kWh', (value) => runningCost(500, 8, value));
  });
});

describe('measured points', () => {
  const points = [
    { loadPercent: 50, efficiencyPercent: 92 },
    { loadPercent: 20, efficiencyPercent: 90 },
    { loadPercent: 100, efficiencyPercent: 88 },
  ];

  it.each([
    [20, 0.9],
    [35, 0.91],
    [50, 0.92],
    [75, 0.9],
    [100, 0.88],
  ])('give a straight line at %i %%', (load, efficiency) => {
    expect(measuredEfficiency(points, load).low).toBeCloseTo(efficiency, 12);
    expect(measuredEfficiency(points, load).high).toBeCloseTo(efficiency, 12);
  });

  it.each([0, 19.9, 100.1])('say nothing at %d %%', (load) =>
    expect(measuredEfficiency(points, load)).toEqual(NOTHING),
  );

  it('say nothing where there are none', () => expect(measuredEfficiency([], 50)).toEqual(NOTHING));

  it('refuse a load that cannot be', () =>
    expectRefusesBad('notNegative', 'load (%)', (value) => measuredEfficiency(points, value)));
});
