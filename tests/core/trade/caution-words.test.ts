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

  it.each([
    'kill', 'It kills', 'someone may die', 'could die', 'can die', 'you will die', 'Death', 'fatal', 'deadly', 'lethal', 'electrocution', 'it electrocutes', 'suffocate', 'blindness',
    'blind', 'amputation', 'serious injury', 'seriously injured', 'seriously  hurt', 'serious burns', 'fire', 'fires', 'could burn', 'may burn, and smoke', 'They could burn. So', 'it will burn.',
    ...['serious', 'severe', 'grave', 'bad', 'severely'].flatMap((how) => ['injury', 'burns', 'hurt', 'wounds'].map((harm) => `${how}  ${harm}`)),
    ...['injured', 'burned', 'hurt', 'wounded'].flatMap((harm) => ['seriously', 'severely', 'badly', 'gravely'].map((how) => `${harm}  ${how}`)),
    'lose a finger', 'lose an eye', 'losing the hand', 'lose your sight', 'lose his finger', 'lose her hand', 'lose  sight', 'stop the heart', 'stops  the  heart',
    'lose a  finger', 'lose the  hand', 'lose your  sight', 'lose his  finger', 'lose her  hand', 'suffocates', 'could  die', 'could  burn', 'serious wounding',
    'kill whoever touches it', 'kills you', 'kill a person',
  ])('death or serious injury: %s', (consequence) => expect(wordFor(consequence)).toBe(/\bwill\b/.test(consequence) ? 'DANGER' : 'WARNING'));

  it.each([
    'injure', 'minor injuries', 'it hurts', 'hurt', 'bruises', 'irritation', 'crush', 'crushed', 'pinched', 'pinching', 'scalds', 'nip a finger', 'nips the finger',
    ...['cut', 'cuts', 'burn', 'burns', 'shock', 'shocks', 'strain', 'strains'].map((harm) => `${harm} the skin`),
    ...['skin', 'hand', 'hands', 'finger', 'fingers', 'eye', 'eyes', 'back', 'feet', 'foot', 'person', 'people', 'someone', 'you', 'wearer'].map((whom) => `could burn the ${whom}`),
  ])('minor or moderate injury: %s', (consequence) => expect(wordFor(consequence)).toBe('CAUTION'));

  it.each([
    'ruin', 'ruins', 'damage', 'damaged', 'destroys', 'destruction, damage', 'break', 'breaks', 'bend', 'bends', 'short', 'shorts', 'shut down', 'shuts  down', 'fail', 'fails', 'spoil', 'spoils',
    'corrode', 'corrodes', 'corrosion, corroding', 'tear', 'tears', 'crack', 'cracks', 'could burn the header and ruin it',
    ...['board', 'processor', 'cpu', 'drive', 'memory', 'module', 'card', 'supply', 'part', 'parts', 'port', 'header', 'fan', 'pump', 'chip', 'socket', 'slot', 'data'].map((thing) => `kill the ${thing}`),
    'kill a  drive', 'kill a slot', 'kills its fan', 'kill any port', 'kill the  board', 'kills its  fan', 'kill any  port', 'kills data', 'kill  boards',
  ])('damage to things: %s', (consequence) => expect(wordFor(consequence)).toBe('NOTICE'));

  it.each([
    'needs skill', 'a killswitch', 'the diet', 'a firewall', 'undead', 'shortsighted', 'a ruinous', 'unbroken', 'bendy', 'a tearoff', 'failsafe', 'spoiler',
    'a shutdown', 'outbreaks', 'a cutout of skinny', 'cut cost; back up', 'cut cost. You choose', 'a haircut of the hands', 'could burn brightly', 'seriously late', 'a bonfire', 'burns paper',
    'a fatal error', 'a fatal  error', 'the wearer dies', 'lose a screw', 'stop the fan', 'badly lit', 'hurtful',
    'nobody is hurt', 'no one is injured', 'no person is hurt', 'no  person is hurt', 'no  one is hurt', 'does not burn the skin', 'never a fire', 'without injury to the hands',
  ])('nothing: %s', (consequence) => expect(wordFor(consequence)).toBeUndefined());

  it.each([
    ['It will ruin the board and could kill.', 'WARNING'], ['It could smoke and will kill.', 'DANGER'], ['It will smoke; it could kill.', 'WARNING'], ['It could smoke. It will kill.', 'DANGER'],
    ['It will smoke, kill.', 'WARNING'], ['It may, will it not, start a fire.', 'WARNING'], ['It will start a fire and could spread.', 'DANGER'], ['It WILL kill.', 'DANGER'], ['It will or might kill.', 'WARNING'],
    ['It will or can kill.', 'WARNING'], ['It will or may kill.', 'WARNING'], ['Not at once, but it will kill.', 'DANGER'],
  ])('%s %s: the nearest word says how sure', (consequence, word) => expect(wordFor(consequence)).toBe(word));

  it.each(Object.entries(CAUTIONS))('no other word than %s has', (_, { word, consequence }) => expect([word, undefined]).toContain(wordFor(consequence)));
});
