// Connectors and slots: every row.
import { describe, expect, it } from 'vitest';
import { CONTACT_18_AWG_A, CONNECTORS, SLOT_POWER } from '../../../server/src/core/trade/connectors';
import type { Connector } from '../../../server/src/core/trade/connectors';

/** Connector, power at 12 V, rails as voltage × contacts: low to high current. */
const ROWS: [Connector, [number, number], [number, number, number, number][]][] = [
  [
    '24-pin',
    [144, 192],
    [
      [12, 2, 12, 16],
      [5, 5, 30, 40],
      [3.3, 4, 24, 32],
    ],
  ],
  ['EPS 8-pin', [288, 384], [[12, 4, 24, 32]]],
  ['EPS 4-pin', [144, 192], [[12, 2, 12, 16]]],
  ['PCIe 8-pin', [150, 150], [[12, 3, 13.5, 13.5]]],
  ['PCIe 6-pin', [75, 75], [[12, 2, 6.75, 6.75]]],
  ['16-pin', [600, 600], [[12, 6, 55, 55]]],
  [
    'SATA power',
    [54, 54],
    [
      [12, 3, 4.5, 4.5],
      [5, 3, 4.5, 4.5],
      [3.3, 3, 4.5, 4.5],
    ],
  ],
  [
    'peripheral 4-pin',
    [72, 96],
    [
      [12, 1, 6, 8],
      [5, 1, 6, 8],
    ],
  ],
  ['10-pin', [216, 288], [[12, 3, 18, 24]]],
  ['DC barrel', [60, 240], [[12, 1, 5, 12]]],
];

describe('connector ratings', () => {
  it.each(ROWS)('%s', (connector, [low, high], rails) => {
    const rating = CONNECTORS[connector];
    expect(rating.powerW).toEqual({ low, high });
    expect(rating.rails).toEqual(
      rails.map(([voltageV, contacts, lowA, highA]) => ({
        voltageV,
        contacts,
        currentA: { low: lowA, high: highA },
      })),
    );
    expect(rating.source).toMatch(
      {
        'SATA power': /^Serial ATA/,
        '10-pin': /^ATX12VO design guide, doc\. 613768/,
        'DC barrel': /^common practice/,
      }[connector as string] ?? /^ATX Version 3 .*doc\. 336521, (section|table)/,
    );
  });

  it('holds nothing else', () => {
    expect(Object.keys(CONNECTORS)).toEqual(ROWS.map(([connector]) => connector));
    expect(CONTACT_18_AWG_A).toEqual({ low: 6, high: 8 });
  });
});

describe('slots', () => {
  it('gives each length its power', () => {
    expect(SLOT_POWER).toEqual({
      x1: { powerW: 10, at3V3A: 3 },
      x4: { powerW: 25, at3V3A: 3 },
      x8: { powerW: 25, at3V3A: 3 },
      x16: { powerW: 75, at3V3A: 3 },
    });
  });
});
