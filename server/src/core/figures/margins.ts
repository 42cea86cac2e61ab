// Figures of the house’s margins: what its settings state, or the house’s default by that name.
import type { Build } from '../build/build';
import type { MarginName } from '../build/workspace-config';
import { margins } from '../manifest/house-file';
import { figure, known, type Figure } from './figure';

/** A margin of the house, in the base unit of its dimension. */
export function marginFigure(build: Build, name: MarginName, label: string): Figure {
  const set = build.house.margin(name);
  if ('fact' in set) return figure(set.fact, label);
  const { dimension, unit } = margins[name];
  return known(set.standard, dimension, `${label} (default)`, {
    unit,
    source: 'the default of a house that states none',
  });
}
