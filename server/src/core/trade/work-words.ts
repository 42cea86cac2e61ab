// How people write what a build says of its place, its bench and its hand-over. Source: common practice, unless stated.
import { everydayWords, vocabulary, type Vocabulary } from './vocabulary';

export const FLOOR_WORDS: Vocabulary<'carpet' | 'vinyl' | 'wood' | 'concrete' | 'dissipative mat'> = everydayWords(
  'a floor',
  {
    carpet: ['carpeted', 'carpet tiles', 'carpet floor', 'rug', 'Teppich', 'Teppichboden'],
    vinyl: ['PVC', 'vinyl floor', 'vinyl flooring', 'vinyl tiles', 'PVC floor', 'LVT', 'PVC-Boden'],
    wood: ['wooden', 'wooden floor', 'wood floor', 'parquet', 'floorboards', 'timber', 'Holz', 'Parkett'],
    concrete: ['concrete floor', 'cement', 'screed', 'Beton', 'Estrich'],
    'dissipative mat': ['dissipative floor', 'ESD floor', 'ESD mat', 'dissipative floor mat', 'ESD flooring'],
  },
);

export const SURFACE_WORDS: Vocabulary<
  'wood' | 'cardboard' | 'dissipative mat' | 'bare metal' | 'antistatic bag' | 'carpet' | 'glass' | 'plastic'
> = everydayWords('a surface', {
  wood: ['wooden', 'wooden table', 'wooden bench', 'wood table', 'plywood', 'bare wood', 'Holz', 'Holztisch'],
  cardboard: ['cardboard box', 'carton', 'the board’s box', 'board box', 'motherboard box', 'Karton', 'Pappe'],
  'dissipative mat': ['ESD mat', 'antistatic mat', 'ESD bench mat', 'static dissipative mat', 'ESD-Matte'],
  'bare metal': ['metal', 'metal table', 'steel', 'steel bench', 'stainless steel', 'Metall'],
  'antistatic bag': ['ESD bag', 'shielding bag', 'static shielding bag', 'antistatic pouch', 'its antistatic bag'],
  carpet: ['rug', 'carpeted floor', 'Teppich'],
  glass: ['glass table', 'glass desk', 'Glas'],
  plastic: ['plastic table', 'plastic desk', 'Kunststoff'],
});

export const DUST_WORDS: Vocabulary<'none' | 'soft brush' | 'canned air' | 'vacuum cleaner'> = everydayWords(
  'a way to take dust off',
  {
    none: ['no', 'not at all'],
    'soft brush': ['brush', 'antistatic brush', 'soft antistatic brush'],
    'canned air': ['air duster', 'can of air', 'canned air duster', 'compressed air can', 'can of compressed air'],
    'vacuum cleaner': ['vacuum', 'hoover', 'household vacuum cleaner'],
  },
);

export const HELD_WORDS: Vocabulary<'edges' | 'contacts' | 'heat sink'> = everydayWords('a way to hold a board', {
  edges: ['edge', 'by the edges', 'by edges', 'by its edges', 'its edges'],
  contacts: ['by the contacts', 'by contacts', 'gold contacts', 'edge contacts'],
  'heat sink': ['heatsink', 'by the heat sink', 'by heat sink', 'by its heat sink'],
});

export const STRAP_WORDS: Vocabulary<'corded' | 'cordless'> = everydayWords('a kind of strap', {
  corded: ['with cord', 'with a cord', 'wired'],
  cordless: ['without cord', 'without a cord', 'wireless', 'no cord'],
});

export const CLIP_WORDS: Vocabulary<
  'bare chassis' | 'painted chassis' | 'supply case' | 'earth bonding plug' | 'nothing'
> = everydayWords('what a clip holds on to', {
  'bare chassis': ['bare metal', 'bare metal of the chassis', 'unpainted chassis', 'unpainted metal', 'bare case'],
  'painted chassis': ['painted metal', 'painted case', 'paint', 'painted case metal'],
  'supply case': ['supply', 'supply housing', 'power supply', 'power supply case', 'PSU', 'PSU case', 'PSU housing'],
  'earth bonding plug': ['earthing plug', 'earth plug', 'ESD plug', 'grounding plug', 'bonding plug', 'ESD earth plug'],
  nothing: ['none', 'not clipped'],
});

export const EQUALISE_WORDS: Vocabulary<'strap' | 'touching bare chassis' | 'nothing'> = everydayWords(
  'a way to one potential',
  {
    strap: ['wrist strap', 'ESD strap', 'ESD wrist strap', 'antistatic strap', 'antistatic wrist strap'],
    'touching bare chassis': [
      ...['touching bare metal', 'touching the bare chassis', 'touching bare metal of the chassis'],
      ...['touching unpainted metal', 'touch bare chassis', 'touch bare metal'],
    ],
    nothing: ['none', 'not at all'],
  },
);

export const CORD_WORDS: Vocabulary<'unplugged' | 'plugged, switch off' | 'plugged, switch on'> = everydayWords(
  'a state of the power cord',
  {
    unplugged: ['out', 'pulled', 'pulled out', 'disconnected', 'not plugged in'],
    'plugged, switch off': ['plugged in, switch off', 'plugged in, switched off', 'plugged, switched off'],
    'plugged, switch on': ['plugged in, switch on', 'plugged in, switched on', 'plugged, switched on'],
  },
);

export const EARTH_CONTACT_WORDS: Vocabulary<'connected' | 'lifted' | 'none'> = everydayWords('an earth contact', {
  connected: ['yes', 'earthed', 'grounded'],
  lifted: ['defeated', 'cut', 'taped over', 'disconnected'],
  none: ['no', 'missing', 'without'],
});

export const RULE_WORDS: Vocabulary<'80 percent continuous' | 'full rating' | 'electrician says'> = everydayWords(
  'a rule for continuous load',
  {
    '80 percent continuous': ['80 %', '80 percent', '80 % continuous', '80 % rule', '80 percent rule'],
    'full rating': ['100 %', '100 percent', 'full', 'full rated current'],
    'electrician says': ['electrician', 'by electrician', 'as the electrician says'],
  },
);

/** Source: IEC 62040-3 for the classes VFD, VI and VFI; common practice for the rest. */
export const BACKUP_WORDS: Vocabulary<'standby' | 'line interactive' | 'online'> = vocabulary('a kind of UPS', {
  standby: ['offline', 'off-line', 'passive standby', 'VFD'],
  'line interactive': ['VI', 'line interactive (VI)'],
  online: ['double conversion', 'online double conversion', 'double conversion online', 'on-line', 'VFI'],
});

export const WAVE_WORDS: Vocabulary<'sine' | 'stepped'> = vocabulary('a shape of voltage', {
  sine: ['sine wave', 'pure sine', 'pure sine wave', 'true sine wave', 'sinusoidal', 'sinewave'],
  stepped: [
    ...['stepped sine', 'stepped sine wave', 'stepped wave', 'stepped approximation to a sine wave'],
    ...['stepped approximation', 'step wave', 'quasi-sine', 'quasi-sine wave', 'step-approximated sine wave'],
    ...['simulated sine', 'simulated sine wave', 'modified sine', 'modified sine wave', 'approximated sine wave'],
  ],
});

export const ROUTE_WORDS: Vocabulary<
  'stick without processor' | 'older processor' | 'service' | 'with this processor' | 'management controller'
> = everydayWords('a way of a firmware update', {
  'stick without processor': ['stick without CPU', 'USB stick without processor', 'flashback', 'BIOS flashback'],
  'older processor': ['older CPU', 'borrowed processor', 'borrowed CPU', 'donor processor', 'donor CPU'],
  service: ['dealer', 'seller', 'by the seller', 'service centre', 'service center'],
  'with this processor': ['with this CPU', 'with the processor', 'with the new processor'],
  'management controller': ['BMC', 'IPMI', 'Redfish', 'baseboard management controller'],
});

export const THROTTLING_WORDS: Vocabulary<'none' | 'allowed'> = everydayWords('a word on throttling', {
  none: ['no', 'never', 'not allowed'],
  allowed: ['yes'],
});

/** Source: ATA/ATAPI Command Set for `extended`, as smartctl prints it; common practice for the rest. */
export const DRIVE_TEST_WORDS: Vocabulary<'long self-test' | 'short self-test' | 'read through'> = everydayWords(
  'a test of a drive',
  {
    'long self-test': [
      ...['long', 'long test', 'extended', 'extended test', 'extended self-test', 'SMART long', 'SMART long test'],
      ...['SMART long self-test', 'SMART extended test', 'SMART extended self-test', 'extended offline'],
    ],
    'short self-test': ['short', 'short test', 'SMART short', 'SMART short test', 'SMART short self-test'],
    'read through': ['full read', 'read scan', 'surface scan', 'read all', 'full surface read'],
  },
);

export const LOGGED_WORDS: Vocabulary<'logged' | 'not logged'> = everydayWords('a word on the room’s temperature', {
  logged: ['yes', 'recorded', 'noted', 'written down'],
  'not logged': ['no', 'not recorded', 'not noted'],
});

export const HANDED_WORDS: Vocabulary<
  'serials' | 'firmware' | 'settings' | 'slots' | 'temperatures' | 'noise' | 'wall power' | 'logs' | 'spares'
> = everydayWords('a thing that is handed over', {
  serials: ['serial', 'serial number', 'serial numbers', 'parts and serials', 'list of serials'],
  firmware: ['firmware version', 'firmware versions', 'BIOS', 'BIOS version', 'UEFI version'],
  settings: ['firmware settings', 'BIOS settings', 'UEFI settings'],
  slots: ['slots used', 'slot assignment', 'used slots'],
  temperatures: ['temperature', 'temps', 'measured temperatures'],
  noise: ['noise level', 'sound level'],
  'wall power': ['power from the wall', 'power at the wall', 'wall watts', 'power draw'],
  logs: ['log', 'test logs', 'log files'],
  spares: ['spare parts', 'spare screws', 'leftover parts'],
});

export const TRANSPORT_WORDS: Vocabulary<'none' | 'by hand' | 'by car' | 'by carrier'> = everydayWords('a transport', {
  none: ['no', 'not moved', 'stays'],
  'by hand': ['hand', 'carried', 'carried by hand'],
  'by car': ['car', 'van', 'by van'],
  'by carrier': [
    'carrier',
    'courier',
    'by courier',
    'parcel',
    'parcel service',
    'by post',
    'post',
    'shipped',
    'freight',
  ],
});
