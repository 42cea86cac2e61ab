// Displays: spellings, bits, payloads, verdicts.
import { describe, expect, it } from 'vitest';
import {
  DISPLAY_LINKS,
  MARGINAL_SHARE,
  USUAL_REFRESH_HZ,
  bitsPerPixel,
  compressedBounds,
  highestRefreshHz,
  linkVerdict,
  parseDisplayLink,
  parseMode,
  requiredGbps,
} from '../../../server/src/core/trade/display';
import { cvtTiming } from '../../../server/src/core/trade/timing';

describe('parseMode', () => {
  it.each([
    ['3840x2160 @ 120 Hz', 3840, 2160, 120],
    ['3840×2160@60hz', 3840, 2160, 60],
    [' 1920 x 1080  @  59.94 Hz ', 1920, 1080, 59.94],
    ['80x25 @ 1 Hz', 80, 25, 1],
    ['15360x8640 @ 60 Hz', 15360, 8640, 60],
    ['3840X2160 @ 144 HZ', 3840, 2160, 144],
  ])('reads %s', (text, widthPx, heightPx, refreshHz) =>
    expect(parseMode(text)).toEqual({ widthPx, heightPx, refreshHz }),
  );

  it.each([
    '',
    '3840x2160',
    '3840x2160 @ 120',
    '3840x2160 120',
    '3840 @ 60 Hz',
    '4K @ 60 Hz',
    '3840x2160 @ 0 Hz',
    '3840x2160 @ 0.5 Hz',
    '3840x2160 @ 60 kHz',
    '00x2160 @ 60 Hz',
    '3840x00 @ 60 Hz',
    '3840x2160 @ 60. Hz',
    '3840x2160 @ -60 Hz',
    'a 3840x2160 @ 60 Hz',
    '3840x2160 @ 60 Hz b',
    '384000x2160 @ 60 Hz',
    '3840x2160 @ 6000 Hz',
    '3840x216000 @ 60 Hz',
    '38 40x2160 @ 60 Hz',
    '3840x2160 @ 1 20 Hz',
  ])('leaves %j undefined', (text) => expect(parseMode(text)).toBeUndefined());
});

describe('bitsPerPixel', () => {
  it('counts samples a pixel', () => {
    expect(bitsPerPixel(8)).toBe(24);
    expect(bitsPerPixel(10)).toBe(30);
    expect(bitsPerPixel(10, '4:4:4')).toBe(30);
    expect(bitsPerPixel(10, '4:2:2')).toBe(20);
    expect(bitsPerPixel(10, '4:2:0')).toBe(15);
    expect(() => bitsPerPixel(0)).toThrow(/depthBits must be/);
  });
});

describe('links', () => {
  it('lists every link by name, with its payload', () => {
    expect(DISPLAY_LINKS.map((link) => [link.name, Number(link.payloadGbps.toFixed(3))])).toEqual([
      ['DisplayPort RBR', 5.184],
      ['DisplayPort HBR', 8.64],
      ['DisplayPort HBR2', 17.28],
      ['DisplayPort HBR3', 25.92],
      ['DisplayPort UHBR10', 38.684],
      ['DisplayPort UHBR13.5', 52.223],
      ['DisplayPort UHBR20', 77.368],
      ['HDMI 1.4', 8.16],
      ['HDMI 2.0', 14.4],
      ['HDMI 2.1 FRL 24', 21.333],
      ['HDMI 2.1 FRL 32', 28.444],
      ['HDMI 2.1 FRL 40', 35.556],
      ['HDMI 2.1 FRL 48', 42.667],
    ]);
  });

  it('reads names back in any case, and lanes', () => {
    for (const link of DISPLAY_LINKS) expect(parseDisplayLink(link.name)).toBe(link);
    expect(parseDisplayLink('  displayport   hbr3 ')?.name).toBe('DisplayPort HBR3');
    expect(parseDisplayLink('DisplayPort HBR2 x2')).toEqual({ name: 'DisplayPort HBR2 x2', payloadGbps: 8.64 });
    expect(parseDisplayLink('DisplayPort HBR2 ×1')?.payloadGbps).toBeCloseTo(4.32, 9);
    expect(parseDisplayLink('DisplayPort HBR2x4')).toEqual({ name: 'DisplayPort HBR2 x4', payloadGbps: 17.28 });
  });

  it.each([
    '',
    'DisplayPort',
    'DisplayPort 1.4',
    'DisplayPort HBR4',
    'DisplayPort HBR2 x3',
    'DisplayPort HBR2 x',
    'DisplayPort HBR4 x2',
    'HDMI',
    'HDMI 2.1',
    'HDMI 2.0 x2',
    'DisplayPort HBR2 x2 x2',
    'my DisplayPort HBR2 x2',
    'DisplayPort HBR2 x2 lanes',
  ])('leaves %j undefined', (text) => expect(parseDisplayLink(text)).toBeUndefined());
});

describe('requiredGbps', () => {
  it('multiplies clock and bits', () => {
    expect(requiredGbps(1000, 24)).toBe(24);
    expect(() => requiredGbps(0, 24)).toThrow(/pixelClockMHz must be/);
    expect(() => requiredGbps(1000, NaN)).toThrow(/bits must be/);
  });
});

describe('bits a pixel of sampled colour', () => {
  it.each([
    [8, '4:4:4', false, 24],
    [10, '4:2:2', false, 20],
    [10, '4:2:0', false, 15],
    [10, '4:2:2', true, 24],
    [12, '4:2:2', true, 24],
    [16, '4:2:2', true, 32],
    [10, '4:2:0', true, 15],
  ] as const)('%i bit %s, HDMI %s: %i', (depth, sampling, isHdmi, bits) =>
    expect(bitsPerPixel(depth, sampling, isHdmi)).toBe(bits),
  );
});

describe('compressedBounds', () => {
  it.each([
    ['HDMI 2.0', 0, 0],
    ['HDMI 1.4', 0, 0],
    ['DisplayPort 1.2', 0, 0],
    ['HDMI 2.1', 0, 42.67],
    ['HDMI 2.1 FRL 48', 42.67, 42.67],
    ['DisplayPort HBR3', 25.2, 25.2],
    ['DisplayPort HBR2 x2', 8.4, 8.4],
    ['DisplayPort 2.1', 25.2, 77.37],
    ['DisplayPort UHBR10 x2', 19.34, 19.34],
  ])('%s carries %f to %f Gb/s', (name, low, high) => {
    const bounds = compressedBounds(name)!;
    expect(bounds.lowGbps).toBeCloseTo(low, 1);
    expect(bounds.highGbps).toBeCloseTo(high, 1);
  });
  it('knows nothing of a name it does not know', () => expect(compressedBounds('VGA')).toBeUndefined());
});

describe('linkVerdict', () => {
  it('is marginal within less than 1 % to either side', () => {
    expect(MARGINAL_SHARE).toBe(0.01);
    expect(linkVerdict(98, 100)).toBe('fits');
    expect(linkVerdict(99, 100)).toBe('fits');
    expect(linkVerdict(99.01, 100)).toBe('marginal');
    expect(linkVerdict(100, 100)).toBe('marginal');
    expect(linkVerdict(100.99, 100)).toBe('marginal');
    expect(linkVerdict(101, 100)).toBe('beyond');
    expect(linkVerdict(150, 100)).toBe('beyond');
    expect(() => linkVerdict(0, 100)).toThrow(/neededGbps must be/);
    expect(() => linkVerdict(1, 0)).toThrow(/payloadGbps must be/);
  });
});

describe('highestRefreshHz', () => {
  const clock = (hz: number): number => cvtTiming(3840, 2160, hz, 'CVT-RB2').pixelClockMHz;

  it('searches down among the usual rates', () => {
    expect(USUAL_REFRESH_HZ).toEqual([24, 30, 50, 60, 75, 100, 120, 144, 165, 240]);
    expect(highestRefreshHz(clock, 30, 17.28)).toBe(60);
    expect(highestRefreshHz(clock, 30, 25.92)).toBe(75);
    expect(highestRefreshHz(clock, 30, 77.368)).toBe(240);
    expect(highestRefreshHz(clock, 30, 5)).toBeUndefined();
    expect(highestRefreshHz(() => undefined, 30, 100)).toBeUndefined();
  });

  it('passes over a marginal rate', () => {
    const exact = requiredGbps(clock(60), 30);
    expect(highestRefreshHz(clock, 30, exact)).toBe(50);
    expect(highestRefreshHz(clock, 30, exact * 1.02)).toBe(60);
  });
});
