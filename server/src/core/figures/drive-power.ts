// Figures of the power that drives take through one cable or splitter: how many hang on it, and what they draw.
import type { Build, Placed } from '../build/build';
import { CONNECTORS, CONTACT_18_AWG_A, isPowerConnector, type Connector } from '../trade/connectors';
import { connectorCount, connectorOf, connectorsOn, startOf, type Cable } from './cables';
import { housed, countDrives } from './drive-places';
import { startDraw } from './drive-start';
import {
  between,
  copyWith,
  derive,
  known,
  missing,
  most,
  number,
  times,
  total,
  type Figure,
  type Missing,
} from './figure';
import { memo } from './memo';
import { driveDraw, howMany } from './power';
import type { Drive } from './storage';

/** The drives with a housing of their own, which a SATA power connector feeds; one that only may be is among them. */
export const fedDrives = memo((build: Build): readonly Drive[] =>
  build.parts.drives.filter((drive) => housed(drive) !== false),
);

/** How many they are. */
export const fedCount = memo((build: Build): Figure => {
  const label = 'drives on SATA power connectors';
  return countDrives(build, label, housed) ?? total(label, 'count', []);
});

export interface DriveLoad {
  readonly count: Figure;
  /** For as long as the drives work, and for the seconds in which they all start. */
  readonly running: Figure;
  readonly starting: Figure;
}

/** The least and the most that so many of the drives draw, each drive as the lightest or the heaviest of them. */
export function driveLoad(build: Build, count: Figure, on: string): DriveLoad {
  const of = (label: string, draw: (drive: Drive) => Figure): Figure => {
    const each = fedDrives(build).map(draw);
    const heaviest = most(label, each, { unit: 'W' });
    const one = copyWith(heaviest, { lo: Math.min(...each.map(({ lo }) => Math.max(0, lo))) });
    return derive(label, 'power', [count, one], 'drives × draw of one', (n, watts) => n * watts, { unit: 'W' });
  };
  return {
    count,
    running: of(`draw of the drives on ${on}`, driveDraw),
    starting: of(`draw of the drives on ${on} while they start`, startDraw),
  };
}

const feedsDrives = (kind: string): boolean => kind === 'SATA power';

/** Adapters and splitters that end in SATA power connectors. */
export const driveAdapters = memo((build: Build): readonly Cable[] =>
  build.parts.cables.filter((cable) => {
    const [connector, start] = [connectorOf(cable), startOf(cable)];
    return 'kind' in connector && feedsDrives(connector.kind) && 'connectors' in start && isPowerConnector(start.at);
  }),
);

/**
 * How many drives hang on one such splitter: those that find no other connector at least, and no more than it has
 * connectors.
 */
export function drivesOn(build: Build, cable: Cable): Figure {
  const { supply, cables } = build.parts;
  const others = [
    ...(supply ? [connectorCount(supply.part.connectors, 'SATA power', supply.label)] : []),
    ...cables
      .filter((other) => {
        const connector = connectorOf(other);
        return other !== cable && 'kind' in connector && feedsDrives(connector.kind);
      })
      .map((other) => times(connectorsOn(other), howMany(other))),
  ];
  const elsewhere = total('SATA power connectors elsewhere', 'count', others);
  const own = connectorsOn(cable);
  const same = howMany(cable);
  // A splitter that starts from SATA power takes connectors of the supply away.
  const start = startOf(cable);
  const taken = 'connectors' in start && start.at === 'SATA power' ? times(start.connectors, same) : number(0, 'none');
  const all = fedCount(build);
  const must = Math.max(0, all.lo - Math.max(0, elsewhere.hi - taken.lo)) / Math.max(1, same.hi);
  const may = Math.min(all.hi, own.hi);
  const lo = Math.min(Math.ceil(must), may);
  return copyWith(between(lo, may, 'count', `drives on ${cable.label}`, { source: 'counted in the build' }), {
    missing: lo === may ? [] : [...all.missing, ...own.missing, ...elsewhere.missing],
    inputs: [],
  });
}

/** What connectors of a kind carry over all their rails; drives take 12 V and 5 V. */
export function railsPower(kind: Connector, joined: Figure): Figure {
  const { rails, source } = CONNECTORS[kind];
  const used = rails.filter(({ voltageV }) => voltageV !== 3.3);
  const low = used.reduce((sum, { voltageV, currentA }) => sum + voltageV * currentA.low, 0);
  const high = used.reduce((sum, { voltageV, currentA }) => sum + voltageV * currentA.high, 0);
  return times(between(low, high, 'power', `${kind} connector`, { unit: 'W', source }), joined);
}

/** What one of the supply’s own cables to drives carries: a wire for 12 V and one for 5 V. */
export const driveWires = between(
  (12 + 5) * CONTACT_18_AWG_A.low,
  (12 + 5) * CONTACT_18_AWG_A.high,
  'power',
  'wires of a SATA power cable',
  {
    unit: 'W',
    source: 'ATX Version 3 design guide, doc. 336521, section 2.2.1; one wire a voltage: common practice',
  },
);

/** The upper end of a limit: for the seconds of a start nothing less counts. */
export const forSeconds = (limit: Figure): Figure =>
  copyWith(known(limit.hi, 'power', `${limit.label} for seconds`, { unit: 'W', source: 'upper end of the limit' }), {
    missing: limit.missing,
  });

/** As many SATA power connectors as a cable of a supply usually has at most. Source: common practice. */
const usualMost = 4;

/**
 * Drives on the most loaded of the supply’s own cables, when they are spread evenly; without a list of them, as many
 * as usual cables have connectors. Facts that a list lacks; undefined where no drive hangs on one.
 */
export function drivesOnOwnCable(
  build: Build,
  supply: Placed<'supply'>,
): { readonly count: Figure } | { readonly missingFacts: readonly Missing[] } | undefined {
  if (driveAdapters(build).length > 0 || fedDrives(build).length === 0) return undefined;
  const listed = supply.part['own-cables'];
  const label = `drives on one SATA power cable of ${supply.label}`;
  const all = fedCount(build);
  if (!listed.value)
    return {
      count: copyWith(
        between(Math.min(1, all.lo), Math.min(usualMost, all.hi), 'count', label, {
          source: 'common practice: at most four connectors on a cable',
        }),
        { missing: [missing(listed, `cables of ${supply.label}`)] },
      ),
    };
  const rows = listed.value.filter(({ connector }) => feedsDrives(connector.value ?? ''));
  const lacks = rows.flatMap(({ count, connectors }) => [
    ...(count.value === undefined ? [missing(count, `number of SATA power cables of ${supply.label}`)] : []),
    ...(connectors.value === undefined
      ? [missing(connectors, `connectors on a SATA power cable of ${supply.label}`)]
      : []),
  ]);
  if (lacks.length > 0) return { missingFacts: lacks };
  const cables = rows.reduce((sum, { count }) => sum + count.value!, 0);
  if (cables === 0) return undefined;
  const longest = Math.max(...rows.map(({ connectors }) => connectors.value!));
  const count = derive(
    label,
    'count',
    [all, number(cables, `SATA power cables of ${supply.label}`, 'the supply’s list of cables')],
    'drives ÷ cables, rounded up, at most the connectors of one',
    (drives, of) => Math.min(Math.ceil(drives / of), longest),
  );
  return { count };
}
