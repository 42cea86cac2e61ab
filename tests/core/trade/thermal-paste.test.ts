// Materials and pastes.
import { expect, it } from 'vitest';
import {
  CLAIM_AT_MOST,
  galliumAttacks,
  galliumStains,
  MATERIALS,
  PASTE_CONDUCTIVITY,
} from '../../../server/src/core/trade/thermal-paste';
import type { GalliumEffect, MaterialName } from '../../../server/src/core/trade/thermal-paste';

const ROWS: [MaterialName, number, GalliumEffect, boolean, RegExp][] = [
  ['copper', 400, 'stained', false, /^CRC/],
  ['nickel-plated copper', 400, 'resists', false, /^CRC/],
  ['aluminium', 237, 'attacked', true, /^CRC/],
  ['anodised aluminium', 237, 'attacked', true, /^CRC/],
  ['brass', 120, 'attacked', true, /from memory/],
  ['heat pipes in aluminium', 237, 'attacked', true, /^CRC/],
  ['heat pipes in copper', 400, 'stained', false, /^CRC/],
  ['nickel', 90, 'resists', false, /from memory/],
  ['stainless steel', 15, 'resists', false, /from memory/],
];

it.each(ROWS)('%s', (name, conductivityWPerMK, gallium, attacked, source) => {
  expect(MATERIALS[name]).toMatchObject({ conductivityWPerMK, gallium });
  expect(MATERIALS[name].source).toMatch(source);
  expect(galliumAttacks(name)).toBe(attacked);
  expect(galliumStains(name)).toBe(gallium === 'stained');
});

it('holds no other material', () => expect(Object.keys(MATERIALS)).toEqual(ROWS.map(([name]) => name)));

it('pastes', () => {
  expect(PASTE_CONDUCTIVITY).toEqual({
    paste: { low: 1, high: 4 },
    pad: { low: 1, high: 5 },
    'gallium alloy': { low: 16.5, high: 28 },
  });
});

it('a claim is believed farther where the pressed film was measured, and never below what is reached', () => {
  for (const { anyMethod, film } of Object.values(CLAIM_AT_MOST)) expect(film).toBeGreaterThanOrEqual(anyMethod);
  expect(CLAIM_AT_MOST.paste.anyMethod).toBeGreaterThan(PASTE_CONDUCTIVITY.paste.high);
  expect(CLAIM_AT_MOST['gallium alloy'].film).toBe(PASTE_CONDUCTIVITY['gallium alloy'].high);
});
