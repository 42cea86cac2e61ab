// What the bytes of an EDID may stand for, worked out apart from the reader: at any place, so that no layout is
// trusted.
// Source: VESA E-EDID Standard, release A2; CTA-861-H, table of video formats; VESA DisplayID Standard 2.0.

const HEADER = '00ffffffffffff00';

/** The bytes from the block’s own header on, whatever stands between the digits; none where it has no header. */
export function parseHex(text: string): number[] {
  const digits = text.toLowerCase().replace(/[^0-9a-f]/g, '');
  const start = digits.indexOf(HEADER);
  return start < 0 ? [] : (digits.slice(start).match(/../g) ?? []).map((pair) => Number.parseInt(pair, 16));
}

const ESTABLISHED = ['720x400', '640x480', '800x600', '832x624', '1024x768', '1280x1024', '1152x870'];
const FORMATS = [
  ...['640x480', '720x480', '720x576', '1280x720', '1920x1080', '1440x480', '1440x576', '2880x480', '2880x576'],
  ...['1680x720', '2560x1080', '3840x2160', '4096x2160', '5120x2160', '7680x4320', '10240x4320'],
];

/** Whether some bytes in a row can stand for a size, `3840x2160`. */
export function holdsSize(bytes: readonly number[], size: string): boolean {
  if (ESTABLISHED.includes(size) || FORMATS.includes(size)) return true;
  const [width = 0, height = 0] = size.split('x').map(Number);
  const at = (offset: number): number => bytes[offset] ?? 0;
  const isStandard = SHAPES.some(([across, down]) => Math.round((width * down) / across) === height);
  return bytes.some((byte, i) => {
    if (isStandard && (byte + 31) * 8 === width) return true;
    const detailed = (low: number, high: number): number => at(i + low) | ((at(i + high) >> 4) << 8);
    if (detailed(2, 4) === width && detailed(5, 7) === height) return true;
    const two = (low: number): number => (at(i + low) | (at(i + low + 1) << 8)) + 1;
    return two(4) === width && two(12) === height;
  });
}

const SHAPES = [
  [16, 10],
  [4, 3],
  [5, 4],
  [16, 9],
  [1, 1],
] as const;

/** Some bytes changed, and the sums of their blocks mended, so that they are believed. */
export function changedBytes(bytes: Uint8Array, below: (most: number) => number): Uint8Array {
  const changed = bytes.slice();
  for (let times = 1 + below(3); times > 0; times--) {
    const at = below(changed.length);
    changed[at] = below(2) === 0 ? changed[at]! ^ (1 << below(8)) : below(256);
  }
  for (let block = 0; block + 128 <= changed.length; block += 128) {
    const sum = changed.subarray(block, block + 127).reduce((total, byte) => total + byte, 0);
    changed[block + 127] = (256 - (sum % 256)) % 256;
  }
  return changed;
}
