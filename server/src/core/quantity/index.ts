// The door to quantities: reading, converting and writing values with their units.
export type { Dimension, Notation, Quantity, QuantityProblem, QuantityProblemCode, QuantityResult } from './types';
export { readAmount, type Amount } from './amount';
export { inUnit, toBase } from './convert';
export { currencyCodes, type CurrencyCode } from './currencies';
export { dimensions, type DimensionFacts } from './dimensions';
export { formatPair, formatQuantity, type FormatOptions } from './format';
export { plainNumber } from './numbers';
export { readQuantity } from './read';
export { units, unitSpelled, type Unit, type UnitName } from './units';
