// Figures of the rails: what the parts draw at 12 V and at 5 V, and what the supply delivers there.
import type { Build, Placed } from '../build/build';
import { SLOT_POWER } from '../trade/connectors';
import { FIVE_VOLT_LEAST_W, RAIL_V, railOf, TWELVE_VOLT_SHARE_PERCENT, type MainRail } from '../trade/power';
import {
  between,
  copyWith,
  decidedBy,
  derive,
  figure,
  known,
  least,
  missing,
  times,
  total,
  unknown,
  type Figure,
  type Missing,
} from './figure';
import { cardDraw, connectorsOf, slotPower, type Card } from './card-power';
import { memo } from './memo';
import { howMany, partDraws, processorDraw } from './power';
import { ratingOf } from './supply-rating';

type Supply = Placed<'supply'>;

const slotSource = 'PCI Express Card Electromechanical Specification: 3.3 V × 3 A in a slot';

/** What the parts draw at 12 V together. How a board, memory and drives split their draw no file states. */
export const twelveVoltDraw = memo(
  (build: Build): Figure =>
    total(
      'draw at 12 V',
      'power',
      [...partDraws(build)].map(([placed, draw]) => twelveVoltShare(placed, draw)),
      { unit: 'W' },
    ),
);

function twelveVoltShare(placed: Placed, draw: Figure): Figure {
  const label = `12 V share of ${placed.label}`;
  switch (placed.role) {
    case 'graphics':
    case 'cards': {
      const aside = between(0, SLOT_POWER.x16.at3V3A * 3.3, 'power', `3.3 V share of ${placed.label}`, {
        unit: 'W',
        source: slotSource,
      });
      const less = times(aside, howMany(placed));
      return derive(
        label,
        'power',
        [draw, less],
        `${draw.label} − ${less.label}`,
        (whole, at3V3) => Math.max(0, whole - at3V3),
        { unit: 'W' },
      );
    }
    case 'drives':
      return isFiveVolt(placed) ? known(0, 'power', label, { unit: 'W', source: fiveSource }) : anyShare(placed, draw);
    case 'board':
    case 'memory':
      return anyShare(placed, draw);
    default:
      return draw;
  }
}

const fiveSource = 'manuals of 2.5 in drives with SATA: they run on 5 V alone';

/** A 2.5 in drive with SATA takes nothing at 12 V. */
function isFiveVolt(placed: Placed): placed is Placed<'drives'> {
  if (placed.role !== 'drives') return false;
  const { shape, bus } = (placed as Placed<'drives'>).part;
  return shape.value === '2.5 in' && bus.value === 'SATA';
}

function anyShare(placed: Placed, draw: Figure): Figure {
  const share = between(0, 100, 'percent', `part of it that ${placed.label} takes at 12 V`, {
    unit: '%',
    source: 'no file states it: from nothing to all',
  });
  return derive(
    `12 V share of ${placed.label}`,
    'power',
    [draw, share],
    `${draw.label} × ${share.label}`,
    (whole, percent) => (percent === 0 ? 0 : (whole * percent) / 100),
    { unit: 'W' },
  );
}

/**
 * What the drives that run on 5 V alone draw there, and up to all of what those draw that do not say whether they are
 * such; undefined where the build has none.
 */
export const fiveVoltDraw = memo((build: Build): Figure | undefined => {
  const draws = partDraws(build);
  const drives = build.parts.drives.flatMap((drive) => {
    const draw = draws.get(drive)!;
    if (isFiveVolt(drive)) return [draw];
    const lacks = fiveVoltLacks(drive);
    return lacks.length > 0 ? [copyWith(draw, { lo: 0, missing: [...draw.missing, ...lacks] })] : [];
  });
  return drives.length === 0 ? undefined : total('draw of the 2.5 in drives at 5 V', 'power', drives, { unit: 'W' });
});

/** What a drive does not say that may be one of 2.5 in with SATA. */
function fiveVoltLacks({ part: { shape, bus }, label }: Placed<'drives'>): Missing[] {
  if ((shape.value ?? '2.5 in') !== '2.5 in' || (bus.value ?? 'SATA') !== 'SATA') return [];
  return [
    ...(shape.value === undefined ? [missing(shape, `shape of ${label}`)] : []),
    ...(bus.value === undefined ? [missing(bus, `bus of ${label}`)] : []),
  ];
}

/**
 * What the 12 V rails deliver together: as the label’s currents and limits say; without them, nearly all of the
 * rating.
 */
export function twelveVoltLimit(build: Build, supply: Supply): Figure {
  const label = `12 V rails of ${supply.label}`;
  const { rails } = supply.part;
  if (!rails.value) {
    const share = between(TWELVE_VOLT_SHARE_PERCENT.low, TWELVE_VOLT_SHARE_PERCENT.high, 'percent', '12 V share', {
      unit: '%',
      source: 'common practice: a supply delivers nearly all of its rating at 12 V',
    });
    const whole = derive(
      label,
      'power',
      [ratingOf(build, supply), share],
      'rating × 12 V share',
      (watts, percent) => (watts * percent) / 100,
      { unit: 'W' },
    );
    return copyWith(whole, { missing: [...whole.missing, missing(rails, `rails of ${supply.label}`)] });
  }
  const powers = railPowers(supply, '12 V');
  if (powers.length === 0) return unknown('power', label, [missing(rails, `12 V rail of ${supply.label}`)]);
  return leastOf(label, [total(label, 'power', powers, { unit: 'W' }), ...sharedLimits(supply, '12 V')]);
}

/** What the 5 V rail delivers, alone and with those it shares a limit with; without its label, the usual least. */
export function fiveVoltLimit(supply: Supply): Figure {
  const label = `5 V rail of ${supply.label}`;
  const powers = railPowers(supply, '5 V');
  const shared = sharedLimits(supply, '5 V');
  if (powers.length > 0) return leastOf(label, [total(label, 'power', powers, { unit: 'W' }), ...shared]);
  const { rails } = supply.part;
  const usual = copyWith(
    between(FIVE_VOLT_LEAST_W, Infinity, 'power', label, { unit: 'W', source: 'common practice: 10 A at least' }),
    { missing: [missing(rails, `5 V rail of ${supply.label}`)] },
  );
  return leastOf(label, [usual, ...shared]);
}

const leastOf = (label: string, all: readonly Figure[]): Figure => (all.length === 1 ? all[0]! : least(label, all));

/** A 12 V rail whose name says what hangs on it, with what that draws there and what the rail delivers. */
interface NamedRail {
  readonly name: string;
  readonly feeds: 'processor' | 'cards';
  readonly draw: Figure;
  readonly limit: Figure;
}

/** The rails that are named for processor or cards. A processor’s converters lose something more on the way. */
export function namedRails(build: Build, supply: Supply): NamedRail[] {
  const { processor, graphics, cards } = build.parts;
  const fed = [...graphics, ...cards].filter((card) => card.part.edge.value !== 'M.2');
  const load = (name: string): Pick<NamedRail, 'feeds' | 'draw'> | undefined => {
    if (name === '+12V CPU' && processor) return { feeds: 'processor', draw: processorDraw(processor) };
    if (name !== '+12V PCIe' || fed.length === 0) return undefined;
    const draws = fed.map((card) => connectorDraw(build, card));
    return { feeds: 'cards', draw: total('draw of the cards’ connectors', 'power', draws, { unit: 'W' }) };
  };
  return [...(supply.part.rails.value ?? [])].flatMap(([name, rail]) => {
    const on = load(name);
    const [limit] = on ? railPowers(supply, '12 V', [[name, rail]]) : [];
    return on && limit ? [{ name, ...on, limit }] : [];
  });
}

/** What a card takes through its power connectors: what its slot does not give, up to all of its draw. */
function connectorDraw(build: Build, card: Card): Figure {
  const whole = times(cardDraw(build, card), howMany(card));
  const label = `connectors of ${card.label}`;
  const connectors = connectorsOf(card);
  if (!connectors) {
    const open = missing(card.part.connectors, `connectors of ${card.label}`);
    return copyWith(whole, { label, lo: 0, missing: [...whole.missing, open] });
  }
  if (connectors.length === 0)
    return decidedBy(known(0, 'power', label, { unit: 'W', source: 'it has none' }), card.part.connectors);
  const slot = slotPower(card);
  const given = times(between(0, slot.hi, 'power', slot.label, { unit: 'W', source: slotSource }), howMany(card));
  const draw = derive(
    label,
    'power',
    [whole, given],
    `${whole.label} − ${given.label}`,
    (all, bySlot) => Math.max(0, all - bySlot),
    { unit: 'W' },
  );
  return decidedBy(draw, card.part.connectors, card.part.edge);
}

function railPowers({ part: { rails } }: Supply, kind: MainRail, among = [...(rails.value ?? [])]): Figure[] {
  return among.flatMap(([name, { voltage, current }]) => {
    const volts = figure(voltage, `voltage of rail ${name}`);
    const is = railOf(name, voltage.value?.lo);
    if (is !== kind && is !== undefined) return [];
    const nominal =
      volts.missing.length > 0 && is !== undefined
        ? known(RAIL_V[kind], 'voltage', `voltage of rail ${name}`, { unit: 'V', source: 'its name' })
        : volts;
    return [
      derive(
        `power of rail ${name}`,
        'power',
        [nominal, figure(current, `current of rail ${name}`)],
        'voltage × current',
        (u, i) => u * i,
        { unit: 'W' },
      ),
    ];
  });
}

/** Limits over several rails of which one is of this kind, and none of another main kind with a load of its own. */
function sharedLimits({ part: { combined }, label }: Supply, kind: MainRail): Figure[] {
  return (combined.value ?? []).flatMap(({ rails, power }) => {
    const kinds = (rails.value ?? []).map((one) => railOf(one.value ?? '', undefined));
    return kinds.includes(kind) && (kind === '12 V' ? kinds.every((one) => one === kind) : !kinds.includes('12 V'))
      ? [figure(power, `combined limit of ${label}`)]
      : [];
  });
}
