// Arrays by plain names: each kind against the level it stands for.
// Source: SNIA Common RAID Disk Drive Format (DDF), levels.
import { describe, expect, it } from 'vitest';
import { ARRAY_KINDS, arrayNeeds, arraySurvives, arrayUnits, levelOfKind } from '../../../server/src/core/trade/arrays';

describe('arrays by plain names', () => {
  it('names a level for each kind', () => {
    expect(ARRAY_KINDS.map(levelOfKind)).toEqual(['RAID 0', 'RAID 1', 'RAID 5', 'RAID 6', 'RAID 10']);
  });

  it('needs so many drives, of striped mirrors an even number', () => {
    expect(ARRAY_KINDS.map((kind) => arrayNeeds(kind).least)).toEqual([2, 2, 3, 4, 4]);
    expect(ARRAY_KINDS.filter((kind) => arrayNeeds(kind).even)).toEqual(['striped mirrors']);
  });

  it('holds, of six drives, so many drives’ worth, and survives so many failures', () => {
    expect(ARRAY_KINDS.map((kind) => arrayUnits(kind, 6))).toEqual([6, 1, 5, 4, 3]);
    expect(ARRAY_KINDS.map((kind) => arraySurvives(kind, 6))).toEqual([0, 5, 1, 2, 1]);
  });
});
