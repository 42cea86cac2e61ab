// The facts of a drive, a graphics card, another card, a display and a stick.
import { parseM2Size } from '../trade/m2';
import { DISPLAY_LINKS, parseMode } from '../trade/display';
import { choice, count, flag, form, group, length, list, named, power, quantity, text } from './field';
import { common, draw, link, peaks, plugs } from './common';
import { m2Keys, slotLengths } from './board';

const displayLinks = DISPLAY_LINKS.map((link) => link.name);

export const driveBuses = ['NVMe', 'SATA', 'SAS', 'USB'] as const;
export const driveShapes = ['M.2', '2.5 in', '3.5 in', 'card'] as const;

export const drive = {
  ...common,
  bus: choice(driveBuses, 'The bus it speaks. An M.2 module may speak NVMe or SATA: its shape does not tell.'),
  link: link('The fastest link it can run.', 'PCIe 4 x4'),
  shape: choice(driveShapes, 'Its shape.'),
  size: form('an M.2 size', parseM2Size, 'Width and length of an M.2 module, written together.', '2280'),
  key: choice(m2Keys, 'Notch or notches of an M.2 module.', { example: 'M' }),
  thickness: length('Thickness of a 2.5 in drive, or height of the components and heat sink above an M.2 board.', '7 mm'),
  capacity: quantity('data-size', 'TB', 'Capacity as its maker counts it.', '2 TB'),
  read: quantity('data-rate', 'GB/s', 'Sequential reading rate stated.', '7 GB/s'),
  write: quantity('data-rate', 'GB/s', 'Sequential writing rate stated.', '6.5 GB/s'),
  endurance: quantity('data-size', 'TB', 'Data that may be written over its warranty.', '1200 TB', { printed: 'The data sheet, as TBW or terabytes written.' }),
  'needs-heat-sink': flag('Whether its maker asks for a heat sink.'),
  hottest: quantity('temperature', '°C', 'Highest operating temperature stated.', '70 °C'),
  highest: quantity('length', 'm', 'Highest operating altitude stated.', '3000 m'),
  'rise': quantity('temperature-difference', 'K', 'How much warmer than the air around it the drive gets at work.', '18 K'),
  thread: choice(['M3', '6-32'], 'Thread of its fixing holes.'),
  'screw-depth': length('Deepest that a screw may go.', '3 mm'),
  draw: group({
    typical: power('Power drawn in ordinary use.', '5 W'),
    running: power('The most it draws while it reads or writes, once it has started.', '9 W', { printed: 'The data sheet, under operating or seek power.' }),
    peak: power('The most it draws at all: for a hard disk, while it spins up.', '24 W'),
  }, 'What one drive draws.', '{ typical: 5 W, running: 9 W, peak: 24 W }'),
  level: quantity('sound-level', 'dBA', 'Sound pressure level at work; 0 dBA for a drive with no moving part.', '28 dBA'),
  'level-at': quantity('length', 'm', 'The distance at which the level was measured.', '1 m'),
} as const;

export const brackets = ['full height', 'low profile'] as const;

export const card = {
  ...common,
  edge: choice([...slotLengths, 'M.2'], 'Length of the card’s edge, or M.2 for a card that is a module.', { example: 'x16' }),
  size: form('an M.2 size', parseM2Size, 'Width and length of a card that is an M.2 module, written together.', '2230'),
  key: choice(m2Keys, 'Notch or notches of a card that is an M.2 module.', { example: 'A+E' }),
  'drive-ports': count('SATA ports it brings for drives.', '4'),
  link: link('The fastest link it can run.', 'PCIe 4 x8'),
  length: length('Length from the bracket to the far end, plugs not counted.', '245 mm'),
  height: length('Height above the slot’s edge of the board.', '120 mm'),
  openings: count('Bracket openings it takes.', '2', { least: 1 }),
  bracket: choice(brackets, 'Height of its bracket.'),
  power: group({
    sustained: power('Power it draws for as long as it works.', '200 W'),
    peaks,
  }, 'What it draws.', '{ sustained: 200 W }'),
  plugs: plugs('Power plugs it wants, by kind.'),
  'power-level': power('The power level it wants signalled by a 16-pin lead.', '450 W'),
  'plug-room': length('Room needed past the card’s top edge for its power plug and the lead’s bend.', '35 mm'),
  outputs: named(group({ link: text('The link it drives.', 'DisplayPort HBR3', { usual: displayLinks }) }, 'One output.'), 'Display outputs.', '{ DP_1: { link: DisplayPort HBR3 } }'),
  compression: flag('Whether it can compress the picture on the link (DSC).'),
  level: quantity('sound-level', 'dBA', 'Sound pressure level under load.', '34 dBA'),
  'level-at': quantity('length', 'm', 'The distance at which the level was measured.', '1 m'),
  'rate-needed': quantity('data-rate', 'GB/s', 'Data rate it needs to do its work.', '2.5 GB/s'),
} as const;

export const graphics = card;

export const display = {
  ...common,
  modes: list(form('a mode', parseMode, 'A mode it shows.', '3840x2160 @ 60 Hz'), 'Modes it shows.', '[3840x2160 @ 60 Hz]'),
  inputs: named(group({ link: text('The link it takes.', 'DisplayPort HBR3', { usual: displayLinks }) }, 'One input.'), 'Inputs by name.', '{ DP: { link: DisplayPort HBR3 } }'),
  compression: flag('Whether it takes a compressed picture (DSC).'),
  draw: draw('What it draws.'),
} as const;

export const stick = {
  ...common,
  filesystem: choice(['FAT32', 'exFAT', 'NTFS', 'ext4'], 'File system it is formatted with.'),
  capacity: quantity('data-size', 'GB', 'Capacity.', '16 GB'),
} as const;
