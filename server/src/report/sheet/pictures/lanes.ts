// Lanes: processor and chipset on the left, what sits in their slots on the right, one stroke a lane between them.
import type { Finding } from '../../../core/judge/finding';
import type { Build } from '../../../core/build/build';
import { counted, type Figure } from '../../../core/figures/figure';
import { chipsetDemand, processorLanes } from '../../../core/figures/lane-budget';
import { uplink } from '../../../core/figures/lanes';
import { linkRows, uplinkLanes, type Lanes, type LinkRow } from '../../../core/figures/link-rows';
import { freeSlots } from '../../../core/figures/slots';
import { listed } from '../../../core/text';
import { box, large, line, pageWidth, picture, small, thing, words } from './draw';
import { isOpen, lacking, short, shorts } from './figures-said';
import { drawGauge, gaugeWords, type Gauge } from './gauges';
import { fitsInWords, markRow, Marks, type Belongs } from './marks';
import { bundle, pitch, strokesOf } from './lane-strokes';
import { broken, widthOf } from './measure';
import type { Drawer, Picture } from './picture';

const belongs: Belongs = {
  'drive-in-slow-slot': undefined,
  'drive-slower-than-promised': undefined,
  'eightfold-slip': undefined,
  'card-lanes-fewer': undefined,
  'card-slot-missing': undefined,
  'card-edge-too-long': undefined,
  'slot-takes-lanes': undefined,
  'slot-takes-ports': undefined,
  'slot-not-split': undefined,
  'link-generation-lower': undefined,
  'riser-slower': undefined,
  'drive-bus-not-carried': undefined,
  'm2-key-differs': undefined,
  'm2-length-unsupported': undefined,
  'place-twice': undefined,
  'ports-short': 'parts.board',
  'lanes-oversubscribed': 'parts.board',
};

const mostRows = 24;
const mostFree = 12;
const blockWidth = 84;
const leastBlock = 80;
const chipsetX = 116;
const partX = 262;
const textX = partX + 8;
const textRoom = pageWidth - textX;
const lineHeight = 16;

type Source = 'processor' | 'chipset' | 'not known';
const sources: readonly Source[] = ['processor', 'chipset', 'not known'];

interface Row {
  readonly link: LinkRow;
  readonly source: Source;
  readonly place: string;
  readonly lines: readonly string[];
  readonly says: string;
  readonly name: string;
}

interface Block {
  readonly source: Source;
  readonly place: string;
  readonly lines: readonly string[];
  readonly says: string;
}

export const lanes: Drawer = { belongs, draw };

function draw(build: Build, findings: readonly Finding[]): Picture | undefined {
  const all = linkRows(build);
  if (all.length === 0 && !build.parts.board) return undefined;
  const rows = all.slice(0, mostRows).map(rowOf);
  const blocks = blocksOf(build, rows);
  const gauges = gaugesOf(build);
  const marks = new Marks(
    findings,
    belongs,
    [...rows, ...blocks, ...gauges].map(({ place }) => place),
  );
  const { svg, bottom } = drawRows(build, rows, blocks, marks);
  const inner = [svg];
  let y = bottom + 4;
  const beside = besideWords(build, all.length - rows.length);
  for (const text of beside.flatMap((one) => broken(one, pageWidth, small, 3))) {
    inner.push(words(text, 0, y + 13, { size: small, look: 'p-faint' }));
    y += 17;
  }
  y += 10;
  for (const gauge of gauges) {
    const one = drawGauge(gauge, y, marks);
    inner.push(one.svg);
    y = one.bottom;
  }
  const list = marks.list(y + 4);
  return picture({
    id: 'lanes',
    title: 'Lanes',
    key:
      'From left to right: processor, chipset, what sits in their slots. One stroke a lane: full where it is used, ' +
      'broken where the part has it and does not get it. A dashed outline is not known.',
    words: [...[...blocks, ...rows].map(({ says }) => says), ...beside, ...gauges.map(gaugeWords), ...marks.words],
    height: list.bottom,
    inner: [...inner, list.svg],
  });
}

function rowOf(link: LinkRow): Row {
  const { placed, at, reached, possible, lanes: own, from, fromLacks } = link;
  const [got, could] = shorts([reached, possible]);
  const less = isLess(reached, possible) ? `of ${could!} it is made for` : '';
  const missing = [
    lacking(reached, own?.got),
    from === undefined && fromLacks[0] ? `not stated: ${fromLacks[0].what}` : '',
  ].find((one) => one !== '');
  const value = reached.hi <= 0 ? 'no link: not its bus' : `${pcie(own)}${got!}`;
  const notes = [less, missing ?? ''].filter((one) => one !== '');
  const count = placed.at.count.value ?? 1;
  const name = count > 1 ? `${count} × ${placed.label}` : placed.label;
  return {
    link,
    source: from ?? 'not known',
    place: placed.path,
    lines: [value, ...notes.flatMap((note) => broken(note, textRoom, small, 2))],
    says: [
      `${placed.label} in ${at ?? 'no slot named'}, from ${sourceWords[from ?? 'not known']}: ${value}`,
      ...notes,
    ].join('; '),
    name,
  };
}

const sourceWords: Readonly<Record<Source, string>> = {
  processor: 'the processor',
  chipset: 'the chipset',
  'not known': 'a side not known',
};

/** `PCIe 4 x4, `; empty where that is not known. */
const pcie = (own: Lanes | undefined): string =>
  own && !isOpen(own.got) && !isOpen(own.generation) ? `PCIe ${short(own.generation)} x${short(own.got)}, ` : '';

/** What its own end could use is more than what it gets, by more than a rounding. */
const isLess = (a: Figure, b: Figure): boolean => !isOpen(a) && !isOpen(b) && a.hi < b.lo - b.lo / 1000;

function blocksOf(build: Build, rows: readonly Row[]): readonly Block[] {
  const { processor, board } = build.parts;
  const blocks: Block[] = [];
  if (processor) {
    const has = counted(processor.part.lanes, `lanes of ${processor.label}`);
    const used = processorLanes(build);
    const lanes = `${isOpen(has) ? '?' : short(has)} lanes`;
    const lines = used ? [`${short(used)} used`, `of ${lanes}`] : [lanes];
    const missing = lacking(has, used);
    const says = `processor ${processor.label}: ${lines.join(' ')}${missing === '' ? '' : `; ${missing}`}`;
    blocks.push({ source: 'processor', place: processor.path, lines, says });
  }
  if (board) {
    const rate = uplink(build)!;
    const link = pcie(uplinkLanes(build)).replace(', ', '');
    const missing = lacking(rate);
    const says = `chipset of ${board.label}: ${[link, short(rate)].join(' ').trim()} to the processor`;
    blocks.push({
      source: 'chipset',
      place: board.path,
      lines: [link === '' ? 'link' : link, short(rate)],
      says: missing === '' ? says : `${says}; ${missing}`,
    });
  }
  if (rows.some(({ source }) => source === 'not known'))
    blocks.push({
      source: 'not known',
      place: board ? `${board.path}.slots` : 'parts',
      lines: ['from which', 'side'],
      says: 'lanes from a side not known',
    });
  return blocks;
}

interface Band {
  readonly top: number;
  readonly bottom: number;
}

function drawRows(
  build: Build,
  rows: readonly Row[],
  blocks: readonly Block[],
  marks: Marks,
): { svg: string; bottom: number } {
  const parts: string[] = [];
  const bands = new Map<Source, Band>();
  let y = 4;
  for (const { source } of sources.flatMap((one) => blocks.filter((block) => block.source === one))) {
    const top = y;
    for (const row of rows.filter((one) => one.source === source)) {
      const high = heightOf(row, marks);
      parts.push(drawRow(row, source === 'processor' ? blockWidth : chipsetX + blockWidth, y, high, marks));
      y += high;
    }
    y = Math.max(y, top + leastBlock);
    bands.set(source, { top, bottom: y });
    y += 14;
  }
  const chipset = bands.get('chipset');
  if (chipset && bands.has('processor')) {
    parts.push(bundle(uplinkLanes(build), uplink(build)!, blockWidth, chipsetX, (chipset.top + chipset.bottom) / 2));
    // The processor stands beside all that hangs on it, the chipset among it.
    bands.set('processor', { top: bands.get('processor')!.top, bottom: chipset.bottom });
  }
  const drawn = blocks.map((block) => drawBlock(block, bands.get(block.source)!, marks));
  return { svg: [...parts, ...drawn].join(''), bottom: y - 6 };
}

function drawBlock({ source, place, lines, says }: Block, { top, bottom }: Band, marks: Marks): string {
  const x = source === 'processor' ? 0 : chipsetX;
  const own = marks.at(place);
  const wrapped = lines.flatMap((text) => broken(text, blockWidth - 8, small, 2));
  return thing(
    place,
    marks.said(says, own),
    box(source === 'not known' ? 'p-open' : 'p-block', x, top, blockWidth, bottom - top),
    words(source, x + 6, top + 18, {
      room: blockWidth - 10,
      size: small,
      look: source === 'not known' ? '' : 'p-strong',
    }),
    ...wrapped.map((text, i) => words(text, x + 6, top + 35 + i * 16, { room: blockWidth - 8, size: small })),
    markRow(own, x + 6, top + 35 + wrapped.length * 16, blockWidth - 10).svg,
  );
}

/** Marks stand beside the name where they fit, else on a line of their own. */
const fitBeside = ({ name, place }: Row, marks: Marks): boolean =>
  fitsInWords(marks.at(place), textRoom - widthOf(name, large) - 12);

function heightOf(row: Row, marks: Marks): number {
  const lines = row.lines.length + (fitBeside(row, marks) ? 0 : 1);
  return Math.max(28 + lineHeight * lines, strokesOf(row.link.lanes).all * pitch + 34);
}

function drawRow(row: Row, from: number, top: number, height: number, marks: Marks): string {
  const { link, place, lines, name } = row;
  const own = marks.at(place);
  const isBeside = fitBeside(row, marks);
  const middle = top + height / 2;
  const first = middle - (lines.length + (isBeside ? 0 : 1)) * (lineHeight / 2) + 4;
  const marked = isBeside
    ? markRow(own, pageWidth, first, textRoom, 'end')
    : markRow(own, textX, first + lineHeight * (lines.length + 1), textRoom);
  const high = strokesOf(link.lanes).all * pitch;
  const caption = { room: partX - from - 8, size: small, look: 'p-faint', align: 'end' } as const;
  return thing(
    place,
    marks.said(row.says, own),
    bundle(link.lanes, link.reached, from, partX, middle),
    words(link.at ?? 'no slot', partX - 6, middle - high / 2 - 5, caption),
    line('p-thick', partX + 1, top + 7, partX + 1, top + height - 7),
    words(name, textX, first, { room: textRoom }),
    ...lines.map((text, i) => words(text, textX, first + lineHeight * (i + 1), { room: textRoom, size: small })),
    marked.svg,
  );
}

function gaugesOf(build: Build): readonly Gauge[] {
  const { board } = build.parts;
  const through = uplink(build);
  if (!board || !through) return [];
  return (['read', 'write'] as const).flatMap((way) => {
    const demand = chipsetDemand(build, way);
    const label = `chipset, all to ${way} at once`;
    return demand ? [{ place: `${board.path}.slots`, label, is: demand.all, limit: through, checks: [] }] : [];
  });
}

/** What is not drawn: free slots, and links past those that are. */
function besideWords(build: Build, left: number): string[] {
  const names = freeSlots(build).map(([name]) => name);
  const more = names.length > mostFree ? [`${names.length - mostFree} more`] : [];
  return [
    ...(left > 0 ? [`and ${left} more links, not drawn`] : []),
    ...(names.length > 0 ? [`free slots: ${listed([...names.slice(0, mostFree), ...more])}`] : []),
  ];
}
