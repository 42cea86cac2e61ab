// Spellings of power connectors, cables and headers.
import { describe, expect, it } from 'vitest';
import {
  BOARD_CONNECTOR_WORDS,
  CABLE_WORDS,
  CARD_CONNECTOR_WORDS,
  POWER_CONNECTOR_WORDS,
  type CableWord,
  type PowerConnectorWord,
} from '../../../server/src/core/trade/connector-words';
import { HEADER_WORDS, type HeaderKind } from '../../../server/src/core/trade/header-words';
import { meanings, wordOf } from '../../../server/src/core/trade/vocabulary';

const power: Record<PowerConnectorWord, string> = {
  '24-pin':
    'ATX 24-pin|24-pin ATX|20+4-pin|20+4 Pin|24 Pin|ATX 20+4-pin|main 24-pin|24-pin (20+4)|mainboard|MB ' +
    'connector|24-Pin connector',
  'EPS 8-pin':
    'EPS 4+4-pin|4+4-pin EPS|4+4-pin|4+4 Pin|CPU 8-pin|8-pin CPU|8-pin EPS12V|EPS12V|ATX 12V ' +
    '8-pin|P4+4|CPU 4+4-pin|EPS 8 pin',
  'EPS 4-pin':
    '4-pin ATX 12V|P4|CPU 4-pin|EPS 4 pin|4-pin EPS|ATX12V 4-pin|12V 4-pin|processor 4-pin|EPS12V 4-pin|eps 4-PIN',
  'PCIe 8-pin':
    'PCIe 6+2-pin|6+2-pin|6+2 Pin|PCI-E 6+2-pin|PCI-E 6+2|8-pin PCIe|PCI Express 8-pin|VGA 8-pin|GPU ' +
    '6+2-pin|PEG 8-pin|8-pin (6+2)',
  'PCIe 6-pin':
    '6-pin PCIe|PCI-E 6-pin|6-pin|6 Pin|PCI Express 6-pin|VGA 6-pin|GPU 6-pin|PEG 6-pin|6-pin VGA|pcie 6PIN',
  '16-pin':
    '12VHPWR|12V-2x6|12V-2×6|12vhpwr|16 Pin|12+4-pin|PCIe 5.0 16-pin|16-pin 12VHPWR|12V-2x6 connector|PCIe ' +
    '5.1 12V-2x6|PCIe 12VHPWR',
  'SATA power':
    'SATA|SATA Power|Serial ATA|S-ATA|SATA connector|SATA 15-pin|15-pin SATA|sata power|SATA connectors|SATA drive',
  '10-pin': '10 Pin|ATX12VO 10-pin|10-pin ATX12VO|main 10-pin|ATX12VO',
  'DC barrel': 'barrel|DC-in|DC jack|barrel plug|barrel jack|DC inlet|DC power jack|DC plugs|DC inlets|DC input',
  'peripheral 4-pin':
    'Molex|4-pin Molex|Molex 4-pin|Peripheral|Peripheral 4-pin|big 4-pin|LP4|D-plug|PATA|4-pin peripheral|IDE 4-pin',
  'floppy 4-pin': 'FDD|floppy|Berg|FDD 4-pin|4-pin FDD|floppy 4 pin|SP4|4-pin floppy|Berg 4-pin|mini Molex',
};

const cables: Partial<Record<CableWord, string>> = {
  'SATA data':
    'SATA data cable|SATA 6Gb/s cable|SATA III cable|sata DATA|SATA signal|SATA 7-pin|Serial ATA ' +
    'data|SATA3 cable|7-pin SATA|SATA 6Gb/s',
  'fan splitter':
    'PWM splitter|fan Y-cable|4-pin fan splitter|PWM fan splitter|Fan Splitter|fan Y-splitter|PWM ' +
    'Y-cable|fan splitter cable|3-pin fan splitter|4-pin PWM splitter',
  display:
    'HDMI cable|DisplayPort cable|DP cable|HDMI|DVI cable|VGA cable|USB-C display cable|display cable|HDMI ' +
    'lead|mini DP cable',
  'power cord':
    'AC power cord|mains cable|mains lead|IEC cord|C13 cord|kettle lead|AC cord|power cable|Power Cord|AC power cable',
  'PCIe 8-pin': 'PCIe 6+2-pin cable|PCIe 8-pin cable',
};

const headers: Record<HeaderKind, string> = {
  fan: 'CPU_FAN|CPU Fan|SYS_FAN|system fan|chassis fan|CHA_FAN|case fan|CPU_OPT|fan header|4-pin fan',
  pump: 'water pump|W_PUMP|AIO_PUMP|AIO pump|PUMP_FAN|pump header|Pump|PUMP|pump fan|W_PUMP+',
  'front panel':
    'F_PANEL|JFP1|front panel header|system panel|power switch|power button|PANEL1|Front ' +
    'Panel|front-panel|power and reset',
  'front USB 2.0':
    'USB 2.0|USB2.0|USB 2.0 header|F_USB|USB 2.0 9-pin|9-pin USB 2.0|front USB 2|USB 2|USB 2.0 Type-A|Front USB 2.0',
  'front USB 3':
    'USB 3.0|USB 3.2 Gen 1|USB 3.2 Gen1 header|USB 3.0 header 20-pin|USB 3.0 19-pin|USB 5Gbps|USB 3.1 ' +
    'Type-A|19-pin USB 3.0|front USB 3.0|F_USB3|USB3',
  'front USB-C':
    'USB 3.2 Gen 2 Type-C|Type-C|USB-C|USB Type-C|front panel Type-C|USB-C Key-A header|USB 3.2 Gen2x2 ' +
    'Type-C|Type-E|USB 10Gbps Type-C|front Type-C|USB 3.2 Gen 1 Type-C',
  RGB: 'ARGB|RGB header|ARGB header|JRAINBOW|addressable RGB|LED strip|rgb',
  'front audio': 'HD audio|HD Audio|AAFP|HD_AUDIO|audio|front panel audio|headset jack|F_AUDIO|audio in/out|HDA',
};

const rows = <C extends string>(table: Partial<Record<C, string>>): [C, string][] =>
  Object.entries<string | undefined>(table).flatMap(([word, all]) =>
    all!.split('|').map((one): [C, string] => [word as C, one]),
  );

describe('power connectors', () => {
  it.each(rows(power))('%s: %s', (word, written) => expect(wordOf(POWER_CONNECTOR_WORDS, written)).toBe(word));

  it.each(['20-pin', '12-pin', '14-pin', 'EPS 6-pin', 'PCIe 4-pin', '2.5 in', 'flux', '24', '', '8+8-pin', 'SAS'])(
    '%j: none of them',
    (written) => expect(meanings(POWER_CONNECTOR_WORDS, written)).toEqual([]),
  );

  it('leaves open what the spelling leaves open, and decides where the part does', () => {
    expect(meanings(POWER_CONNECTOR_WORDS, '8-pin')).toEqual(['EPS 8-pin', 'PCIe 8-pin']);
    expect(meanings(BOARD_CONNECTOR_WORDS, '8-pin')).toEqual(['EPS 8-pin']);
    expect(meanings(BOARD_CONNECTOR_WORDS, '4 Pin')).toEqual(['EPS 4-pin']);
    expect(meanings(CARD_CONNECTOR_WORDS, '8 pin')).toEqual(['PCIe 8-pin']);
    expect(meanings(BOARD_CONNECTOR_WORDS, 'CPU')).toEqual(['EPS 8-pin', 'EPS 4-pin']);
    expect(meanings(POWER_CONNECTOR_WORDS, 'PCIe')).toEqual(['PCIe 8-pin', 'PCIe 6-pin']);
    expect(meanings(POWER_CONNECTOR_WORDS, 'ATX 12V')).toEqual(['EPS 8-pin', 'EPS 4-pin']);
  });
});

describe('cables', () => {
  it.each(rows(cables))('%s: %s', (word, written) => expect(wordOf(CABLE_WORDS, written)).toBe(word));
  it('does not tell power from data by `SATA` alone', () =>
    expect(meanings(CABLE_WORDS, 'SATA cable')).toEqual(['SATA data', 'SATA power']));
  it.each([
    'SAS cable',
    'splitter box',
    'data',
    'flux lead',
    'cable',
    'HDMI dongle',
    'DVD',
    'fan',
    'SATA 5Gb/s',
    'cord of wood',
  ])('%j: none of them', (written) => expect(meanings(CABLE_WORDS, written)).toEqual([]));
});

describe('headers', () => {
  it.each(rows(headers))('%s: %s', (word, written) => expect(wordOf(HEADER_WORDS, written)).toBe(word));
  it.each(['TPM', 'COM', 'USB', 'USB 4', 'Thunderbolt', 'front', 'LED', 'USB 1.1'])('%j: none of them', (written) =>
    expect(meanings(HEADER_WORDS, written)).toEqual([]),
  );
});
