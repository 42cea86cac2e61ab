// Power as flows: from the wall through the supply and its cables to the parts, as wide as the watts; then the limits.
import { sankey, type SankeyNode } from 'd3-sankey';
import type { Build } from '../../../core/build/build';
import type { Figure } from '../../../core/figures/figure';
import { powerFlows } from '../../../core/figures/power-flows';
import type { Finding } from '../../../core/judge/finding';
import type { Kept } from '../kept';
import { box, large, n, pageWidth, path, picture, small, thing, words } from './draw';
import { ends, isOpen, short, tight } from './figures-said';
import { drawGauge, gaugeWords } from './gauges';
import { fitsInWords, markRow, Marks, toldOf, type Belongs, type Mark } from './marks';
import { boldly, broken, widthOf } from './measure';
import { powerGauges } from './power-gauges';
import { graphOf, type Link, type Node } from './power-graph';
import type { Drawer, Picture } from './picture';

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

const columns = [0, 98, 186, 270] as const;
const barWidth = 9;
const rowHeight = 36;

export const power: Drawer = { belongs, draw };

function draw(build: Build, findings: readonly Finding[], kept: Kept): Picture | undefined {
  const flows = powerFlows(build);
  if (flows.length === 0) return undefined;
  const { nodes, links } = graphOf(build, flows);
  const gauges = powerGauges(build);
  const marks = new Marks(
    findings,
    belongs,
    [...nodes, ...gauges].map(({ place }) => place),
  );
  const told = [...toldOfFlow(nodes, links), ...toldOf(findings, belongs)];
  const flow = kept.ofText('flows of power', told, () => drawFlow(nodes, links, marks));
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
}

/** All that the flows are drawn from, as text. */
const toldOfFlow = (nodes: readonly Node[], links: readonly Link[]): readonly string[] => [
  ...nodes.map(({ key, place, name, says, more, power: { lo, hi } }) =>
    [key, place, name, says, more, lo, hi].join('\n'),
  ),
  ...links.map(({ source, target, value, power: { lo, hi } }) => [source, target, value, lo, hi].join('\n')),
];

function drawFlow(nodes: Node[], links: Link[], marks: Marks): { svg: string; bottom: number } {
  const rows = nodes.filter(({ layer }) => layer === 3).length;
  // Marks on the supply stand on a line of their own.
  const top = nodes.some(({ layer, place }) => layer < 2 && marks.at(place).length > 0) ? 76 : 52;
  const height = rows * rowHeight + 90;
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
  straighten(graph.nodes);
  layout.update(graph);
  const parts: string[] = heads(nodes);
  for (const link of graph.links) {
    const [from, to] = [(link.source as Node).layer, (link.target as Node).layer];
    const way = {
      x0: columns[from]! + barWidth,
      y0: link.y0!,
      turn: columns[from + 1]!,
      x1: columns[to]!,
      y1: link.y1!,
    };
    parts.push(ribbon(way, link.width!, link.power));
  }
  let bottom = 0;
  const drawn = graph.nodes.map((one) => {
    bottom = Math.max(bottom, one.y1!, (one.y0! + one.y1!) / 2 + rowHeight / 2);
    return nodeAt(one, one.y0!, one.y1!, marks);
  });
  return { svg: [...parts, ...drawn].join(''), bottom };
}

/** Puts each feed beside the parts that it feeds, below the one before: flows to the parts then run side by side. */
function straighten(nodes: readonly SankeyNode<Node, Link>[]): void {
  let free = 0;
  for (const feed of nodes.filter(({ layer }) => layer === 2)) {
    const parts = (feed.sourceLinks ?? []).map(({ target }) => target as SankeyNode<Node, Link>);
    const [first, last] = [parts[0]!, parts.at(-1)!];
    const height = feed.y1! - feed.y0!;
    feed.y0 = Math.max(free, (first.y0! + last.y1! - height) / 2);
    feed.y1 = feed.y0 + height;
    free = feed.y1 + rowHeight;
  }
}

function heads(nodes: readonly Node[]): string[] {
  const named = ['wall', 'supply', 'cables to', 'parts'];
  return named.flatMap((text, layer) =>
    nodes.some((one) => one.layer === layer)
      ? [words(text, columns[layer]!, 12, { size: small, look: 'p-faint' })]
      : [],
  );
}

/** The way of a flow: it has come to its height where the next column stands, and goes straight on from there. */
interface Way {
  readonly x0: number;
  readonly y0: number;
  readonly turn: number;
  readonly x1: number;
  readonly y1: number;
}

/** A flow as an area: solid as far as it is sure, pale up to its upper end, dashed where it has none. */
function ribbon(way: Way, width: number, power: Figure): string {
  const { lo, hi } = ends(power);
  if (isOpen(power)) return area('p-open', way, width);
  const sure = hi > 0 ? width * (lo / hi) : width;
  return (sure < width ? area('p-band', way, width) : '') + (sure > 0 ? area('p-flow', way, sure) : '');
}

function area(look: string, { x0, y0, turn, x1, y1 }: Way, width: number): string {
  const half = width / 2;
  const middle = n((x0 + turn) / 2);
  const along = (from: number, to: number, end: number): string =>
    `C${middle} ${n(from)} ${middle} ${n(to)} ${n(end)} ${n(to)}`;
  const straight = turn === x1 ? ['', ''] : [`H${n(x1)}`, `H${n(turn)}`];
  return path(
    look,
    `M${n(x0)} ${n(y0 - half)}${along(y0 - half, y1 - half, turn)}${straight[0]}` +
      `V${n(y1 + half)}${straight[1]}${along(y1 + half, y0 + half, x0)}Z`,
  );
}

function nodeAt(one: SankeyNode<Node, Link>, y0: number, y1: number, marks: Marks): string {
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
  const lines = broken(tight(power), room / boldly, small, 2);
  return [
    ...lines.map((text, i) => words(text, x, 28 + i * 15, { size: small, look: 'p-strong' })),
    markRow(own, x, 28 + lines.length * 15 + 2, room + 12).svg,
  ];
}

/**
 * The name of the cables on a plate, since flows may run behind it: in a flow that is wide enough, else above the bar.
 * Where many leave, that is the one that comes in.
 */
function feedLabel(
  { name, power, sourceLinks = [] }: SankeyNode<Node, Link>,
  x: number,
  y0: number,
  y1: number,
): string[] {
  const value = tight(power);
  const inside = columns[3] - x - barWidth - 7;
  const isWide = y1 - y0 >= 34 && widthOf(value, small) <= inside;
  const isBefore = isWide && sourceLinks.length > 1;
  const from = isBefore ? x - 5 : isWide ? x + barWidth + 5 : x;
  const room = isBefore ? x - columns[1] - barWidth - 7 : columns[3] - from - 2;
  const baseline = isWide ? (y0 + y1) / 2 - 2 : y0 - 19;
  const width = Math.min(room, Math.max(widthOf(name, small), widthOf(value, small)));
  const look = { room, size: small, look: 'p-halo', align: isBefore ? 'end' : 'start' } as const;
  return [
    box('p-plate', (isBefore ? from - width : from) - 2, baseline - 12, width + 4, 30),
    words(name, from, baseline, look),
    words(value, from, baseline + 15, look),
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
    words(name, from, middle - 2, { room, size: widthOf(name, large) <= room ? large : small, look: 'p-halo' }),
    words(value, from, middle + 14, { room: isBeside ? room : room - row.width, size: small, look: 'p-halo' }),
    row.svg,
  ];
}
