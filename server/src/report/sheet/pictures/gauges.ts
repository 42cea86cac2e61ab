// One quantity against its limit, as a bar to scale: known as a solid bar, a range as a band, open ends dashed.
import type { Figure } from '../../../core/figures/figure';
import { box, hatch, line, pageWidth, path, small, thing, words, n } from './draw';
import { ends, isOpen, lacking, saysNothing, shorts } from './figures-said';
import { markRow, type Mark, type Marks } from './marks';
import { boldWidth, widthOf } from './measure';

export interface Gauge {
  readonly place: string;
  readonly label: string;
  readonly is: Figure;
  /** Undefined where nothing limits it. */
  readonly limit?: Figure;
  /** What stands between value and limit. */
  readonly of?: string;
  /** What stands behind the limit. */
  readonly after?: string;
  /** The limit is the least it should be, not the most. */
  readonly isLeast?: boolean;
  /** The checks whose findings it shows, where several things stand for one place. */
  readonly checks?: readonly string[];
}

const barHeight = 10;

/** What a gauge says in words. */
export function gaugeWords(gauge: Gauge): string {
  const missing = lacking(gauge.is, gauge.limit);
  return `${gauge.label}: ${valueWords(gauge)}${missing === '' ? '' : `; ${missing}`}`;
}

function valueWords({ is, limit, of = 'of', after = '' }: Gauge): string {
  const [value, most] = shorts(limit ? [is, limit] : [is]);
  if (limit && saysNothing(limit)) return `${value!}; limit not known`;
  if (limit && saysNothing(is)) return `${value!}; ${after === '' ? 'limit ' : ''}${most!}${after}`;
  return limit ? `${value!} ${of} ${most!}${after}` : value!;
}

/** Draws a gauge from a height on; answers where the next one may begin. */
export function drawGauge(gauge: Gauge, top: number, marks: Marks): { readonly svg: string; readonly bottom: number } {
  const own = marks.at(gauge.place, (id) => gauge.checks?.includes(id) ?? true);
  const missing = lacking(gauge.is, gauge.limit);
  const bar = top + 23;
  const inner = [head(gauge, top, own), drawBar(gauge, bar)];
  if (missing !== '') inner.push(words(missing, 0, bar + barHeight + 14, { size: small, look: 'p-faint' }));
  return {
    svg: thing(gauge.place, marks.said(gaugeWords(gauge), own), ...inner),
    bottom: bar + barHeight + (missing === '' ? 12 : 28),
  };
}

function head(gauge: Gauge, top: number, own: readonly Mark[]): string {
  const { label } = gauge;
  const value = valueWords(gauge);
  const valueWidth = widthOf(value, small);
  const left = pageWidth - valueWidth - 14;
  const row = markRow(own, left, top + 14, left - boldWidth(label, small) - 14, 'end');
  const room = left - row.width - 10;
  return (
    words(label, 0, top + 14, { room, size: small, look: 'p-strong' }) +
    row.svg +
    words(value, pageWidth, top + 14, { size: small, align: 'end' })
  );
}

function drawBar({ is, limit, isLeast }: Gauge, y: number): string {
  const value = ends(is);
  const most = limit && !isOpen(limit) ? ends(limit) : undefined;
  const full = Math.max(value.hi, most?.hi ?? 0, Number.MIN_VALUE) * 1.06;
  const at = (x: number): number => (Math.max(0, x) / full) * pageWidth;
  const parts = [box(limit && isOpen(limit) ? 'p-open' : 'p-track', 0, y, pageWidth, barHeight)];
  if (value.hi > value.lo) parts.push(box('p-band', at(value.lo), y, at(value.hi) - at(value.lo), barHeight));
  if (value.lo > 0) parts.push(box('p-solid', 0, y, at(value.lo), barHeight));
  if (isOpen(is)) parts.push(box('p-open', at(value.lo), y, pageWidth - at(value.lo), barHeight));
  if (most) {
    if (isLeast && value.hi < most.hi)
      parts.push(hatch('p-over', at(value.hi), y, at(most.hi) - at(value.hi), barHeight));
    if (!isLeast && value.hi > most.lo)
      parts.push(hatch('p-over', at(most.lo), y, at(value.hi) - at(most.lo), barHeight));
    parts.push(limitMarks({ lo: at(most.lo), hi: at(most.hi) }, y, barHeight));
  }
  return parts.join('');
}

/** A limit: a stroke across the bar with a foot, so that it is no end of one; two for a limit that is a range. */
export function limitMarks({ lo, hi }: { lo: number; hi: number }, y: number, height: number): string {
  const band = hi > lo ? box('p-limits', lo, y - 2, hi - lo, height + 6) : '';
  return band + [...new Set([lo, hi])].map((x) => limitMark(x, y, height)).join('');
}

const limitMark = (x: number, y: number, height: number): string =>
  line('p-limit', x, y - 2, x, y + height + 5) + path('p-limit', `M${n(x - 3)} ${n(y + height + 5)}h6`);
