// Safety messages against the standard's definitions, and their figures against the sums and sources they come from.
import { expect, it } from 'vitest';
import { CAUTIONS } from '../../server/src/core/trade/cautions';
import { CAUTION_PARTS, SIGNAL_WORDS } from '../../server/src/core/trade/signal-words';

/**
 * Source: ANSI Z535.4-2007, 4.14.1 to 4.14.4, as quoted in Clarion Safety Systems, Standards FAQ: Signal Words and
 * Colors.
 */
it('the four words mean what ANSI Z535.4 says', () => {
  const graded = Object.entries(SIGNAL_WORDS).map(([word, { injury, likelihood }]) => [word, likelihood, injury]);
  expect(graded).toEqual([
    ['DANGER', 'will', 'death or serious injury'],
    ['WARNING', 'could', 'death or serious injury'],
    ['CAUTION', 'could', 'minor or moderate injury'],
    ['NOTICE', 'could', 'none'],
  ]);
});

/** Source: ANSI Z535.6: hazard, consequence, avoidance, before the step they belong to. */
it('a message says the hazard, what it does, and how to avoid it', () =>
  expect(CAUTION_PARTS).toEqual(['hazard', 'consequence', 'avoidance']));

/** Source: ANSI Z535.4: injury for the three upper words, things only for NOTICE; DANGER only where it will happen. */
it('only words of injury speak of injury, and only DANGER says that it will happen', () => {
  for (const { word, consequence } of Object.values(CAUTIONS)) {
    const injures = /kill|fire|burn(?! the header)|cut|injure|irritate/.test(consequence);
    expect([consequence, injures]).toEqual([consequence, word !== 'NOTICE']);
    expect([consequence, /\bwill\b/.test(consequence)]).toEqual([consequence, word === 'DANGER']);
  }
});
