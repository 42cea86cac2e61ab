// Plugs, adapters, slots: every row, every boundary.
import { describe, expect, it } from 'vitest';
import {
  adapterPowerW, cardSupplyW, CONTACT_18_AWG_A, inletPowerW, PLUGS, sixteenPinLevelFor, sixteenPinSignalledW, SLOT_POWER,
} from '../../../server/src/core/trade/plugs';
import type { Plug } from '../../../server/src/core/trade/plugs';
import { expectRefusal, expectRefusesBad } from './refuses';

/** Plug, power at 12 V, rails as voltage × contacts: low to high current. */
const ROWS: [Plug, [number, number], [number, number, number, number][]][] = [
  ['24-pin', [144, 192], [[12, 2, 12, 16], [5, 5, 30, 40], [3.3, 4, 24, 32]]],
  ['EPS 8-pin', [288, 384], [[12, 4, 24, 32]]],
  ['EPS 4-pin', [144, 192], [[12, 2, 12, 16]]],
  ['PCIe 6-pin', [75, 75], [[12, 2, 6.75, 6.75]]],
  ['PCIe 8-pin', [150, 150], [[12, 3, 13.5, 13.5]]],
  ['16-pin', [600, 600], [[12, 6, 55, 55]]],
  ['SATA power', [54, 54], [[12, 3, 4.5, 4.5], [5, 3, 4.5, 4.5], [3.3, 3, 4.5, 4.5]]],
  ['peripheral 4-pin', [72, 96], [[12, 1, 6, 8], [5, 1, 6, 8]]],
];

describe('plug ratings', () => {
  it.each(ROWS)('%s', (plug, [low, high], rails) => {
    const rating = PLUGS[plug];
    expect(rating.plug).toBe(plug);
    expect(rating.powerW).toEqual({ low, high });
    expect(rating.rails).toEqual(rails.map(([voltageV, contacts, lowA, highA]) => ({
      voltageV, contacts, currentA: { low: lowA, high: highA },
    })));
    expect(rating.source).toMatch(plug === 'SATA power' ? /^Serial ATA/ : /^ATX Version 3 .*doc\. 336521, (section|table)/);
  });

  it('holds nothing else', () => {
    expect(Object.keys(PLUGS)).toEqual(ROWS.map(([plug]) => plug));
    expect(CONTACT_18_AWG_A).toEqual({ low: 6, high: 8 });
  });
});

describe('adapters and inlets', () => {
  it('an adapter carries what its plugs bring', () => {
    expect(adapterPowerW(['PCIe 8-pin'], '16-pin')).toBe(150);
    expect(adapterPowerW(['PCIe 8-pin', 'PCIe 8-pin', 'PCIe 8-pin'], '16-pin')).toBe(450);
    expect(adapterPowerW(['peripheral 4-pin', 'SATA power'], 'PCIe 8-pin')).toBe(126);
  });

  it('and no more than the plug it feeds', () => {
    expect(adapterPowerW(['PCIe 8-pin', 'PCIe 8-pin'], 'PCIe 8-pin')).toBe(150);
    expect(adapterPowerW(['peripheral 4-pin'], 'SATA power')).toBe(54);
  });

  it('needs at least one plug', () => {
    expectRefusal(() => adapterPowerW([], '16-pin'), 'number of plugs must be a number above zero, not 0');
  });

  it('an inlet fed by its own plug, by a smaller one, by a wrong one', () => {
    expect(inletPowerW('16-pin', '16-pin')).toEqual({ low: 600, high: 600 });
    expect(inletPowerW('PCIe 8-pin', 'PCIe 6-pin')).toEqual({ low: 75, high: 75 });
    expect(inletPowerW('PCIe 6-pin', 'PCIe 8-pin')).toBeUndefined();
    expect(inletPowerW('EPS 8-pin', 'EPS 4-pin')).toEqual({ low: 144, high: 192 });
    expect(inletPowerW('EPS 4-pin', 'EPS 8-pin')).toEqual({ low: 144, high: 192 });
    expect(inletPowerW('EPS 8-pin', 'EPS 8-pin')).toEqual({ low: 288, high: 384 });
    expect(inletPowerW('EPS 8-pin', 'PCIe 8-pin')).toBeUndefined();
    expect(inletPowerW('PCIe 8-pin', 'EPS 8-pin')).toBeUndefined();
    expect(inletPowerW('24-pin', 'PCIe 6-pin')).toBeUndefined();
  });
});

describe('16-pin levels', () => {
  it.each([
    [149.9, undefined], [150, 150], [299.9, 150], [300, 300], [449.9, 300], [450, 450], [599.9, 450], [600, 600], [900, 600],
  ])('%f W cover level %j', (available, level) => expect(sixteenPinLevelFor(available)).toBe(level));

  it('refuses no power at all', () => expectRefusesBad('positive', 'available power (W)', sixteenPinLevelFor));

  it.each([
    ['ground', 'ground', 600, 600], ['open', 'ground', 450, 450], ['ground', 'open', 300, 300],
    ['open', 'open', 150, 0], ['joined', 'joined', undefined, 150], ['joined', 'ground', undefined, undefined], ['open', 'joined', undefined, undefined],
  ] as const)('sense %s and %s signal %j W, %j W on the newer plug', (sense0, sense1, older, newer) => {
    expect(sixteenPinSignalledW(sense0, sense1, '12VHPWR')).toBe(older);
    expect(sixteenPinSignalledW(sense0, sense1, '12V-2x6')).toBe(newer);
  });
});

describe('slots', () => {
  it('gives each length its power', () => {
    expect(SLOT_POWER).toEqual({
      x1: { powerW: 10, at12VA: 0.5, at3V3A: 3 },
      x4: { powerW: 25, at12VA: 2.1, at3V3A: 3 },
      x8: { powerW: 25, at12VA: 2.1, at3V3A: 3 },
      x16: { powerW: 75, at12VA: 5.5, at3V3A: 3 },
    });
  });

  it('adds slot and plugs', () => {
    expect(cardSupplyW('x4', [])).toBe(25);
    expect(cardSupplyW('x16', ['16-pin', 'PCIe 6-pin'])).toBe(750);
  });
});
