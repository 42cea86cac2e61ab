// Slips of the bench, sentence by sentence.
import { describe, expect, it } from 'vitest';
import { findSlip, type HandlingMistake } from '../../../server/src/core/trade/bench-words';
import { sentences } from './sentences';

const slips = {
  'contacts-touched': 'contacts touched',
  'vacuum-cleaner': 'vacuum cleaner',
  'bag-as-mat': 'bag as mat',
  'hot-part-touched': 'hot part touched',
  'supply-opened': 'supply opened',
  'earth-lifted': 'earth lifted',
  'strips-chained': 'strips chained',
} as const;

describe.each(Object.entries(slips))('%s', (file, slip) => {
  const all = sentences(file);

  it('is told by forty sentences each way', () => {
    expect(all.filter(({ mark }) => mark === '+').length).toBeGreaterThanOrEqual(40);
    expect(all.filter(({ mark }) => mark === '-').length).toBeGreaterThanOrEqual(40);
  });

  it.each(all)('$mark $text', ({ mark, text, at }) => {
    const found = findSlip(text, (at as HandlingMistake | undefined) ?? slip);
    expect(found !== undefined).toBe(mark === '+');
    if (found) expect(text.slice(found.start, found.end)).toBe(found.words);
  });
});
