// Plain numbers from a unit to the base unit of its dimension and back.
import { unitNamed, type UnitName } from './units';

/** A number in the base unit, said in `unit`: `inUnit(25, '°F')` is 77. */
export function inUnit(value: number, unit: UnitName): number {
  const { factor, per, offset = 0 } = unitNamed(unit);
  return (per === undefined ? value / factor : value * per) + offset;
}

/** A number in `unit`, said in the base unit of its dimension: `toBase(77, '°F')` is 25. */
export function toBase(value: number, unit: UnitName): number {
  const { factor, per, offset = 0 } = unitNamed(unit);
  return per === undefined ? (value - offset) * factor : (value - offset) / per;
}
