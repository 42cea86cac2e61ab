// The least signal word of a consequence, sentence by sentence.
import { expect, it } from 'vitest';
import { wordFor } from '../../../server/src/core/trade/caution-words';
import { sentences } from './sentences';

const all = sentences('signal-words');

it('are sixty each way', () => {
  expect(all.filter(({ mark }) => mark !== '-').length).toBeGreaterThanOrEqual(60);
  expect(all.filter(({ mark }) => mark === '-').length).toBeGreaterThanOrEqual(60);
});

it.each(all)('$mark $text', ({ mark, text }) => {
  const word = wordFor(text);
  expect(word === undefined || word === 'NOTICE' ? '-' : word).toBe(mark);
});
