// Connectors of displays: their spellings, and what an adapter without a chip can make of one for another.
import type { Range } from './numbers';
import { vocabulary, type Vocabulary } from './vocabulary';

export type DisplayConnector = 'DisplayPort' | 'HDMI' | 'DVI' | 'VGA' | 'USB-C';

export const DISPLAY_CONNECTOR_WORDS: Vocabulary<DisplayConnector> = vocabulary('a connector of displays', {
  DisplayPort: ['DP', 'Mini DisplayPort', 'mini DP', 'mDP'],
  HDMI: ['HDMI A', 'HDMI Type A'],
  DVI: ['DVI-D', 'DVI-I'],
  VGA: ['D-Sub', 'HD15'],
  'USB-C': ['USB Type-C', 'Type-C', 'USB C', 'Thunderbolt'],
});

/**
 * Whether an adapter without a chip of its own can lead from one connector to another: HDMI and DVI are one signal, and
 * outputs of DisplayPort or USB-C may speak both. Source: VESA DisplayPort Dual-Mode Standard 1.1; HDMI Specification;
 * from memory: that some of USB-C do.
 */
export function worksPassive(from: DisplayConnector, to: DisplayConnector): boolean {
  if (from === to || (from === 'USB-C' && to === 'DisplayPort')) return true;
  const digital = to === 'HDMI' || to === 'DVI';
  return digital && from !== 'VGA';
}

/**
 * The clock, MHz, up to which such an adapter from DisplayPort carries the other signal. Source: VESA DisplayPort
 * Dual-Mode Standard 1.1, types 1 and 2, as in the Linux kernel’s drm_dp_dual_mode_helper.c.
 */
export const DUAL_MODE_CLOCK_MHZ: Range = { low: 165, high: 300 };

/** Outputs that carry several pictures at once. Source: VESA DisplayPort Standard 1.2, multi-stream transport. */
export const carriesSeveral = (connector: string): boolean => connector === 'displayport' || connector === 'usb-c';

/** One of 64 time slots is the head of a packet. Source: VESA DisplayPort Standard 1.2, multi-stream transport. */
export const STREAMS_SHARE = 63 / 64;
