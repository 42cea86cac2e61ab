// What data sheets print in one line and a field asks for alone: a label's ranks, a kit's modules, a triple of
// measures. Each gives the text as the field writes it, or undefined. Source: common practice.

/** No sheet prints a longer one; past it nothing is tried. */
const longest = 60;

const plain = (text: string): string =>
  text.length > longest
    ? ''
    : text.trim().replace(/[®™©]/g, '').replace(/[×*]/g, 'x').replace(/\s+/g, ' ').toLowerCase();

/** The first pattern’s first group, or what a word stands for. */
function firstOf(text: string, patterns: readonly RegExp[], words: ReadonlyMap<string, string>): string | undefined {
  const written = plain(text);
  for (const pattern of patterns) {
    const found = pattern.exec(written)?.[1];
    if (found !== undefined) return words.get(found) ?? found;
  }
  return undefined;
}

const RANK_WORDS = new Map([
  ['single', '1'],
  ['dual', '2'],
  ['quad', '4'],
  ['octal', '8'],
  ['s', '1'],
  ['d', '2'],
  ['q', '4'],
]);

/** `1Rx8`, `2R x 8`, `DR x8`, `Dual-rank`: the ranks; the width of the chips stands behind them. */
export const sheetRanks = (text: string): string | undefined =>
  firstOf(
    text,
    [/^([1-8sdq]) ?r(?: ?x ?\d{1,2})?$/, /^(single|dual|quad|octal|[1-8])[ -]?ranks?(?: ?x ?\d{1,2})?$/],
    RANK_WORDS,
  );

/** `Dual Channel`, `2-channel`, `4 channels`: how many channels of memory. */
export const sheetChannels = (text: string): string | undefined =>
  firstOf(text, [/^(single|dual|triple|quad|hexa|octa|[1-8]|12)[ -]?channels?$/], CHANNEL_WORDS);
const CHANNEL_WORDS = new Map([
  ['single', '1'],
  ['dual', '2'],
  ['triple', '3'],
  ['quad', '4'],
  ['hexa', '6'],
  ['octa', '8'],
]);

/** `4-pin PWM`, `PWM 4-pin`, `3 pins`, `PWM`. What runs “DC” has two pins or three. */
export const sheetPins = (text: string): string | undefined =>
  firstOf(text, [/^(?:pwm )?([2-4])[ -]?pin(?:s|es|os)?(?: \(?pwm\)?| dc)?(?: connector)?$/, /^(pwm)$/], PWM_PINS);
const PWM_PINS = new Map([['pwm', '4']]);

const NONE: ReadonlyMap<string, string> = new Map();

/** `x16`, `16x`, `16 lanes`. */
export const sheetLanes = (text: string): string | undefined =>
  firstOf(text, [/^x ?(\d{1,2})$/, /^(\d{1,2}) ?(?:x|lanes?)$/], NONE);

/** `Gen4`, `4.0`, `PCIe 4.0`, `PCI Express Gen 4`. */
export const sheetGeneration = (text: string): string | undefined =>
  firstOf(text, [/^(?:(?:pcie|pci-e|pci[ -]express)[ -]?)?(?:gen[ -]?)?([1-7])(?:\.0)?$/], NONE);

/** `SATA 6 Gb/s`, `SATA III`, `3.0`: the generation of a SATA port. Source: Serial ATA revision 3.0, its rates. */
export const sheetSataGeneration = (text: string): string | undefined =>
  firstOf(text, [/^(?:(?:sata|serial ata)[ -]?)?(1\.5|3(?:\.0)?|6(?:\.0)?) ?gb(?:\/s|ps)$/], SATA_RATES) ??
  firstOf(text, [/^(?:sata|serial ata)[ -]?([1-3]|i{1,3})$/], SATA_NUMERALS) ??
  sheetGeneration(text);
const SATA_RATES = new Map([
  ['1.5', '1'],
  ['3', '2'],
  ['3.0', '2'],
  ['6', '3'],
  ['6.0', '3'],
]);
const SATA_NUMERALS = new Map([
  ['i', '1'],
  ['ii', '2'],
  ['iii', '3'],
]);

/** `3 x 120 mm`, `120mm x 3`, `up to 3`: how many. */
export const sheetCount = (text: string): string | undefined =>
  firstOf(
    text,
    [/^(\d{1,2}) ?x ?\d{2,3} ?(?:mm)?$/, /^\d{2,3} ?mm ?x ?(\d{1,2})$/, /^(?:up to|max\.?) (\d{1,2})$/],
    NONE,
  );

const KIT =
  /^(?:(\d{1,4}) ?gb )?(?:kit )?(?:(\d{1,2}) ?x ?(\d{1,4}) ?gb|(\d{1,4}) ?gb ?x ?(\d{1,2}))(?: (\d{1,4}) ?gb)?$/;

/** `32 GB kit (2 x 16 GB)`, `2x16GB`, `32GB (16GBx2)`: modules and the capacity of one, where they agree. */
function kitOf(text: string): { modules: number; eachGb: number } | undefined {
  const [, before, ahead, each, eachAhead, behind, after] = KIT.exec(plain(text).replace(/[()]| kit$/g, '')) ?? [];
  const [modules, eachGb] = [Number(ahead ?? behind), Number(each ?? eachAhead)];
  const whole = before ?? after;
  if (!(modules > 0) || (whole !== undefined && Number(whole) !== modules * eachGb)) return undefined;
  return { modules, eachGb };
}
export const sheetModuleCapacity = (text: string): string | undefined => {
  const kit = kitOf(text);
  return kit && `${kit.eachGb} GB`;
};
export const sheetModules = (text: string): string | undefined => {
  const kit = kitOf(text);
  return kit ? String(kit.modules) : firstOf(text, [/^kit of (\d{1,2})$/, /^(\d{1,2})[ -]?modules?(?: kit)?$/], NONE);
};

/** A kit’s word on error correction. Chips that correct within themselves (`on-die`) say nothing of it. */
export const sheetEcc = (text: string): string | undefined => {
  const written = plain(text);
  if (/^(?:with |supports )?ecc(?: support(?:ed)?)?$|^x ?(?:72|80)$/.test(written)) return 'true';
  return /^(?:non|no|without|sem)[ -]?ecc$|^x ?64$/.test(written) ? 'false' : undefined;
};

/** `Tempered glass`, `4mm TG`, `left tempered glass`. */
export const sheetGlass = (text: string): string | undefined => {
  const written = plain(text);
  if (
    /^(?:\d(?:\.\d)? ?mm )?(?:left |right )?(?:side )?(?:tempered glass|tg|hartglas|vidro temperado|glass)$/.test(
      written,
    )
  )
    return 'true';
  return /^(?:steel|acrylic|mesh|aluminium|aluminum)$/.test(written) ? 'false' : undefined;
};

/** `240 mm`, `240mm radiator`, `2x120 mm`, `up to 240`: the class. */
export const sheetRadiator = (text: string): string | undefined => {
  const written = plain(text).replace(/^(?:up to|max\.?|≤) ?/, '');
  const [, fans, frame] = /^([1-4]) ?x ?(120|140|180|200) ?(?:mm)?$/.exec(written) ?? [];
  if (fans && frame) return String(Number(fans) * Number(frame));
  return /^(\d{2,3}) ?(?:mm)?(?: radiator)?$/.exec(written)?.[1];
};

/** `DDR4-3200`, `DDR5 6000`, `DDR4 UDIMM`: the generation. */
export const sheetMemoryType = (text: string): string | undefined =>
  /^((?:lp)?ddr[345]x?)(?:[ -]\d{3,5}(?: ?mt\/s)?|[ -](?:u|r|lr|so|cu)?-?dimm)$/.exec(plain(text))?.[1]?.toUpperCase();

/** One port or two share a front cable: `USB 3.0 x2`, `1 x USB-C`. */
export const sheetFrontCable = (text: string): string | undefined => {
  const written = text.trim();
  const one = written.replace(/^1 ?[x×] ?| ?[x×] ?1$/gi, '');
  if (one !== written) return one;
  const two = written.replace(/^2 ?[x×] ?| ?[x×] ?2$/gi, '');
  return two === written || /(?:type|usb)[ -]?c/i.test(two) ? undefined : two;
};

/** `E-ATX (up to 280 mm)`, `ATX (305 x 244 mm)`: the name; the measures have fields of their own. */
export const sheetBoardSize = (text: string): string | undefined => {
  const name = text
    .trim()
    .replace(/^\d[\d.]{0,5} ?(?:mm|cm|in|")? ?[x×] ?\d[\d.]{0,5} ?(?:mm|cm|in|") (?=[a-z])/i, '')
    .replace(/ ?\(?(?:up to )?\d[\d.]{0,5}(?: ?mm)?(?: ?[x×] ?\d[\d.]{0,5})? ?(?:mm|cm|in|")\)?$/i, '');
  return name === text.trim() ? undefined : name;
};

/** A maker’s name before a socket: the socket. */
export const sheetSocket = (text: string): string | undefined =>
  /^[a-z]{2,12} ((?:fc)?(?:lga|am|bga|pga|fm|sp|str|swrx|tr) ?-?\d.{0,8})$/i.exec(text.trim())?.[1];

/** A power factor as a number: from 0.9 on it is corrected actively. */
export const sheetPowerFactor = (text: string): string | undefined => {
  if (/^active(?: pfc| power factor correction)? ?\([^()a-z]{1,12}\)$/.test(plain(text))) return 'active';
  const [, figure, percent] = /^(?:pf ?)?(?:[>≥] ?)?(\d{1,2}(?:\.\d{1,3})?) ?(%?)$/.exec(plain(text)) ?? [];
  if (figure === undefined) return undefined;
  const factor = percent ? Number(figure) / 100 : Number(figure);
  return factor >= 0.9 && factor <= 1 ? 'active' : undefined;
};

/** The measures of `120 x 120 x 25 mm`, `120mm x 25mm`, in millimetres, smallest first. */
function measuresOf(text: string): readonly number[] {
  const found = /^(\d[\d.]{0,6}) ?(mm)? ?x ?(\d[\d.]{0,6}) ?(mm)?(?: ?x ?(\d[\d.]{0,6}) ?(mm)?)?$/.exec(plain(text));
  if (!found?.slice(1).includes('mm')) return [];
  return [found[1], found[3], found[5]]
    .flatMap((one) => (one === undefined ? [] : [Number(one)]))
    .sort((a, b) => a - b);
}
const inMm = (value: number | undefined): string | undefined => (value === undefined ? undefined : `${value} mm`);

/** `3x 120 mm`: the size, where how many has a field of its own. */
export const sheetOneOfSizes = (text: string): string | undefined => {
  const [, size] = /^[1-9] ?x ?(\d{2,3}) ?mm$/.exec(plain(text)) ?? [];
  return size === undefined ? undefined : `${size} mm`;
};

/** A fan’s frame and its depth, and a radiator’s three measures, are told apart by their size. */
export const sheetLargest = (text: string): string | undefined => inMm(measuresOf(text).at(-1));
export const sheetMiddle = (text: string): string | undefined => inMm(measuresOf(text).at(-2));
export const sheetSmallest = (text: string): string | undefined => inMm(measuresOf(text)[0]);

/** Two of a supply’s measures are fixed. Source: ATX12V and SFX12V power supply design guides, outlines. */
const SUPPLY_FACES_MM: readonly (readonly [number, number])[] = [
  [86, 150],
  [63.5, 125],
];

/** What is left of a supply’s three measures when those of its face are taken away. */
export const sheetSupplyDepth = (text: string): string | undefined => {
  const all = [...measuresOf(text)];
  if (all.length !== 3) return undefined;
  for (const face of SUPPLY_FACES_MM) {
    const rest = [...all];
    for (const edge of face) {
      const at = rest.indexOf(edge);
      if (at >= 0) rest.splice(at, 1);
    }
    if (rest.length === 1) return inMm(rest[0]);
  }
  return undefined;
};
