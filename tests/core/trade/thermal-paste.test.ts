// Materials and pastes.
import { expect, it } from 'vitest';
import { PASTE_CONDUCTIVITY, galliumAttacks, MATERIALS } from '../../../server/src/core/trade/thermal-paste';
import type { GalliumEffect, MaterialName } from '../../../server/src/core/trade/thermal-paste';

const ROWS: [MaterialName, number, GalliumEffect, boolean, RegExp][] = [
  ['copper', 400, 'stained', false, /^CRC/],
  ['nickel-plated copper', 400, 'resists', false, /^CRC/],
  ['aluminium', 237, 'attacked', true, /^CRC/],
  ['anodised aluminium', 237, 'attacked', true, /^CRC/],
  ['brass', 120, 'attacked', true, /from memory/],
  ['nickel', 90, 'resists', false, /from memory/],
  ['stainless steel', 15, 'resists', false, /from memory/],
];

it.each(ROWS)('%s', (name, conductivityWPerMK, gallium, attacked, source) => {
  expect(MATERIALS[name]).toMatchObject({ conductivityWPerMK, gallium });
  expect(MATERIALS[name].source).toMatch(source);
  expect(galliumAttacks(name)).toBe(attacked);
});

it('holds no other material', () => expect(Object.keys(MATERIALS)).toEqual(ROWS.map(([name]) => name)));

it('pastes', () => {
  expect(PASTE_CONDUCTIVITY).toEqual({
    paste: { low: 1, high: 4 },
    pad: { low: 1, high: 5 },
    'gallium alloy': { low: 16.5, high: 28 },
  });
});
