// Every row of the trade’s list is judged by a check.
import { expect, it } from 'vitest';
import { rowFates } from '../../server/tools/generators/rows';

it('leaves no row of the list unaccounted for', () => {
  expect(
    rowFates()
      .filter((fate) => !fate.by)
      .map((fate) => `${fate.area}: ${fate.row}`),
  ).toEqual([]);
});
