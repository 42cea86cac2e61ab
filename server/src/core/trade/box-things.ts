// What boxes hold beside the part: the names under which handbooks list it, and how many of it one part takes.

/** What checks count in boxes; `other` is a thing that is understood and that none of them counts. */
export type BoxWord =
  | 'display cable'
  | 'power cord'
  | 'SATA data cable'
  | 'SATA power cable'
  | 'breakout cable'
  | 'drive screw'
  | 'board screw'
  | 'fan screw'
  | 'M.2 screw'
  | 'screw set'
  | 'USB stick'
  | 'I/O shield'
  | 'fan splitter'
  | '16-pin adapter'
  | 'full-height bracket'
  | 'low-profile bracket'
  | 'mounting kit'
  | 'supply bracket'
  | 'other';

/** The things that a build is held against one by one. */
export type BoxThing = 'display cable' | 'power cord' | 'drive screw' | 'board screw' | 'fan screw' | 'USB stick';

/** A line names a thing when it has one token of each of `needs`, and nothing outside those and `may`. */
interface Rule {
  readonly word: BoxWord;
  readonly needs: readonly (readonly string[])[];
  readonly may?: readonly string[];
}

const CABLE = ['cable', 'cables', 'lead', 'leads'];
const SCREW = ['screw', 'screws'];
const DISPLAY = ['displayport', 'dp', 'hdmi', 'dvi', 'dvi-d', 'vga', 'mini-displayport', 'minidp'];
const VERSION = ['1.2', '1.3', '1.4', '1.4a', '2.0', '2.0a', '2.0b', '2.1', '2.1a', '2.1b', 'certified', 'premium'];
const SPEED = ['high', 'ultra', 'speed', 'to', 'video', 'monitor', 'display'];
const SATA = ['sata', 'sata3', 'serial', 'ata', 's-ata', 'iii', '3', '6gb/s', '6.0gb/s', '6gbps', '6', 'gb/s'];
const SATA_MORE = ['data', 'signal', '7-pin', 'straight', 'angled', 'right-angle', 'right-angled', 'locking'];
const SAS = ['sas', 'mini-sas', 'minisas', 'sff-8643', 'sff-8087', 'slimsas', 'sff-8654'];
const FOUR = ['hd', 'to', '4x', '4', 'x', '×', 'forward', 'internal'];
const WAYS = ['2-way', '3-way', '4-way', '1-to-2', '1-to-3', '1-to-4', 'dual', 'triple'];
const SIXTEEN = ['16-pin', '12vhpwr', '12v-2x6', '12+4-pin'];
const EIGHT = [
  'pcie',
  'pci-e',
  '8-pin',
  '6+2-pin',
  '2x',
  '3x',
  '4x',
  '2',
  '3',
  '4',
  'x',
  '×',
  'to',
  'power',
  'for',
  'card',
];

/** Source: common practice: contents of boxes as handbooks list them. */
const RULES: readonly Rule[] = [
  { word: 'display cable', needs: [DISPLAY], may: [...CABLE, ...DISPLAY, ...VERSION, ...SPEED, 'mini', 'port'] },
  { word: 'display cable', needs: [['display', 'monitor'], CABLE], may: ['usb-c', 'type-c', 'port'] },
  { word: 'display cable', needs: [['display']] },
  {
    word: 'power cord',
    needs: [['cord', 'cords']],
    may: ['ac', 'power', 'mains', 'iec', 'c13', 'c19', 'eu', 'uk', 'us'],
  },
  { word: 'power cord', needs: [['mains', 'ac', 'iec', 'c13', 'kettle'], CABLE], may: ['mains', 'ac', 'power', 'c13'] },
  { word: 'power cord', needs: [['power'], CABLE] },
  { word: 'power cord', needs: [['mains', 'power']] },
  { word: 'SATA data cable', needs: [['sata', 'sata3', 'ata', 's-ata'], CABLE], may: [...SATA, ...SATA_MORE] },
  {
    word: 'SATA data cable',
    needs: [
      ['sata', 'sata3'],
      ['data', 'signal'],
    ],
    may: SATA,
  },
  { word: 'breakout cable', needs: [['breakout', 'fan-out', 'fanout'], CABLE], may: [...SAS, ...SATA, ...FOUR] },
  { word: 'breakout cable', needs: [SAS, ['sata'], CABLE], may: [...SAS, ...SATA, ...FOUR] },
  { word: 'SATA power cable', needs: [['sata', 's-ata'], ['power'], CABLE], may: ['dual', 'hdd', 'ssd', 'drive'] },
  {
    word: 'M.2 screw',
    needs: [
      ['m.2', 'm2'],
      [...SCREW, 'screw/standoff'],
    ],
    may: [
      'ssd',
      'nvme',
      'module',
      'drive',
      'mounting',
      'fixing',
      'fastening',
      'for',
      'slot',
      'socket',
      'package',
      'pack',
    ],
  },
  {
    word: 'drive screw',
    needs: [SCREW, ['drive', 'hdd', 'ssd', 'disk', 'm3', '6-32']],
    may: ['hard', 'mounting', '2.5', '3.5', 'in', 'unc'],
  },
  { word: 'board screw', needs: [SCREW, ['board', 'motherboard', 'mainboard', 'standoff']], may: ['mounting'] },
  { word: 'fan screw', needs: [['fan'], [...SCREW, 'pin', 'pins']], may: ['mounting', 'self-tapping', 'radiator'] },
  {
    word: 'screw set',
    needs: [SCREW, ['set', 'sets', 'kit', 'kits', 'bag', 'bags', 'pack']],
    may: ['case', 'mounting'],
  },
  {
    word: 'USB stick',
    needs: [['usb'], ['stick', 'sticks', 'flash', 'thumb', 'pen']],
    may: ['drive', 'drives', 'memory'],
  },
  {
    word: 'I/O shield',
    needs: [
      ['i/o', 'io', 'rear', 'back'],
      ['shield', 'plate', 'backplate', 'panel'],
    ],
    may: ['i/o', 'io', 'rear', 'back'],
  },
  { word: 'I/O shield', needs: [['shield']], may: ['i/o', 'io', 'rear'] },
  {
    word: 'fan splitter',
    needs: [['splitter', 'splitters', 'y-cable', 'y-cables', 'y-lead', 'y-splitter', 'ycable']],
    may: ['fan', 'pwm', '3-pin', '4-pin', ...CABLE, ...WAYS],
  },
  { word: 'fan splitter', needs: [['y'], CABLE], may: ['fan', 'pwm', '3-pin', '4-pin', ...WAYS] },
  { word: '16-pin adapter', needs: [SIXTEEN, ['adapter', 'adaptor']], may: [...SIXTEEN, ...EIGHT, 'cable'] },
  {
    word: 'supply bracket',
    needs: [
      ['atx', 'sfx-to-atx', 'sfx', 'sfx-l', 'sfx/atx', 'psu', 'supply'],
      ['bracket', 'brackets', 'plate', 'adapter', 'adaptor', 'frame'],
    ],
    may: ['to', 'sfx', 'atx', 'adapter', 'adaptor', 'mounting', 'bracket', 'plate', 'power', 'for', 'ps2'],
  },
  {
    word: 'low-profile bracket',
    needs: [
      ['low-profile', 'low', 'half-height', 'lp'],
      ['bracket', 'brackets'],
    ],
    may: ['profile'],
  },
  {
    word: 'full-height bracket',
    needs: [
      ['full-height', 'full', 'standard-height'],
      ['bracket', 'brackets'],
    ],
    may: ['height'],
  },
  {
    word: 'other',
    needs: [SCREW, ['case', 'thumb', 'panel', 'cooler', 'radiator', 'graphics', 'card']],
    may: ['mounting'],
  },
  {
    word: 'mounting kit',
    needs: [
      ['mounting', 'fixing'],
      ['kit', 'set', 'hardware', 'parts', 'material', 'bracket', 'brackets'],
    ],
    may: ['cooler', 'socket', 'and', 'screws'],
  },
];

/** One of these in a line makes it a thing that no check counts, unless a rule above takes it. */
const UNCOUNTED: ReadonlySet<string> = new Set(
  (
    'manual handbook guide leaflet booklet instructions sticker stickers badge label labels tie ties velcro antenna ' +
    'antennas antennae cd dvd disc warranty card cards cloth screwdriver strap paste compound grease ' +
    'spreader spatula ' +
    'remote battery thermistor sensor bridge filter foot feet rubber stand wrench tool key keys keyring postcard ' +
    'coupon standoff standoffs thumbscrew thumbscrews fan fans heatsink backplate back-plate holder usb ' +
    'usb-c audio ethernet network rgb argb front riser risers'
  ).split(' '),
);

/** How long a thing is, and what a list says of it in brackets, is not its name. Linear in the text. */
function tokensOf(line: string): string[] {
  let depth = 0;
  let kept = '';
  for (const sign of line.normalize('NFKC').toLowerCase()) {
    if (sign === '(' || sign === '[') depth++;
    else if ((sign === ')' || sign === ']') && depth > 0) depth--;
    else if (depth === 0) kept += sign;
  }
  const tokens = kept.split(/[\s,;®™]+/).filter((token) => token !== '');
  const units = ['m', 'cm', 'mm', 'ft'];
  if (/^\d[\d.]*(?:m|cm|mm|ft)$/.test(tokens.at(-1) ?? '')) tokens.pop();
  else if (units.includes(tokens.at(-1) ?? '') && /^\d[\d.]*$/.test(tokens.at(-2) ?? '')) tokens.splice(-2);
  return tokens;
}

function follows({ needs, may = [] }: Rule, tokens: readonly string[]): boolean {
  return (
    needs.every((any) => tokens.some((token) => any.includes(token))) &&
    tokens.every((token) => may.includes(token) || needs.some((any) => any.includes(token)))
  );
}

/** What a line of a box’s contents, or of an order, names; undefined where it is not understood. */
export function boxWord(line: string): BoxWord | undefined {
  const tokens = tokensOf(line);
  const rule = RULES.find((one) => follows(one, tokens));
  if (rule) return rule.word;
  const counted = tokens.some((token) => SCREW.includes(token) || token === 'splitter');
  return !counted && tokens.some((token) => UNCOUNTED.has(token)) ? 'other' : undefined;
}

/** Which of the things that checks count are screws: a line that speaks of screws is one of these, or none. */
const SCREW_THINGS: ReadonlySet<BoxWord> = new Set([
  'drive screw',
  'board screw',
  'fan screw',
  'M.2 screw',
  'screw set',
]);

/** Whether a line of a box’s contents names screws of any kind. */
export const speaksOfScrews = (line: string): boolean =>
  tokensOf(line).some(
    (token) => SCREW.includes(token) || /^thumb-?screws?$|^fixings?$|^hardware$|^accessor/.test(token),
  );

/** Whether a line that is not understood may be a thing: screws of no stated kind are no cord and no cable. */
export function mayBeThing(line: string, thing: BoxWord): boolean {
  return !tokensOf(line).some((token) => SCREW.includes(token)) || SCREW_THINGS.has(thing);
}

const ENDS: readonly (readonly [string, RegExp])[] = [
  ['displayport', /displayport|\bdp\b|minidp/],
  ['hdmi', /hdmi/],
  ['dvi', /\bdvi/],
  ['vga', /\bvga\b/],
  ['usb-c', /usb-c|type-c/],
];

/**
 * The connector at both ends of a display cable; undefined where its name tells none, or two. Source: common
 * practice.
 */
export function displayCableEnd(line: string): string | undefined {
  const named = ENDS.filter(([, words]) => words.test(line.toLowerCase()));
  return named.length === 1 ? named[0]![0] : undefined;
}

/**
 * The thread that the name of a screw tells. Source: SFF-8301 for 6-32 UNC in drives of 3.5 inch, SFF-8201 for M3 in
 * those of 2.5 inch.
 */
export function screwThread(line: string): 'M3' | '6-32' | undefined {
  const [metric, inch] = [/\bm3\b/i.test(line), /\b(?:6-32|#6-32|unc)\b/i.test(line)];
  return metric === inch ? undefined : metric ? 'M3' : '6-32';
}

/** Screws that hold one drive in a bay, and one fan in its place. Source: common practice: one a corner. */
export const SCREWS_PER_DRIVE = 4;
export const SCREWS_PER_FAN = 4;

/** Whether a thing is bought as a cable, and so listed among the build’s cables. */
export const isCable = (thing: BoxThing): boolean => thing === 'display cable' || thing === 'power cord';
