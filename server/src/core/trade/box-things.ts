// What boxes hold beside the part: the names under which handbooks list it, and how many of it one part takes.

export type BoxThing = 'display cable' | 'power cord' | 'drive screw' | 'board screw' | 'fan screw' | 'USB stick';

/** Spellings in lists of a box's contents, and on order lists. Source: common practice. */
const SPELLINGS: Readonly<Record<BoxThing, RegExp>> = {
  'display cable': /^(?:(?:display ?port|hdmi|dvi|vga)(?: display)?|(?:usb-c )?display)(?: (?:lead|cable))?s?$/i,
  'power cord': /^(?:ac )?(?:mains|power)(?: (?:lead|cable|cord))?s?$/i,
  'drive screw': /^(?:drive|m3|6-32) screws?$/i,
  'board screw': /^(?:board|motherboard|standoff) screws?$/i,
  'fan screw': /^fan (?:screw|pin)s?$/i,
  'USB stick': /^usb (?:stick|flash drive)s?$/i,
};

/** Does this line of a box's contents, or of an order, name the thing? */
export function isBoxThing(thing: BoxThing, written: string): boolean {
  return SPELLINGS[thing].test(written.trim());
}

/**
 * A splitter for fans, as lists of a box's contents spell it: one header then serves several fans. Source: common
 * practice.
 */
export function isFanSplitter(written: string): boolean {
  return /^(?:(?:fan|pwm|[34]-pin) )*(?:splitter|y[- ]?(?:lead|cable))(?: (?:lead|cable))?s?$/i.test(written.trim());
}

/** An adapter to a 16-pin connector, as lists of a card's box spell it. Source: common practice. */
export function isSixteenPinAdapter(written: string): boolean {
  return /\b(?:16-pin|12VHPWR|12V-2x6)\b/i.test(written) && /\badapter\b/i.test(written);
}

/** A set of screws for a case holds what its tray and bays take. Source: common practice. */
export function isScrewSet(written: string): boolean {
  return /^(?:case )?screw (?:set|kit|bag)s?$/i.test(written.trim());
}

/** Screws that hold one drive in a bay, and one fan in its place. Source: common practice: one a corner. */
export const SCREWS_PER_DRIVE = 4;
export const SCREWS_PER_FAN = 4;

/** Whether a thing is bought as a cable, and so listed among the build’s cables. */
export const isCable = (thing: BoxThing): boolean => thing === 'display cable' || thing === 'power cord';
