// Clearance to scale: slices through the case as it lies on its side, with what goes in and its margins.
import type { Finding } from '../../../core/judge/finding';
import type { Build, Placed } from '../../../core/build/build';
import { copyWith, figure } from '../../../core/figures/figure';
import { rooms, type Room, type RoomKind } from '../../../core/figures/rooms';
import { line, pageWidth, path, picture, n, small, thing, words } from './draw';
import { lacking, saysNothing, short, shorts } from './figures-said';
import { markRow, Marks, type Belongs } from './marks';
import { drawSlice, extentOf, type Slice } from './slices';
import { boldly, broken } from './measure';
import type { Drawer, Picture } from './picture';

const belongs: Belongs = {
  'cooler-too-tall': 'parts.cooler',
  'cooler-over-memory': undefined,
  'cooler-over-slot': 'parts.cooler',
  'card-too-long': undefined,
  'card-too-tall': undefined,
  'card-too-thick': undefined,
  'bend-too-tight': undefined,
  'bracket-wrong': undefined,
  'cards-overlap': undefined,
  'supply-too-deep': 'parts.supply',
  'supply-shape-differs': 'parts.supply',
  'board-too-big': 'parts.board',
  'radiator-too-long': undefined,
  'radiator-too-thick': undefined,
  'radiator-place-unsupported': undefined,
  'tubes-short': undefined,
  'loose-margin': undefined,
};

const ofRadiators: ReadonlySet<string> = new Set([
  'radiator-too-long',
  'radiator-too-thick',
  'radiator-place-unsupported',
  'tubes-short',
]);

/** Room for the drawing; what is said of it stands beside it. */
const drawingWidth = 262;
const drawingHeight = 118;
const textX = 282;
const mostSlices = 16;
/** Nothing is drawn larger than this, in units a millimetre. */
const largestScale = 1;
const scaleBarMm = 100;

interface Item {
  readonly slice: Slice;
  readonly rooms: readonly Room[];
}

export const clearance: Drawer = { belongs, draw };

function draw(build: Build, findings: readonly Finding[]): Picture | undefined {
  const items = itemsOf(build);
  if (items.length === 0) return undefined;
  const shown = items.slice(0, mostSlices);
  const scale = scaleOf(shown);
  const marks = new Marks(
    findings,
    belongs,
    shown.flatMap((item) => item.rooms.map(({ placed }) => placed.path)),
  );
  const inner: string[] = [];
  let y = 6;
  for (const item of shown) {
    const drawn = drawItem(item, scale, y, marks);
    inner.push(drawn.svg);
    y = drawn.bottom + 18;
  }
  inner.push(scaleBar(scale, y));
  const list = marks.list(y + 24);
  const left = items.length - shown.length;
  return picture({
    id: 'clearance',
    title: 'Clearance',
    key:
      'Slices through the case as it lies on its side, the rear wall at the left, the board below, the side panel ' +
      'above; all to one scale. Only sizes that stand beside are to scale; a dashed outline is not known.',
    words: [
      ...shown.flatMap((item) => item.rooms.map(saysOf)),
      ...(left > 0 ? [`and ${left} more, not drawn`] : []),
      ...marks.words,
    ],
    height: list.bottom,
    inner: [...inner, list.svg],
    facts: { scale },
  });
}

/** What is drawn in one slice: the cooler with the memory, each card, the supply, the board, each radiator. */
function itemsOf(build: Build): readonly Item[] {
  const all = rooms(build);
  const of = (...kinds: readonly RoomKind[]): readonly Room[] => all.filter(({ kind }) => kinds.includes(kind));
  const tower = of('cooler height', 'memory height');
  const items: Item[] = tower.length > 0 ? [{ slice: towerSlice(build, tower), rooms: tower }] : [];
  for (const [length, other, what] of [
    ['card length', 'card height', 'card'],
    ['supply depth', undefined, 'supply'],
    ['board depth', undefined, 'board'],
    ['radiator length', 'radiator thickness', 'radiator'],
  ] as const)
    for (const along of of(length)) {
      const across = all.find(({ kind, placed }) => kind === other && placed === along.placed);
      items.push({
        slice: {
          what,
          along: { need: along.need, room: along.room, gap: along.gap },
          ...(across ? { across: { need: across.need, room: across.room, gap: across.gap } } : {}),
        },
        rooms: across ? [along, across] : [along],
      });
    }
  return items;
}

function towerSlice({ parts: { cooler, board } }: Build, own: readonly Room[]): Slice {
  const part = (cooler as Placed<'cooler'>).part;
  const height = own.find(({ kind }) => kind === 'cooler height');
  return {
    what: 'cooler',
    across: height
      ? { need: height.need, room: height.room, gap: height.gap }
      : { need: figure(part.height, 'height of the cooler') },
    reach: figure(part['overhang-memory'], 'reach'),
    distance: board ? figure(board.part['socket-to-memory'], 'distance') : undefined,
    memory: own
      .filter(({ kind }) => kind === 'memory height')
      .map((room) => ({ need: room.need, room: room.room, gap: room.gap, isClear: room.clear?.is })),
  };
}

/** One scale for all, such that the widest and the highest go in. */
function scaleOf(items: readonly Item[]): number {
  const wide = items.flatMap(({ slice: { along } }) =>
    along ? [extentOf(along.need).hi, extentOf(along.room).hi] : [],
  );
  const high = items.flatMap(({ slice: { across } }) =>
    across ? [extentOf(across.need).hi, extentOf(across.room).hi] : [],
  );
  const scale = Math.min(largestScale, drawingWidth / Math.max(1, ...wide), drawingHeight / Math.max(1, ...high));
  return Number(scale.toPrecision(2));
}

function drawItem(
  { slice, rooms: own }: Item,
  scale: number,
  top: number,
  marks: Marks,
): { svg: string; bottom: number } {
  const drawing = drawSlice(slice, scale, top);
  const isRadiator = slice.what === 'radiator';
  let y = top;
  const texts: string[] = [];
  for (const placed of new Set(own.map((room) => room.placed))) {
    const its = own.filter((room) => room.placed === placed);
    const marked = marks.at(placed.path, (id) => ofRadiators.has(id) === isRadiator);
    const lines = its
      .flatMap(linesOf)
      .flatMap(({ text, isStrong }) =>
        broken(text, (pageWidth - textX) / (isStrong ? boldly : 1), small, 2).map((part) => ({ text: part, isStrong })),
      );
    texts.push(
      thing(
        placed.path,
        marks.said(its.map(saysOf).join('. '), marked),
        words(isRadiator ? `radiator of ${placed.label}` : placed.label, textX, y + 12, { room: pageWidth - textX }),
        ...lines.map(({ text, isStrong }, i) =>
          words(text, textX, y + 28 + i * 16, {
            room: pageWidth - textX,
            size: small,
            look: isStrong ? 'p-strong' : '',
          }),
        ),
        markRow(marked, textX, y + 28 + lines.length * 16, pageWidth - textX).svg,
      ),
    );
    y += 16 + lines.length * 16 + (marked.length > 0 ? 16 : 0) + 8;
  }
  const drawn =
    thing(own[0]!.placed.path, own.map(saysOf).join('. '), drawing.thing) +
    thing('parts.case', own.map(({ room }) => `${room.label}: ${short(room)}`).join('. '), drawing.limits);
  return { svg: drawn + texts.join(''), bottom: Math.max(drawing.bottom, y - 6) };
}

interface TextLine {
  readonly text: string;
  readonly isStrong?: boolean;
}

function linesOf(room: Room): TextLine[] {
  const [need, space] = shorts([room.need, room.room]);
  const missing = lacking(room.need, room.room);
  const size = { text: `${sizeWords[room.kind]} ${need!}${saysNothing(room.room) ? '' : ` of ${space!}`}` };
  return missing === '' ? [size, { text: gapWords(room), isStrong: true }] : [size, { text: missing }];
}

const sizeWords: Readonly<Record<RoomKind, string>> = {
  'cooler height': 'height',
  'memory height': 'height',
  'card length': 'length',
  'card height': 'height',
  'supply depth': 'depth',
  'board depth': 'depth',
  'radiator length': 'length',
  'radiator thickness': 'with fans',
};

/** What is left, or how much is too much. */
function gapWords({ gap, clear }: Pick<Room, 'gap' | 'clear'>): string {
  const text = gap.hi < 0 ? `${short(copyWith(gap, { lo: -gap.hi, hi: -gap.lo }))} too much` : `${short(gap)} left`;
  return clear?.is ? `${text}; the cooler stays clear` : text;
}

function saysOf(room: Room): string {
  const missing = lacking(room.need, room.room);
  const [need, space] = shorts([room.need, room.room]);
  const left = missing === '' ? gapWords(room) : missing;
  return `${room.placed.label}, ${sizeWords[room.kind]}: ${need!} of ${space!}; ${left}`;
}

function scaleBar(scale: number, y: number): string {
  const width = scaleBarMm * scale;
  return (
    line('p-limit', 4, y + 8, 4 + width, y + 8) +
    path('p-limit', `M4 ${n(y + 4)}v8M${n(4 + width)} ${n(y + 4)}v8`) +
    words(`${scaleBarMm} mm`, width + 12, y + 12, { size: small, look: 'p-faint' })
  );
}
