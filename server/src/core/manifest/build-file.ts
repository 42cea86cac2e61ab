// The fields of a build file outside `parts:`.
import { ARRAY_WORDS } from '../trade/sheet-words';
import {
  airC,
  airRiseK,
  altitudeMm,
  efficiencyPercent,
  hearingMm,
  hoursADayS,
  humidityPercent,
  mainsV,
} from '../parts/ranges';
import { ARRAY_KINDS } from '../trade/arrays';
import { readAmount } from '../quantity';
import { parseMode, SAMPLINGS } from '../trade/display';
import { BLANKINGS } from '../trade/mode-clocks';
import { BACKUP_WORDS, EARTH_CONTACT_WORDS, FLOOR_WORDS, RULE_WORDS, WAVE_WORDS } from '../trade/work-words';
import { acceptance, handOver } from './acceptance';
import { bench } from './bench';
import { steps } from './steps';
import { choice, count, date, flag, form, group, list, named, power, quantity, text } from '../parts/field';

export const place = group(
  {
    ambient: quantity('temperature', '°C', 'Air temperature of the room at its worst hour.', '31 °C', { range: airC }),
    inlet: quantity('temperature', '°C', 'Air temperature at the case’s inlet, where it is not the room’s.', '35 °C', {
      range: airC,
    }),
    humidity: quantity('percent', '%', 'Relative humidity at the bench.', '40 %', { range: humidityPercent }),
    altitude: quantity('length', 'm', 'Height above the sea.', '40 m', { range: altitudeMm }),
    floor: choice(['carpet', 'vinyl', 'wood', 'concrete', 'dissipative mat'], 'What the bench’s floor is made of.', {
      example: 'vinyl',
      spellings: FLOOR_WORDS,
    }),
    'brought-from': quantity('temperature', '°C', 'Temperature of the place the parts come from.', '5 °C', {
      range: airC,
    }),
    'warm-up': quantity('time', 'h', 'How long the parts lie in the room before they are unpacked.', '4 h'),
    mains: group(
      {
        voltage: quantity('voltage', 'V', 'Mains voltage.', '230 V', { range: mainsV }),
        circuit: quantity('current', 'A', 'Rating of the circuit’s breaker.', '10 A'),
        'shared-load': power('What else runs on the circuit, the displays of the build not counted.', '900 W'),
        'allowed-load': power('Load on the circuit that whoever looks after the installation allows.', '1800 W'),
        rule: choice(
          ['80 percent continuous', 'full rating', 'electrician says'],
          'The rule of the site for continuous load.',
          { example: 'full rating', spellings: RULE_WORDS },
        ),
        'price-per-kwh': quantity('money', 'EUR', 'Price of one kilowatt-hour.', '0.31 EUR'),
        'hours-per-day': quantity('time', 'h', 'Hours a day at full load.', '8 h', { range: hoursADayS }),
        strips: count('Socket strips between the wall and the machine.', '1'),
        earth: choice(['connected', 'lifted', 'none'], 'Whether the earth contact is connected.', {
          spellings: EARTH_CONTACT_WORDS,
        }),
        steadiness: choice(['steady', 'drops out', 'generator'], 'How steady it is.'),
        backup: group(
          {
            energy: quantity('energy', 'Wh', 'Energy of its battery.', '216 Wh'),
            rating: power('Power it delivers.', '600 W', { printed: 'The data sheet, as output in W.' }),
            apparent: quantity('apparent-power', 'VA', 'Apparent power it delivers.', '1000 VA', {
              printed: 'The front of the UPS, and its name.',
            }),
            'power-factor': form(
              'a number above 0, at most 1',
              (t) => (/^(0?\.\d{1,3}|1(\.0)?)$/.test(t) && Number(t) > 0 ? Number(t) : undefined),
              'Watts it delivers for each of its VA.',
              '0.6',
              { printed: 'The data sheet, under output.' },
            ),
            kind: choice(
              ['standby', 'line interactive', 'online'],
              'How it works; one that works online never changes over.',
              { spellings: BACKUP_WORDS, printed: 'The data sheet, under topology.' },
            ),
            'transfer-time': quantity('time', 'ms', 'How long it takes to change over to its battery.', '10 ms', {
              printed: 'The data sheet, under transfer time.',
            }),
            efficiency: quantity('percent', '%', 'Share of the energy that comes out.', '85 %', {
              range: efficiencyPercent,
            }),
            wave: choice(['sine', 'stepped'], 'Shape of its voltage on battery.', { spellings: WAVE_WORDS }),
          },
          'A UPS between the mains and the machine.',
          '{ energy: 216 Wh, rating: 600 W }',
        ),
      },
      'The mains it will stand on.',
      '{ voltage: 230 V, circuit: 10 A, shared-load: 900 W }',
    ),
  },
  'Where it will stand, at its worst hour.',
  '{ ambient: 31 °C, humidity: 22 % }',
);

const drivePromise = group(
  {
    read: quantity('data-rate', 'GB/s', 'Sequential reading.', '5 GB/s'),
    write: quantity('data-rate', 'GB/s', 'Sequential writing.', '4 GB/s'),
    capacity: quantity('data-size', 'TB', 'Room for data.', '2 TB'),
    'written-per-day': quantity('data-size', 'GB', 'Data written a day.', '400 GB'),
    years: count('Years it must last.', '5', { least: 1 }),
  },
  'What one drive must achieve.',
  '{ read: 5 GB/s, capacity: 2 TB }',
);

export const expect = group(
  {
    drives: named(
      drivePromise,
      'Promises for drives, by the name given in `parts.drives`.',
      '{ scratch: { read: 5 GB/s } }',
      { refersTo: 'drive' },
    ),
    arrays: named(
      group(
        {
          drives: list(
            text('Name of a drive.', 'archive', { refersTo: 'drive' }),
            'The drives it is made of.',
            '[archive]',
          ),
          kind: choice(ARRAY_KINDS, 'How they are joined.', { example: 'mirror', spellings: ARRAY_WORDS }),
          capacity: quantity('data-size', 'TB', 'Room for data.', '12 TB'),
          survives: count('How many drives may fail.', '1'),
        },
        'One array.',
      ),
      'Arrays of drives.',
      '{ vault: { kind: mirror, capacity: 12 TB } }',
    ),
    memory: group(
      {
        capacity: quantity('data-size', 'GB', 'Memory in all.', '64 GB'),
        bandwidth: quantity('data-rate', 'GB/s', 'Bandwidth over all channels.', '80 GB/s'),
        speed: quantity('transfer-rate', 'MT/s', 'Speed it runs at.', '6000 MT/s'),
        ecc: flag('Whether memory errors must be corrected.'),
      },
      'What the memory must achieve.',
      '{ capacity: 64 GB }',
    ),
    displays: list(
      group(
        {
          mode: form('a mode', parseMode, 'Width, height and refresh rate.', '3840x2160 @ 120 Hz'),
          depth: form(
            'bits a colour',
            (t) => (/^(6|8|10|12|16) bit$/.test(t) ? Number(t.split(' ')[0]) : undefined),
            'Bits a colour.',
            '10 bit',
            { usual: ['8 bit', '10 bit', '12 bit'] },
          ),
          port: text('The output that carries it.', 'DP_1', { refersTo: 'display output' }),
          blanking: choice(
            BLANKINGS,
            'The timing the display runs the mode with: reduced blanking of the third, second or first version, full ' +
              'blanking, or the timing of televisions.',
            { example: 'CVT-RB2' },
          ),
          sampling: choice(
            SAMPLINGS,
            'How colour is sampled: in full, halved across, or halved both ways; without it the promise is ' +
              'of full colour.',
          ),
          compression: flag(
            'Whether a compressed picture (DSC) is accepted; without it the promise is of an uncompressed one.',
          ),
        },
        'One display mode.',
      ),
      'Display modes that must be reached.',
      '[{ mode: 3840x2160 @ 60 Hz, depth: 8 bit, port: DP_1 }]',
    ),
    power: group(
      { wall: power('Most power from the wall under full load.', '450 W') },
      'Power from the wall.',
      '{ wall: 450 W }',
    ),
    heat: power('Most heat given to the room.', '400 W'),
    temperature: group(
      {
        processor: quantity('temperature', '°C', 'Hottest the processor may get.', '85 °C'),
        rise: quantity(
          'temperature-difference',
          'K',
          'How much warmer the air in the case may get than at the inlet.',
          '12 K',
          { range: airRiseK },
        ),
      },
      'Temperatures that must be kept.',
      '{ processor: 85 °C }',
    ),
    noise: group(
      {
        level: quantity('sound-level', 'dBA', 'Loudest sound pressure level under load.', '32 dBA'),
        'sound-power': quantity('sound-power', 'bel', 'Declared sound power.', '4.1 bel'),
        at: quantity('length', 'm', 'At this distance.', '1 m', { range: hearingMm }),
      },
      'How quiet it must be.',
      '{ level: 32 dBA, at: 1 m }',
    ),
    'on-battery': quantity('time', 'min', 'How long it must run on its UPS.', '10 min'),
    'running-cost': quantity('money', 'EUR', 'Most that a year’s power may cost.', '180 EUR'),
    cost: quantity('money', 'EUR', 'Most that the parts may cost.', '2400 EUR'),
  },
  'Promises that the parts must keep.',
  '{ memory: { capacity: 64 GB }, cost: 2400 EUR }',
);

export const accept = list(
  group(
    {
      finding: text('The check’s id.', 'supply-headroom-thin', { refersTo: 'check' }),
      at: text('The place it is accepted for, as the finding names it.', 'parts.supply', { refersTo: 'finding' }),
      'at-most': form(
        'an amount with its unit',
        readAmount,
        'By how much it may be broken at most, where a number decides: what was weighed. When it gets worse, the ' +
          'finding counts again.',
        '6 mm',
      ),
      because: text('Why it is accepted.', 'The desk never loads card and processor flat out together.'),
      until: date('The day from which it is to be looked at again.', '2027-06-30'),
      by: text('Who accepts it; needed for harm.', 'station workshop'),
    },
    'One accepted finding.',
  ),
  'Findings that someone has weighed and will live with.',
  '[]',
);

export const buildFile = {
  format: count('Version of this format.', '1', { least: 1 }),
  build: text('What the build is called.', 'Survey desk'),
  purpose: text('What it is for.', 'Stitch drone photographs of the estuary.'),
  place,
  expect,
  bench,
  steps,
  acceptance,
  'hand-over': handOver,
  accept,
} as const;

export const formatVersion = 1;
