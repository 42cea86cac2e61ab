// What the picture of power is laid out from: bars and the flows between them, each with its figure and its words.
import type { Build, Placed } from '../../../core/build/build';
import { times, type Figure } from '../../../core/figures/figure';
import { wallPower } from '../../../core/figures/mains';
import { peaksOf } from '../../../core/figures/peaks';
import { howMany, sustainedDraw } from '../../../core/figures/power';
import { supplyLoss, together, type Feed, type Flow } from '../../../core/figures/power-flows';
import { ends, isOpen, lacking, short } from './figures-said';

const feedNames: Readonly<Record<Feed, string>> = {
  processor: 'processor',
  cards: 'cards',
  board: 'board',
  drives: 'drives',
  'not known': 'not known',
};

/** More parts than these go into one row together. */
const mostRows = 16;
/** One bar: the wall, the supply, cables to some parts, a part. `layer`: its column, from the wall on. */
export interface Node {
  readonly key: string;
  readonly layer: number;
  readonly place: string;
  readonly name: string;
  readonly power: Figure;
  /** Words behind the value. */
  readonly more: string;
  readonly says: string;
}
/** A flow between two bars; `value` is how wide it is laid out. */
export interface Link {
  readonly source: string;
  readonly target: string;
  readonly value: number;
  readonly power: Figure;
}

/** What is drawn: every part, the cables that feed it, the supply with its own heat, the wall. */
export function graphOf(build: Build, flows: readonly Flow[]): { nodes: Node[]; links: Link[] } {
  const { supply } = build.parts;
  const weigh = weightOf(sustainedDraw(build));
  const nodes: Node[] = [];
  const links: Link[] = [];
  for (const flow of flows) {
    const feed = `feed ${flow.feed}`;
    const place = supply?.path ?? 'parts';
    nodes.push(node(feed, 2, place, feedNames[flow.feed], flow.draw, 'through the cables to: '));
    const rows = rowsOf(flow);
    for (const row of rows) {
      nodes.push(row);
      links.push({ source: feed, target: row.key, value: weigh(row.power), power: row.power });
    }
    const value = links.filter(({ source }) => source === feed).reduce((sum, link) => sum + link.value, 0);
    if (supply) links.push({ source: 'supply', target: feed, value, power: flow.draw });
  }
  if (supply) addSupply(build, supply, nodes, links, weigh);
  return { nodes, links };
}

function addSupply(
  build: Build,
  supply: Placed<'supply'>,
  nodes: Node[],
  links: Link[],
  weigh: (power: Figure) => number,
): void {
  const out = links.filter(({ source }) => source === 'supply').reduce((sum, link) => sum + link.value, 0);
  const loss = supplyLoss(build)!;
  const wall = wallPower(build)!;
  nodes.unshift(
    node('wall', 0, 'place.mains', 'wall', wall, 'from the '),
    node('supply', 1, supply.path, 'supply', sustainedDraw(build), 'out of the '),
  );
  nodes.push(node('loss', 3, supply.path, 'heat of the supply', loss, ''));
  links.push({ source: 'supply', target: 'loss', value: weigh(loss), power: loss });
  links.push({ source: 'wall', target: 'supply', value: out + weigh(loss), power: wall });
}

function node(key: string, layer: number, place: string, name: string, power: Figure, before: string): Node {
  const missing = lacking(power);
  return {
    key,
    layer,
    place,
    name,
    power,
    more: '',
    says: `${before}${name}: ${short(power)}${missing === '' ? '' : `; ${missing}`}`,
  };
}

/** A row a part; what is too much for a picture in one row. */
function rowsOf({ feed, parts }: Flow): Node[] {
  const own = parts
    .slice(0, mostRows)
    .map(({ placed, draw }, i) => ({ ...partRow(placed, draw), key: `${feed} ${i}` }));
  const rest = parts.slice(mostRows);
  if (rest.length === 0) return own;
  const name = `${rest.length} more`;
  const draw = together(
    name,
    rest.map((part) => part.draw),
  );
  return [...own, node(`${feed} rest`, 3, rest[0]!.placed.path, name, draw, '')];
}

/** Of several parts in one entry: what all of them draw, their peaks at once. */
function partRow(placed: Placed, draw: Figure): Node {
  const count = howMany(placed);
  const name = count.lo > 1 ? `${count.lo} × ${placed.label}` : placed.label;
  const stated = (peaksOf(placed)?.peaks ?? [])
    .map(({ power, lasts }) => ({ power: times(power, count), lasts }))
    .filter(({ power }) => !isOpen(power));
  const highest = stated.toSorted((a, b) => b.power.hi - a.power.hi)[0];
  const base = node(placed.path, 3, placed.path, name, draw, '');
  const peaks = stated.map(({ power: peak, lasts }) => `, peak ${short(peak)} for ${short(lasts)}`).join('');
  return {
    ...base,
    more: highest ? `, peak ${short(highest.power)}` : '',
    says: `${base.says}${peaks}`,
  };
}

/** How wide a flow is laid out: by its upper end, never too thin to be seen; one without an end by a small share. */
function weightOf(all: Figure): (power: Figure) => number {
  const whole = Math.max(ends(all).hi, 1);
  return (one) => Math.max(isOpen(one) ? ends(one).lo + whole * 0.06 : one.hi, whole * 0.004);
}
