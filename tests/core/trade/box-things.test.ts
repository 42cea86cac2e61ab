// Names of what boxes hold.
import { describe, expect, it } from 'vitest';
import {
  isBoxThing,
  isFanSplitter,
  isScrewSet,
  isSixteenPinAdapter,
  SCREWS_PER_DRIVE,
  SCREWS_PER_FAN,
  type BoxThing,
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
  ['M.2 screw', undefined],
  ['SATA data cable', undefined],
  ['USB-C cable', undefined],
  ['I/O shield', undefined],
];

describe('names of things in boxes', () => {
  it.each(written)('%s', (line, thing) => {
    const things: BoxThing[] = ['display cable', 'power cord', 'drive screw', 'board screw', 'fan screw', 'USB stick'];
    expect(things.filter((one) => isBoxThing(one, line))).toEqual(thing === undefined ? [] : [thing]);
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
