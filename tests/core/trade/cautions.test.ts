// Signal words and the job's cautions.
import { describe, expect, it } from 'vitest';
import { CAUTIONS } from '../../../server/src/core/trade/cautions';
import { deferral } from '../../../server/src/core/trade/signal-words';
import { CAUTION_PARTS, missingParts, SIGNAL_WORDS, signalWordFor } from '../../../server/src/core/trade/signal-words';
import type { CautionId } from '../../../server/src/core/trade/cautions';
import type { SignalWord } from '../../../server/src/core/trade/signal-words';

/** Word, and a word each part must speak of: hazard, consequence, avoidance, whom to ask, source. */
const ROWS: [CautionId, SignalWord, RegExp, RegExp, RegExp, RegExp, RegExp][] = [
  [
    'mains-inside-supply',
    'DANGER',
    /400 V after it is unplugged/,
    /will kill/,
    /^Never open a supply/,
    /supply maker/,
    /handbooks/,
  ],
  [
    'powered-inside',
    'CAUTION',
    /on the mains keeps parts of its board powered/,
    /cut fingers/,
    /^Unplug the cable/,
    /handbooks/,
    /service manuals/,
  ],
  [
    'circuit-overload',
    'WARNING',
    /power strip/,
    /fire/,
    /wall outlets only/,
    /electrical code.*licensed electrician/,
    /210\.20\(A\)/,
  ],
  ['adapter-fire', 'WARNING', /Moulded adapters/, /burn/, /came with this supply/, /handbooks/, /common practice/],
  ['strap-on-energised', 'WARNING', /live parts/, /shock.*kill/, /^Take the strap off/, /strap maker/, /TR20\.20/],
  ['coin-cell', 'WARNING', /swallowed/, /within two hours/, /emergency services/, /medical help/, /cell warnings/],
  ['gallium-paste', 'CAUTION', /aluminium/, /skin and eyes/, /gloves/, /safety data sheet/, /gallium in aluminium/],
  ['liquid-leak', 'NOTICE', /leaks/, /short/, /only the pump powered/, /cooler’s handbook/, /common practice/],
  ['lifting', 'CAUTION', /23 kg/, /back/, /lift with two/, /workplace/, /94-110/],
  [
    'glass-panel',
    'CAUTION',
    /Tempered glass/,
    /cut hands and eyes/,
    /flat on cloth/,
    /case’s handbook/,
    /common practice/,
  ],
  ['sharp-edges', 'CAUTION', /sharp edges/, /cut fingers/, /gloves/, /case’s handbook/, /common practice/],
  ['hot-parts', 'CAUTION', /hot/, /burn the skin/, /until it is cool/, /handbooks/, /common practice/],
  ['static-to-parts', 'NOTICE', /charges/, /ruin a part/, /one potential/, /handbooks/, /S20\.20/],
  ['overloaded-supply', 'WARNING', /more than it is rated for/, /burn/, /below the rating/, /handbooks/, /336521/],
  [
    'wrong-mains-voltage',
    'WARNING',
    /lower mains voltage/,
    /fire/,
    /set its switch before/,
    /licensed electrician/,
    /table 1/,
  ],
  ['no-earth', 'WARNING', /mains voltage on the case/, /kill/, /never lift/, /licensed electrician/, /common practice/],
  [
    'board-on-metal',
    'NOTICE',
    /underside of a board/,
    /ruin the board/,
    /only where the board has a hole/,
    /handbooks/,
    /page 10/,
  ],
  ['socket-contacts', 'NOTICE', /finer than a hair/, /could bend/, /without force/, /handbooks/, /handbooks/],
  ['start-uncooled', 'NOTICE', /without air/, /could shut down/, /Plug in the fans/, /handbooks/, /common practice/],
  [
    'card-in-transit',
    'NOTICE',
    /swings in its slot/,
    /tear the slot/,
    /Take heavy cards out/,
    /handbooks/,
    /common practice/,
  ],
  [
    'update-interrupted',
    'NOTICE',
    /half written/,
    /unable to start/,
    /on mains that stay/,
    /board’s handbook/,
    /handbooks/,
  ],
  ['drive-screws', 'NOTICE', /two threads/, /strip the drive’s thread/, /by hand first/, /handbooks/, /SFF-8301/],
  [
    'no-way-for-heat',
    'NOTICE',
    /air, which hardly lets heat through/,
    /shut down/,
    /before the cooler/,
    /handbooks/,
    /common practice/,
  ],
  ['conductive-paste', 'NOTICE', /bridges contacts/, /short/, /^Cover the parts/, /data sheet/, /common practice/],
  ['header-overload', 'NOTICE', /thin tracks/, /burn the header/, /among headers/, /board’s handbook/, /2\.1\.1/],
  [
    'light-voltage',
    'NOTICE',
    /5 V or 12 V/,
    /ruined at once/,
    /printed beside the header/,
    /board’s handbook/,
    /common practice/,
  ],
  [
    'thin-air',
    'NOTICE',
    /heads of a hard disk fly on it/,
    /destroy the data/,
    /rated for the altitude/,
    /data sheet/,
    /common practice/,
  ],
  ['dew', 'NOTICE', /cold parts/, /short/, /sealed in their packing/, /handbooks/, /ASHRAE/],
  ['hanging-cooler', 'NOTICE', /standing board/, /bend the board/, /before carriage/, /handbooks/, /common practice/],
];

describe('cautions', () => {
  it.each(ROWS)('%s is a %s', (id, word, hazard, consequence, avoidance, defersTo, source) => {
    const caution = CAUTIONS[id];
    expect(caution.word).toBe(word);
    expect(caution.hazard).toMatch(hazard);
    expect(caution.consequence).toMatch(consequence);
    expect(caution.avoidance).toMatch(avoidance);
    expect(caution.defersTo).toMatch(defersTo);
    expect(caution.source).toMatch(source);
  });

  it('are all of them, and complete', () => {
    expect(Object.keys(CAUTIONS).sort()).toEqual(ROWS.map(([id]) => id).sort());
    for (const caution of Object.values(CAUTIONS)) expect(missingParts(caution)).toEqual([]);
  });

  it('speak of consequences as surely as their word', () => {
    for (const { word, consequence } of Object.values(CAUTIONS)) {
      expect(consequence).toMatch(SIGNAL_WORDS[word].likelihood === 'will' ? /\bwill\b/ : /\bcould\b/);
    }
  });
});

describe('signal words', () => {
  it('mean', () => {
    expect(Object.values(SIGNAL_WORDS).map(({ means }) => means)).toEqual([
      'will kill or seriously injure if not avoided',
      'could kill or seriously injure if not avoided',
      'could injure slightly or moderately if not avoided',
      'could damage things; nobody is injured',
    ]);
  });

  it('follow injury and likelihood', () => {
    expect(signalWordFor('death or serious injury', 'will')).toBe('DANGER');
    expect(signalWordFor('death or serious injury', 'could')).toBe('WARNING');
    expect(signalWordFor('minor or moderate injury', 'will')).toBe('CAUTION');
    expect(signalWordFor('minor or moderate injury', 'could')).toBe('CAUTION');
    expect(signalWordFor('none', 'will')).toBe('NOTICE');
    expect(signalWordFor('none', 'could')).toBe('NOTICE');
    for (const [word, { injury, likelihood }] of Object.entries(SIGNAL_WORDS))
      expect(signalWordFor(injury, likelihood)).toBe(word);
  });

  it('are followed by whose word counts above ours, a person or a book', () => {
    expect(deferral(CAUTIONS['mains-inside-supply'])).toBe('Defer to the supply maker and a qualified repairer.');
    expect(deferral(CAUTIONS['liquid-leak'])).toBe('Defer to the cooler’s handbook.');
  });

  it('want three parts', () => {
    expect(CAUTION_PARTS).toEqual(['hazard', 'consequence', 'avoidance']);
    expect(missingParts({})).toEqual(['hazard', 'consequence', 'avoidance']);
    expect(missingParts({ hazard: 'x', consequence: '  ', avoidance: 'y' })).toEqual(['consequence']);
  });

  it('say no sentence of more than 20 words: what is read at the bench is read once', () => {
    const sentences = Object.values(CAUTIONS).flatMap((one) =>
      [one.hazard, one.consequence, one.avoidance, deferral(one)].flatMap((text) => text.split(/(?<=[.;])\s+/)),
    );
    expect(sentences.filter((text) => text.split(/\s+/).length > 20)).toEqual([]);
  });
});
