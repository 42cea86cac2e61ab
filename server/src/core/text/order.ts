// Texts in one order everywhere.

/** By UTF-16 units, as no locale changes it: below nothing where the first comes first. */
export const compareTexts = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
