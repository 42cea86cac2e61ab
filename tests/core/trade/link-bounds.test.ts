// What a version printed on a sheet bounds of a display link, Gb/s of pixels.
import { describe, expect, it } from 'vitest';
import { linkBounds } from '../../../server/src/core/trade/display';

const rbr = 1.62 * 4 * 0.8;
const hbr3 = 8.1 * 4 * 0.8;

describe('bounds of a display link', () => {
  it.each([
    ['DisplayPort 1.4', rbr, hbr3],
    ['DP 1.4a', rbr, hbr3],
    ['Mini DisplayPort 1.4', rbr, hbr3],
    ['DisplayPort 1.2', rbr, 5.4 * 4 * 0.8],
    ['DisplayPort 2.1', hbr3, 20 * 4 * 0.9671],
    ['HDMI 2.1', 14.4, (48 * 16) / 18],
    ['HDMI (2.1)', 14.4, (48 * 16) / 18],
    ['HDMI 2.0b', 14.4, 14.4],
    ['Mini DisplayPort HBR2', 5.4 * 4 * 0.8, 5.4 * 4 * 0.8],
    ['HDMI 2.1 FRL 48', (48 * 16) / 18, (48 * 16) / 18],
  ])('%s', (name, low, high) => {
    expect(linkBounds(name)!.lowGbps).toBeCloseTo(low, 9);
    expect(linkBounds(name)!.highGbps).toBeCloseTo(high, 9);
  });
  it.each(['HDMI', 'DisplayPort', 'HDMI 3.0', 'DisplayPort 9', 'VGA', ''])('%j bounds nothing', (name) =>
    expect(linkBounds(name)).toBeUndefined(),
  );
});
