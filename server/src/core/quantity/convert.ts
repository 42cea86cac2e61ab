// Plain numbers from a unit to the base unit of its dimension and back.
import { unitNamed, type UnitName } from './units';

/** To 15 digits: 3.5 in is 88.9 mm, so that a part of 88.9 mm fits it, whatever binary fractions make of either. */
function decimal(value: number): number {
  return Number.isInteger(value) && Math.abs(value) < 1e15 ? value : Number(value.toPrecision(15));
}

/** A number in the base unit, said in `unit`: `inUnit(25, '°F')` is 77. */
export function inUnit(value: number, unit: UnitName): number {
  const { factor, per, offset = 0 } = unitNamed(unit);
  return decimal((per === undefined ? value / factor : value * per) + offset);
}

/** A number in `unit`, said in the base unit of its dimension: `toBase(77, '°F')` is 25. */
export function toBase(value: number, unit: UnitName): number {
  const { factor, per, offset = 0 } = unitNamed(unit);
  return decimal(per === undefined ? (value - offset) * factor : (value - offset) / per);
}
