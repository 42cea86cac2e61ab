// Circuits, backup, inlets, strips.
import { describe, expect, it } from 'vitest';
import {
  BACKUP_WAVE_WITH_ACTIVE_PFC, backupAtMostS, breakerNeededA, circuitLeftW, circuitPowerW, CONTINUOUS_FROM_HOURS, CONTINUOUS_RULES,
  continuousLimitW, INLET_FREQUENCY_HZ, inletMeets, INLETS, isContinuous, storedEnergyJ, stripUsedAsListed,
} from '../../../server/src/core/trade/mains';
import type { Inlet } from '../../../server/src/core/trade/mains';
import { expectRefusal, expectRefusesBad } from './refuses';

describe('circuits', () => {
  it('carry their breaker', () => {
    expect(circuitPowerW(230, 10)).toBe(2300);
    expectRefusesBad('positive', 'voltage (V)', (value) => circuitPowerW(value, 10));
    expectRefusesBad('positive', 'breaker (A)', (value) => circuitPowerW(230, value));
  });

  it('carry 80 % for hours in the US, and what the local code says elsewhere', () => {
    expect(continuousLimitW(120, 15, 80)).toBe(1440);
    expect(continuousLimitW(230, 10, 100)).toBe(2300);
    expectRefusesBad('positive', 'breaker (A)', (value) => continuousLimitW(230, value, 80));
    expectRefusal(() => continuousLimitW(230, 10, 101), 'share of the breaker (%) must be between 0 and 100, not 101');
    expect(CONTINUOUS_RULES).toEqual({
      US: {
        fractionOfBreaker: 0.8, source: 'NFPA 70, National Electrical Code, 210.20(A)',
        defersTo: 'the local electrical code and a licensed electrician',
      },
      elsewhere: {
        fractionOfBreaker: undefined, source: 'the local electrical code',
        defersTo: 'the local electrical code and a licensed electrician',
      },
    });
  });

  it('three hours count as continuous', () => {
    expect(CONTINUOUS_FROM_HOURS).toBe(3);
    expect([0, 2.9, 3, 24].map(isContinuous)).toEqual([false, false, true, true]);
    expectRefusesBad('notNegative', 'hours', isContinuous);
  });

  it('a breaker for both kinds of load', () => {
    expect(breakerNeededA(8, 5)).toBe(15);
    expectRefusesBad('notNegative', 'continuous load (A)', (value) => breakerNeededA(value, 5));
    expectRefusesBad('notNegative', 'other load (A)', (value) => breakerNeededA(8, value));
  });

  it('what is left', () => {
    expect(circuitLeftW(1440, 900, 450)).toBe(90);
    expect(circuitLeftW(1440, 1200, 450)).toBe(-210);
    expectRefusesBad('notNegative', 'limit (W)', (value) => circuitLeftW(value, 900, 450));
    expectRefusesBad('notNegative', 'shared load (W)', (value) => circuitLeftW(1440, value, 450));
    expectRefusesBad('notNegative', 'machine (W)', (value) => circuitLeftW(1440, 900, value));
  });

  it('strips go into wall outlets', () => {
    expect(stripUsedAsListed('wall outlet')).toBe(true);
    expect(stripUsedAsListed('power strip')).toBe(false);
    expect(stripUsedAsListed('extension cord')).toBe(false);
  });
});

describe('backup', () => {
  it('runs for energy over power', () => {
    expect(backupAtMostS(432_000, 50, 300)).toBe(720);
    expect(backupAtMostS(432_000, 50, Infinity)).toBe(0);
    expectRefusesBad('bound', 'energy (J)', (value) => backupAtMostS(value, 50, 300));
    expectRefusesBad('bound', 'load (W)', (value) => backupAtMostS(432_000, 50, value));
    expectRefusal(() => backupAtMostS(432_000, 101, 300), 'efficiency (%) must be between 0 and 100, not 101');
  });

  it('a stepped wave wants trying', () => {
    expect(BACKUP_WAVE_WITH_ACTIVE_PFC).toEqual({ sine: 'suits', stepped: 'try under load' });
  });
});

describe('inlets', () => {
  it('hold the ranges', () => {
    expect(INLETS).toEqual({
      '100-127 V': { leastV: 90, mostV: 135 }, '200-240 V': { leastV: 180, mostV: 265 }, '100-240 V': { leastV: 90, mostV: 265 },
    });
    expect(INLET_FREQUENCY_HZ).toEqual({ least: 47, most: 63 });
  });

  it.each<[Inlet, number, string]>([
    ['100-127 V', 89.9, 'below'], ['100-127 V', 90, 'within'], ['100-127 V', 135, 'within'], ['100-127 V', 230, 'above'],
    ['200-240 V', 120, 'below'], ['200-240 V', 180, 'within'], ['200-240 V', 265, 'within'], ['200-240 V', 265.1, 'above'],
    ['100-240 V', 150, 'within'],
  ])('%s at %f V: %s', (inlet, mainsV, verdict) => expect(inletMeets(inlet, mainsV)).toBe(verdict));

  it('refuse no mains', () => expectRefusesBad('positive', 'mains voltage (V)', (value) => inletMeets('100-240 V', value)));

  it('leave charge behind', () => {
    expect(storedEnergyJ(330, 400)).toBeCloseTo(26.4, 10);
    expectRefusesBad('notNegative', 'capacitance (µF)', (value) => storedEnergyJ(value, 400));
    expectRefusesBad('notNegative', 'voltage (V)', (value) => storedEnergyJ(330, value));
  });
});
