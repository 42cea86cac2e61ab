// Which step comes before which, and why; and how an order is worked out from that.
import { ASSEMBLING, HANDLING, RUNNING, STEP_KINDS, type StepKind } from './steps';

/** What must be so of a build for a rule to bind it. */
export type Condition =
  | 'firmware before processor'
  | 'firmware with this processor'
  | 'cooler over memory'
  | 'module under cooler'
  | 'module under card'
  | 'closed tray'
  | 'radiator on top'
  | 'processor by itself'
  | 'card in the board';

/**
 * `needed`: the later step fails or is undone without the earlier. `reach`: it can be done, but only by reaching
 * under what came before. `usual`: the order a bench keeps; other checks judge what hangs on it.
 */
export type Strength = 'needed' | 'reach' | 'usual';

export interface OrderRule {
  readonly before: StepKind;
  readonly after: StepKind;
  /** Ends a sentence after “because”. */
  readonly because: string;
  readonly strength: Strength;
  readonly when?: Condition;
  /** Another step that serves as well as the earlier one. */
  readonly or?: StepKind;
  /** Out of order it damages parts at once. */
  readonly hurts?: true;
}

type More = Partial<Pick<OrderRule, 'strength' | 'when' | 'or' | 'hurts'>>;

const rule = (
  before: StepKind | readonly StepKind[],
  after: StepKind | readonly StepKind[],
  because: string,
  more: More = {},
): OrderRule[] =>
  [before].flat().flatMap((b) =>
    [after]
      .flat()
      .filter((a) => a !== b)
      .map((a) => ({ before: b, after: a as StepKind, because, strength: 'needed' as const, ...more })),
  );

const reach = { strength: 'reach' } as const;
const usual = { strength: 'usual' } as const;
const handling = [...HANDLING];
const cards = ['fit card', 'fit graphics'] as const;

/** The order of work. Source: makers' handbooks and service manuals; common practice. */
export const ORDER_RULES: readonly OrderRule[] = [
  ...rule('read handbooks', ['update firmware', ...handling], 'the makers’ handbooks decide how the rest is done'),
  ...rule(
    'read handbooks',
    STEP_KINDS.filter((kind) => kind !== 'update firmware' && !HANDLING.has(kind)),
    'the makers’ handbooks decide how the rest is done',
    usual,
  ),
  ...rule('let parts warm up', 'take parts from bags', 'moist air settles on cold parts once they are open'),
  ...rule(
    ['unplug mains', 'drain residual charge'],
    'open case',
    'makers’ service manuals have the cable out before the case is opened',
    usual,
  ),
  ...rule(
    'unplug mains',
    ['drain residual charge', ...handling],
    'a supply with its cable in keeps parts of a board powered',
    usual,
  ),
  ...rule('drain residual charge', handling, 'a supply holds charge for a while after it is unplugged', usual),
  ...rule(['equalise', 'wear strap'], handling, 'a person carries charge that is not felt', usual),
  ...rule('take parts from bags', handling, 'parts come out of their bags to be fitted', usual),

  ...rule('update firmware', 'fit processor', 'the board starts this processor only with newer firmware', {
    when: 'firmware before processor',
  }),
  ...rule('fit processor', 'update firmware', 'the update runs on this processor', {
    when: 'firmware with this processor',
  }),
  ...rule('first start', 'update firmware', 'the update runs on a machine that starts', {
    when: 'firmware with this processor',
    or: 'bench start',
  }),
  ...rule(
    'update firmware',
    ['default settings', 'memory test', 'set profile', 'install system'],
    'an update puts the settings back',
    usual,
  ),
  ...rule(
    'fit processor',
    'take off socket cover',
    'the contacts stay covered until the processor lies on them',
    usual,
  ),
  // Where the processor is clipped under the heat sink, both are set down together with the paste already on.
  ...rule('fit processor', 'apply paste', 'the paste goes onto the processor’s lid', { when: 'processor by itself' }),
  ...rule('fit processor', 'fit cooler', 'the cooler stands on the processor'),
  ...rule('fit back plate', 'fit cooler', 'the cooler is screwed to it'),
  ...rule('fit back plate', 'fit board', 'a closed tray leaves no way behind the board', { when: 'closed tray' }),
  ...rule('clean surfaces', 'apply paste', 'paste takes to clean metal only'),
  ...rule('clean surfaces', 'fit cooler', 'paste takes to clean metal only'),
  ...rule('remove film', 'apply paste', 'the cooler is made ready before the paste dries', usual),
  ...rule('remove film', 'fit cooler', 'a film between cooler and lid keeps the heat in'),
  ...rule('apply paste', 'fit cooler', 'nothing can be spread once the cooler sits'),
  ...rule('fit memory', 'fit cooler', 'the cooler stands over the memory slots', {
    ...reach,
    when: 'cooler over memory',
  }),
  ...rule('fit M.2 drive', 'fit cooler', 'the cooler stands over its slot', { ...reach, when: 'module under cooler' }),
  ...rule('fit M.2 drive', cards, 'the card lies over its slot', { ...reach, when: 'module under card' }),

  ...rule(['fit processor', 'fit memory'], ['bench start', 'first start'], 'nothing starts without it'),
  ...rule('fit cooler', ['bench start', 'first start'], 'a processor without its cooler overheats within seconds', {
    hurts: true,
  }),
  ...rule('fill loop', ['bench start', 'first start'], 'a dry pump is ruined, and nothing cools the processor', {
    hurts: true,
  }),
  ...rule(
    ['connect 24-pin', 'connect EPS', 'connect fan cables', 'connect pump cable'],
    'bench start',
    'nothing starts without it',
    usual,
  ),
  ...rule(
    'bench start',
    ['set standoffs', 'fit I/O shield', 'fit supply', 'fit fans', 'fit board', 'fit drive', 'check inside'],
    'what fails is found while all of it can be reached',
    usual,
  ),
  ...rule('set standoffs', 'fit board', 'the board is screwed to them'),
  ...rule('fit I/O shield', 'fit board', 'it goes in from inside, behind the board'),
  ...rule('fit board', cards, 'cards stand in its slots and are screwed to the case', { when: 'card in the board' }),
  ...rule(
    'fit board',
    [
      'fit radiator',
      'connect 24-pin',
      'connect EPS',
      'connect fan cables',
      'connect pump cable',
      'connect front cables',
    ],
    'the board is in its place then',
    usual,
  ),
  ...rule('connect EPS', 'fit radiator', 'a radiator in the top closes the gap to its connector', {
    ...reach,
    when: 'radiator on top',
  }),
  ...rule('connect front cables', cards, 'a card lies over the front headers', reach),
  ...rule(
    'fit supply',
    ['connect card power', 'connect drive cables', ...cards],
    'the cables come from the supply',
    usual,
  ),
  // In a small case cables are plugged in before the part goes to its place.
  ...rule(cards, ['fit card support', 'connect card power'], 'the card is in its place then', usual),
  ...rule('fit drive', 'connect drive cables', 'the drive is in its place then', usual),

  ...rule(['fit cooler', 'fit radiator'], 'fill loop', 'an open loop does not hold what is filled in'),
  // A test with air may come before; with coolant it comes behind.
  ...rule('fill loop', 'leak test', 'the loop is tested as it will run', usual),
  ...rule(
    'leak test',
    ['close case', 'plug in mains', 'first start'],
    'coolant that leaks onto powered parts ruins them',
    usual,
  ),
  ...rule(ASSEMBLING, 'close case', 'a closed case leaves no way in'),
  ...rule('check inside', 'close case', 'a closed case leaves no way to look', usual),
  ...rule('take off strap', ['plug in mains', 'first start'], 'nobody is tied to earth beside live parts', usual),
  ...rule(
    ['connect 24-pin', 'connect EPS', 'connect card power', 'connect drive cables'],
    'plug in mains',
    'no cable is plugged in with the mains on',
  ),
  ...rule(['close case', 'check inside'], 'plug in mains', 'the lid keeps hands out of a live machine', usual),

  ...rule('plug in mains', 'first start', 'there is no power yet'),
  ...rule('first start', RUNNING, 'the machine has not run yet', { or: 'bench start' }),
  ...rule('wait for memory training', ['default settings', 'memory test'], 'the first start is not over before', usual),
  ...rule('default settings', 'set profile', 'default settings switch the profile off again'),
  ...rule('default settings', 'memory test', 'memory is first proven as it runs by itself', usual),
  ...rule('memory test', 'set profile', 'a fault found before the profile is the memory’s own', usual),
  ...rule(['memory test', 'set profile'], 'install system', 'memory that errs spoils what is installed', usual),
  ...rule('drive test', 'install system', 'a drive that fails takes with it what is installed', usual),
  ...rule('set profile', 'stress test', 'it proves the machine as it will be used'),
  ...rule('install system', 'stress test', 'it proves the machine as it will be used', usual),
  ...rule(
    ['memory test', 'stress test', 'drive test', 'measure', 'record settings'],
    'hand over',
    'it is what is handed over',
  ),
  ...rule('set profile', 'record settings', 'settings are written down as they stay', usual),
  ...rule('stress test', 'measure', 'temperatures are read under load', usual),
];

/** An edge between two things, by their numbers. */
export type Edge = readonly [before: number, after: number];

/**
 * Numbers 0 … size − 1 in an order that keeps every edge; of those that could come next, the lowest. What lies on
 * or behind a cycle is left out. Source: Kahn's method.
 */
export function topologicalOrder(size: number, edges: readonly Edge[]): number[] {
  const waiting = new Array<number>(size).fill(0);
  const later: number[][] = Array.from({ length: size }, () => []);
  for (const [before, after] of edges) {
    waiting[after]!++;
    later[before]!.push(after);
  }
  const order: number[] = [];
  const free = waiting.flatMap((count, i) => (count === 0 ? [i] : []));
  while (free.length > 0) {
    const next = free.splice(free.indexOf(Math.min(...free)), 1)[0]!;
    order.push(next);
    for (const after of later[next]!) if (--waiting[after]! === 0) free.push(after);
  }
  return order;
}

/**
 * The shortest way along edges from one number to another, both included; `[start]` where they are the same;
 * undefined where there is none.
 */
export function wayFrom(start: number, end: number, edges: readonly Edge[]): number[] | undefined {
  const cameFrom = new Map<number, number>([[start, start]]);
  for (const queue = [start]; queue.length > 0; ) {
    const at = queue.shift()!;
    if (at === end) return wayBack(start, end, cameFrom);
    for (const [before, after] of edges) {
      if (before !== at || cameFrom.has(after)) continue;
      cameFrom.set(after, at);
      queue.push(after);
    }
  }
  return undefined;
}

function wayBack(start: number, end: number, cameFrom: ReadonlyMap<number, number>): number[] {
  const way = [end];
  while (way[0] !== start) way.unshift(cameFrom.get(way[0]!)!);
  return way;
}
