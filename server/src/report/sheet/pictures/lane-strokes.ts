// A link as strokes, one a lane: full where it is in use, broken where it is not, an outline where nothing tells.
import type { Figure } from '../../../core/figures/figure';
import type { Lanes } from '../../../core/figures/link-rows';
import { box, line } from './draw';
import { isOpen } from './figures-said';

export const pitch = 2.4;
/** Lanes past these are words alone. */
const mostStrokes = 16;

/** How many strokes stand for lanes: those it surely gets, those it may get, and all that its own end has. */
export function strokesOf(own: Lanes | undefined): {
  readonly sure: number;
  readonly may: number;
  readonly all: number;
} {
  if (!own) return { sure: 1, may: 1, all: 1 };
  const strokes = (count: number): number => Math.min(mostStrokes, Math.max(0, Math.ceil(count)));
  if (isOpen(own.got)) return { sure: 0, may: 0, all: 4 };
  return {
    sure: strokes(own.got.lo),
    may: strokes(own.got.hi),
    all: Math.max(strokes(own.got.hi), isOpen(own.own) ? 0 : strokes(own.own.hi), 1),
  };
}

/** A link: a stroke a lane, or a dashed outline where it is not known. */
export function bundle(own: Lanes | undefined, rate: Figure, from: number, to: number, middle: number): string {
  const { sure, may, all } = strokesOf(own);
  if (isOpen(rate) || (own && isOpen(own.got))) return box('p-open', from, middle - 5, to - from, 10);
  const first = middle - ((all - 1) * pitch) / 2;
  const isDead = rate.hi <= 0;
  return Array.from({ length: all }, (_, i) => {
    const look = isDead || i >= may ? 'p-lane-idle' : i >= sure ? 'p-lane-maybe' : 'p-lane';
    return line(look, from, first + i * pitch, to, first + i * pitch);
  }).join('');
}
