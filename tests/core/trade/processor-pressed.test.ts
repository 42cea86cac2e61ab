// Whether a note has the processor pressed, sentence by sentence.
import { expect, it } from 'vitest';
import { findSlip } from '../../../server/src/core/trade/bench-words';
import type { StepKind } from '../../../server/src/core/trade/steps';
import { sentences } from './sentences';

const all = sentences('processor-pressed');
const marks = { '+': true, '?': false, '-': undefined } as const;

it('are a hundred each way', () => {
  expect(all.filter(({ mark }) => mark === '+').length).toBeGreaterThanOrEqual(100);
  expect(all.filter(({ mark }) => mark === '-').length).toBeGreaterThanOrEqual(100);
});

it.each(all)('$mark $text', ({ mark, text, at = 'fit processor' }) => {
  const kind = at === 'none' ? undefined : (at as StepKind);
  expect(findSlip(text, 'processor pressed', kind)?.sure).toBe(marks[mark as keyof typeof marks]);
});
