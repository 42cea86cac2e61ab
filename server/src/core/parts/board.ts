// The facts of a board.
import { boardMemory } from './board-memory';
import { slot } from './board-slots';
import { BOARD_CONNECTOR_WORDS } from '../trade/connector-words';
import { HEADER_KINDS, HEADER_WORDS } from '../trade/header-words';
import { SOCKET_WORDS } from '../trade/processor-names';
import { BUS_WORDS, PORT_WORDS } from '../trade/drive-words';
import { BOARD_SIZE_WORDS, OUTPUT_SOURCE_WORDS } from '../trade/board-words';
import { sheetBoardSize, sheetPins, sheetSataGeneration, sheetSocket } from '../trade/sheet-forms';
import { choice, count, flag, group, length, list, named, power, quantity, text, version } from './field';
import { common, draw, link, connectors, startsAtOnce } from './common';
import { portKinds } from './devices';

const inTable = { printed: 'The handbook’s specification table.' } as const;
const inFormFactor = { printed: 'The handbook’s specification table, under form factor.' } as const;
const inStorageTable = { printed: 'The handbook’s specification table, under storage.' } as const;
const inDrawing = { printed: 'The handbook’s drawing of the board.' } as const;
const inMeasures = { printed: 'The maker’s drawing of the board, with dimensions.' } as const;
const inDiagram = { printed: 'The handbook’s block diagram.' } as const;
const onUpdatePage = { printed: 'The handbook’s page on updating the firmware.' } as const;
const inSupportList = { printed: 'The maker’s processor support list.' } as const;
const onConnectors = { printed: 'The handbook’s page on internal connectors.' } as const;

const measured = { printed: 'Published measurements of the board; data sheets seldom have it.' } as const;

export const board = {
  ...common,
  size: text('Name of the outline.', 'ATX', {
    usual: ['ATX', 'microATX', 'Mini-ITX', 'E-ATX', 'SSI-EEB'],
    spellings: BOARD_SIZE_WORDS,
    closed: true,
    sheet: sheetBoardSize,
    ...inFormFactor,
  }),
  width: length('Edge along the rear, past the I/O side and the expansion openings.', '305 mm', inFormFactor),
  depth: length('From the rear edge to the front edge.', '244 mm', inFormFactor),
  holes: list(
    text('A hole of the pattern, by its letter.', 'C'),
    'Its mounting holes by letter, where its size does not tell them.',
    '[A, C, F, G, H, J, K, L, M]',
    inDrawing,
  ),
  underside: length('How far pins and parts stand out below the board.', '3 mm', {
    printed: 'Nobody: measure the board.',
  }),
  'shield-fitted': flag('Whether the I/O shield is fixed to the board.', {
    printed: 'The handbook’s page on the contents of the package.',
  }),
  socket: text('Processor socket.', 'LGA1851', {
    spellings: SOCKET_WORDS,
    sheet: sheetSocket,
    printed: 'The specification table.',
  }),
  'processor-power': power(
    'Most sustained processor power the board states for its converters.',
    '180 W',
    inSupportList,
  ),
  'cooler-mass-limit': quantity('mass', 'g', 'Heaviest cooler the board bears standing up.', '1200 g', {
    printed: 'The handbook’s steps for fitting a cooler.',
  }),
  'socket-to-memory': length('From the socket’s centre to the nearest memory slot.', '55 mm', inMeasures),
  'socket-to-first-slot': length('From the socket’s centre to the first expansion slot.', '85 mm', inMeasures),
  firmware: group(
    {
      arriving: version('The version it arrives with; belongs into a build.', '"1.08"', {
        refersTo: 'firmware version',
        printed: 'The box, or the label beside the 24-pin socket.',
      }),
      versions: list(
        version('One version.', '"1.08"'),
        'All versions, oldest first: the list is the order.',
        '["1.02", "1.08", "1.20"]',
        { printed: 'The maker’s list of firmware versions.' },
      ),
      'update-without-processor': flag(
        'Whether a stick and a button update it with no processor fitted.',
        onUpdatePage,
      ),
      'update-by-controller': flag(
        'Whether its management controller updates it over the network, with no processor fitted.',
        { printed: 'The handbook’s page on the management controller.' },
      ),
      'update-port': text('The USB port such an update reads, as printed on the rear.', 'FLASH', onUpdatePage),
      'update-file': text('The name the file on the stick must have.', 'B7FORGE.CAP', onUpdatePage),
      'update-cables': list(
        text('A power connector.', '24-pin', { spellings: BOARD_CONNECTOR_WORDS, closed: true }),
        'Power connectors that must be in for an update without processor.',
        '[24-pin, EPS 8-pin]',
        onUpdatePage,
      ),
      'boots-from': list(
        choice(['NVMe', 'SATA', 'USB', 'SAS'], 'A bus.', { spellings: BUS_WORDS }),
        'The buses its firmware starts from.',
        '[NVMe, SATA, USB]',
        { printed: 'The handbook’s page on boot settings.' },
      ),
    },
    'The board’s firmware.',
  ),
  processors: list(
    group(
      {
        family: text('A processor family.', 'Calder C7', inSupportList),
        model: text('One model, where the list names models.', 'C7 840', inSupportList),
        since: version('The first version that starts it.', '"1.20"', {
          refersTo: 'firmware version',
          ...inSupportList,
        }),
        until: version('The last version that starts it, where a later one withdraws it.', '"1.31"', {
          refersTo: 'firmware version',
          ...inSupportList,
        }),
      },
      'One line of the support list.',
    ),
    'The processors the board lists, each with its first version.',
    '[{ family: Calder C7, since: "1.20" }]',
    { printed: 'The maker’s processor support list.' },
  ),
  memory: boardMemory,
  slots: named(
    slot,
    'Expansion and M.2 slots by the name printed on the board.',
    '{ PCIE_1: { kind: PCIe, length: x16 } }',
    inDrawing,
  ),
  'chipset-link': link(
    'The link between chipset and processor, which everything behind the chipset shares.',
    'PCIe 4 x8',
    inDiagram,
  ),
  'chipset-at': text('The PCI port that the chipset hangs on, as lspci prints it.', '"00:02.1"', {
    printed: 'The output of lspci -t on a machine with this board.',
  }),
  ports: named(
    group(
      {
        generation: count('SATA generation.', '3', { least: 1, sheet: sheetSataGeneration, ...inStorageTable }),
        kind: choice(portKinds, 'What it is; without it, it is SATA.', {
          spellings: PORT_WORDS,
          ...inStorageTable,
        }),
        link: link('The fastest link of a port that is not SATA.', 'USB 3.2 Gen 2', inStorageTable),
        drives: count('How many drives a breakout cable joins to it.', '4', { least: 1, ...inStorageTable }),
      },
      'One storage port.',
    ),
    'Ports for drives by name; USB ports where a drive plugs into one.',
    '{ SATA_1: {}, SATA_2: {} }',
    inDrawing,
  ),
  'starts-at-once': startsAtOnce,
  'display-outputs': named(
    group(
      {
        link: text('The link it drives.', 'HDMI 2.0', inTable),
        compression: flag('Whether it can compress the picture on the link (DSC).', inTable),
        from: choice(OUTPUT_SOURCE_WORDS.words, 'What drives it.', { spellings: OUTPUT_SOURCE_WORDS, ...inTable }),
      },
      'One display output.',
    ),
    'Display outputs on the rear, fed by the processor’s graphics or by a management controller.',
    '{ HDMI: { link: HDMI 2.0 } }',
    inTable,
  ),
  headers: named(
    group(
      {
        kind: choice(HEADER_KINDS, 'What plugs in.', { spellings: HEADER_WORDS, ...onConnectors }),
        pins: count('Pins.', '4', { sheet: sheetPins, ...onConnectors }),
        voltage: quantity(
          'voltage',
          'V',
          'Voltage of a header for lights: 5 V with 3 pins, 12 V with 4.',
          '5 V',
          onConnectors,
        ),
        current: quantity('current', 'A', 'Current it supplies.', '1 A', {
          printed: 'The handbook’s page on fan connectors.',
        }),
      },
      'One header.',
    ),
    'Headers by the name printed on the board.',
    '{ CPU_FAN: { kind: fan, pins: 4, current: 1 A } }',
    onConnectors,
  ),
  'power-connectors': connectors('Power sockets on the board, by kind of connector.', {
    names: BOARD_CONNECTOR_WORDS,
    printed: 'The handbook’s page on power connectors.',
  }),
  draw: group(
    {
      ...draw('What the board itself draws.', measured).fields,
      standby: power('What it draws from the standby rail while the machine is off.', '5 W', measured),
    },
    'What the board itself draws.',
    '{ typical: 35 W, peak: 60 W }',
    measured,
  ),
} as const;
