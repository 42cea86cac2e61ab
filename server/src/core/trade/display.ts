// Displays: modes as they are written, what a display link carries, and whether a mode fits through one.
import { needPositive } from './numbers';

/** A display mode; sizes in pixels. */
export interface DisplayMode {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly refreshHz: number;
}

const MODE_TEXT = /^(\d{2,5}) ?[x×*] ?(\d{2,5}) ?(?:p? ?@|at|,|p? ) ?(\d{1,3}(?:\.\d{1,4})?) ?hz$/i;

/** Sizes by name. `4K` alone may be 3840 or 4096 wide. Source: common practice. */
const NAMED_SIZES: readonly (readonly [RegExp, string])[] = [
  [/^(?:full hd|fhd|1080p)(?= )/i, '1920x1080'],
  [/^(?:wqhd|qhd|1440p)(?= )/i, '2560x1440'],
  [/^(?:4k )?uhd(?: 4k)?(?= )/i, '3840x2160'],
  [/^uwqhd(?= )/i, '3440x1440'],
];

function inFigures(text: string): string {
  const plain = text.trim().replace(/\s+/g, ' ');
  const [name, size] = NAMED_SIZES.find(([one]) => one.test(plain)) ?? [];
  return name && size ? plain.replace(name, size) : plain.replace(/(?<=^|x ?)(\d),(\d{3})(?!\d)/g, '$1$2');
}

/** Reads `3840x2160 @ 120 Hz`; undefined unless size and rate are there, the rate with its unit and at least 1 Hz. */
export function parseMode(text: string): DisplayMode | undefined {
  const [, width, height, refresh] = MODE_TEXT.exec(inFigures(text)) ?? [];
  const mode = { widthPx: Number(width), heightPx: Number(height), refreshHz: Number(refresh) };
  return mode.widthPx > 0 && mode.heightPx > 0 && mode.refreshHz >= 1 ? mode : undefined;
}

/** How colour is sampled: full, or halved across, or halved across and down. */
export type Sampling = '4:4:4' | '4:2:2' | '4:2:0';

const SAMPLES_PER_PIXEL: Readonly<Record<Sampling, number>> = { '4:4:4': 3, '4:2:2': 2, '4:2:0': 1.5 };

export const SAMPLINGS = Object.keys(SAMPLES_PER_PIXEL) as readonly Sampling[];

/** HDMI sends halved colour in the room of eight bits a component, up to twelve. Source: HDMI Specification 1.4. */
const HDMI_HALVED_BITS = 24;

/** Bits a pixel: depth of one component × components a pixel. Source: VESA DisplayPort Standard, pixel encodings. */
export function bitsPerPixel(depthBits: number, sampling: Sampling = '4:4:4', isHdmi = false): number {
  needPositive('depthBits', depthBits);
  if (isHdmi && sampling === '4:2:2') return Math.max(HDMI_HALVED_BITS, depthBits * 2);
  return depthBits * SAMPLES_PER_PIXEL[sampling];
}

/** A display link by name, with what it carries of pixels. */
export interface DisplayLink {
  readonly name: string;
  readonly payloadGbps: number;
}

const LANES = 4;
/** 8b/10b. Source: VESA DisplayPort Standard 1.4. */
const DISPLAYPORT_1_SHARE = 8 / 10;
/**
 * 128b/132b less what link layer, error correction and synchronisation take: not 128 ÷ 132 = 0.9697.
 * Source: VESA DisplayPort Standard 2.1, section 3.5.2.18, as in the Linux kernel's drm_dp_helper.c.
 */
const DISPLAYPORT_2_SHARE = 0.9671;
/** 16b/18b. Source: HDMI Specification 2.1. */
const FRL_SHARE = 16 / 18;
/** Three channels of eight bits each clock. Source: HDMI Specifications 1.4 (340 MHz) and 2.0 (600 MHz). */
const TMDS_BITS = 24;

/** Gb/s a lane. Source: VESA DisplayPort Standard 1.4, as in the Linux kernel's drm_dp_helper.c. */
const DISPLAYPORT_1_RATES: readonly [string, number][] = [
  ['RBR', 1.62],
  ['HBR', 2.7],
  ['HBR2', 5.4],
  ['HBR3', 8.1],
];
/** Gb/s a lane. Source: VESA DisplayPort Standard 2.1. */
const DISPLAYPORT_2_RATES: readonly [string, number][] = [
  ['UHBR10', 10],
  ['UHBR13.5', 13.5],
  ['UHBR20', 20],
];
/** Greatest clock in MHz. Source: HDMI Specifications 1.4 and 2.0. */
const HDMI_CLOCKS: readonly [string, number][] = [
  ['1.4', 340],
  ['2.0', 600],
];
/** Gb/s of all lanes. Source: HDMI Specification 2.1; from memory: that 32 is one of its steps. */
const FRL_RATES: readonly number[] = [24, 32, 40, 48];

function displayPort(share: number): (row: readonly [string, number]) => DisplayLink {
  return ([rate, gbpsPerLane]) => ({ name: `DisplayPort ${rate}`, payloadGbps: gbpsPerLane * LANES * share });
}

/** Display links with all their lanes, slowest first within each kind. */
export const DISPLAY_LINKS: readonly DisplayLink[] = [
  ...DISPLAYPORT_1_RATES.map(displayPort(DISPLAYPORT_1_SHARE)),
  ...DISPLAYPORT_2_RATES.map(displayPort(DISPLAYPORT_2_SHARE)),
  ...HDMI_CLOCKS.map(([version, clockMHz]) => ({
    name: `HDMI ${version}`,
    payloadGbps: (clockMHz * TMDS_BITS) / 1000,
  })),
  ...FRL_RATES.map((gbps) => ({ name: `HDMI 2.1 FRL ${gbps}`, payloadGbps: gbps * FRL_SHARE })),
];

/**
 * Reads a link's name, `DisplayPort HBR3` or `HDMI 2.1 FRL 48`, in any case. A DisplayPort link may state
 * fewer lanes, `DisplayPort HBR2 x2`, as where USB-C keeps two for data. Undefined when unknown: a version of
 * DisplayPort alone does not say its rate, nor does HDMI 2.1.
 */
export function parseDisplayLink(text: string): DisplayLink | undefined {
  const spelled = text.trim().replace(/\s+/g, ' ').toLowerCase();
  const [, name, lanes] = /^(displayport .+?) ?[x×]([124])$/.exec(spelled) ?? [undefined, spelled, undefined];
  const whole = DISPLAY_LINKS.find((link) => link.name.toLowerCase() === name);
  if (!whole || lanes === undefined) return whole;
  return { name: `${whole.name} x${lanes}`, payloadGbps: (whole.payloadGbps * Number(lanes)) / LANES };
}

/**
 * The slowest and the fastest link that a version alone allows: it names what is allowed at most, not what is there.
 */
const VERSION_BOUNDS: ReadonlyMap<string, readonly [string, string]> = new Map([
  ['displayport 1.1', ['DisplayPort RBR', 'DisplayPort HBR']],
  ['displayport 1.2', ['DisplayPort RBR', 'DisplayPort HBR2']],
  ['displayport 1.3', ['DisplayPort RBR', 'DisplayPort HBR3']],
  ['displayport 1.4', ['DisplayPort RBR', 'DisplayPort HBR3']],
  ['displayport 2.0', ['DisplayPort HBR3', 'DisplayPort UHBR20']],
  ['displayport 2.1', ['DisplayPort HBR3', 'DisplayPort UHBR20']],
  ['hdmi 2.1', ['HDMI 2.0', 'HDMI 2.1 FRL 48']],
]);

/** A link's name in its plainest spelling: `Mini DP 1.4a` is `displayport 1.4`. */
export const plainLinkName = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[®™]/g, '')
    .replace(/[()]/g, ' ')
    .replace(/^(?:usb )?(?:type-c|usb-c)(?= d)/, '')
    .trim()
    .replace(/^\d ?[x×] ?| ?[x×] ?1$/g, '')
    .replace(/\s+/g, ' ')
    .replace(/^mini ?-?(?=d)/, '')
    .replace(/^(?:dp|display port)(?=[ \d]|$)/, 'displayport')
    .replace(/^(displayport|hdmi) ?v?(\d\.\d)[ab]?$/, '$1 $2');

/**
 * What a link's name allows of pixels, Gb/s: one figure where it names the rate, else from the slowest to the fastest
 * that its version allows. HDMI 2.1 may run TMDS alone, as 2.0 does. Source: VESA DisplayPort Standards 1.1 to 2.1,
 * HDMI Specification 2.1; from memory: that a DisplayPort 2 device has at least HBR3.
 */
export function linkBounds(text: string): LinkBounds | undefined {
  const [low, high] = endsOf(plainLinkName(text)) ?? [];
  return low && high && { lowGbps: low.payloadGbps, highGbps: high.payloadGbps };
}

export interface LinkBounds {
  readonly lowGbps: number;
  readonly highGbps: number;
}

function endsOf(name: string): readonly DisplayLink[] | undefined {
  const exact = parseDisplayLink(name);
  return exact ? [exact, exact] : VERSION_BOUNDS.get(name)?.map((end) => parseDisplayLink(end)!);
}

/** Gb/s that a pixel clock needs: clock × bits a pixel. */
export function requiredGbps(pixelClockMHz: number, bits: number): number {
  needPositive('pixelClockMHz', pixelClockMHz);
  needPositive('bits', bits);
  return (pixelClockMHz * bits) / 1000;
}

/**
 * Bits a pixel down to which a picture of full or halved colour is compressed on a link. Source: Linux kernel,
 * intel_dp.c, least compressed bits a pixel, after the VESA DisplayPort Standard.
 */
export const COMPRESSED_BITS: Readonly<Record<Sampling, number>> = { '4:4:4': 8, '4:2:2': 7, '4:2:0': 6 };

/**
 * What error correction leaves of an 8b/10b link that carries a compressed picture. Source: Linux kernel, intel_dp.c,
 * overhead factor 1.02853.
 */
const CORRECTED_SHARE = 1 / 1.02853;

/** Versions too old to compress: the first to do it are DisplayPort 1.4 and HDMI 2.1 without TMDS. */
const NEVER_COMPRESS = /^(?:displayport 1\.[123]|hdmi (?:1\.[0-4]|2\.0))$/;

/**
 * What a link carries of a compressed picture, Gb/s: nothing where its version knows no compression, and perhaps
 * nothing where it may run as one that does not. Source: VESA DisplayPort Standard 1.4, HDMI Specification 2.1.
 */
export function compressedBounds(text: string): LinkBounds | undefined {
  const name = plainLinkName(text);
  const [low, high] = endsOf(name) ?? [];
  if (!low || !high) return undefined;
  if (NEVER_COMPRESS.test(name)) return { lowGbps: 0, highGbps: 0 };
  const carried = (link: DisplayLink): number =>
    / [RH]BR\d?/.test(link.name) ? link.payloadGbps * CORRECTED_SHARE : link.payloadGbps;
  return { lowGbps: NEVER_COMPRESS.test(low.name.toLowerCase()) ? 0 : carried(low), highGbps: carried(high) };
}

/** Closer to the payload than this share of it, a link is called marginal. Source: common practice. */
export const MARGINAL_SHARE = 0.01;

export type LinkVerdict = 'fits' | 'marginal' | 'beyond';

/** Does what is needed go through? Less than 1 % to either side of the payload is marginal. */
export function linkVerdict(neededGbps: number, payloadGbps: number): LinkVerdict {
  needPositive('neededGbps', neededGbps);
  needPositive('payloadGbps', payloadGbps);
  if (Math.abs(neededGbps - payloadGbps) < MARGINAL_SHARE * payloadGbps) return 'marginal';
  return neededGbps < payloadGbps ? 'fits' : 'beyond';
}

/** Rates that displays usually offer, in Hz. Source: common practice. */
export const USUAL_REFRESH_HZ: readonly number[] = [24, 30, 50, 60, 75, 100, 120, 144, 165, 240];

/** The highest usual rate at which a picture fits through a link and is not marginal; undefined when none does. */
export function highestRefreshHz(
  clockMHz: (refreshHz: number) => number | undefined,
  bits: number,
  payloadGbps: number,
): number | undefined {
  return USUAL_REFRESH_HZ.findLast((hz) => {
    const clock = clockMHz(hz);
    return clock !== undefined && linkVerdict(requiredGbps(clock, bits), payloadGbps) === 'fits';
  });
}
