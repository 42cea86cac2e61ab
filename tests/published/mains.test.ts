// Circuits, inlets and backup against the electrical code, the supply design guide and GNU units.
import { describe, expect, it } from 'vitest';
import {
  apparentVa,
  backupAtMostS,
  continuousLimitW,
  CONTINUOUS_US,
  lowMainsOutputW,
  POWER_FACTORS,
} from '../../server/src/core/trade/mains';
import { expectNear } from './near';
import { itWithOracle } from './oracle';
import { TOLERANCES } from './tolerances';
import { units } from './units';

/** Volts, breaker, watts for three hours and more. Source: NFPA 70, National Electrical Code, 210.20(A). */
const CIRCUITS: [number, number, number][] = [
  [120, 15, 1440],
  [120, 20, 1920],
];

describe('circuits', () => {
  it.each(CIRCUITS)('%i V × %i A carries %i W continuously in the United States', (volts, breaker, watts) => {
    expectNear(continuousLimitW(volts, breaker, CONTINUOUS_US.percent), watts, TOLERANCES.exact);
  });
});

describe('amperes of supplies', () => {
  /** Source: Power Supply FAQs, questions about power-factor correction: 1725 W at 115 V and 0.55 draw 27 A. */
  it('five machines of 345 W without correction draw 27 A at 115 V', () => {
    expect(Math.round(apparentVa(5 * 345, POWER_FACTORS.none.low) / 115)).toBe(27);
  });

  itWithOracle('units', 'one plug of 120 V feeds what GNU units says', () => {
    expectNear(lowMainsOutputW(120), units('120 V * 15 A * 0.8 * 0.9', 'W'), TOLERANCES.workedByUnits);
  });
});

describe('inlets, backup, stored charge', () => {
  itWithOracle('units', 'a 9 Ah, 12 V battery through 85 % runs 300 W as long as GNU units says', () => {
    const worked = units('9 A hour * 12 V * 0.85 / 300 W', 's');
    expectNear(backupAtMostS(9 * 12 * 3600, 85, 300), worked, TOLERANCES.workedByUnits);
  });
});
