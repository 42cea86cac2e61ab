// The slots of a board: what goes into each, its lanes, and what filling it takes from others.
import { parseSplit } from '../trade/slot-words';
import { parseM2Size } from '../trade/m2';
import { LANES_FROM_WORDS, M2_KEY_WORDS, SLOT_KIND_WORDS, SLOT_LENGTH_WORDS } from '../trade/board-words';
import { sheetGeneration, sheetLanes } from '../trade/sheet-forms';
import { choice, count, flag, form, group, length, list, text } from './field';
import { carried } from './common';

const inTable = { printed: 'The handbook’s specification table.' } as const;
const inDrawing = { printed: 'The handbook’s drawing of the board.' } as const;
const inDiagram = { printed: 'The handbook’s block diagram.' } as const;
const onM2Page = { printed: 'The handbook’s page on M.2 sockets.' } as const;
const onSharing = { printed: 'The footnotes of the specification table.' } as const;
const inSupportList = { printed: 'The maker’s processor support list.' } as const;

export const slotKinds = ['PCIe', 'M.2'] as const;
export const slotLengths = ['x1', 'x4', 'x8', 'x16'] as const;
export const m2Keys = ['A', 'B', 'E', 'M', 'B+M', 'A+E'] as const;
export const slot = group(
  {
    kind: choice(slotKinds, 'What goes into the slot.', { spellings: SLOT_KIND_WORDS, ...inDrawing }),
    length: choice(slotLengths, 'Mechanical length of a PCIe slot.', {
      example: 'x16',
      spellings: SLOT_LENGTH_WORDS,
      ...inTable,
    }),
    'open-ended': flag('Whether a longer card edge may stand out at the back.', inDrawing),
    lanes: count('Electrical lanes of a PCIe slot.', '16', { sheet: sheetLanes, ...inTable }),
    generation: count('PCIe generation it runs at most.', '5', { least: 1, sheet: sheetGeneration, ...inTable }),
    splits: list(
      form('a split of lanes', parseSplit, 'Widths of the links, together.', '4x4', { usual: ['4x4', '8+8', '8+4+4'] }),
      'How the firmware can split the slot’s lanes, for carriers of several drives; [] for not at all.',
      '[4x4, 8+8]',
      { printed: 'The handbook’s page on firmware settings, under bifurcation.' },
    ),
    'by-processor': list(
      group(
        {
          family: text('The processor family.', 'Calder C6', inSupportList),
          lanes: count('Lanes that the slot has with it; 0 where it is switched off.', '8', inTable),
          generation: count('PCIe generation that it runs at most with it.', '4', { least: 1, ...inTable }),
        },
        'The slot with one processor family.',
      ),
      'What the slot has with processor families that give it something else.',
      '[{ family: Calder C6, lanes: 8, generation: 4 }]',
      onSharing,
    ),
    from: choice(['processor', 'chipset'], 'Where its lanes come from.', { spellings: LANES_FROM_WORDS, ...inDiagram }),
    at: text('The PCI port that it hangs on, as lspci prints it.', '"00:01.2"', {
      printed: 'The output of lspci on a machine with this slot filled.',
    }),
    position: count('Which expansion opening of the case it lines up with, from the processor down.', '1', {
      least: 1,
      ...inDrawing,
    }),
    key: choice(m2Keys, 'Notch of an M.2 socket.', { example: 'M', spellings: M2_KEY_WORDS, ...onM2Page }),
    sizes: list(
      form('an M.2 size', parseM2Size, 'Width and length of a module in mm, written together.', '2280'),
      'Module sizes it has posts for.',
      '[2260, 2280]',
      onM2Page,
    ),
    carries: list(
      carried('One bus with its generation and lanes.', 'PCIe 4 x4'),
      'The buses an M.2 socket really carries: its shape says nothing of that.',
      '[PCIe 4 x4, SATA]',
      onM2Page,
    ),
    'component-room': length(
      'Room above the module’s board, under the board’s heat sink or what lies over it.',
      '1.5 mm',
      onM2Page,
    ),
    'room-below': length('Room between the module’s board and the board, for components on its back.', '1.5 mm'),
    cover: flag('Whether the board brings a heat sink of its own for an M.2 socket.', onM2Page),
    fixing: choice(['screw and post', 'latch', 'none'], 'What the board brings to hold the module down.', {
      printed: 'The handbook’s steps for fitting an M.2 module.',
    }),
    under: list(
      text('`cooler`, or a slot.', 'PCIE_1', { refersTo: 'slot', besides: ['cooler'] }),
      'What lies over this slot once it is fitted: `cooler`, or the card in a slot; [] for nothing.',
      '[PCIE_1]',
      inDrawing,
    ),
    'takes-from': list(
      text('A port or slot.', 'SATA_5', { refersTo: ['port', 'slot'] }),
      'Ports and slots that are switched off while this one is filled; [] for none.',
      '[SATA_5, SATA_6]',
      onSharing,
    ),
    halves: list(
      text('A slot.', 'PCIE_1', { refersTo: 'slot' }),
      'Slots that lose half their lanes while this one is filled; [] for none.',
      '[PCIE_1]',
      onSharing,
    ),
  },
  'One slot, under the name printed on the board.',
);
