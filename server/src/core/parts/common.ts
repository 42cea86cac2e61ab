// Fields that every kind of part has, and field pieces that several kinds share.
import { parseLink } from '../trade/links';
import { count, date, form, group, length, list, named, power, quantity, text, type FormField } from './field';
import { parseBoxItem } from './box-item';

export const link = (what: string, example: string): FormField<NonNullable<ReturnType<typeof parseLink>>> =>
  form('the spelling of a link', parseLink, what, example, { usual: ['PCIe 3 x4', 'PCIe 4 x2', 'PCIe 4 x4', 'PCIe 4 x8', 'PCIe 4 x16', 'PCIe 5 x4', 'PCIe 5 x8', 'PCIe 5 x16', 'SATA 3', 'SATA'] });

export const common = {
  kind: text('Which kind of part this is.', 'board'),
  maker: text('Who makes it.', 'Norrvik'),
  model: text('The maker’s name for it.', 'B7 Forge'),
  source: group({
    title: text('The document that the facts were read from.', 'Norrvik B7 Forge handbook'),
    revision: text('That document’s revision.', '1.2'),
    read: date('The day on which the facts were read.', '2026-10-03'),
  }, 'Where the facts of this file were read.'),
  mass: quantity('mass', 'g', 'Mass of the part as fitted.', '1150 g'),
  price: quantity('money', 'EUR', 'Price of one, with its currency.', '189 EUR'),
  'price-read': date('The day on which the price was read.', '2026-10-03'),
  'in-the-box': list(form('a thing and how many', parseBoxItem, 'One thing in the box, with its count.', 'SATA data lead x2'),
    'What the box holds beside the part.', '[SATA data lead x2, M.2 screw x2, I/O shield]', { printed: 'The handbook’s page on the contents of the package.' }),
} as const;

export const draw = (what: string) => group({
  typical: power('Power drawn in ordinary use.', '35 W'),
  peak: power('The most it draws for seconds or longer.', '60 W'),
}, what, '{ typical: 35 W, peak: 60 W }');

/** Short peaks of a part that draws in bursts. */
export const peaks = list(group({
  power: power('Power at the peak.', '520 W'),
  lasts: quantity('time', 'ms', 'How long a peak lasts at most.', '10 ms'),
}, 'One class of peak.'), 'Short peaks over the sustained draw, by how long they last.', '[{ power: 520 W, lasts: 10 ms }]');

export const plugs = (what: string) =>
  named(count('How many plugs of this kind.', '2'), what, '{ 24-pin: 1, EPS 8-pin: 2 }');

/** The kinds of plug, spelled as the trade spells them. */
export const plugKinds = ['24-pin', 'EPS 8-pin', 'EPS 4-pin', 'PCIe 8-pin', 'PCIe 6-pin', '16-pin', 'SATA power', 'peripheral 4-pin'] as const;

export const fanFields = {
  size: length('Frame width of the fan.', '140 mm'),
  thickness: length('Frame depth of the fan.', '25 mm'),
  pins: count('Pins of its plug: 3 runs by voltage, 4 by PWM.', '4'),
  current: quantity('current', 'A', 'Current of one fan at full speed.', '0.18 A', { printed: 'The label on the hub.' }),
  'start-current': quantity('current', 'A', 'Current of one fan while it starts.', '0.5 A'),
  speed: quantity('rotation-speed', 'rpm', 'Full speed.', '1200 rpm'),
  airflow: quantity('flow', 'm³/h', 'Air moved with nothing in the way, at full speed.', '96 m³/h'),
  pressure: quantity('pressure', 'Pa', 'Pressure against a closed end, at full speed.', '14 Pa'),
  level: quantity('sound-level', 'dBA', 'Sound pressure level at full speed.', '24 dBA'),
  'level-at': quantity('length', 'm', 'The distance at which the level was measured.', '1 m'),
  'hole-pitch': length('Distance between two neighbouring fixing holes.', '124.5 mm'),
} as const;

export const radiatorFields = {
  class: text('Its class: fan size times number of fans.', '240'),
  length: length('Real length, end tanks included.', '275 mm'),
  width: length('Real width.', '120 mm'),
  thickness: length('Thickness without fans.', '27 mm'),
  'fan-size': length('Size of the fans it takes.', '120 mm'),
  fans: count('How many fans it takes on one side.', '2'),
} as const;
