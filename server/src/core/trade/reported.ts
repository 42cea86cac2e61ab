// Whether what a machine calls a part is that part: names compared whole, as tools print them. Source: common practice.
import { sameProcessorName } from './processor-names';

const PCI = /^[0-9a-f]{4}:[0-9a-f]{4}$/i;

/** PCI numbers, `1a2b:7480`, name a device; they are no name in words. */
export const isPciId = (text: string): boolean => PCI.test(text.trim());

/** Case, marks of trade and blanks aside; a maker’s word in front is left out. */
function plain(text: string, maker: string): string {
  const words = text
    .normalize('NFKC')
    .replace(/[®™©]|\((?:r|tm|c)\)/gi, ' ')
    .trim()
    .replace(/[\s_]+/g, ' ')
    .toLowerCase();
  const before = `${maker.trim().replace(/\s+/g, ' ').toLowerCase()} `;
  return before !== ' ' && words.startsWith(before) ? words.slice(before.length) : words;
}

/** True when two texts are one name: whole, since a model’s name is the beginning of its variants’. */
export const sameReported = (a: string, b: string, maker = ''): boolean => {
  const [one, other] = [plain(a, maker), plain(b, maker)];
  return one !== '' && one === other;
};

/** A processor’s string without what every one of its kind adds: clock, cores, graphics, the word for its kind. */
export const bareProcessor = (text: string): string =>
  text
    .replace(/\((?:r|tm)\)/gi, ' ')
    .replace(/@ ?[\d.]{1,6} ?[GM]Hz\b/i, ' ')
    .replace(/\b(?:\d{1,3}|dual|quad|six|eight|twelve)-core\b/gi, ' ')
    .replace(/\b(?:with|w\/) .{0,40}graphics\b/i, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/ (?:cpu|processor)$/i, '');

export type Same = 'same' | 'other' | 'open';

/**
 * Whether a processor’s string names a model: it prints the model’s name. Words that it adds to that name may make
 * another model, or none.
 */
export function processorReported(reported: string, model: string, maker = ''): Same {
  const bare = bareProcessor(reported);
  if (sameProcessorName(bare, bareProcessor(model), maker)) return 'same';
  const words = (text: string): string =>
    ` ${plain(text, maker)
      .split(/[\s()\-_]+/)
      .join(' ')} `;
  if (words(bare).includes(words(model)) || !/\d/.test(bare) || !/\d/.test(model)) return 'open';
  return 'other';
}

/** Rates of memory that two standards round differently, as 2666 and 2667, are one. Source: JEDEC JESD79-4. */
export const ROUNDED_MTS = 2;

/** A drive’s capacity as its maker counts it may be so much off what the drive says. Source: common practice. */
export const CAPACITY_SHARE = 0.01;

/** A new drive has run no longer, in its maker’s and its seller’s tests. Source: common practice. */
export const NEW_DRIVE_HOURS = 1000;
export const NEW_DRIVE_WORN_PERCENT = 5;

/** PCI classes of graphics: display controllers. Source: PCI Code and ID Assignment Specification. */
export const isGraphicsClass = (code: string): boolean => code.startsWith('03');

/** The kind of output that a system’s name for a connector stands for. Source: Linux kernel, drm_connector.c. */
export function connectorKind(connector: string): 'DisplayPort' | 'HDMI' | 'DVI' | 'VGA' | undefined {
  if (/^e?DP(?:-|$)/i.test(connector)) return 'DisplayPort';
  return /^HDMI/i.test(connector)
    ? 'HDMI'
    : /^DVI/i.test(connector)
      ? 'DVI'
      : /^VGA/i.test(connector)
        ? 'VGA'
        : undefined;
}
