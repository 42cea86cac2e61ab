// Copper wire against published wire tables and GNU units.
import { describe, it } from 'vitest';
import { awgDiameterMm, awgMilliohmPerM, cableDropMv, gaugeCurrentShare } from '../../server/src/core/trade/wire';
import { expectNear } from './near';
import { itWithOracle } from './oracle';
import { TOLERANCES } from './tolerances';
import { units } from './units';

/** Gauge, mils, Ω per 100 ft. Source: Cirris, Wire Resistance Table for annealed copper, American Wire Gauge. */
const TABLE: [number, number, number][] = [
  [12, 80.808, 0.1588],
  [14, 64.084, 0.2525],
  [16, 50.82, 0.4016],
  [18, 40.303, 0.6385],
  [20, 31.961, 1.015],
  [22, 25.347, 1.614],
  [24, 20.1, 2.567],
  [26, 15.94, 4.081],
  [28, 12.641, 6.49],
  [30, 10.025, 10.32],
];

const MM_PER_MIL = 0.0254;
const M_PER_100_FT = 30.48;

describe('copper wire', () => {
  /** Source: TE Connectivity, product specification 108-40005, figure 4A: factors of a single contact by wire size. */
  it.each([
    [18, 1],
    [20, 0.795],
    [22, 0.647],
  ])('AWG %i carries %f of what AWG 18 does', (gauge, share) => {
    expectNear(gaugeCurrentShare(gauge, 18), share, TOLERANCES.wireCurrentShare);
  });

  it.each(TABLE)('AWG %i is %f mil thick and has %f Ω per 100 ft', (gauge, mils, ohms) => {
    expectNear(awgDiameterMm(gauge), mils * MM_PER_MIL, TOLERANCES.wireDiameter);
    expectNear(awgMilliohmPerM(gauge), (ohms / M_PER_100_FT) * 1000, TOLERANCES.wireResistance);
  });

  /** mΩ a metre, of copper of 1/58 Ω·mm²/m. Source: ASTM B258 diameters and IEC 60028, worked to two places. */
  it.each([
    [16, 13.17],
    [18, 20.95],
    [20, 33.31],
  ])('AWG %i has %f mΩ a metre', (gauge, milliohm) => {
    expectNear(awgMilliohmPerM(gauge), milliohm, TOLERANCES.wireMilliohm);
  });

  itWithOracle('units', 'agrees with GNU units on diameter and resistance', () => {
    for (const gauge of [16, 18, 20]) {
      expectNear(awgDiameterMm(gauge), units(`wiregauge(${gauge})`, 'mm'), TOLERANCES.workedByUnits);
      const expression = `(1/58) ohm mm^2 / m / (pi/4 * wiregauge(${gauge})^2)`;
      expectNear(awgMilliohmPerM(gauge), units(expression, 'milliohm/m'), TOLERANCES.workedByUnits);
    }
  });

  it('150 W at 12 V over three pairs of AWG 18, 0.6 m, loses 104.7 mV out and back', () => {
    expectNear(cableDropMv({ gauge: 18, lengthM: 0.6, pairs: 3 }, 150, 12), 104.7, TOLERANCES.cableDropMv);
  });

  itWithOracle('units', 'the same drop worked by GNU units', () => {
    const worked = units('(150 W / 12 V) * 2 * 0.6 m * (1/58) ohm mm^2 / m / (pi/4 * wiregauge(18)^2) / 3', 'mV');
    expectNear(cableDropMv({ gauge: 18, lengthM: 0.6, pairs: 3 }, 150, 12), worked, TOLERANCES.workedByUnits);
  });
});
