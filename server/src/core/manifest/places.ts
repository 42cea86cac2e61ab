// What a build says of each part beside the part's own facts: where it goes, how many, how it is set.
import { BAY_WORDS } from '../trade/drive-words';
import { parseRiser } from '../trade/slot-words';
import { CABLE_WORDS } from '../trade/connector-words';
import { mainsV } from '../parts/ranges';
import { count, flag, list, quantity, text, version, form, choice, type Table } from '../parts/field';
import type { Kind } from '../parts/kinds';
import { isPartName, nameOfPath } from '../parts/part-name';

const partName = form(
  'the name of a part file',
  (name) => (isPartName(name) ? name : undefined),
  'The part file, by its path under the parts folder without the ending.',
  'norrvik/b7-forge',
  { refersTo: 'part file', meant: (path) => [nameOfPath(path)].filter((name) => name !== path && isPartName(name)) },
);
const use = { use: partName };
const many = {
  ...use,
  count: count('How many of them.', '2', { least: 1 }),
  name: text('A name of your own, by which promises speak of it.', 'scratch'),
};

const riser = form(
  'a PCIe generation',
  parseRiser,
  'Generation of a riser between slot and card, which then stands elsewhere.',
  'PCIe 4',
  { usual: ['PCIe 3', 'PCIe 4', 'PCIe 5'] },
);

/** One role in `parts:`: the kind of part it holds, whether there may be several, and the keys that place it. */
export interface Role {
  readonly kind: Kind;
  readonly several: boolean;
  readonly fields: Table;
  readonly what: string;
}

export const roles = {
  board: {
    kind: 'board',
    several: false,
    what: 'The board.',
    fields: {
      ...use,
      firmware: version('The firmware version it arrives with.', '"1.08"', {
        refersTo: 'firmware version',
        printed: 'A sticker on the board or its box; the seller can look.',
      }),
    },
  },
  processor: {
    kind: 'processor',
    several: false,
    what: 'The processor.',
    fields: {
      ...use,
      'power-limit': quantity('power', 'W', 'Sustained power it is set to, where that is not its own.', '95 W'),
    },
  },
  cooler: {
    kind: 'cooler',
    several: false,
    what: 'The processor cooler.',
    fields: {
      ...use,
      mount: text('Where a liquid cooler’s radiator goes: a radiator place of the case.', 'top', {
        refersTo: 'radiator place',
      }),
      tubes: choice(['up', 'down', 'side'], 'Which way the radiator’s tubes leave.', { example: 'down' }),
      flow: choice(
        ['in', 'out'],
        'Which way a liquid cooler’s fans blow through its radiator: air into the case, or out of it.',
        { example: 'out' },
      ),
      header: text('The header its fans plug into.', 'CPU_FAN', { refersTo: 'header' }),
      'light-header': text('The header its lights plug into.', 'RGB_1', { refersTo: 'header' }),
      'pump-header': text('The header its pump plugs into.', 'PUMP', { refersTo: 'header' }),
      'applied-compound': choice(['kept', 'wiped off'], 'What is done with the paste that its base brings.', {
        example: 'kept',
      }),
    },
  },
  paste: {
    kind: 'paste',
    several: false,
    what: 'The thermal paste.',
    fields: {
      ...use,
      amount: quantity('volume', 'mm³', 'How much is put on.', '45 mm³'),
      dose: text('The dose in words; a volume says more.', 'a line along the lid'),
      barrier: flag('Whether the surroundings are covered against a paste that conducts.'),
    },
  },
  memory: {
    kind: 'memory',
    several: true,
    what: 'The memory modules.',
    fields: {
      ...many,
      soldered: flag('Whether it is soldered to the board, and takes no slot.'),
      slots: list(text('A memory slot.', 'A2', { refersTo: 'memory slot' }), 'The slots they go into.', '[A2, B2]'),
      speed: quantity('transfer-rate', 'MT/s', 'The speed they are set to.', '6000 MT/s'),
      profile: choice(
        ['used', 'not used'],
        'Whether the modules’ profile is switched on in the firmware; without a speed beside it, it sets ' +
          'the rated one.',
      ),
    },
  },
  drives: {
    kind: 'drive',
    several: true,
    what: 'The drives.',
    fields: {
      ...many,
      slot: text('The M.2 or PCIe slot it goes into.', 'M2_1', { refersTo: 'slot' }),
      port: text('The storage port it plugs into.', 'SATA_1', { refersTo: 'port' }),
      bay: text('The bay it is fixed in.', '3.5 in', { refersTo: 'bay', spellings: BAY_WORDS }),
      boot: flag('Whether the machine starts from it.'),
      partitions: choice(['GPT', 'MBR'], 'How it is divided.'),
      'screw-length': quantity('length', 'mm', 'How far its screws reach into it.', '3 mm'),
      screw: choice(['M3', '6-32'], 'The thread of the screws it is fixed with.'),
    },
  },
  graphics: {
    kind: 'graphics',
    several: true,
    what: 'Graphics cards.',
    fields: {
      ...many,
      slot: text('The slot it goes into.', 'PCIE_1', { refersTo: 'slot' }),
      riser,
      support: flag('Whether a support holds its far end.'),
      bend: quantity('length', 'mm', 'Straight length of its power cable before the first bend.', '35 mm'),
    },
  },
  cards: {
    kind: 'card',
    several: true,
    what: 'Other cards.',
    fields: {
      ...many,
      slot: text('The slot it goes into.', 'PCIE_2', { refersTo: 'slot' }),
      riser,
      support: flag('Whether a support holds its far end.'),
    },
  },
  supply: {
    kind: 'supply',
    several: false,
    what: 'The supply.',
    fields: {
      ...use,
      cables: text('Whose cables it is used with: `own`, or the name of another supply’s part file.', 'own', {
        refersTo: 'part file',
        besides: ['own'],
        usual: ['own'],
      }),
      modules: count('Of a redundant supply: how many modules are fitted, where it is not all of them.', '2', {
        least: 1,
      }),
      selector: quantity('voltage', 'V', 'Where its voltage switch stands.', '230 V', { range: mainsV }),
    },
  },
  case: {
    kind: 'case',
    several: false,
    what: 'The case.',
    fields: {
      ...use,
      'standoffs-at': list(
        text('A hole of the pattern, by its letter.', 'C'),
        'Where standoffs stand, by the letters of the hole pattern.',
        '[C, F, H, J]',
      ),
    },
  },
  fans: {
    kind: 'fan',
    several: true,
    what: 'Fans beside those of cooler and case.',
    fields: {
      ...many,
      mount: text('The fan place of the case.', 'front', {
        refersTo: 'fan place',
        usual: ['front', 'rear', 'top', 'bottom', 'side'],
      }),
      flow: choice(['in', 'out'], 'Which way it blows.'),
      'light-header': text('The header its lights plug into.', 'RGB_1', { refersTo: 'header' }),
      header: text('The header it plugs into.', 'SYS_FAN_1', { refersTo: 'header' }),
    },
  },
  radiators: {
    kind: 'radiator',
    several: true,
    what: 'Radiators of a liquid loop.',
    fields: {
      ...many,
      mount: text('The radiator place of the case.', 'top', { refersTo: 'radiator place' }),
    },
  },
  displays: {
    kind: 'display',
    several: true,
    what: 'The displays.',
    fields: {
      ...many,
      port: text('The output it plugs into.', 'DP_1', { refersTo: 'display output' }),
      through: text(
        'What it hangs on instead: by its name a display before it in a chain, or an adapter or hub among the cables.',
        'left',
      ),
    },
  },
  cables: {
    kind: 'cable',
    several: true,
    what: 'Cables bought beside what the boxes hold.',
    fields: {
      ...many,
      kind: text('What it connects, where no part file says it.', 'SATA data', {
        usual: ['SATA data', 'SATA power', 'fan splitter'],
        spellings: CABLE_WORDS,
        closed: true,
      }),
      header: text('The header that a fan splitter plugs into.', 'SYS_FAN_1', { refersTo: 'header' }),
    },
  },
  fixings: {
    kind: 'fixing',
    several: true,
    what: 'Screws, pins and posts bought beside what the boxes hold.',
    fields: { ...many },
  },
  sticks: { kind: 'stick', several: true, what: 'USB sticks on hand.', fields: { ...many } },
} as const satisfies Record<string, Role>;

export type Roles = typeof roles;
export type RoleName = keyof Roles;
export const roleNames = Object.keys(roles) as readonly RoleName[];
