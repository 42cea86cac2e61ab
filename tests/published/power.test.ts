// Connectors, slots, rails, peaks and efficiency against the power supply design guides, and sums against GNU units.
import { describe, expect, it } from 'vitest';
import { BADGES, badgeEfficiency, energyKWh, runningCost } from '../../server/src/core/trade/efficiency';
import type { Badge } from '../../server/src/core/trade/efficiency';
import {
  CONNECTORS,
  SIXTEEN_PIN_CONTACT_A,
  SIXTEEN_PIN_LEVELS_W,
  SLOT_POWER,
} from '../../server/src/core/trade/connectors';
import type { Connector } from '../../server/src/core/trade/connectors';
import { excursionAllowedPercent, excursionClass, railOf } from '../../server/src/core/trade/power';
import { expectNear } from './near';
import { itWithOracle } from './oracle';
import { TOLERANCES } from './tolerances';
import { units } from './units';

/** Sustained watts and amperes. Source: ATX Version 3 design guide, doc. 336521, table 3-5. */
const CARD_CONNECTORS: [Connector, number, number][] = [
  ['PCIe 6-pin', 75, 6.75],
  ['PCIe 8-pin', 150, 13.5],
  ['16-pin', 600, 55],
];

/**
 * Most a card may draw, by the connectors on it. Source: One Stop Systems, ExpressBox 3200 User Manual, section 9.8,
 * after the PCI Express x16 Graphics 150W-ATX and 225 W/300 W High Power Card Electromechanical Specifications.
 */
const CARDS: [Connector[], number][] = [
  [[], 75],
  [['PCIe 6-pin'], 150],
  [['PCIe 6-pin', 'PCIe 6-pin'], 225],
  [['PCIe 8-pin'], 225],
  [['PCIe 8-pin', 'PCIe 6-pin'], 300],
  [['PCIe 8-pin', 'PCIe 8-pin'], 375],
  [['PCIe 8-pin', 'PCIe 8-pin', 'PCIe 6-pin'], 450],
];

/** Duration ms, percent above 450 W with a 16-pin connector, percent otherwise. Source: doc. 336521, table 3-3. */
const PEAKS: [number, number, number][] = [
  [0.1, 200, 150],
  [1, 180, 145],
  [10, 160, 135],
  [100, 120, 110],
];

/** At 20, 50 and 100 % load. Source: 80 PLUS programme, 230 V EU internal. */
const EFFICIENCY_230: [Badge, number, number, number][] = [
  ['standard', 82, 85, 82],
  ['bronze', 85, 88, 85],
  ['silver', 87, 90, 87],
  ['gold', 90, 92, 89],
  ['platinum', 92, 94, 90],
  ['titanium', 94, 96, 94],
];

/**
 * At 20, 50 and 100 % load. Source: 80 PLUS programme, 115 V internal, as tabulated in a trade journal's article on
 * it.
 */
const EFFICIENCY_115: [Badge, number, number, number][] = [
  ['standard', 80, 80, 80],
  ['bronze', 82, 85, 82],
  ['silver', 85, 88, 85],
  ['gold', 87, 90, 87],
  ['platinum', 90, 92, 89],
  ['titanium', 92, 94, 90],
];

describe('connectors and slots', () => {
  it.each(CARD_CONNECTORS)('%s carries %i W and %f A', (connector, watts, amperes) => {
    expect(CONNECTORS[connector].powerW).toEqual({ low: watts, high: watts });
    expect(CONNECTORS[connector].rails).toMatchObject([{ voltageV: 12, currentA: { low: amperes, high: amperes } }]);
  });

  it.each(CARDS)('a card with %j may draw %i W', (connectors, watts) => {
    expect(connectors.reduce((sum, connector) => sum + CONNECTORS[connector].powerW.low, SLOT_POWER.x16.powerW)).toBe(
      watts,
    );
  });

  it('a slot of full width gives 75 W, 3 A of it at most over 3.3 V', () => {
    expect(SLOT_POWER.x16).toEqual({ powerW: 75, at3V3A: 3 });
  });

  it('the other slots give 10 W and 25 W (same manual, section 9.8)', () => {
    expect([SLOT_POWER.x1.powerW, SLOT_POWER.x4.powerW, SLOT_POWER.x8.powerW]).toEqual([10, 25, 25]);
  });

  it('a SATA connector carries 4.5 A a rail, 54 W at 12 V (three contacts of 1.5 A)', () => {
    expect(CONNECTORS['SATA power'].powerW.high).toBe(3 * 1.5 * 12);
    for (const rail of CONNECTORS['SATA power'].rails) expect(rail.currentA.high).toBe(4.5);
  });

  it(
    'each of its six 12 V contacts carries a sixth of the 55 A of a 16-pin connector (doc. 336521, tables ' +
      '3-5 and 5-7)',
    () => {
      const [rail] = CONNECTORS['16-pin'].rails;
      expect(rail!.contacts).toBe(6);
      expectNear(SIXTEEN_PIN_CONTACT_A * rail!.contacts, 55, TOLERANCES.exact);
    },
  );

  it('the 16-pin connector signals four levels (doc. 336521, table 3-6)', () => {
    expect(SIXTEEN_PIN_LEVELS_W).toEqual([600, 450, 300, 150]);
  });

  it('contacts on 18 AWG carry 6 to 8 A each (doc. 336521, section 2.2.1): four of them 288 to 384 W', () => {
    expect(CONNECTORS['EPS 8-pin'].powerW).toEqual({ low: 4 * 6 * 12, high: 4 * 8 * 12 });
  });
});

describe('rails and peaks', () => {
  it.each(PEAKS)('peaks of %f ms: %i %% or %i %%', (durationMs, large, other) => {
    const allowed = (rating: number, has16Pin: boolean): number =>
      excursionAllowedPercent(excursionClass(rating, has16Pin), durationMs);
    expect(allowed(451, true)).toBe(large);
    expect(allowed(450, true)).toBe(other);
    expect(allowed(451, false)).toBe(other);
  });
});

/** Names as labels print them. Source: Dell Dimension 4700 service manual, DC power connector pin assignments. */
const LABELS: [string, number | undefined, ReturnType<typeof railOf>][] = [
  ['+12A VDC', 12, '12 V'],
  ['+5 VDC', 5, '5 V'],
  ['+3.32 VDC', 3.3, '3.3 V'],
  ['-12 VDC', 12, 'other'],
  ['+5VSB', 5, 'other'],
  ['V1', 11.3, '12 V'],
  ['V2', undefined, undefined],
];

describe('rails of a label', () => {
  it.each(LABELS)('%s at %s V is %s', (name, volts, is) => expect(railOf(name, volts)).toBe(is));
});

describe('efficiency and energy', () => {
  for (const [mains, table] of [
    ['115 V', EFFICIENCY_115],
    ['230 V', EFFICIENCY_230],
  ] as const) {
    it.each(table)(`${mains} %s promises %i/%i/%i`, (badge, at20, at50, at100) => {
      const promised = [20, 50, 100].map((load) => badgeEfficiency(badge, mains, load).low * 100);
      [at20, at50, at100].forEach((percent, i) => expectNear(promised[i] ?? NaN, percent, TOLERANCES.exact));
    });
  }

  it('keeps the desktop table apart from the redundant one, where 230 V bronze is 81/85/81', () => {
    expect(BADGES['230 V'].bronze.map((point) => point.efficiencyPercent)).not.toEqual([81, 85, 81]);
  });

  itWithOracle('units', '450 W for 8 hours, in kWh and in money', () => {
    expectNear(energyKWh(450, 8), units('450 W * 8 hour', 'kW hour'), TOLERANCES.workedByUnits);
    expectNear(runningCost(450, 8, 0.31), units('450 W * 8 hour', 'kW hour') * 0.31, TOLERANCES.workedByUnits);
  });
});
