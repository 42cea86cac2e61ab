// Makes the data blocks by which displays name themselves. Source: VESA E-EDID Standard, release A2; CTA-861-H.

export interface Timing {
  readonly clockKhz: number;
  readonly width: number;
  readonly widthBlank: number;
  readonly height: number;
  readonly heightBlank: number;
}

export interface Made {
  readonly maker: string;
  readonly name: string;
  /** 2 for HDMI, 5 for DisplayPort. */
  readonly input: 2 | 5;
  readonly timings: readonly [Timing, ...Timing[]];
  /** Codes of CTA-861, in an extension block; an HDMI input’s fixed-rate step and 5 MHz clocks go with them. */
  readonly codes?: readonly number[];
  readonly hdmi?: { readonly clock5Mhz: number; readonly fixedRate?: number; readonly compressed?: boolean };
  /** In a DisplayID section, type I. */
  readonly section?: readonly Timing[];
}

export const serialNumber = 'SN-4711-SECRET';

const closed = (bytes: number[]): number[] => {
  const block = [...bytes, ...Array(127 - bytes.length).fill(0)];
  return [...block, (256 - (block.reduce((sum, byte) => sum + byte, 0) % 256)) % 256];
};

function detailed({ clockKhz, width, widthBlank, height, heightBlank }: Timing): number[] {
  const clock = clockKhz / 10;
  const both = (a: number, b: number): number => ((a >> 8) << 4) | (b >> 8);
  return [
    ...[clock & 255, clock >> 8, width & 255, widthBlank & 255, both(width, widthBlank)],
    ...[height & 255, heightBlank & 255, both(height, heightBlank)],
    ...[48, 32, (3 << 4) | 5, 0, 88, 38, 34, 0, 0, 0x1a],
  ];
}

const letters = (tag: number, text: string): number[] => [
  ...[0, 0, 0, tag, 0],
  ...[...`${text}\n`.padEnd(13)].slice(0, 13).map((letter) => letter.charCodeAt(0)),
];

function baseBlock({ maker, name, input, timings }: Made, extensions: number): number[] {
  const [one, two, three] = [...maker].map((letter) => letter.charCodeAt(0) - 64);
  const packed = (one! << 10) | (two! << 5) | three!;
  const second = timings[1] ? detailed(timings[1]) : [0, 0, 0, 0x10, 0, ...Array(13).fill(0)];
  return closed([
    ...[0, 255, 255, 255, 255, 255, 255, 0, packed >> 8, packed & 255, 0x34, 0x12, 0x39, 0x30, 0, 0, 12, 34, 1, 4],
    ...[0x80 | (3 << 4) | input, 60, 34, 120, 2, ...Array(10).fill(0), 0, 0, 0],
    ...[0xd1, 0xc0, ...Array(14).fill(1)],
    ...detailed(timings[0]),
    ...second,
    ...letters(0xfc, name),
    ...letters(0xff, serialNumber),
    extensions,
  ]);
}

function ctaBlock({ codes = [], hdmi }: Made): number[] {
  const video = codes.length > 0 ? [0x40 | codes.length, ...codes] : [];
  const licensor = hdmi ? [0x65, 0x03, 0x0c, 0x00, 0x10, 0x00] : [];
  const forum = hdmi
    ? [0x6b, 0xd8, 0x5d, 0xc4, 1, hdmi.clock5Mhz, 0x80, (hdmi.fixedRate ?? 0) << 4, 0, 0, 0, hdmi.compressed ? 128 : 0]
    : [];
  const data = [...video, ...licensor, ...forum];
  return closed([2, 3, 4 + data.length, 0, ...data]);
}

function sectionBlock(timings: readonly Timing[]): number[] {
  const pieces = timings.flatMap(({ clockKhz, width, widthBlank, height, heightBlank }) => {
    const clock = clockKhz / 10 - 1;
    const two = (value: number): number[] => [(value - 1) & 255, (value - 1) >> 8];
    return [
      ...[clock & 255, (clock >> 8) & 255, clock >> 16, 0x08],
      ...two(width),
      ...two(widthBlank),
      ...two(48),
      ...two(32),
      ...two(height),
      ...two(heightBlank),
      ...two(3),
      ...two(5),
    ];
  });
  const data = [3, 0, pieces.length, ...pieces];
  const section = [0x12, data.length, 0, 0, ...data];
  const sum = (256 - (section.reduce((total, byte) => total + byte, 0) % 256)) % 256;
  return closed([0x70, ...section, sum]);
}

export function makeEdid(made: Made): Uint8Array {
  const extensions = [
    ...(made.codes || made.hdmi ? [ctaBlock(made)] : []),
    ...(made.section ? [sectionBlock(made.section)] : []),
  ];
  return Uint8Array.from([baseBlock(made, extensions.length), ...extensions].flat());
}

export const asHex = (bytes: Uint8Array): string =>
  [...bytes].map((byte, at) => byte.toString(16).padStart(2, '0') + (at % 16 === 15 ? '\n' : ' ')).join('');

/** Reduced blanking as monitors use it. */
export const timing = (width: number, height: number, hz: number, widthBlank = 160, heightBlank = 62): Timing => ({
  clockKhz: Math.round(((width + widthBlank) * (height + heightBlank) * hz) / 10_000) * 10,
  width,
  widthBlank,
  height,
  heightBlank,
});

/** A display with modes in every place that holds any: its base block, an extension for televisions, and a section. */
export const everyPlace: Made = {
  maker: 'PHR',
  name: 'P32 4K 120',
  input: 2,
  timings: [timing(3840, 2160, 60), timing(2560, 1440, 75)],
  codes: [97, 118, 16, 31],
  hdmi: { clock5Mhz: 120, fixedRate: 6, compressed: true },
  section: [timing(3840, 2160, 143.9), timing(2560, 1440, 120)],
};
