// Gauges and cables.
import { describe, expect, it } from 'vitest';
import {
  AWG_FINEST,
  AWG_THICKEST,
  awgAreaMm2,
  awgDiameterMm,
  awgMilliohmPerM,
  COPPER_OHM_MM2_PER_M,
  cableDropMv,
  cableMilliohm,
} from '../../../server/src/core/trade/wire';
import { expectRefusal, expectRefusesBad } from './refuses';

const CABLE = { gauge: 18, lengthM: 0.6, pairs: 3 };

describe('gauges', () => {
  it('span 0000 to 40', () => {
    expect([AWG_THICKEST, AWG_FINEST]).toEqual([-3, 40]);
    expect(awgDiameterMm(36)).toBeCloseTo(0.127, 12);
    expect(awgDiameterMm(-3)).toBeCloseTo(11.684, 12);
    expect(awgDiameterMm(40)).toBeCloseTo(0.0799, 4);
  });

  it('refuse what is no gauge', () => {
    expectRefusal(() => awgDiameterMm(-4), 'gauge (AWG) must be a whole number of at least -3, not -4');
    expectRefusal(() => awgDiameterMm(18.5), 'gauge (AWG) must be a whole number of at least -3, not 18.5');
    expectRefusal(() => awgDiameterMm(41), 'gauge (AWG) must be between -3 and 40, not 41');
  });

  it('have an area and a resistance', () => {
    expect(COPPER_OHM_MM2_PER_M).toBe(1 / 58);
    expect(awgAreaMm2(36)).toBeCloseTo(0.0126677, 7);
    expect([16, 18, 20].map((gauge) => awgMilliohmPerM(gauge).toFixed(2))).toEqual(['13.17', '20.95', '33.31']);
  });
});

describe('cables', () => {
  it('count out and back, and pairs side by side', () => {
    expect(cableMilliohm({ ...CABLE, pairs: 1 })).toBeCloseTo(1.2 * awgMilliohmPerM(18), 12);
    expect(cableMilliohm(CABLE)).toBeCloseTo(0.4 * awgMilliohmPerM(18), 12);
    expect(cableMilliohm({ ...CABLE, lengthM: 0 })).toBe(0);
  });

  it('lose voltage', () => {
    expect(cableDropMv(CABLE, 150, 12)).toBeCloseTo(104.741, 3);
    expect(cableDropMv(CABLE, 0, 12)).toBe(0);
  });

  it('refuse what cannot be', () => {
    expectRefusesBad('notNegative', 'length (m)', (value) => cableMilliohm({ ...CABLE, lengthM: value }));
    expectRefusal(() => cableMilliohm({ ...CABLE, pairs: 0 }), 'pairs must be a whole number of at least 1, not 0');
    expectRefusesBad('bound', 'power (W)', (value) => cableDropMv(CABLE, value, 12));
    expectRefusesBad('positive', 'voltage (V)', (value) => cableDropMv(CABLE, 150, value));
  });
});
