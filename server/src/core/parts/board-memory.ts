// What a board says of memory: its slots, what they take, how fast it runs.
import { MEMORY_CLASS_WORDS, MEMORY_SHAPE_WORDS, MEMORY_TYPE_WORDS } from '../trade/sheet-words';
import { sheetEcc, sheetMemoryType, sheetRanks } from '../trade/sheet-forms';
import { choice, count, flag, group, list, named, quantity, text } from './field';

const inMemoryTable = { printed: 'The handbook’s specification table, under memory.' } as const;
const onMemoryPage = { printed: 'The handbook’s page on fitting memory.' } as const;
const onSpeeds = { printed: 'The specification table or the memory support list.' } as const;

export const memoryTypes = ['DDR3', 'DDR4', 'DDR5', 'LPDDR4X', 'LPDDR5', 'LPDDR5X'] as const;
export const memoryShapes = ['DIMM', 'SO-DIMM', 'CAMM2', 'LPCAMM2'] as const;
export const memoryClasses = ['UDIMM', 'CUDIMM', 'RDIMM', 'LRDIMM', 'MRDIMM'] as const;

export const boardMemory = group(
  {
    type: choice(memoryTypes, 'Memory generation.', {
      example: 'DDR5',
      spellings: MEMORY_TYPE_WORDS,
      sheet: sheetMemoryType,
      ...inMemoryTable,
    }),
    shape: choice(memoryShapes, 'Shape of the slots.', { spellings: MEMORY_SHAPE_WORDS, ...inMemoryTable }),
    module: choice(memoryClasses, 'Class of module the slots take; of several, the first.', {
      spellings: MEMORY_CLASS_WORDS,
      ...inMemoryTable,
    }),
    'module-classes': list(
      choice(memoryClasses, 'A class of module.', { spellings: MEMORY_CLASS_WORDS }),
      'All classes of module that the slots take, where there are several; never mixed in one machine.',
      '[RDIMM, LRDIMM]',
      inMemoryTable,
    ),
    soldered: quantity('data-size', 'GB', 'Memory soldered to the board, beside its slots.', '16 GB', inMemoryTable),
    ecc: flag('Whether error correction works on this board.', { sheet: sheetEcc, ...inMemoryTable }),
    slots: list(
      text('A slot.', 'A2'),
      'The memory slots, from the processor outwards.',
      '[A1, A2, B1, B2]',
      onMemoryPage,
    ),
    channels: named(
      list(text('A slot.', 'A1', { refersTo: 'memory slot' }), 'Slots of one channel.', '[A1, A2]'),
      'Which slots share a channel.',
      '{ A: [A1, A2], B: [B1, B2] }',
      onMemoryPage,
    ),
    locators: named(
      text('What the firmware calls it.', 'P0 CHANNEL A / DIMM 1'),
      'What the firmware calls each slot, where that is not its name.',
      '{ A2: P0 CHANNEL A / DIMM 1 }',
      { refersTo: 'memory slot', printed: 'dmidecode, type 17: Bank Locator and Locator.' },
    ),
    'fill-first': list(
      text('A slot.', 'A2', { refersTo: 'memory slot' }),
      'The slots to fill first.',
      '[A2, B2]',
      onMemoryPage,
    ),
    'largest-module': quantity('data-size', 'GB', 'Largest module a slot takes.', '48 GB', inMemoryTable),
    most: quantity('data-size', 'GB', 'Most memory in all.', '192 GB', inMemoryTable),
    speeds: list(
      group(
        {
          modules: count('How many modules are fitted.', '2', { least: 1, ...onSpeeds }),
          ranks: count('Ranks on each module.', '1', { least: 1, sheet: sheetRanks, ...onSpeeds }),
          'up-to': quantity('transfer-rate', 'MT/s', 'Fastest speed listed.', '7200 MT/s', onSpeeds),
        },
        'One line of the speed table.',
      ),
      'The speed reached by how many modules of how many ranks.',
      '[{ modules: 2, ranks: 1, up-to: 7200 MT/s }]',
      onSpeeds,
    ),
  },
  'What the board says of memory.',
);
