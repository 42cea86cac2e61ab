// One slice through the case: a thing with its sizes to scale, the room around it, and the margin between as a measure.
import type { Figure } from '../../../core/figures/figure';
import { box, hatch, line, n, path, small, words } from './draw';
import { ends, isOpen, short } from './figures-said';
import { widthOf } from './measure';

/** One direction of a slice: what goes in, the room there, what is left. */
export interface Span {
  readonly need: Figure;
  readonly room?: Figure;
  readonly gap?: Figure;
}

export interface Slice {
  readonly what: 'cooler' | 'card' | 'supply' | 'board' | 'radiator';
  /** From the rear wall to the front. */
  readonly along?: Required<Span>;
  /** From the board to the side panel. */
  readonly across?: Span;
  /** Of a cooler: how far it reaches towards the memory, how far off that stands, and each kit under it. */
  readonly reach?: Figure;
  readonly distance?: Figure;
  readonly memory?: readonly (Required<Span> & { readonly isClear?: boolean })[];
}

export interface Extent {
  readonly lo: number;
  readonly hi: number;
  readonly isOpen: boolean;
}

/** Millimetres to draw where a size is not known: it is drawn dashed, and stands for none. */
const nominalMm = 60;
const left = 4;

/** What is drawn of a size in millimetres; one without an end is open from where it begins. */
export function extentOf(size: Figure | undefined, nominal = nominalMm): Extent {
  if (!size) return { lo: nominal, hi: nominal, isOpen: true };
  const { lo, hi } = ends(size);
  return isOpen(size)
    ? { lo: Math.max(lo, nominal), hi: Math.max(lo, nominal), isOpen: true }
    : { lo, hi, isOpen: false };
}

interface Drawn {
  /** What goes in, with its margins. */
  readonly thing: string;
  /** What limits it. */
  readonly limits: string;
  readonly bottom: number;
}

/** Draws a slice from a height on. */
export const drawSlice = (slice: Slice, scale: number, top: number): Drawn =>
  slice.what === 'cooler' ? drawTower(slice, scale, top) : drawLying(slice, scale, top);

/** Thickness in units of what is only a length: it is not to scale. */
const flat = { supply: 26, board: 5, card: 40, radiator: 20, cooler: 40 } as const;

/** A card, a supply, a board or a radiator, from the rear wall to the front. */
function drawLying({ what, along, across }: Slice, scale: number, top: number): Drawn {
  const wide = extentOf(along!.need);
  const room = extentOf(along!.room, wide.hi * 1.15);
  const high = across && extentOf(across.need, flat[what] / scale);
  const panel = high && extentOf(across!.room, high.hi * 1.15);
  const thick = high ? high.hi * scale : flat[what];
  const height = Math.max(thick, (panel?.hi ?? 0) * scale);
  const base = top + height + 6;
  const limits = [
    line('p-wall', left, base + 3, left, base - height - 4),
    line('p-rule', left, base + 3, left + Math.max(room.hi, wide.hi) * scale + 4, base + 3),
    ...upright(room, base + 3, base - height - 4, scale),
    ...(panel ? level(panel, left, left + room.hi * scale, base, scale) : []),
  ];
  const parts = [
    block(wide, high, base, scale, thick),
    marginAcross(along!, wide, room, base - thick / 2, scale),
    overAcross(wide, room, base, thick, scale),
  ];
  if (panel && high) {
    const x = left + Math.min(wide.lo, room.lo) * scale * 0.5;
    parts.push(marginUp(across as Required<Span>, high, panel, x, base, scale));
    parts.push(overUp(high, panel, left, wide.lo * scale, base, scale));
  }
  if (what !== 'card') return { thing: parts.join(''), limits: limits.join(''), bottom: base + 5 };
  limits.push(
    words('rear wall', left, base + 17, { size: small, look: 'p-faint' }),
    words('front', left + room.hi * scale, base + 17, { size: small, look: 'p-faint', align: 'end' }),
  );
  return { thing: parts.join(''), limits: limits.join(''), bottom: base + 20 };
}

/** A cooler over the board and the memory beside or under it. */
function drawTower({ across, reach, distance, memory = [] }: Slice, scale: number, top: number): Drawn {
  const high = extentOf(across!.need);
  const panel = across!.room ? extentOf(across!.room, high.hi * 1.1) : undefined;
  const tallest = Math.max(high.hi, panel?.hi ?? 0, ...memory.map(({ need }) => extentOf(need, usualModuleMm).hi));
  const base = top + tallest * scale + 6;
  const middle = left + 60;
  const out = reach && !isOpen(reach) ? ends(reach).hi * scale : farSide;
  const first = middle + (distance && !isOpen(distance) ? ends(distance).lo * scale : out + moduleGap);
  const right = Math.max(first + memory.length * moduleGap + 16, middle + out + 24);
  const under = Math.min(high.lo, ...memory.flatMap(({ room }) => (isOpen(room) && room.lo < 0 ? [] : [room.lo])));
  const parts = [tower(high, middle, out, under, base, scale)];
  const limits = [line('p-thick', left, base + 2, right, base + 2), words('board', right + 8, base + 5, caption)];
  if (panel) {
    limits.push(...level(panel, left, right, base, scale));
    limits.push(words('side panel', right + 8, base - panel.lo * scale + 4, caption));
    parts.push(marginUp(across as Required<Span>, high, panel, middle - farSide / 2, base, scale));
    parts.push(overTower(high, panel, middle, out, under, base, scale));
  }
  memory.forEach((kit, i) => parts.push(module(kit, first + i * moduleGap, base, scale)));
  return { thing: parts.join(''), limits: limits.join(''), bottom: base + 8 };
}

const caption = { size: small, look: 'p-faint', room: 80 };
/** In units, for what no file states: how far the side of a cooler away from the memory is drawn, left open. */
const farSide = 34;
const stemHalf = 14;
const moduleGap = 14;
const moduleWidth = 7;
const usualModuleMm = 30;

/** A cooler: a stem on the processor, above what stands under it as wide as it reaches; its far side is left open. */
function tower(high: Extent, middle: number, out: number, underMm: number, base: number, scale: number): string {
  const [head, foot] = [base - high.lo * scale, base - Math.max(0, underMm) * scale];
  const back = middle - farSide;
  const stem = underMm < high.lo ? Math.min(stemHalf, out) : undefined;
  const under =
    stem === undefined
      ? `V${n(base)}H${n(back)}`
      : `V${n(foot)}H${n(middle + stem)}V${n(base)}H${n(middle - stem)}V${n(foot)}H${n(back)}`;
  const band =
    high.hi > high.lo ? box('p-band', back, base - high.hi * scale, farSide + out, (high.hi - high.lo) * scale) : '';
  return (
    path(high.isOpen ? 'p-open' : 'p-solid', `M${n(back)} ${n(head)}H${n(middle + out)}${under}`) +
    band +
    path('p-link', `M${n(middle)} ${n(head)}V${n(base)}`)
  );
}

/** What of a cooler stands higher than the panel: of what reaches out, and of the stem below it. */
function overTower(
  high: Extent,
  panel: Extent,
  middle: number,
  out: number,
  underMm: number,
  base: number,
  scale: number,
): string {
  const stem = Math.min(stemHalf, out);
  const head = { ...panel, lo: Math.max(panel.lo, underMm < high.lo ? underMm : 0) };
  const above = overUp(high, head, middle - farSide, farSide + out, base, scale);
  if (head.lo <= panel.lo || panel.isOpen) return above;
  return above + hatch('p-over', middle - stem, base - head.lo * scale, 2 * stem, (head.lo - panel.lo) * scale);
}

/** A memory module; hatched where it stands higher than the cooler leaves. */
function module(
  { need, room, isClear }: NonNullable<Slice['memory']>[number],
  x: number,
  base: number,
  scale: number,
): string {
  const high = extentOf(need, usualModuleMm);
  const parts = [box(high.isOpen ? 'p-open' : 'p-solid', x, base - high.lo * scale, moduleWidth, high.lo * scale)];
  if (high.hi > high.lo) parts.push(box('p-band', x, base - high.hi * scale, moduleWidth, (high.hi - high.lo) * scale));
  if (isClear !== true && !high.isOpen && Number.isFinite(room.lo) && room.lo < high.hi)
    parts.push(hatch('p-over', x, base - high.hi * scale, moduleWidth, (high.hi - room.lo) * scale, 3));
  return parts.join('');
}

function block(wide: Extent, high: Extent | undefined, base: number, scale: number, thick: number): string {
  if (wide.isOpen || high?.isOpen) return box('p-open', left, base - thick, wide.hi * scale, thick);
  const low = high ? high.lo * scale : thick;
  const isRange = wide.hi > wide.lo || low < thick;
  return (
    (isRange ? box('p-band', left, base - thick, wide.hi * scale, thick) : '') +
    box('p-solid', left, base - low, wide.lo * scale, low)
  );
}

/** A limit from the rear wall on; two strokes for one that is a range. */
const upright = ({ lo, hi, isOpen: open }: Extent, from: number, to: number, scale: number): string[] =>
  [...new Set([lo, hi])].map((mm) => line(open ? 'p-open' : 'p-limit', left + mm * scale, from, left + mm * scale, to));

/** A limit above the board. */
const level = ({ lo, hi, isOpen: open }: Extent, x1: number, x2: number, base: number, scale: number): string[] =>
  [...new Set([lo, hi])].map((mm) => line(open ? 'p-open' : 'p-limit', x1, base - mm * scale, x2, base - mm * scale));

/** The margin between thing and limit, as long as it is in millimetres at the scale; none where it is not known. */
function marginAcross({ gap }: Required<Span>, wide: Extent, room: Extent, y: number, scale: number): string {
  if (wide.isOpen || room.isOpen || gap.lo <= 0) return '';
  const [from, to] = [left + wide.hi * scale, left + room.lo * scale];
  const text = short(gap);
  const fits = widthOf(text, small) + 4 <= to - from;
  return measure(from, y, to, y) + (fits ? words(text, (from + to) / 2, y - 5, { size: small, align: 'middle' }) : '');
}

function marginUp(
  { gap }: Required<Span>,
  high: Extent,
  panel: Extent,
  x: number,
  base: number,
  scale: number,
): string {
  if (high.isOpen || panel.isOpen || gap.lo <= 0) return '';
  const [from, to] = [base - high.hi * scale, base - panel.lo * scale];
  const fits = from - to >= 18;
  return measure(x, from, x, to) + (fits ? words(short(gap), x + 5, (from + to) / 2 + 5, { size: small }) : '');
}

const measure = (x1: number, y1: number, x2: number, y2: number): string => line('p-margin', x1, y1, x2, y2);

function overAcross(wide: Extent, room: Extent, base: number, thick: number, scale: number): string {
  if (wide.isOpen || room.isOpen || wide.hi <= room.lo) return '';
  return hatch('p-over', left + room.lo * scale, base - thick, (wide.hi - room.lo) * scale, thick);
}

function overUp(high: Extent, panel: Extent, x: number, width: number, base: number, scale: number): string {
  if (high.isOpen || panel.isOpen || high.hi <= panel.lo) return '';
  return hatch('p-over', x, base - high.hi * scale, width, (high.hi - panel.lo) * scale);
}
