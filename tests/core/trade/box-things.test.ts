// Names of what boxes hold.
import { describe, expect, it } from 'vitest';
import {
  boxWord,
  SCREWS_PER_DRIVE,
  SCREWS_PER_FAN,
  type BoxThing,
  type BoxWord,
} from '../../../server/src/core/trade/box-things';

const written: [string, BoxThing | undefined][] = [
  ['DisplayPort cable', 'display cable'],
  ['HDMI cable', 'display cable'],
  ['display cables', 'display cable'],
  ['USB-C display cable', 'display cable'],
  ['display', 'display cable'],
  ['power cord', 'power cord'],
  ['power cord', 'power cord'],
  ['mains', 'power cord'],
  ['drive screws', 'drive screw'],
  ['M3 screw', 'drive screw'],
  ['6-32 screw', 'drive screw'],
  ['board screw', 'board screw'],
  ['Standoff screws', 'board screw'],
  ['fan screw', 'fan screw'],
  ['fan pins', 'fan screw'],
  ['USB stick', 'USB stick'],
];

const isBoxThing = (thing: BoxWord, line: string): boolean => boxWord(line) === thing;
const isScrewSet = (line: string): boolean => boxWord(line) === 'screw set';
const isFanSplitter = (line: string): boolean => boxWord(line) === 'fan splitter';
const isSixteenPinAdapter = (line: string): boolean => boxWord(line) === '16-pin adapter';

const more: [BoxWord, readonly string[]][] = [
  [
    'display cable',
    [
      'HDMI 2.1 cable',
      'HDMI 2.1 cable (1.8 m)',
      'DP 1.4 cable, 1.5 m',
      'DisplayPort 1.4 cable',
      'Ultra High Speed HDMI cable',
      'HDMI lead 2 m',
      'DP to HDMI cable',
      'mini DP cable',
      'VGA cable',
      'DVI-D cable',
      'USB-C display cable',
    ],
  ],
  [
    'power cord',
    [
      'AC power cord',
      'AC power cable',
      'Power Cord (C13)',
      'EU power cord',
      'mains lead',
      'mains cable 1.5 m',
      'IEC cord',
      'C13 cable',
      'kettle lead',
      'power cable',
    ],
  ],
  [
    'SATA data cable',
    [
      'SATA data cable',
      'SATA 6Gb/s cable',
      'SATA 6Gb/s cables',
      'SATA cable',
      'SATA III cable',
      'SATA 6 Gb/s data cable',
      'Serial ATA data cable',
      'serial ATA 6.0Gb/s cable',
      'SATA cable (straight)',
      'SATA data lead, 50 cm',
      'right-angled SATA cable',
    ],
  ],
  [
    'M.2 screw',
    [
      'M.2 screw',
      'M.2 SSD screw',
      'M.2 SSD mounting screw',
      'M.2 mounting screws',
      'screw for M.2 SSD',
      'screws for M.2 module',
      'M2 screw',
      'M.2 screw package',
      'M.2 fixing screw',
      'M.2 drive screw',
      'M.2 screw (for slot 2)',
    ],
  ],
  [
    'I/O shield',
    [
      'I/O shield',
      'I/O plate',
      'IO shield',
      'I/O back plate',
      'rear I/O shield',
      'rear panel plate',
      'back plate',
      'IO backplate',
      'I/O panel',
      'shield',
    ],
  ],
  ['drive screw', ['HDD screw', 'SSD screws', 'hard drive screws', '3.5 in drive screws', 'M3 screws']],
  ['full-height bracket', ['full-height bracket', 'full height bracket', 'standard-height bracket']],
  ['low-profile bracket', ['low-profile bracket', 'low profile bracket', 'half-height bracket']],
  ['mounting kit', ['mounting kit', 'cooler mounting kit', 'mounting hardware', 'mounting set']],
  [
    'other',
    [
      'user manual',
      'quick start guide',
      'Wi-Fi antenna',
      'cable ties',
      'case badge',
      'thermal paste',
      'USB-C cable',
      'warranty card',
      'PCIe riser cable',
    ],
  ],
  [
    'breakout cable',
    ['SAS breakout cable', 'mini-SAS HD to 4x SATA cable (1 m)', 'SFF-8643 to SATA forward breakout cable'],
  ],
];

const notUnderstood = [
  'accessory bag',
  'hardware pack',
  'things',
  'screw',
  'cable',
  'M.3 screw',
  'mini-SAS cable',
  'SATA power adapter',
  'HDMI dongle',
  'M.2 screwdriver set for screws',
  '',
];

describe('names of things in boxes', () => {
  it.each(written)('%s', (line, thing) => {
    const things: BoxThing[] = ['display cable', 'power cord', 'drive screw', 'board screw', 'fan screw', 'USB stick'];
    expect(things.filter((one) => isBoxThing(one, line))).toEqual(thing === undefined ? [] : [thing]);
  });

  it.each(more)('%s', (word, lines) => {
    expect(lines.filter((line) => boxWord(line) !== word)).toEqual([]);
  });

  it('does not understand what may be anything', () => {
    expect(notUnderstood.filter((line) => boxWord(line) !== undefined)).toEqual([]);
  });

  it('knows a set of screws', () => {
    expect(['screw set', 'Case screw kit', 'screw bag'].map(isScrewSet)).toEqual([true, true, true]);
    expect(isScrewSet(' screw set ')).toBe(true);
    expect(['drive screw', 'drive screw set', 'screw sets for drives'].filter(isScrewSet)).toEqual([]);
  });

  it('does not mind blanks around', () => expect(isBoxThing('USB stick', ' USB stick ')).toBe(true));

  it.each<[BoxThing, string]>([
    ['display cable', 'no display cable'],
    ['display cable', 'display cable, short'],
    ['power cord', 'DC power cable'],
    ['power cord', 'power cable adapter'],
    ['drive screw', 'no drive screw'],
    ['drive screw', 'drive screw box'],
    ['board screw', 'card board screw'],
    ['board screw', 'board screw driver'],
    ['fan screw', 'case fan screws'],
    ['fan screw', 'fan screw driver'],
    ['USB stick', 'two USB sticks'],
    ['USB stick', 'USB sticks set'],
  ])('takes the whole line: no %s in “%s”', (thing, line) => expect(isBoxThing(thing, line)).toBe(false));

  it('knows a splitter for fans', () => {
    const splitters = [
      'splitter',
      'fan splitter',
      'PWM splitter',
      '4-pin splitter',
      '3-pin fan splitter',
      'Y cable',
      'Y-cable',
      'ycable',
      'Y-cable',
      'fan Y cables',
      'splitter cable',
      'splitter cables',
      'splitters',
      ' fan splitter ',
    ];
    expect(splitters.filter((written) => !isFanSplitter(written))).toEqual([]);
    expect(
      ['fan cable', 'no splitter', 'splitter box', '5-pin splitter', 'yxcable', 'SATA splitter', 'fan'].filter(
        isFanSplitter,
      ),
    ).toEqual([]);
  });

  it('knows an adapter to a 16-pin connector', () => {
    expect(
      ['16-pin adapter', 'adapter to 12VHPWR', '12V-2x6 Adapter', 'Adapter, 3 × PCIe 8-pin to 16-pin'].filter(
        (written) => !isSixteenPinAdapter(written),
      ),
    ).toEqual([]);
    expect(
      ['16-pin cable', 'adapter', 'adapter to 8-pin', '116-pin adapter', '16-pin adapters'].filter(isSixteenPinAdapter),
    ).toEqual([]);
  });

  it('counts one screw a corner', () => {
    expect([SCREWS_PER_DRIVE, SCREWS_PER_FAN]).toEqual([4, 4]);
  });
});
