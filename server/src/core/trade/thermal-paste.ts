// Materials on the way of the heat: conductivity, what gallium does to them, what a paste can reach.
import type { Range } from './numbers';

/**
 * `attacked`: never bring gallium on it. `stained`: slowly alloys on the surface, holds in service. `resists`: no
 * attack known.
 */
export type GalliumEffect = 'attacked' | 'stained' | 'resists';

export interface Material {
  readonly conductivityWPerMK: number;
  readonly gallium: GalliumEffect;
  readonly source: string;
}

export type MaterialName =
  | 'copper'
  | 'nickel-plated copper'
  | 'aluminium'
  | 'anodised aluminium'
  | 'brass'
  | 'nickel'
  | 'stainless steel';

/**
 * Conductivity near room temperature. Gallium runs between the grains of aluminium at 0.8 to 9 µm/s
 * (grain-boundary penetration measured in film); anodising counts as bare metal once it is scratched.
 * Copper and aluminium: CRC Handbook of Chemistry and Physics. Brass, nickel, stainless steel: from memory.
 */
export const MATERIALS: Readonly<Record<MaterialName, Material>> = {
  copper: {
    conductivityWPerMK: 400,
    gallium: 'stained',
    source: 'CRC Handbook; gallium: materials journals, common practice',
  },
  'nickel-plated copper': {
    conductivityWPerMK: 400,
    gallium: 'resists',
    source: 'CRC Handbook (the copper counts); gallium: common practice',
  },
  aluminium: {
    conductivityWPerMK: 237,
    gallium: 'attacked',
    source: 'CRC Handbook; gallium: grain-boundary penetration studies',
  },
  'anodised aluminium': {
    conductivityWPerMK: 237,
    gallium: 'attacked',
    source: 'CRC Handbook; gallium: scratched anodising counts as bare',
  },
  brass: {
    conductivityWPerMK: 120,
    gallium: 'attacked',
    source: 'conductivity from memory; gallium: makers of gallium alloys',
  },
  nickel: {
    conductivityWPerMK: 90,
    gallium: 'resists',
    source: 'conductivity from memory; gallium: common practice',
  },
  'stainless steel': {
    conductivityWPerMK: 15,
    gallium: 'resists',
    source: 'conductivity from memory; gallium: a maker of gallium alloys',
  },
};

/** Whether a gallium paste may never touch this material. */
export function galliumAttacks(material: MaterialName): boolean {
  return MATERIALS[material].gallium === 'attacked';
}

export type PasteClass = 'paste' | 'pad' | 'gallium alloy';

/**
 * Conductivity that a class of paste really reaches, W/m·K.
 * Paste (does not conduct electricity): a paste maker's page on interface materials, 1 to 4. Pad of filled silicone:
 * to about 5, a paper in Bulletin of Materials Science; its low end, common practice. Gallium alloys:
 * 16.5 for the tin-indium eutectic to 28, a review of gallium alloys.
 */
export const PASTE_CONDUCTIVITY: Readonly<Record<PasteClass, Range>> = {
  paste: { low: 1, high: 4 },
  pad: { low: 1, high: 5 },
  'gallium alloy': { low: 16.5, high: 28 },
};
