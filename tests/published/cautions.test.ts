// Signal words against the standard's definitions.
import { expect, it } from 'vitest';
import { SIGNAL_WORDS } from '../../server/src/core/trade/cautions';

/** Source: ANSI Z535.4-2007, 4.14.1 to 4.14.4, as quoted by a label maker. */
it('the four words mean what ANSI Z535.4 says', () => {
  const graded = Object.entries(SIGNAL_WORDS).map(([word, { injury, likelihood }]) => [word, likelihood, injury]);
  expect(graded).toEqual([
    ['DANGER', 'will', 'death or serious injury'],
    ['WARNING', 'could', 'death or serious injury'],
    ['CAUTION', 'could', 'minor or moderate injury'],
    ['NOTICE', 'could', 'none'],
  ]);
});
