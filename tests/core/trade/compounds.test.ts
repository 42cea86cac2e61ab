// Materials and compounds.
import { expect, it } from 'vitest';
import {
  COMPOUND_CONDUCTIVITY, conductivityClaim, CONDUCTS_ELECTRICITY, GALLIUM_IN_ALUMINIUM_UM_PER_S, galliumAttacks, MATERIALS,
} from '../../../server/src/core/trade/compounds';
import type { GalliumEffect, MaterialName } from '../../../server/src/core/trade/compounds';
import { expectRefusesBad } from './refuses';

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

it('gallium runs into aluminium', () => expect(GALLIUM_IN_ALUMINIUM_UM_PER_S).toEqual({ low: 0.8, high: 9 }));

it('compounds', () => {
  expect(COMPOUND_CONDUCTIVITY).toEqual({
    paste: { low: 1, high: 4 }, pad: { low: 1, high: 5 }, 'gallium alloy': { low: 16.5, high: 28 },
  });
  expect(CONDUCTS_ELECTRICITY).toEqual({ paste: false, pad: false, 'gallium alloy': true });
});

it.each([
  ['paste', 0.9, 'below'], ['paste', 1, 'within'], ['paste', 4, 'within'], ['paste', 4.1, 'beyond'],
  ['gallium alloy', 16.4, 'below'], ['gallium alloy', 28, 'within'], ['gallium alloy', 73, 'beyond'],
] as const)('%s of %f W/m·K: %s', (compound, stated, verdict) => expect(conductivityClaim(compound, stated)).toBe(verdict));

it('refuses no conductivity', () => {
  expectRefusesBad('positive', 'stated conductivity (W/m·K)', (value) => conductivityClaim('paste', value));
});
