// Power as flows: from the wall through the supply and its cables to the parts, as wide as the watts; then the limits.
import { sankey } from 'd3-sankey';
import type { Build, Placed } from '../../../core/build/build';
import type { Figure } from '../../../core/figures/figure';
import { wallPower } from '../../../core/figures/mains';
import { peaksOf } from '../../../core/figures/peaks';
import { sustainedDraw, howMany } from '../../../core/figures/power';
import { powerFlows, supplyLoss, together, type Feed, type Flow } from '../../../core/figures/power-flows';
import { box, large, n, pageWidth, path, picture, small, thing, words } from './draw';
import { ends, isOpen, lacking, short } from './figures-said';
import { drawGauge, gaugeWords } from './gauges';
import { fitsInWords, markRow, Marks, type Belongs, type Mark } from './marks';
import { boldly, broken, widthOf } from './measure';
import { powerGauges } from './power-gauges';
import type { Drawer } from './picture';

const belongs: Belongs = {
  'supply-overloaded': 'parts.supply',
  'supply-headroom-thin': 'parts.supply',
  'excursion-beyond-supply': 'parts.supply',
  'supply-voltage-differs': 'parts.supply',
  'cable-from-another-supply': 'parts.supply',
  'power-cables-missing': 'parts.supply',
  'wall-power-over': 'place.mains',
  'circuit-overloaded': 'place.mains',
  'voltage-drop-high': 'place.mains',
  'backup-too-short': 'place.mains',
  'board-power-short': 'parts.processor',
  'cable-overloaded': 'parts.supply',
  'adapter-risky': 'parts.supply',
  'sixteen-pin-power-level': 'parts.supply',
  'drive-power-short': 'parts.supply',
};

const feedNames: Readonly<Record<Feed, string>> = {
  processor: 'processor',
  cards: 'cards',
  board: 'board',
  drives: 'drives',
  'not known': 'not known',
};

/** More parts than these go into one row together. */
const mostRows = 16;
const columns = [0, 98, 186, 270] as const;
const barWidth = 9;
const rowHeight = 38;

interface Node {
  readonly key: string;
  readonly layer: number;
  readonly place: string;
  readonly name: string;
  readonly power: Figure;
  /** Words behind the value. */
  readonly more: string;
  readonly says: string;
}
interface Link {
  readonly source: string;
  readonly target: string;
  readonly value: number;
  readonly power: Figure;
}

export const power: Drawer = (build, findings) => {
  const flows = powerFlows(build);
  if (flows.length === 0) return undefined;
  const { nodes, links } = graphOf(build, flows);
  const gauges = powerGauges(build);
  const marks = new Marks(
    findings,
    belongs,
    [...nodes, ...gauges].map(({ place }) => place),
  );
  const flow = drawFlow(nodes, links, marks);
  const inner = [flow.svg];
  let y = flow.bottom + 16;
  for (const gauge of gauges) {
    const drawn = drawGauge(gauge, y, marks);
    inner.push(drawn.svg);
    y = drawn.bottom;
  }
  const list = marks.list(y + 4);
  return picture({
    id: 'power',
    title: 'Power',
    key:
      'From left to right: the wall, the supply, its cables, the parts, each as wide as its watts under full load. ' +
      'A pale edge is a range, a dashed outline is not known. Below: what is drawn against what is allowed.',
    words: [...nodes.map(({ says }) => says), ...gauges.map(gaugeWords), ...marks.words],
    height: list.bottom,
    inner: [...inner, list.svg],
  });
};

/** What is drawn: every part, the cables that feed it, the supply with its own heat, the wall. */
function graphOf(build: Build, flows: readonly Flow[]): { nodes: Node[]; links: Link[] } {
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

function partRow(placed: Placed, draw: Figure): Node {
  const count = howMany(placed).lo;
  const name = count > 1 ? `${count} × ${placed.label}` : placed.label;
  const stated = (peaksOf(placed)?.peaks ?? []).filter(({ power: peak }) => !isOpen(peak));
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

function drawFlow(nodes: Node[], links: Link[], marks: Marks): { svg: string; bottom: number } {
  const rows = nodes.filter(({ layer }) => layer === 3).length;
  // Marks on the supply stand on a line of their own.
  const top = nodes.some(({ layer, place }) => layer < 2 && marks.at(place).length > 0) ? 68 : 52;
  const height = rows * rowHeight + 110;
  const first = Math.min(...nodes.map(({ layer }) => layer));
  const layout = sankey<Node, Link>()
    .nodeId(({ key }) => key)
    .nodeAlign(({ layer }) => layer - first)
    .nodeSort(null)
    .linkSort(null)
    .nodeWidth(barWidth)
    .nodePadding(rowHeight)
    .iterations(8)
    .extent([
      [0, top + 10],
      [columns[3] + barWidth, top + height],
    ]);
  const graph = layout({ nodes: nodes.map((one) => ({ ...one })), links: links.map((one) => ({ ...one })) });
  const parts: string[] = heads(nodes);
  for (const link of graph.links) {
    const [from, to] = [link.source as Node, link.target as Node];
    parts.push(
      ribbon(columns[from.layer]! + barWidth, link.y0!, columns[to.layer]!, link.y1!, link.width!, link.power),
    );
  }
  let bottom = 0;
  const drawn = graph.nodes.map((one) => {
    bottom = Math.max(bottom, one.y1!, (one.y0! + one.y1!) / 2 + rowHeight / 2);
    return nodeAt(one, one.y0!, one.y1!, marks);
  });
  return { svg: [...parts, ...drawn].join(''), bottom };
}

function heads(nodes: readonly Node[]): string[] {
  const named = ['wall', 'supply', 'cables to', 'parts'];
  return named.flatMap((text, layer) =>
    nodes.some((one) => one.layer === layer)
      ? [words(text, columns[layer]!, 12, { size: small, look: 'p-faint' })]
      : [],
  );
}

/** A flow as an area: solid as far as it is sure, pale up to its upper end, dashed where it has none. */
function ribbon(x0: number, y0: number, x1: number, y1: number, width: number, power: Figure): string {
  const { lo, hi } = ends(power);
  if (isOpen(power)) return area('p-open', x0, y0, x1, y1, width);
  const sure = hi > 0 ? width * (lo / hi) : width;
  return (
    (sure < width ? area('p-band', x0, y0, x1, y1, width) : '') + (sure > 0 ? area('p-flow', x0, y0, x1, y1, sure) : '')
  );
}

function area(look: string, x0: number, y0: number, x1: number, y1: number, width: number): string {
  const half = width / 2;
  const middle = n((x0 + x1) / 2);
  const along = (from: number, to: number, end: number): string =>
    `C${middle} ${n(from)} ${middle} ${n(to)} ${n(end)} ${n(to)}`;
  return path(
    look,
    `M${n(x0)} ${n(y0 - half)}${along(y0 - half, y1 - half, x1)}` +
      `L${n(x1)} ${n(y1 + half)}${along(y1 + half, y0 + half, x0)}Z`,
  );
}

function nodeAt(one: Node, y0: number, y1: number, marks: Marks): string {
  const x = columns[one.layer]!;
  const own = one.key.startsWith('feed') || one.key === 'loss' ? [] : marks.at(one.place);
  const bar = box(isOpen(one.power) ? 'p-open' : 'p-bar', x, y0, barWidth, Math.max(1.5, y1 - y0));
  const inner =
    one.layer < 2
      ? headOf(one, x, own)
      : one.layer === 2
        ? feedLabel(one, x, y0, y1)
        : rowOf(one, x, (y0 + y1) / 2, own);
  return thing(one.place, marks.said(one.says, own), bar, ...inner);
}

/** Wall and supply say what they give on top of their column. */
function headOf({ layer, power }: Node, x: number, own: readonly Mark[]): string[] {
  const room = columns[layer + 1]! - x - 8;
  // The unit stays with its number.
  const lines = broken(short(power).replace(/ (?=\S+$)/, '\u00a0'), room / boldly, small, 2);
  return [
    ...lines.map((text, i) => words(text, x, 28 + i * 15, { size: small, look: 'p-strong' })),
    markRow(own, x, 28 + lines.length * 15 + 2, room + 12).svg,
  ];
}

/** The name of the cables: in the flow where it is wide enough, else above it. */
function feedLabel({ name, power }: Node, x: number, y0: number, y1: number): string[] {
  const isWide = y1 - y0 >= 34;
  const from = isWide ? x + barWidth + 5 : x;
  const room = columns[3] - from - 2;
  const baseline = isWide ? (y0 + y1) / 2 - 2 : y0 - 19;
  return [
    words(name, from, baseline, { room, size: small, look: 'p-halo' }),
    words(short(power), from, baseline + 15, { room, size: small, look: 'p-halo' }),
  ];
}

/** A part’s name, its watts below, its marks where there is room for them. */
function rowOf({ name, power, more }: Node, x: number, middle: number, own: readonly Mark[]): string[] {
  const from = x + barWidth + 5;
  const room = pageWidth - from;
  const value = `${short(power)}${more}`;
  const beside = room - widthOf(name, large) - 12;
  const isBeside = fitsInWords(own, beside);
  const row = markRow(own, pageWidth, isBeside ? middle - 2 : middle + 14, isBeside ? beside : 110, 'end');
  return [
    words(name, from, middle - 2, { room, look: 'p-halo' }),
    words(value, from, middle + 14, { room: isBeside ? room : room - row.width, size: small, look: 'p-halo' }),
    row.svg,
  ];
}
