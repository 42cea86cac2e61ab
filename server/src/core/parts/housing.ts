// The facts of a supply, a case, a fan, a radiator and a cable.
import { BADGE_WORDS, MODULAR_WORDS, POWER_FACTOR_WORDS } from '../trade/sheet-words';
import { BAY_WORDS, SHAPE_WORDS } from '../trade/drive-words';
import { CABLE_WORDS, HEADER_WORDS, POWER_CONNECTOR_WORDS } from '../trade/connector-words';
import { parseCaseOpenings } from '../trade/slot-words';
import { efficiencyPercent, loadPercent, mainsV } from './ranges';
import { choice, count, flag, form, group, length, list, named, power, quantity, text } from './field';
import {
  common,
  fanFields,
  inAcoustics,
  inDimensions,
  inPower,
  inSoundNote,
  connectors,
  radiatorFields,
} from './common';

const onSupply = { printed: 'The label on the supply.' } as const;
const onMains = { printed: 'The label on the supply, under AC input.' } as const;
const inCables = { printed: 'The handbook’s table of cables.' } as const;
const onWires = { printed: 'The print along the wires.' } as const;
const inClearance = { printed: 'The data sheet, under clearance.' } as const;
const inBoards = { printed: 'The data sheet, under board sizes.' } as const;
const onTrayPage = { printed: 'The handbook’s page on fitting the board.' } as const;
const inFans = { printed: 'The data sheet, under fan places.' } as const;
const onFanPage = { printed: 'The handbook’s page on fitting fans.' } as const;
const inRadiators = { printed: 'The data sheet, under radiator places.' } as const;
const onBag = { printed: 'The bag, or the handbook’s list of screws.' } as const;
const onPackaging = { printed: 'The cable’s packaging or data sheet.' } as const;

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
  form: choice(supplyForms, 'Outline of its housing; external for a brick outside the case.', {
    printed: 'The data sheet, under form factor.',
  }),
  depth: length('Depth of its housing, connectors not counted.', '150 mm', inDimensions),
  badge: choice(badges, 'Efficiency badge, by its metal.', {
    example: 'gold',
    spellings: BADGE_WORDS,
    printed: 'The box or the label on the supply.',
  }),
  'badge-mains': choice(['115 V', '230 V'], 'Mains voltage of the programme that gave the badge.', {
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
    { printed: 'The label on the supply.' },
  ),
  combined: list(
    group(
      {
        rails: list(text('Name of a rail.', '+5V'), 'The rails that share the limit.', '[+3.3V, +5V]', onSupply),
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
    printed: 'The data sheet, under input.',
  }),
  housing: choice(['bare', 'painted'], 'Finish of its housing.'),
  'hold-up': quantity('time', 'ms', 'How long it bridges a gap in the mains at full load.', '17 ms', {
    printed: 'The data sheet, under hold-up time.',
  }),
  level: quantity('sound-level', 'dBA', 'Sound pressure level at the load of the build.', '22 dBA', inAcoustics),
  'level-at': quantity('length', 'm', 'The distance at which the level was measured.', '1 m', inSoundNote),
} as const;

export const pcCase = {
  ...common,
  'board-sizes': list(text('A board size.', 'ATX'), 'Boards its tray takes.', '[ATX, microATX, Mini-ITX]', inBoards),
  'board-depth': length('Deepest board, from its rear edge to its front edge.', '277 mm', { room: true, ...inBoards }),
  standoffs: group(
    {
      pattern: text('The tray’s pattern as delivered; full where every hole of the standards has one.', 'ATX', {
        usual: ['full', 'ATX', 'microATX', 'Mini-ITX'],
        ...onTrayPage,
      }),
      removable: flag('Whether single standoffs come out.', onTrayPage),
      height: length('Height of the standoffs.', '6.5 mm'),
    },
    'The standoffs on the tray.',
    '{ pattern: ATX, removable: true, height: 6.5 mm }',
    onTrayPage,
  ),
  'cooler-height': length('Room for a processor cooler, from the processor.', '165 mm', { room: true, ...inClearance }),
  'card-length': length('Room for an expansion card, front fans in place.', '330 mm', { room: true, ...inClearance }),
  'card-height': length('Room from the board’s edge of the slot to the side panel.', '160 mm', {
    room: true,
    ...inClearance,
  }),
  'card-thickness': length('Room for an expansion card’s thickness, where the case states it.', '60 mm', {
    room: true,
    ...inClearance,
  }),
  openings: form(
    'a number of openings',
    parseCaseOpenings,
    'Expansion openings at the rear, in line with the board’s slots.',
    '7',
    { printed: 'The data sheet, under expansion slots.' },
  ),
  'vertical-openings': count('Openings for a card that stands on a riser; 0 for none.', '2', {
    printed: 'The data sheet, under expansion slots: the 2 of `7+2`.',
  }),
  bracket: choice(['full height', 'low profile'], 'Height of the expansion openings.', {
    printed: 'The data sheet, under expansion slots.',
  }),
  'supply-forms': list(choice(supplyForms, 'A supply form.', { example: 'ATX' }), 'Supplies it takes.', '[ATX]', {
    printed: 'The data sheet, under power supply.',
  }),
  'tray-opening': flag('Whether the tray has an opening behind the processor.', {
    printed: 'The maker’s pictures of the tray.',
  }),
  'supply-depth': length('Room for the supply’s depth, connectors and bends not counted.', '200 mm', {
    room: true,
    ...inClearance,
  }),
  bays: named(
    count('How many.', '2'),
    'Drive bays by shape; a combined bay is `3.5 or 2.5 in`.',
    '{ 3.5 in: 2, 2.5 in: 3 }',
    {
      names: BAY_WORDS,
      printed: 'The data sheet, under drive bays.',
    },
  ),
  'bay-thread': named(
    choice(['M3', '6-32', 'clips'], 'What holds a drive of this shape.'),
    'What holds a drive in its bay, by the drive’s shape.',
    '{ 3.5 in: 6-32, 2.5 in: M3 }',
    { names: SHAPE_WORDS, printed: 'The handbook’s page on fitting drives.' },
  ),
  'bay-screw-length': named(
    length('How far the screws reach into a drive of this shape.', '3 mm'),
    'How far the bays’ screws reach into a drive, by the drive’s shape.',
    '{ 3.5 in: 3 mm, 2.5 in: 2.5 mm }',
    { names: SHAPE_WORDS },
  ),
  'fan-places': named(
    group(
      {
        sizes: list(
          quantity('length', 'mm', 'A fan size.', '120 mm'),
          'Fan sizes it takes.',
          '[120 mm, 140 mm]',
          inFans,
        ),
        count: count('How many fans of its largest size.', '3', { least: 1, ...inFans }),
        length: length('Room for a row of fans, where smaller ones than its largest go in.', '360 mm', onFanPage),
        fitted: count('Fans of the case’s own that are already there.', '0', {
          printed: 'The data sheet, under fans included.',
        }),
        level: quantity('sound-level', 'dBA', 'Sound pressure level of one fitted fan at full speed.', '25 dBA', {
          printed: 'The data sheet of the fans included.',
        }),
        'level-at': quantity('length', 'm', 'The distance at which the level was measured.', '1 m', inSoundNote),
        flow: choice(['in', 'out'], 'Which way the fans that are already there blow.', onFanPage),
        airflow: quantity(
          'flow',
          'm³/h',
          'Air that one of them moves with nothing in the way, at full speed.',
          '90 m³/h',
          { printed: 'The data sheet of the fans included.' },
        ),
      },
      'One place for fans.',
    ),
    'Places for fans: front, rear, top, bottom, side.',
    '{ front: { sizes: [120 mm, 140 mm], count: 2, fitted: 0 } }',
    inFans,
  ),
  'radiator-places': named(
    group(
      {
        length: length('Longest radiator, end tanks included.', '290 mm', inRadiators),
        classes: list(
          text('A radiator class.', '240', { usual: ['120', '140', '240', '280', '360', '420'] }),
          'Radiator classes it takes, where no length is stated.',
          '["240", "280"]',
          inRadiators,
        ),
        width: length('Widest radiator.', '140 mm', inRadiators),
        thickness: length('Room for radiator and fans together.', '60 mm', {
          printed: 'The handbook’s page on fitting radiators.',
        }),
        'tube-path': length('Length of the path from the processor to the far end of a radiator there.', '320 mm'),
        'fan-sizes': list(
          quantity('length', 'mm', 'A fan size.', '120 mm'),
          'Fan sizes of radiators it takes.',
          '[120 mm]',
          inRadiators,
        ),
      },
      'One place for a radiator.',
    ),
    'Places for radiators; {} for none.',
    '{ top: { length: 290 mm, thickness: 60 mm } }',
    inRadiators,
  ),
  'front-cables': list(
    text('A front cable.', 'front USB-C', { spellings: HEADER_WORDS, closed: true }),
    'Cables of the front panel, each as the kind of header it wants.',
    '[front panel, front USB 3, front audio]',
    { printed: 'The handbook’s page on the front panel’s cables.' },
  ),
  'cable-paths': named(
    length('Length of the path from the supply.', '520 mm'),
    'How far cables must reach, by kind of connector, along the tidy path.',
    '{ EPS 8-pin: 520 mm, 24-pin: 380 mm }',
    { names: CABLE_WORDS },
  ),
  open: flag('Whether it is an open frame, without walls around the parts.', {
    example: 'false',
    printed: 'The maker’s pictures of the case.',
  }),
  'rated-power': power('Of a case that cools the parts by its own walls: the heat it is rated to give off.', '65 W', {
    printed: 'The data sheet, under cooling.',
  }),
  'glass-panel': flag('Whether a side panel is of glass.', { printed: 'The data sheet, under materials.' }),
  'lid-earth': flag('Whether bare metal can be reached for a strap’s clip.'),
} as const;

export const fan = {
  ...common,
  ...fanFields,
  draw: group(
    {
      typical: power('Power in ordinary use.', '1.2 W', inPower),
      peak: power('Power at full speed.', '2.2 W', { printed: 'The label on the hub, as volts and amperes.' }),
    },
    'What one fan draws.',
  ),
} as const;

export const radiator = { ...common, ...radiatorFields } as const;

export const fixing = {
  ...common,
  item: text('What it is.', 'drive screw', {
    usual: ['drive screw', 'board screw', 'fan screw', 'M.2 screw'],
    ...onBag,
  }),
  thread: text('Its thread.', 'M3', { usual: ['M3', '6-32', 'M2'], ...onBag }),
  length: length('Length of its shaft.', '6 mm', onBag),
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
  'made-for': form(
    'the name of a part file',
    (name) => (/^[^/\s]+\/\S+$/.test(name) ? name : undefined),
    'The supply it was made for.',
    'holm/s750',
    { refersTo: 'part file', ...onPackaging },
  ),
} as const;
