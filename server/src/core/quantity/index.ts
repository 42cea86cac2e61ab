// The door to quantities: reading, converting and writing values with their units.
export type { Dimension, Quantity } from './types';
export { readAmount, type Amount } from './amount';
export { inUnit, toBase } from './convert';
export { currencyCodes, type CurrencyCode } from './currencies';
export { dimensions } from './dimensions';
export { formatQuantity } from './format';
export { plainNumber } from './numbers';
export { readQuantity } from './read';
export { units, type UnitName } from './units';
