// The timings of a DisplayID section within an EDID. Source: VESA DisplayID Standard 1.3, type I; 2.0, type VII.

export interface SectionTiming {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly refreshHz: number;
  /** Where it stands in the block. */
  readonly at: number;
}

const TYPE_I = 0x03;
const TYPE_VII = 0x22;
const PIECE = 20;

/** The progressive timings of an extension block that holds a DisplayID section; none where the section is broken. */
export function displayIdTimings(block: Uint8Array): SectionTiming[] {
  const size = block[2]!;
  const section = block.slice(1, size + 6);
  if (size > 121 || section.reduce((sum, byte) => sum + byte, 0) % 256 !== 0) return [];
  const found: SectionTiming[] = [];
  const end = 5 + size;
  for (let at = 5; at + 3 <= end && block[at + 2]! > 0; at += 3 + block[at + 2]!) {
    const tag = block[at]!;
    if (tag !== TYPE_I && tag !== TYPE_VII) continue;
    const last = Math.min(at + 3 + block[at + 2]!, end);
    for (let piece = at + 3; piece + PIECE <= last; piece += PIECE) {
      const timing = timingAt(block, piece, tag === TYPE_I ? 10_000 : 1000);
      if (timing) found.push(timing);
    }
  }
  return found;
}

function timingAt(block: Uint8Array, at: number, stepHz: number): SectionTiming | undefined {
  const two = (offset: number): number => (block[at + offset]! | (block[at + offset + 1]! << 8)) + 1;
  const clockHz = ((block[at]! | (block[at + 1]! << 8) | (block[at + 2]! << 16)) + 1) * stepHz;
  const isInterlaced = (block[at + 3]! & 0x10) !== 0;
  const [widthPx, widthBlank, heightPx, heightBlank] = [two(4), two(6), two(12), two(14)];
  if (isInterlaced) return undefined;
  return { widthPx, heightPx, refreshHz: clockHz / ((widthPx + widthBlank) * (heightPx + heightBlank)), at };
}
