// Firmware versions: list order, natural order, and what stays incomparable.
import { describe, expect, it } from 'vitest';
import {
  compareByList,
  compareBySpelling,
  compareVersions,
  sameFileOnFat,
  spellingFollowsList,
} from '../../../server/src/core/trade/firmware';

describe('compareByList', () => {
  const list = ['1.02', '1.08', '1.20', '1.31'];

  it('takes the list for the order', () => {
    expect(compareByList(list, '1.02', '1.08')).toBe(-1);
    expect(compareByList(list, '1.31', '1.02')).toBe(1);
    expect(compareByList(list, '1.20', '1.20')).toBe(0);
  });

  it('has no answer for a version that is not listed', () => {
    expect(compareByList(list, '1.02', '1.99')).toBeUndefined();
    expect(compareByList(list, '1.99', '1.02')).toBeUndefined();
    expect(compareByList([], '1.99', '1.99')).toBeUndefined();
  });
});

describe('compareBySpelling', () => {
  it.each([
    ['1.08', '1.20', -1],
    ['1.20', '1.08', 1],
    ['1.8', '1.10', -1],
    ['1.08', '1.8', 0],
    ['F9', 'F10', -1],
    ['F22', 'F4', 1],
    ['7', '7', 0],
    ['2.0.1', '2.0.10', -1],
    ['P1.20', 'P1.30', -1],
    ['1.20-beta2', '1.21-beta1', -1],
    ['1.20-beta2', '1.20-beta10', -1],
    ['00100', '99', 1],
    ['12', '13', -1],
    ['13', '12', 1],
    ['0', '00', 0],
    ['0', '1', -1],
    ['10000000000000000001', '10000000000000000002', -1],
    ['1.20 Beta', '1.30 Beta', -1],
    ['F22b', 'F23b', -1],
    // Main numbers decide before suffixes.
    ['F22B', 'F23', -1],
    ['F9', 'F10b', -1],
    ['1.20 Beta', '1.30', -1],
    // A word behind a number is an earlier test build of the plain version.
    ['F22a', 'F22b', -1],
    ['1.20 Beta', '1.20', -1],
    ['1.20-rc1', '1.20', -1],
    ['F22', 'f22', 0],
  ] as const)('%s against %s', (a, b, order) => {
    expect(compareBySpelling(a, b)).toBe(order);
    expect(compareBySpelling(b, a)).toBe(order === 0 ? 0 : -order);
  });

  it.each([
    ['1.08', '1.8.1'],
    ['F22', '1.22'],
    ['alpha', 'beta'],
    ['', '1'],
    // Another product’s prefix.
    ['7C1v8', '7D1v8'],
    // One letter is a test build with one maker, a later mend with another.
    ['F22b', 'F22'],
    ['1.20', '1.20A'],
    // Letters may count on beyond nine.
    ['7D75v19', '7D75v1A'],
    // A branch behind a dot, and words that name no test build.
    ['1.20', '1.20.AS02'],
    ['1.20', '1.20 Patch'],
    ['1.20a', '1.20-beta2'],
  ])('leaves %s against %s undefined', (a, b) => {
    expect(compareBySpelling(a, b)).toBeUndefined();
    expect(compareBySpelling(b, a)).toBeUndefined();
  });

  it('takes equal text for equal, whatever it is', () => {
    expect(compareBySpelling('F22b', 'F22b')).toBe(0);
    expect(compareBySpelling('', '')).toBe(0);
  });
});

describe('spellingFollowsList', () => {
  it('fails when a listed version is older than its spelling says', () => {
    expect(spellingFollowsList(['1.02', '1.08', '1.20'])).toBe(true);
    expect(spellingFollowsList(['1.02', '1.20', '1.08'])).toBe(false);
    expect(spellingFollowsList(['9.1', '1.02'])).toBe(false);
    expect(spellingFollowsList(['F22b', 'F22', 'F23'])).toBe(true);
    expect(spellingFollowsList([])).toBe(true);
    expect(spellingFollowsList(['1.02', '1.02'])).toBe(true);
  });
});

describe('compareVersions', () => {
  it('lets the list decide, even against the spelling', () => {
    expect(compareVersions('F22b', 'F22', ['F21', 'F22b', 'F22'])).toBe(-1);
    expect(compareVersions('9.1', '1.02', ['9.1', '1.02'])).toBe(-1);
  });

  it('falls back on spelling for a version that is not listed', () => {
    expect(compareVersions('1.15', '1.20', ['1.08', '1.20'])).toBe(-1);
    expect(compareVersions('1.15', '1.20')).toBe(-1);
    expect(compareVersions('F22c', 'F22', ['F21', 'F22b', 'F22'])).toBe(-1);
    expect(compareVersions('F22c', 'F22', ['F21', 'F22', 'F22b'])).toBe(1);
    expect(compareVersions('F23', 'F23a', ['F21', 'F22b', 'F22'])).toBe(1);
  });

  it('asks about one letter where the list shows no habit, or both', () => {
    expect(compareVersions('F22c', 'F22', ['F20', 'F21'])).toBeUndefined();
    expect(compareVersions('F22c', 'F22', ['F20', 'F20a', 'F21b', 'F21'])).toBeUndefined();
    expect(compareVersions('F22c', 'F22')).toBeUndefined();
  });

  it('does not trust the spelling of a maker whose list goes against it', () => {
    expect(compareVersions('1.15', '1.20', ['9.1', '1.20'])).toBeUndefined();
  });
});

describe('sameFileOnFat', () => {
  // Microsoft FAT32 File System Specification 1.03: short names are stored in upper case; long names keep theirs.
  it.each([
    ['B7.CAP', 'b7.cap', true],
    ['b7forge1.cap', 'B7FORGE1.CAP', true],
    ['NOEXT', 'noext', true],
    ['B7.CAP', 'B8.CAP', false],
    ['b7-forge-x.cap', 'B7-FORGE-X.CAP', false],
    ['b7-forge-x.cap', 'b7-forge-x.cap', true],
    ['b7.caps', 'B7.CAPS', false],
    ['b 7.cap', 'B 7.CAP', false],
  ])('%s and %s: %s', (a, b, same) => {
    expect(sameFileOnFat(a, b)).toBe(same);
  });
});
