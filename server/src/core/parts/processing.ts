// The facts of a processor, a cooler, a paste and memory.
import { BASE_METAL_WORDS, MEMORY_CLASS_WORDS, MEMORY_SHAPE_WORDS, MEMORY_TYPE_WORDS } from '../trade/sheet-words';
import {
  sheetChannels,
  sheetEcc,
  sheetGeneration,
  sheetMemoryType,
  sheetModuleCapacity,
  sheetModules,
  sheetPins,
  sheetRanks,
  sheetSocket,
} from '../trade/sheet-forms';
import { COOLER_PASTE_WORDS, ELECTRICALLY_WORDS, PASTE_CLASS_WORDS, TEST_METHOD_WORDS } from '../trade/paste-words';
import { layerMm } from './ranges';
import { SOCKET_WORDS } from '../trade/processor-names';
import { choice, count, flag, group, length, list, power, quantity, text } from './field';
import {
  common,
  draw,
  fanFields,
  inAcoustics,
  inDimensions,
  inPower,
  inSoundNote,
  link,
  radiatorFields,
} from './common';
import { memoryClasses, memoryShapes, memoryTypes } from './board-memory';

const inProcessorPower = { printed: 'The data sheet, under processor power.' } as const;
const inLidDrawing = { printed: 'The maker’s mechanical drawing.' } as const;
const inMemory = { printed: 'The data sheet, under memory.' } as const;
const inModuleType = { printed: 'The data sheet, under module type.' } as const;
const onModule = { printed: 'The label on the module.' } as const;

export const processor = {
  ...common,
  family: text('The family that boards list.', 'Calder C7', { printed: 'The box, or the maker’s data sheet.' }),
  socket: text('The socket it fits.', 'LGA1851', {
    spellings: SOCKET_WORDS,
    sheet: sheetSocket,
    printed: 'The box, or the maker’s data sheet.',
  }),
  power: group(
    {
      sustained: power('Power it may draw for as long as it works.', '125 W', inProcessorPower),
      peak: power('Power it may draw for seconds.', '180 W', inProcessorPower),
      'peak-lasts': quantity('time', 's', 'How long the peak may last.', '28 s', {
        printed: 'The data sheet, under power limits.',
      }),
    },
    'What it draws.',
    '{ sustained: 125 W, peak: 180 W }',
    inProcessorPower,
  ),
  hottest: quantity('temperature', '°C', 'Temperature at which it slows itself down.', '95 °C', {
    printed: 'The data sheet, under thermal limits.',
  }),
  'die-to-lid': quantity(
    'thermal-resistance',
    'K/W',
    'Thermal resistance from the hottest point to the lid.',
    '0.12 K/W',
    { printed: 'The maker’s thermal design guide.' },
  ),
  lid: group(
    {
      width: length('Width of the lid’s flat face.', '30 mm', inLidDrawing),
      depth: length('Depth of the lid’s flat face.', '30 mm', inLidDrawing),
      area: quantity('area', 'mm²', 'Area of the lid’s flat face.', '900 mm²', inLidDrawing),
    },
    'The lid that the cooler touches.',
    '{ area: 900 mm² }',
    inLidDrawing,
  ),
  graphics: flag('Whether it drives a display itself.', { printed: 'The data sheet, under graphics.' }),
  memory: group(
    {
      types: list(
        choice(memoryTypes, 'A memory generation.', {
          example: 'DDR5',
          spellings: MEMORY_TYPE_WORDS,
          sheet: sheetMemoryType,
        }),
        'Memory it takes.',
        '[DDR5]',
        inMemory,
      ),
      fastest: quantity('transfer-rate', 'MT/s', 'Fastest memory speed stated for it.', '5600 MT/s', inMemory),
      channels: count('Memory channels of 64 bits.', '2', { least: 1, sheet: sheetChannels, ...inMemory }),
      most: quantity('data-size', 'GB', 'Most memory it addresses.', '192 GB', inMemory),
      ecc: flag('Whether it corrects memory errors.', { sheet: sheetEcc, ...inMemory }),
    },
    'The memory side.',
    '{ types: [DDR5], channels: 2 }',
    inMemory,
  ),
  lanes: count('PCIe lanes it brings for slots and drives, the chipset’s link not counted.', '20', {
    printed: 'The data sheet, under PCIe lanes.',
  }),
  generation: count('PCIe generation of those lanes.', '5', {
    least: 1,
    sheet: sheetGeneration,
    printed: 'The data sheet, under PCIe lanes.',
  }),
  'chipset-link': link('The link it offers to the chipset.', 'PCIe 4 x8', {
    printed: 'The data sheet, under the chipset’s link.',
  }),
} as const;

export const coolerPastes = ['pad applied', 'paste applied', 'applied', 'tube in the box', 'included', 'none'] as const;
export const baseMetals = [
  'copper',
  'nickel-plated copper',
  'aluminium',
  'anodised aluminium',
  'brass',
  'heat pipes in aluminium',
  'heat pipes in copper',
] as const;
export const testMethods = ['ASTM D5470', 'ISO 22007-2', 'laser flash', 'other'] as const;

export const cooler = {
  ...common,
  sockets: list(text('A socket.', 'LGA1851'), 'Sockets it has a mounting kit for.', '[LGA1851, AM5]', {
    printed: 'The box, or the list of sockets in the data sheet.',
  }),
  height: length('Height above the board’s processor, fans on.', '158 mm', inDimensions),
  'rated-power': power('Power it is rated to carry off.', '200 W', { printed: 'The data sheet, under cooling power.' }),
  'thermal-resistance': quantity(
    'thermal-resistance',
    'K/W',
    'Thermal resistance from its base to the air that enters it, fans at full speed.',
    '0.18 K/W',
    { printed: 'The data sheet, under thermal resistance.' },
  ),
  base: choice(baseMetals, 'Metal of the face that touches the processor; bare heat pipes with what lies between.', {
    spellings: BASE_METAL_WORDS,
    printed: 'The data sheet, under materials.',
  }),
  paste: choice(coolerPastes, 'The thermal paste it brings.', {
    example: 'tube in the box',
    spellings: COOLER_PASTE_WORDS,
    printed: 'The mounting instructions, under contents.',
  }),
  film: flag('Whether a protective film covers its base.', {
    printed: 'The mounting instructions, or a tag on the film.',
  }),
  'memory-room': length('Tallest memory module that stands under it.', '42 mm', {
    room: true,
    printed: 'The mounting instructions, under clearance.',
  }),
  'overhang-memory': length('From the socket’s centre to its edge on the memory side.', '48 mm', {
    printed: 'The data sheet’s drawing with dimensions.',
  }),
  'overhang-slot': length('From the socket’s centre to its edge on the slot side.', '60 mm', {
    printed: 'The data sheet’s drawing with dimensions.',
  }),
  'mass-limit-standing': quantity(
    'mass',
    'g',
    'Mass that its maker lets hang on a standing board; above it, it is to be taken off for transport.',
    '1200 g',
    { printed: 'The mounting instructions, under transport.' },
  ),
  'back-plate': flag('Whether its mount has a plate behind the board.', { printed: 'The mounting instructions.' }),
  fans: group(
    { count: count('How many fans it brings.', '2', { printed: 'The data sheet, under fans.' }), ...fanFields },
    'The fans it brings.',
    '{ count: 1, size: 140 mm }',
  ),
  pump: group(
    {
      current: quantity('current', 'A', 'Current of the pump.', '0.4 A', { printed: 'The data sheet, under pump.' }),
      pins: count('Pins of its connector.', '3', { sheet: sheetPins, printed: 'The data sheet, under pump.' }),
      level: quantity('sound-level', 'dBA', 'Sound pressure level of the pump at full speed.', '22 dBA', inAcoustics),
      'level-at': quantity('length', 'm', 'The distance at which the level was measured.', '1 m', inSoundNote),
    },
    'The pump of a liquid cooler.',
    '{ current: 0.4 A }',
  ),
  radiator: group(radiatorFields, 'The radiator of a liquid cooler.', '{ class: "240", length: 275 mm }'),
  'tube-length': length('Length of a liquid cooler’s tubes.', '400 mm', { printed: 'The data sheet, under tubes.' }),
  draw: draw('What its fans, pump and lights draw.', inPower),
} as const;

export const pasteClasses = ['silicone', 'ceramic', 'carbon', 'metal particles', 'liquid metal', 'pad'] as const;

export const paste = {
  ...common,
  class: choice(pasteClasses, 'What fills it.', {
    example: 'ceramic',
    spellings: PASTE_CLASS_WORDS,
    printed: 'The safety data sheet, under composition.',
  }),
  electrically: choice(['insulating', 'capacitive', 'conductive'], 'What it does electrically where it spills.', {
    spellings: ELECTRICALLY_WORDS,
    printed: 'The maker’s data sheet, under electrical properties.',
  }),
  gallium: flag('Whether it is, or holds, a gallium alloy.', {
    example: 'false',
    printed: 'The safety data sheet, under composition.',
  }),
  conductivity: quantity('conductivity', 'W/m·K', 'Thermal conductivity stated.', '4 W/m·K', {
    printed: 'The data sheet, under thermal conductivity.',
  }),
  'tested-by': choice(testMethods, 'How the conductivity was measured: ASTM D5470 presses a film.', {
    spellings: TEST_METHOD_WORDS,
    printed: 'The data sheet, in brackets behind the thermal conductivity.',
  }),
  'bond-line': quantity('length', 'µm', 'Thickness of the layer after pressing.', '40 µm', {
    printed: 'The data sheet, under bond-line thickness.',
    range: layerMm,
  }),
  volume: quantity('volume', 'mm³', 'How much a tube holds.', '1 ml', { printed: 'The print on the tube or its box.' }),
} as const;

export const memory = {
  ...common,
  price: quantity(
    'money',
    'EUR',
    'Price of one module, with its currency; of a kit, its price shared among its modules.',
    '95 EUR',
    { printed: 'The shop’s offer or the invoice.' },
  ),
  type: choice(memoryTypes, 'Memory generation.', {
    example: 'DDR5',
    spellings: MEMORY_TYPE_WORDS,
    sheet: sheetMemoryType,
    ...onModule,
  }),
  shape: choice(memoryShapes, 'Shape of the module.', { spellings: MEMORY_SHAPE_WORDS, ...inModuleType }),
  class: choice(memoryClasses, 'Class of the module.', { spellings: MEMORY_CLASS_WORDS, ...inModuleType }),
  ecc: flag('Whether the module carries the bits for error correction.', {
    example: 'false',
    sheet: sheetEcc,
    printed: 'The data sheet, under error correction.',
  }),
  capacity: quantity('data-size', 'GB', 'Capacity of one module.', '32 GB', {
    sheet: sheetModuleCapacity,
    ...onModule,
  }),
  'modules-in-kit': count('Modules sold and tested together.', '2', {
    least: 1,
    sheet: sheetModules,
    printed: 'The label on the box.',
  }),
  ranks: count('Ranks on one module.', '1', {
    least: 1,
    sheet: sheetRanks,
    printed: 'The label on the module, as 1R or 2R.',
  }),
  'standard-speed': quantity('transfer-rate', 'MT/s', 'Speed it runs at by itself, without a profile.', '4800 MT/s', {
    printed: 'The data sheet, under SPD speed.',
  }),
  'rated-speed': quantity(
    'transfer-rate',
    'MT/s',
    'Fastest speed its maker rates it for, by profile if need be.',
    '6000 MT/s',
    onModule,
  ),
  height: length('Height of the module above its slot’s floor.', '35 mm', inDimensions),
  voltage: quantity('voltage', 'V', 'Voltage at the rated speed.', '1.35 V', onModule),
  draw: draw('What one module draws.', inPower),
} as const;
