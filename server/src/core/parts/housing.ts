// The facts of a supply, a case, a fan, a radiator and a lead.
import { choice, count, flag, form, group, length, list, named, power, quantity, text } from './field';
import { common, fanFields, plugs, radiatorFields } from './common';

export const supplyForms = ['ATX', 'SFX', 'SFX-L', 'TFX', 'Flex ATX'] as const;
export const badges = ['white', 'bronze', 'silver', 'gold', 'platinum', 'titanium'] as const;

export const supply = {
  ...common,
  rating: power('Power it delivers for as long as asked.', '750 W'),
  form: choice(supplyForms, 'Outline of its housing.'),
  depth: length('Depth of its housing, plugs not counted.', '150 mm'),
  badge: choice(badges, 'Efficiency badge, by its metal.', { example: 'gold' }),
  efficiency: list(group({
    load: quantity('percent', '%', 'Load, of the rating.', '50 %'),
    percent: quantity('percent', '%', 'Efficiency at that load.', '92 %'),
  }, 'One measured point.'), 'Measured efficiency, from the lowest load up.', '[{ load: 50 %, percent: 92 % }]'),
  rails: named(group({
    voltage: quantity('voltage', 'V', 'Nominal voltage.', '12 V'),
    current: quantity('current', 'A', 'Most current.', '62.5 A'),
  }, 'One rail.'), 'The rails, by the name on the label.', '{ +12V: { voltage: 12 V, current: 62.5 A } }', { printed: 'The label on the supply.' }),
  excursions: list(group({
    percent: quantity('percent', '%', 'Load it rides out, of the rating.', '200 %'),
    lasts: quantity('time', 'ms', 'For how long.', '0.1 ms'),
  }, 'One class of peak.'), 'Short peaks it rides out, where it states them itself.', '[{ percent: 200 %, lasts: 0.1 ms }]'),
  standard: choice(['ATX 2', 'ATX 3.0', 'ATX 3.1'], 'The design guide it follows.'),
  plugs: plugs('Plugs on its own leads, by kind.'),
  'sixteen-pin-level': choice(['150 W', '300 W', '450 W', '600 W'], 'Power level its 16-pin lead signals.', { example: '600 W' }),
  'own-leads': list(group({
    plug: text('Kind of plug.', 'EPS 8-pin'),
    count: count('How many such leads.', '2'),
    plugs: count('Plugs on each lead.', '1', { least: 1 }),
    length: length('Length to the first plug.', '650 mm'),
    gauge: count('Wire gauge, AWG.', '18'),
    pairs: count('Current-carrying pairs of wires in it.', '4', { least: 1 }),
  }, 'One kind of lead.'), 'The leads it comes with; in a build, `leads:` says whose are used.', '[{ plug: EPS 8-pin, count: 2, plugs: 1, length: 650 mm, gauge: 18 }]'),
  modular: choice(['fixed', 'partly', 'fully'], 'Whether its leads unplug at the supply.', { example: 'fully' }),
  inlet: group({
    lowest: quantity('voltage', 'V', 'Lowest mains voltage.', '100 V'),
    highest: quantity('voltage', 'V', 'Highest mains voltage.', '240 V'),
    selector: flag('Whether a switch selects the voltage.', { example: 'false' }),
  }, 'What mains it takes.', '{ lowest: 100 V, highest: 240 V }'),
  'power-factor': choice(['active', 'passive', 'none'], 'Power-factor correction.'),
  housing: choice(['bare', 'painted'], 'Finish of its housing.'),
  'hold-up': quantity('time', 'ms', 'How long it bridges a gap in the mains at full load.', '17 ms'),
  level: quantity('sound-level', 'dBA', 'Sound pressure level at the load of the build.', '22 dBA'),
  'level-at': quantity('length', 'm', 'The distance at which the level was measured.', '1 m'),
} as const;

export const pcCase = {
  ...common,
  'board-sizes': list(text('A board size.', 'ATX'), 'Boards its tray takes.', '[ATX, microATX, Mini-ITX]'),
  'board-depth': length('Deepest board, from its rear edge to its front edge.', '277 mm'),
  standoffs: group({
    pattern: text('The tray’s pattern as delivered; full where every hole of the standards has one.', 'ATX', { usual: ['full', 'ATX', 'microATX', 'Mini-ITX'] }),
    removable: flag('Whether single standoffs come out.'),
    height: length('Height of the standoffs.', '6.5 mm'),
  }, 'The standoffs on the tray.', '{ pattern: ATX, removable: true, height: 6.5 mm }'),
  'cooler-height': length('Room for a processor cooler, from the processor.', '165 mm'),
  'card-length': length('Room for an expansion card, front fans in place.', '330 mm'),
  'card-height': length('Room from the board’s edge of the slot to the side panel.', '160 mm'),
  openings: count('Expansion openings at the rear.', '7'),
  bracket: choice(['full height', 'low profile'], 'Height of the expansion openings.'),
  'supply-forms': list(choice(supplyForms, 'A supply form.', { example: 'ATX' }), 'Supplies it takes.', '[ATX]'),
  'tray-opening': flag('Whether the tray has an opening behind the processor.'),
  'supply-depth': length('Room for the supply’s depth, plugs and bends not counted.', '200 mm'),
  bays: named(count('How many.', '2'), 'Drive bays by shape.', '{ 3.5 in: 2, 2.5 in: 3 }'),
  'bay-thread': named(choice(['M3', '6-32', 'clips'], 'What holds a drive of this shape.'), 'What holds a drive in its bay, by the drive’s shape.', '{ 3.5 in: 6-32, 2.5 in: M3 }'),
  'bay-screw-length': named(length('How far the screws reach into a drive of this shape.', '3 mm'), 'How far the bays’ screws reach into a drive, by the drive’s shape.', '{ 3.5 in: 3 mm, 2.5 in: 2.5 mm }'),
  'fan-places': named(group({
    sizes: list(quantity('length', 'mm', 'A fan size.', '120 mm'), 'Fan sizes it takes.', '[120 mm, 140 mm]'),
    count: count('How many fans of its largest size.', '3', { least: 1 }),
    length: length('Room for a row of fans, where smaller ones than its largest go in.', '360 mm'),
    fitted: count('Fans of the case’s own that are already there.', '0'),
    level: quantity('sound-level', 'dBA', 'Sound pressure level of one fitted fan at full speed.', '25 dBA'),
    'level-at': quantity('length', 'm', 'The distance at which the level was measured.', '1 m'),
    flow: choice(['in', 'out'], 'Which way the fans that are already there blow.'),
    airflow: quantity('flow', 'm³/h', 'Air that one of them moves with nothing in the way, at full speed.', '90 m³/h'),
  }, 'One place for fans.'), 'Places for fans: front, rear, top, bottom, side.', '{ front: { sizes: [120 mm, 140 mm], count: 2, fitted: 0 } }'),
  'radiator-places': named(group({
    length: length('Longest radiator, end tanks included.', '290 mm'),
    width: length('Widest radiator.', '140 mm'),
    thickness: length('Room for radiator and fans together.', '60 mm'),
    'tube-path': length('Length of the path from the processor to the far end of a radiator there.', '320 mm'),
    'fan-sizes': list(quantity('length', 'mm', 'A fan size.', '120 mm'), 'Fan sizes of radiators it takes.', '[120 mm]'),
  }, 'One place for a radiator.'), 'Places for radiators; {} for none.', '{ top: { length: 290 mm, thickness: 60 mm } }'),
  'front-leads': list(text('A front lead.', 'front USB-C'), 'Leads of the front panel, each as the kind of header it wants.', '[front panel, front USB 3, front audio]'),
  'lead-paths': named(length('Length of the path from the supply.', '520 mm'), 'How far leads must reach, by kind of plug, along the tidy path.', '{ EPS 8-pin: 520 mm, 24-pin: 380 mm }'),
  'glass-panel': flag('Whether a side panel is of glass.'),
  'lid-earth': flag('Whether bare metal can be reached for a strap’s clip.'),
} as const;

export const fan = { ...common, ...fanFields, draw: group({ typical: power('Power in ordinary use.', '1.2 W'), peak: power('Power at full speed.', '2.2 W') }, 'What one fan draws.') } as const;

export const radiator = { ...common, ...radiatorFields } as const;

export const fixing = {
  ...common,
  item: text('What it is.', 'drive screw', { usual: ['drive screw', 'board screw', 'fan screw', 'M.2 screw'] }),
  thread: text('Its thread.', 'M3', { usual: ['M3', '6-32', 'M2'] }),
  length: length('Length of its shaft.', '6 mm'),
} as const;

export const lead = {
  ...common,
  plug: text('What it connects.', 'SATA data', { usual: ['SATA data', 'SATA power', 'PCIe 8-pin', '16-pin', 'EPS 8-pin', 'fan splitter', 'display'] }),
  plugs: count('How many such plugs one lead has at its far end: 2 for a Y-splitter.', '1', { least: 1 }),
  'from': text('For an adapter: the plug it starts from.', 'peripheral 4-pin'),
  'from-count': count('For an adapter: how many of those plugs it joins.', '1', { least: 1 }),
  adapter: flag('Whether it changes one kind of plug into another.', { example: 'false' }),
  ways: count('For a fan splitter: how many fans it feeds.', '2', { least: 1 }),
  moulded: flag('Whether its plug is moulded onto the wires.', { example: 'false' }),
  length: length('Length.', '500 mm'),
  gauge: count('Wire gauge, AWG.', '18'),
  carries: power('Power it is rated to carry.', '150 W'),
  'power-level': power('For a 16-pin lead: the power level it signals.', '450 W'),
  link: text('For a display lead: the link it is certified for.', 'DisplayPort HBR3'),
  'made-for': form('the name of a part file', (name) => (/^[^/\s][^\s]*\/[^\s]+$/.test(name) ? name : undefined), 'The supply it was made for.', 'holm/s750'),
} as const;
