// Pastes: what gallium does to the metals they lie on, and what each class conducts.
import type { Range } from './numbers';

/**
 * `attacked`: never bring gallium on it. `stained`: slowly alloys on the surface, holds in service. `resists`: no
 * attack known.
 */
export type GalliumEffect = 'attacked' | 'stained' | 'resists';

export type MaterialName =
  | 'copper'
  | 'nickel-plated copper'
  | 'aluminium'
  | 'anodised aluminium'
  | 'brass'
  | 'heat pipes in aluminium'
  | 'heat pipes in copper'
  | 'nickel'
  | 'stainless steel';

/**
 * What gallium does to a metal: it runs between the grains of aluminium at 0.8 to 9 µm/s, measured in film; anodising
 * counts as bare metal once it is scratched. Of heat pipes, what is cast or pressed around them comes under the paste
 * as well. Source: grain-boundary penetration studies (aluminium); makers of gallium alloys (brass, stainless steel);
 * materials journals (copper); common practice for nickel.
 */
export const GALLIUM_EFFECTS: Readonly<Record<MaterialName, GalliumEffect>> = {
  copper: 'stained',
  'nickel-plated copper': 'resists',
  aluminium: 'attacked',
  'anodised aluminium': 'attacked',
  brass: 'attacked',
  'heat pipes in aluminium': 'attacked',
  'heat pipes in copper': 'stained',
  nickel: 'resists',
  'stainless steel': 'resists',
};

/** Whether a gallium paste may never touch this material. */
export function galliumAttacks(material: MaterialName): boolean {
  return GALLIUM_EFFECTS[material] === 'attacked';
}

/** Whether a gallium paste soaks into this material: it dries out, stains it, and has to be brought on again. */
export function galliumStains(material: MaterialName): boolean {
  return GALLIUM_EFFECTS[material] === 'stained';
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

/** What fills a paste, with how the figure on its tube was measured where that counts. */
export type PasteClaim = 'paste' | 'metal-filled paste' | 'pad' | 'gallium alloy';

/**
 * The most that a data sheet is believed, W/m·K. Compounds for industry state up to about 8 by whatever method, and up
 * to about 12 where the pressed film itself was measured, ASTM D5470; retail tubes state up to 20 times what is
 * reached. Gallium alloys and pads: as above. Source: the first two, common practice; ASTM D5470: the method.
 */
export const CLAIM_AT_MOST: Readonly<Record<PasteClaim, { readonly anyMethod: number; readonly film: number }>> = {
  paste: { anyMethod: 8, film: 12 },
  'metal-filled paste': { anyMethod: 10, film: 12 },
  pad: { anyMethod: 8, film: 12 },
  'gallium alloy': { anyMethod: 28, film: 28 },
};
