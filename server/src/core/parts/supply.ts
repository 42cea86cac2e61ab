// The facts of a supply and of a cable.
import { CABLE_WORDS, POWER_CONNECTOR_WORDS } from '../trade/connector-words';
import { DISPLAY_CONNECTOR_WORDS } from '../trade/display-connectors';
import { BADGE_WORDS, MODULAR_WORDS, POWER_FACTOR_WORDS } from '../trade/sheet-words';
import {
  BADGE_MAINS_WORDS,
  HOUSING_WORDS,
  RAIL_WORDS,
  SUPPLY_FORM_WORDS,
  SUPPLY_STANDARD_WORDS,
} from '../trade/supply-sheet-words';
import { parseRedundancy } from '../trade/power';
import { sheetPowerFactor, sheetSupplyDepth } from '../trade/sheet-forms';
import { common, inSoundNote, inDimensions, inAcoustics, connectors } from './common';
import { text, count, flag, length, power, form, quantity, named, list, group, choice } from './field';
import { mainsV, loadPercent, efficiencyPercent } from './ranges';

const onSupply = { printed: 'The label on the supply.' } as const;
const onMains = { printed: 'The label on the supply, under AC input.' } as const;
const inCables = { printed: 'The handbook’s table of cables.' } as const;
const onWires = { printed: 'The print along the wires.' } as const;
const onPackaging = { printed: 'The cable’s packaging or data sheet.' } as const;

export const displayConnectors = ['DisplayPort', 'HDMI', 'DVI', 'VGA', 'USB-C'] as const;
export const supplyForms = ['ATX', 'SFX', 'SFX-L', 'TFX', 'Flex ATX', 'external'] as const;
export const badges = ['white', 'bronze', 'silver', 'gold', 'platinum', 'titanium'] as const;

export const supply = {
  ...common,
  rating: power('Power it delivers for as long as asked.', '750 W', onSupply),
  ratings: list(
    group(
      {
        lowest: quantity('voltage', 'V', 'Lowest mains voltage of this range.', '100 V', { ...onMains, range: mainsV }),
        highest: quantity('voltage', 'V', 'Highest mains voltage of this range.', '127 V', {
          ...onMains,
          range: mainsV,
        }),
        rating: power('Power it delivers there for as long as asked.', '1300 W', onSupply),
      },
      'What it delivers within one range of mains voltage.',
    ),
    'What it delivers by mains voltage, where the label states more than one rating.',
    '[{ lowest: 100 V, highest: 127 V, rating: 1300 W }, { lowest: 200 V, highest: 240 V, rating: 1600 W }]',
    onSupply,
  ),
  redundancy: form(
    'modules that must work, a plus, modules that may fail',
    parseRedundancy,
    'Of a supply of several modules: how many must work, and how many may fail.',
    '1+1',
    { usual: ['1+1', '2+1', '2+2', '3+1'], printed: 'The data sheet, under redundancy.' },
  ),
  'module-rating': power('Of a supply of several modules: what one of them delivers.', '800 W', {
    printed: 'The label on a module.',
  }),
  form: choice(supplyForms, 'Outline of its housing; external for a brick outside the case.', {
    spellings: SUPPLY_FORM_WORDS,
    printed: 'The data sheet, under form factor.',
  }),
  depth: length('Depth of its housing, connectors not counted.', '150 mm', {
    sheet: sheetSupplyDepth,
    ...inDimensions,
  }),
  badge: choice(badges, 'Efficiency badge, by its metal.', {
    example: 'gold',
    spellings: BADGE_WORDS,
    printed: 'The box or the label on the supply.',
  }),
  'badge-mains': choice(['115 V', '230 V'], 'Mains voltage of the programme that gave the badge.', {
    spellings: BADGE_MAINS_WORDS,
    printed: 'The test report that belongs to the badge.',
  }),
  efficiency: list(
    group(
      {
        load: quantity('percent', '%', 'Load, of the rating.', '50 %', {
          printed: 'The test report that belongs to the badge.',
          range: loadPercent,
        }),
        percent: quantity('percent', '%', 'Efficiency at that load.', '92 %', {
          printed: 'The test report that belongs to the badge.',
          range: efficiencyPercent,
        }),
      },
      'One measured point.',
    ),
    'Measured efficiency, from the lowest load up.',
    '[{ load: 50 %, percent: 92 % }]',
    { printed: 'The test report that belongs to the badge.' },
  ),
  rails: named(
    group(
      {
        voltage: quantity('voltage', 'V', 'Nominal voltage.', '12 V', onSupply),
        current: quantity('current', 'A', 'Most current.', '62.5 A', onSupply),
      },
      'One rail.',
    ),
    'The rails, by the name on the label.',
    '{ +12V: { voltage: 12 V, current: 62.5 A } }',
    { names: RAIL_WORDS, printed: 'The label on the supply.' },
  ),
  combined: list(
    group(
      {
        rails: list(
          text('Name of a rail.', '+5V', { spellings: RAIL_WORDS, closed: true }),
          'The rails that share the limit.',
          '[+3.3V, +5V]',
          onSupply,
        ),
        power: power('Most power of these rails together.', '120 W', onSupply),
      },
      'A limit that several rails share.',
    ),
    'Limits that several rails share, as the label joins their columns.',
    '[{ rails: [+3.3V, +5V], power: 120 W }]',
    onSupply,
  ),
  excursions: list(
    group(
      {
        percent: quantity('percent', '%', 'Load it rides out, of the rating.', '200 %', {
          printed: 'The data sheet, under peak load.',
          range: loadPercent,
        }),
        lasts: quantity('time', 'ms', 'For how long.', '0.1 ms', { printed: 'The data sheet, under peak load.' }),
      },
      'One class of peak.',
    ),
    'Short peaks it rides out, where it states them itself.',
    '[{ percent: 200 %, lasts: 0.1 ms }]',
    { printed: 'The data sheet, under peak load.' },
  ),
  standard: choice(['ATX 2', 'ATX 3.0', 'ATX 3.1', 'ATX12VO'], 'The design guide it follows.', {
    spellings: SUPPLY_STANDARD_WORDS,
    printed: 'The box or the data sheet.',
  }),
  connectors: connectors('Connectors on its own cables, by kind.', inCables),
  'sixteen-pin-level': choice(['150 W', '300 W', '450 W', '600 W'], 'Power level its 16-pin cable signals.', {
    example: '600 W',
    printed: 'The print at the 16-pin connector or socket.',
  }),
  'own-cables': list(
    group(
      {
        connector: text('Kind of connector.', 'EPS 8-pin', {
          spellings: POWER_CONNECTOR_WORDS,
          closed: true,
          ...inCables,
        }),
        count: count('How many such cables.', '2', inCables),
        connectors: count('Connectors on each cable.', '1', { least: 1, ...inCables }),
        length: length('Length to the first connector.', '650 mm', inCables),
        gauge: count('Wire gauge, AWG.', '18', onWires),
        pairs: count('Current-carrying pairs of wires in it.', '4', { least: 1 }),
      },
      'One kind of cable.',
    ),
    'The cables it comes with; in a build, `cables:` says whose are used.',
    '[{ connector: EPS 8-pin, count: 2, connectors: 1, length: 650 mm, gauge: 18 }]',
    inCables,
  ),
  modular: choice(['fixed', 'partly', 'fully'], 'Whether its cables unplug at the supply.', {
    example: 'fully',
    spellings: MODULAR_WORDS,
    printed: 'The box or the data sheet.',
  }),
  inlet: group(
    {
      lowest: quantity('voltage', 'V', 'Lowest mains voltage.', '100 V', { ...onMains, range: mainsV }),
      highest: quantity('voltage', 'V', 'Highest mains voltage.', '240 V', { ...onMains, range: mainsV }),
      selector: flag('Whether a switch selects the voltage.', {
        example: 'false',
        printed: 'The rear of the supply, beside the inlet.',
      }),
    },
    'What mains it takes.',
    '{ lowest: 100 V, highest: 240 V }',
    onMains,
  ),
  'power-factor': choice(['active', 'passive', 'none'], 'Power-factor correction.', {
    spellings: POWER_FACTOR_WORDS,
    sheet: sheetPowerFactor,
    printed: 'The data sheet, under input.',
  }),
  housing: choice(['bare', 'painted'], 'Finish of its housing.', { spellings: HOUSING_WORDS }),
  'hold-up': quantity('time', 'ms', 'How long it bridges a gap in the mains at full load.', '17 ms', {
    printed: 'The data sheet, under hold-up time.',
  }),
  level: quantity('sound-level', 'dBA', 'Sound pressure level at the load of the build.', '22 dBA', inAcoustics),
  'level-at': quantity('length', 'm', 'The distance at which the level was measured.', '1 m', inSoundNote),
} as const;

export const cable = {
  ...common,
  connector: text('What it connects.', 'SATA data', {
    usual: ['SATA data', 'SATA power', 'PCIe 8-pin', '16-pin', 'EPS 8-pin', 'fan splitter', 'display'],
    spellings: CABLE_WORDS,
    closed: true,
    ...onPackaging,
  }),
  connectors: count('How many such connectors one cable has at its far end: 2 for a Y-splitter.', '1', {
    least: 1,
    ...onPackaging,
  }),
  from: text('For an adapter: the plug it starts from.', 'peripheral 4-pin', {
    spellings: CABLE_WORDS,
    ...onPackaging,
  }),
  'from-count': count('For an adapter: how many of those connectors it joins.', '1', { least: 1, ...onPackaging }),
  adapter: flag('Whether it changes one kind of plug into another.', { example: 'false' }),
  ways: count('For a fan splitter: how many fans it feeds.', '2', { least: 1, ...onPackaging }),
  moulded: flag('Whether its connector is moulded onto the wires.', { example: 'false' }),
  length: length('Length.', '500 mm', onPackaging),
  gauge: count('Wire gauge, AWG.', '18', onWires),
  carries: power('Power it is rated to carry.', '150 W', onPackaging),
  'power-level': power('For a 16-pin cable: the power level it signals.', '450 W', {
    printed: 'The print on the cable’s 16-pin connector.',
  }),
  link: text('For a display cable: the link it is certified for.', 'DisplayPort HBR3', {
    printed: 'The certification label on the cable or its box.',
  }),
  'display-adapter': group(
    {
      from: choice(displayConnectors, 'The connector it takes from the machine.', {
        spellings: DISPLAY_CONNECTOR_WORDS,
        ...onPackaging,
      }),
      to: choice(displayConnectors, 'The connector it offers to displays.', {
        example: 'HDMI',
        spellings: DISPLAY_CONNECTOR_WORDS,
        ...onPackaging,
      }),
      active: flag('Whether a chip in it makes one signal of the other.', onPackaging),
      outputs: count('How many displays it feeds: more than one for a hub.', '2', { least: 1, ...onPackaging }),
    },
    'For an adapter or a hub between an output and displays.',
    '{ from: DisplayPort, to: HDMI, active: true }',
    onPackaging,
  ),
  'made-for': form(
    'the name of a part file',
    (name) => (/^[^/\s]+\/\S+$/.test(name) ? name : undefined),
    'The supply it was made for.',
    'holm/s750',
    { refersTo: 'part file', ...onPackaging },
  ),
} as const;
