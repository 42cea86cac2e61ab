// Sizes of memory: a GB of memory is 2³⁰ bytes, however a file spells it.
import { units } from '../quantity';
import { memoryBytes } from '../trade/memory';
import { derive, type Figure } from './figure';

const notation = ({ unit }: Figure): string | undefined => (unit === undefined ? undefined : units.get(unit)?.notation);

/** Figures to be compared or added: as they are while all are written in GB or all in GiB, else all in GiB. */
export function alike(of: readonly Figure[]): readonly Figure[] {
  const mixed = of.some((one) => notation(one) === 'binary') && of.some((one) => notation(one) === 'decimal');
  return mixed ? of.map((one) => (notation(one) === 'decimal' ? inBinary(one) : one)) : of;
}

function inBinary(one: Figure): Figure {
  const unitBytes = units.get(one.unit!)!.factor;
  const work = (bytes: number): number => (Number.isFinite(bytes) ? memoryBytes(bytes / unitBytes, unitBytes) : bytes);
  return derive(one.label, 'data-size', [one], 'the same number in units of 1024', work, {
    unit: 'GiB',
    source: 'JEDEC Standard No. 21-C: a rank of 16 GB holds 2³⁴ bytes',
  });
}
