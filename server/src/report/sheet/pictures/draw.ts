// The few elements that pictures are drawn with: numbers rounded, text escaped, things that can be reached by keyboard.
import { htmlText, visible } from '../../../core/text';
import { boldly, cut } from './measure';
import type { Picture, PictureId } from './picture';

/** Width of every picture in its own units; on paper and screen it is drawn as wide as there is room. */
export const pageWidth = 480;
/** Sizes of text: names, and what stands below them. */
export const large = 13.5;
export const small = 12.5;

/** A coordinate, to a tenth: the same input gives the same text everywhere. */
export function n(value: number): string {
  if (!Number.isFinite(value)) return '0';
  const rounded = Math.round(value * 10) / 10;
  return String(rounded === 0 ? 0 : rounded);
}

/** Text on one baseline, cut to its room. `align`: which end of it stands at `x`. */
export function words(
  text: string,
  x: number,
  y: number,
  { room = pageWidth, size = large, look = '', align = 'start' as 'start' | 'middle' | 'end' } = {},
): string {
  const classes = `p-text${size === small ? ' p-small' : ''}${look === '' ? '' : ` ${look}`}`;
  const anchor = align === 'start' ? '' : ` text-anchor="${align}"`;
  const shown = visible(text);
  const narrower = look.includes('p-strong') ? room / boldly : room;
  return `<text class="${classes}" x="${n(x)}" y="${n(y)}"${anchor}>${htmlText(cut(shown, narrower, size))}</text>`;
}

export const box = (look: string, x: number, y: number, width: number, height: number): string =>
  `<rect class="${look}" x="${n(x)}" y="${n(y)}" width="${n(Math.max(0, width))}" height="${n(Math.max(0, height))}"/>`;

export const line = (look: string, x1: number, y1: number, x2: number, y2: number): string =>
  `<line class="${look}" x1="${n(x1)}" y1="${n(y1)}" x2="${n(x2)}" y2="${n(y2)}"/>`;

export const path = (look: string, d: string): string => `<path class="${look}" d="${d}"/>`;

/** Slanted lines across a box: what is over a limit, without colour. */
export function hatch(look: string, x: number, y: number, width: number, height: number, gap = 5): string {
  const strokes: string[] = [];
  for (let at = gap; at < width + height && strokes.length < 200; at += gap) {
    const [x1, y1] = at <= height ? [x, y + at] : [x + at - height, y + height];
    const [x2, y2] = at <= width ? [x + at, y] : [x + width, y + at - width];
    strokes.push(`M${n(x1)} ${n(y1)}L${n(x2)} ${n(y2)}`);
  }
  return strokes.length === 0 ? '' : path(look, strokes.join(''));
}

/**
 * Something that stands for a place in the build: `place` is its path there. It can be reached by keyboard, and is read
 * out as `says`.
 */
export const thing = (place: string, says: string, ...inner: readonly string[]): string =>
  `<g class="p-thing" role="link" tabindex="0" data-place="${htmlText(place)}"><title>${htmlText(says)}</title>` +
  `${inner.join('')}</g>`;

interface Drawing {
  readonly id: PictureId;
  readonly title: string;
  /** How it is to be read. */
  readonly key: string;
  readonly words: readonly string[];
  readonly height: number;
  readonly inner: readonly string[];
  /** Further attributes, such as the scale. */
  readonly facts?: Readonly<Record<string, number>>;
}

const looks = [
  ['p-band', 'pale: a range'],
  ['p-open', 'dashed: not known'],
  ['p-over', 'hatched: past the limit'],
  ['p-lane-idle', 'broken strokes: not in use'],
] as const;

/** What the looks mean that a picture makes use of. */
const legendOf = (drawn: string): string =>
  looks
    .filter(([look]) => drawn.includes(`"${look}"`))
    .map(([, meaning]) => meaning)
    .join(' · ');

/** The finished picture. */
export function picture({ id, title, key, words: said, height, inner, facts = {} }: Drawing): Picture {
  const more = Object.entries(facts)
    .map(([name, value]) => ` data-${name}="${value}"`)
    .join('');
  const legend = legendOf(inner.join(''));
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" class="sheet-picture" data-picture="${id}"${more} role="group" ` +
    `aria-label="${htmlText(title)}" viewBox="0 0 ${pageWidth} ${n(Math.ceil(height + (legend === '' ? 0 : 20)))}">` +
    `<title>${htmlText(title)}</title><desc>${htmlText(key)}</desc>${inner.join('')}` +
    `${legend === '' ? '' : words(legend, 0, height + 14, { size: small, look: 'p-faint' })}</svg>`;
  return { id, title, words: said.map(visible), svg };
}
