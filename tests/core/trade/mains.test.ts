// Circuits, backup, inlets.
import { describe, expect, it } from 'vitest';
import {
  BACKUP_WAVE_WITH_ACTIVE_PFC,
  backupAtMostS,
  circuitPowerW,
  CONTINUOUS_US,
  continuousLimitW,
} from '../../../server/src/core/trade/mains';
import { expectRefusal, expectRefusesBad } from './refuses';

describe('circuits', () => {
  it('carry their breaker', () => {
    expect(circuitPowerW(230, 10)).toBe(2300);
    expectRefusesBad('positive', 'voltage (V)', (value) => circuitPowerW(value, 10));
    expectRefusesBad('positive', 'breaker (A)', (value) => circuitPowerW(230, value));
  });

  it('carry 80 % for hours in the US, and elsewhere the share that is asked for', () => {
    expect(continuousLimitW(120, 15, 80)).toBe(1440);
    expect(continuousLimitW(230, 10, 100)).toBe(2300);
    expectRefusesBad('positive', 'breaker (A)', (value) => continuousLimitW(230, value, 80));
    expectRefusal(() => continuousLimitW(230, 10, 101), 'share of the breaker (%) must be between 0 and 100, not 101');
    expect(CONTINUOUS_US).toEqual({ percent: 80, source: 'NFPA 70, National Electrical Code, 210.20(A)' });
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
