// The ways of reading that a kind of part has of its own, by the path of the field.
import type { Kind } from '../parts/kinds';
import type { Place, Taker } from './taken';
import { boardTakers } from './takers/board';
import { box } from './takers/box';
import { caseTakers } from './takers/case';
import { anyTakers, fanTakers, radiatorPartTakers } from './takers/common';
import { cardTakers, displayTakers, driveTakers } from './takers/devices';
import { cableTakers, fixingTakers, pasteTakers } from './takers/small';
import { coolerTakers, memoryTakers, processorTakers } from './takers/processing';
import { supplyTakers } from './takers/supply';

const own: Readonly<Partial<Record<Kind, Readonly<Record<string, Taker>>>>> = {
  board: boardTakers,
  processor: processorTakers,
  cooler: coolerTakers,
  paste: pasteTakers,
  memory: memoryTakers,
  drive: driveTakers,
  graphics: cardTakers,
  card: cardTakers,
  supply: supplyTakers,
  case: caseTakers,
  cable: cableTakers,
  fan: { ...anyTakers, ...fanTakers },
  radiator: radiatorPartTakers,
  fixing: fixingTakers,
  display: displayTakers,
};

export const takerOf = ({ kind, path }: Place): Taker | undefined => {
  const takers = own[kind] ?? anyTakers;
  const key = path.join('.');
  if (key === 'in-the-box') return box;
  return Object.hasOwn(takers, key) ? takers[key] : undefined;
};
