// Figures of the board's fan headers: which connectors go into which, the currents there, and the splitters between.
import { boxHas } from './box-contents';
import type { Build, Placed } from '../build/build';
import type { board } from '../parts/board';
import type { Fact, Group } from '../parts/fact';
import type { Quantity } from '../quantity';
import { FAN_START_SOURCE, FAN_START_TIMES, HEADER_CURRENT_A, HEADER_SOURCE } from '../trade/draw-limits';
import { isLiquid } from './coolers';
import {
  copyWith,
  counted,
  decidedBy,
  figure,
  least,
  missing,
  most,
  number,
  times,
  total,
  unknown,
  type Figure,
  type Missing,
} from './figure';
import { notNegative } from './guard';
import { memo } from './memo';
import { howMany } from './power';
import { all, any, lacking, sure, type Truth } from './truth';

export type Header = Group<(typeof board)['headers']['of']['fields']>;

/** Connectors of one part that want a fan header. */
export interface Connectors {
  readonly placed: Placed;
  readonly label: string;
  /** The key of the build that names the header. */
  readonly header: Fact<string>;
  readonly count: Figure;
  /** Headers that they want: one where the part's own box joins them, else one each. */
  readonly headers: Figure;
  /** Current of all of them at full speed, and while they start. */
  readonly steady: Figure;
  readonly start: Figure;
  readonly pins: Fact<number>;
  readonly pump: boolean;
}

interface Electrics {
  readonly current: Fact<Quantity>;
  readonly 'start-current'?: Fact<Quantity>;
  readonly pins: Fact<number>;
}

/** Every connector of the build that wants a fan header, with the header it names or not. */
export const fanConnectors = memo((build: Build): readonly Connectors[] => {
  const { fans, cooler } = build.parts;
  const of = fans.map((fan) => connectorsOf(fan, fan.label, fan.at.header, howMany(fan), fan.part));
  return cooler ? [...connectorsOfCooler(cooler), ...of] : of;
});

function connectorsOfCooler(cooler: Placed<'cooler'>): Connectors[] {
  const { fans, pump } = cooler.part;
  const connectors: Connectors[] = [];
  // A passive cooler says so with a count of none; one that says nothing may have fans.
  if (fans.count.value !== 0) {
    const label = `the fans of ${cooler.label}`;
    const count = notNegative(counted(fans.count, `how many fans ${cooler.label} has`));
    connectors.push({
      ...connectorsOf(cooler, label, cooler.at.header, count, fans),
      headers: decidedBy(joinedInBox(cooler, count), cooler.at.header),
    });
  }
  if (isLiquid(cooler)) {
    connectors.push({
      ...connectorsOf(
        cooler,
        `the pump of ${cooler.label}`,
        cooler.at['pump-header'],
        number(1, `pump of ${cooler.label}`),
        pump,
      ),
      pump: true,
    });
  }
  return connectors;
}

/** Headers that a cooler's fans want: a cooler of several fans often brings the splitter for them. */
function joinedInBox(cooler: Placed<'cooler'>, count: Figure): Figure {
  if (count.hi <= 1) return count;
  const splitter = boxHas(cooler, 'fan splitter');
  if (splitter.is === undefined)
    return copyWith(count, { lo: Math.min(count.lo, 1), missing: [...count.missing, ...splitter.missing] });
  const box = cooler.part['in-the-box'];
  if (!splitter.is) return decidedBy(count, box);
  const joined = least(`headers for the fans of ${cooler.label}`, [
    count,
    number(1, 'splitter in its box', 'counted in the box'),
  ]);
  return decidedBy(joined, box);
}

function connectorsOf(
  placed: Placed,
  label: string,
  header: Fact<string>,
  count: Figure,
  facts: Electrics,
): Connectors {
  const steady = notNegative(figure(facts.current, `current of ${label}`));
  const stated = facts['start-current'];
  const atStart = stated ? startOf(stated, steady, label) : steady;
  // A start takes no less than running does, whatever is stated or not.
  const start =
    atStart === steady ? steady : most(`current of ${label} at the start`, [atStart, steady], { unit: 'A' });
  return {
    placed,
    label,
    header,
    count,
    headers: decidedBy(count, header),
    steady: decidedBy(times(steady, count), header),
    start: decidedBy(times(start, count), header),
    pins: facts.pins,
    pump: false,
  };
}

/** The current of one fan while it starts: as stated, else so many times what it takes at full speed at most. */
function startOf(stated: Fact<Quantity>, steady: Figure, label: string): Figure {
  const read = notNegative(figure(stated, `start current of ${label}`));
  if (stated.node || !Number.isFinite(steady.hi)) return read;
  return copyWith(read, { lo: steady.lo, hi: FAN_START_TIMES * steady.hi, unit: 'A', source: FAN_START_SOURCE });
}

/** A header that is in use, with what goes into it. */
export interface Load {
  readonly name: string;
  readonly by: Placed<'board'>;
  readonly header: Header | undefined;
  readonly missingFacts: readonly Missing[];
  readonly connectors: readonly Connectors[];
  readonly start: Figure;
  /** At full speed, once all have started. */
  readonly running: Figure;
  readonly limit: Figure;
  /** Whether a splitter takes the fans' power from the supply instead. */
  readonly fedElsewhere: Truth;
}

/** The headers in use, in the order in which the build names them. */
export const headerLoads = memo((build: Build): readonly Load[] => {
  const { board } = build.parts;
  if (!board) return [];
  const by = new Map<string, Connectors[]>();
  for (const connectors of fanConnectors(build)) {
    const name = connectors.header.value;
    if (name !== undefined) by.set(name, [...(by.get(name) ?? []), connectors]);
  }
  return [...by].map(([name, connectors]) => loadOf(build, board, name, connectors));
});

function loadOf(build: Build, board: Placed<'board'>, name: string, connectors: readonly Connectors[]): Load {
  const { headers } = board.part;
  const header = headers.value?.get(name);
  const missingFacts = header ? [] : [missing(headers, `header ${name} of ${board.label}`)];
  const limit = header ? headerCurrent(header, name) : unknown('current', `current of ${name}`, missingFacts);
  const start = total(
    `current at the start on ${name}`,
    'current',
    connectors.map((one) => one.start),
    { unit: 'A' },
  );
  const running = total(
    `current on ${name} at full speed`,
    'current',
    connectors.map((one) => one.steady),
    { unit: 'A' },
  );
  return {
    name,
    by: board,
    header,
    missingFacts,
    connectors,
    limit,
    fedElsewhere: fedBySupply(build, name),
    start,
    running,
  };
}

/** What a header supplies: as stated, else at least what every one does. */
function headerCurrent(header: Header, name: string): Figure {
  const read = figure(header.current, `current of ${name}`);
  if (header.current.node || (header.kind.value !== 'fan' && header.kind.value !== 'pump')) return read;
  return copyWith(read, { lo: HEADER_CURRENT_A, unit: 'A', source: HEADER_SOURCE });
}

/** A cable that is a fan splitter, or may be one for all that its file says. */
export interface Splitter {
  readonly cable: Placed<'cables'>;
  /** A hub may have a power cable of its own. */
  readonly hub: boolean;
  readonly missingFacts: readonly Missing[];
}

/** The fan splitters that the build lists as cables. */
export const splitters = memo((build: Build): readonly Splitter[] =>
  build.parts.cables.flatMap((cable): Splitter[] => {
    const connector = cable.part.connector.value ?? cable.at.kind.value;
    if (connector === undefined)
      return [{ cable, hub: false, missingFacts: [missing(cable.part.connector, `what ${cable.label} connects`)] }];
    const hub = connector === 'fan hub';
    return hub || connector === 'fan splitter' ? [{ cable, hub, missingFacts: [] }] : [];
  }),
);

/**
 * A hub on this header whose power comes from the supply: the header then only sets the speed. A plain splitter takes
 * it from the header; what takes it elsewhere says so.
 */
function fedBySupply(build: Build, name: string): Truth {
  const on = splitters(build).filter(({ cable }) => cable.at.header.value === name);
  return any(
    sure(false),
    ...on.map(({ cable, missingFacts, hub }) => {
      const { from } = cable.part;
      const fed =
        from.value === undefined && hub
          ? lacking([missing(from, `where the fan hub on ${name} takes its power from`)])
          : sure(from.value === 'SATA power' || from.value === 'peripheral 4-pin', from);
      return missingFacts.length > 0 ? all(lacking(missingFacts), fed) : fed;
    }),
  );
}

/** The board's headers that fans and pumps plug into. */
export function fanHeaders(board: Placed<'board'>): readonly (readonly [string, Header])[] {
  return [...(board.part.headers.value ?? [])].filter(
    ([, header]) => header.kind.value === 'fan' || header.kind.value === 'pump',
  );
}

/** Fan headers that nothing names yet. */
export const freeHeaders = memo((build: Build): readonly (readonly [string, Header])[] => {
  const { board } = build.parts;
  if (!board) return [];
  const taken = new Set(fanConnectors(build).map((connectors) => connectors.header.value));
  return fanHeaders(board).filter(([name, header]) => header.kind.value === 'fan' && !taken.has(name));
});
