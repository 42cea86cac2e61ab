// Words from elsewhere for roles and kinds: each means one role, and none is a role's or a kind's own word.
import { describe, expect, it } from 'vitest';
import { ROLE_WORDS } from '../../../server/src/core/manifest/role-words';
import { roleNames } from '../../../server/src/core/manifest/places';
import { wordOf } from '../../../server/src/core/trade/vocabulary';

const meant: [string, string][] = [
  ['cpu', 'processor'],
  ['CPU', 'processor'],
  ['gpu', 'graphics'],
  ['graphics-card', 'graphics'],
  ['video card', 'graphics'],
  ['ram', 'memory'],
  ['psu', 'supply'],
  ['power-supply', 'supply'],
  ['motherboard', 'board'],
  ['mobo', 'board'],
  ['mainboard', 'board'],
  ['ssd', 'drives'],
  ['hdd', 'drives'],
  ['storage', 'drives'],
  ['heatsink', 'cooler'],
  ['heat-sink', 'cooler'],
  ['chassis', 'case'],
  ['monitor', 'displays'],
  ['monitors', 'displays'],
  ['thermal-paste', 'paste'],
  ['screws', 'fixings'],
];

describe('words from elsewhere', () => {
  it.each(meant)('%s: %s', (word, role) => expect(wordOf(ROLE_WORDS, word)).toBe(role));
  it('knows every role', () => expect([...ROLE_WORDS.words].sort()).toEqual([...roleNames].sort()));
  it.each(['cp', 'keyboard', 'mouse', 'os', 'ups', 'rama', 'cpu2', '', 'parts', '__proto__'])('%j: none', (word) =>
    expect(wordOf(ROLE_WORDS, word)).toBeUndefined(),
  );
});
