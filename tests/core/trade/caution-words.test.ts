// The signal word that a consequence calls for.
import { describe, expect, it } from 'vitest';
import { wordFor } from '../../../server/src/core/trade/caution-words';
import { CAUTIONS } from '../../../server/src/core/trade/cautions';

describe('a consequence calls for', () => {
  it.each([
    ['It will kill.', 'DANGER'], ['It could kill.', 'WARNING'], ['Touching them will seriously burn.', 'DANGER'], ['It could start a fire.', 'WARNING'],
    ['It could cut fingers.', 'CAUTION'], ['It could burn the skin.', 'CAUTION'], ['It will bruise.', 'CAUTION'], ['It could injure the back.', 'CAUTION'],
    ['It could ruin the board.', 'NOTICE'], ['It will destroy the drive.', 'NOTICE'], ['The lead could short.', 'NOTICE'],
    ['It could injure severely.', 'WARNING'], ['You could lose a finger.', 'WARNING'], ['It will ruin the board and could kill.', 'WARNING'],
    ['It could kill the board.', 'NOTICE'], ['The die could crack.', 'NOTICE'], ['Nobody is hurt; the board is ruined and data fails.', 'NOTICE'], ['It could stop the heart.', 'WARNING'],
    ['It could cut the warranty.', undefined], ['', undefined], ['Nobody knows.', undefined],
  ])('%s %s', (consequence, word) => expect(wordFor(consequence)).toBe(word));

  it.each(Object.entries(CAUTIONS))('no other word than %s has', (_, { word, consequence }) => expect([word, undefined]).toContain(wordFor(consequence)));
});
