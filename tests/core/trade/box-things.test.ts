// Names of what boxes hold.
import { describe, expect, it } from 'vitest';
import { isBoxThing, isFanSplitter, isScrewSet, isSixteenPinAdapter, SCREWS_PER_DRIVE, SCREWS_PER_FAN, type BoxThing } from '../../../server/src/core/trade/box-things';

const written: [string, BoxThing | undefined][] = [
  ['DisplayPort lead', 'display lead'], ['HDMI cable', 'display lead'], ['display leads', 'display lead'], ['USB-C display lead', 'display lead'], ['display', 'display lead'],
  ['mains lead', 'mains lead'], ['power cord', 'mains lead'], ['mains', 'mains lead'],
  ['drive screws', 'drive screw'], ['M3 screw', 'drive screw'], ['6-32 screw', 'drive screw'],
  ['board screw', 'board screw'], ['Standoff screws', 'board screw'],
  ['fan screw', 'fan screw'], ['fan pins', 'fan screw'], ['USB stick', 'USB stick'],
  ['M.2 screw', undefined], ['SATA data lead', undefined], ['USB-C lead', undefined], ['I/O shield', undefined],
];

describe('names of things in boxes', () => {
  it.each(written)('%s', (line, thing) => {
    const things: BoxThing[] = ['display lead', 'mains lead', 'drive screw', 'board screw', 'fan screw', 'USB stick'];
    expect(things.filter((one) => isBoxThing(one, line))).toEqual(thing === undefined ? [] : [thing]);
  });

  it('knows a set of screws', () => {
    expect(['screw set', 'Case screw kit', 'screw bag'].map(isScrewSet)).toEqual([true, true, true]);
    expect(isScrewSet(' screw set ')).toBe(true);
    expect(['drive screw', 'drive screw set', 'screw sets for drives'].filter(isScrewSet)).toEqual([]);
  });

  it('does not mind blanks around', () => expect(isBoxThing('USB stick', ' USB stick ')).toBe(true));

  it.each<[BoxThing, string]>([
    ['display lead', 'no display lead'], ['display lead', 'display lead, short'], ['mains lead', 'DC power lead'], ['mains lead', 'power lead adapter'],
    ['drive screw', 'no drive screw'], ['drive screw', 'drive screw box'], ['board screw', 'card board screw'], ['board screw', 'board screw driver'],
    ['fan screw', 'case fan screws'], ['fan screw', 'fan screw driver'], ['USB stick', 'two USB sticks'], ['USB stick', 'USB sticks set'],
  ])('takes the whole line: no %s in “%s”', (thing, line) => expect(isBoxThing(thing, line)).toBe(false));

  it('knows a splitter for fans', () => {
    const splitters = ['splitter', 'fan splitter', 'PWM splitter', '4-pin splitter', '3-pin fan splitter', 'Y lead', 'Y-lead', 'ylead', 'Y-cable', 'fan Y cables', 'splitter lead', 'splitter cables', 'splitters', ' fan splitter '];
    expect(splitters.filter((written) => !isFanSplitter(written))).toEqual([]);
    expect(['fan lead', 'no splitter', 'splitter box', '5-pin splitter', 'yxlead', 'SATA splitter', 'fan'].filter(isFanSplitter)).toEqual([]);
  });

  it('knows an adapter to a 16-pin plug', () => {
    expect(['16-pin adapter', 'adapter to 12VHPWR', '12V-2x6 Adapter', 'Adapter, 3 × PCIe 8-pin to 16-pin'].filter((written) => !isSixteenPinAdapter(written))).toEqual([]);
    expect(['16-pin lead', 'adapter', 'adapter to 8-pin', '116-pin adapter', '16-pin adapters'].filter(isSixteenPinAdapter)).toEqual([]);
  });

  it('counts one screw a corner', () => {
    expect([SCREWS_PER_DRIVE, SCREWS_PER_FAN]).toEqual([4, 4]);
  });
});
