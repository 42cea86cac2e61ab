// Metals and pastes.
import { expect, it } from 'vitest';
import {
  CLAIM_AT_MOST,
  GALLIUM_EFFECTS,
  galliumAttacks,
  galliumStains,
  PASTE_CONDUCTIVITY,
} from '../../../server/src/core/trade/thermal-paste';
import type { GalliumEffect, MaterialName } from '../../../server/src/core/trade/thermal-paste';

const ROWS: [MaterialName, GalliumEffect][] = [
  ['copper', 'stained'],
  ['nickel-plated copper', 'resists'],
  ['aluminium', 'attacked'],
  ['anodised aluminium', 'attacked'],
  ['brass', 'attacked'],
  ['heat pipes in aluminium', 'attacked'],
  ['heat pipes in copper', 'stained'],
  ['nickel', 'resists'],
  ['stainless steel', 'resists'],
];

it.each(ROWS)('gallium on %s: %s', (name, effect) => {
  expect(galliumAttacks(name)).toBe(effect === 'attacked');
  expect(galliumStains(name)).toBe(effect === 'stained');
});

it('knows no other metal', () => expect(Object.keys(GALLIUM_EFFECTS)).toEqual(ROWS.map(([name]) => name)));

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
