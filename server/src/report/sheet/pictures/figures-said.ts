// How a figure stands in a picture: its text, and what is missing for it.
import type { Figure } from '../../../core/figures/figure';
import { showAll, show } from '../../../core/figures/sentence';
import { listed } from '../../../core/text';

const mostNamed = 2;
const digits = 3;

/** In three digits, and whole watts: a picture is read, and its numbers stand in full in the working. */
const digitsOf = ({ dimension, lo, hi }: Figure): number =>
  (dimension === 'power' || dimension === 'apparent-power') && Math.max(lo, Number.isFinite(hi) ? hi : lo) >= 1000
    ? digits + 1
    : digits;

export const short = (one: Figure): string => shown(one, one.unit);

/** The same where there is little room. */
export const tight = (one: Figure): string => short(one).replace('at least ', '≥ ').replace('at most ', '≤ ');

/** That something is no less than nothing says nothing of it. */
const shown = (one: Figure, unit: Figure['unit']): string =>
  saysNothing(one) ? 'not known' : show(one, unit, digitsOf(one));

/** Whether nothing is known of a figure but that it is none below nothing. */
export const saysNothing = ({ lo, hi, dimension }: Figure): boolean =>
  hi === Infinity && (lo === -Infinity || (lo === 0 && dimension !== 'temperature'));

/** Several figures of one dimension in one unit; with more digits where different ones would look alike. */
export function shorts(figures: readonly Figure[]): string[] {
  const unit = figures.find((one) => one.unit !== undefined)?.unit;
  const texts = figures.map((one) => shown(one, unit));
  const isAlike = figures.some(
    (one, i) => texts.indexOf(texts[i]!) !== i && !isSame(one, figures[texts.indexOf(texts[i]!)]!),
  );
  return isAlike ? showAll(figures) : texts;
}

const isSame = (a: Figure, b: Figure): boolean => a.lo === b.lo && a.hi === b.hi;

/** Whether a figure has an end; one without is drawn dashed. */
export const isOpen = ({ lo, hi }: Figure): boolean => !Number.isFinite(lo) || !Number.isFinite(hi);

/** What no file states of figures that have no end: `not stated: power of x`; empty where nothing is missing. */
export function lacking(...figures: readonly (Figure | undefined)[]): string {
  const what = new Set(figures.flatMap((one) => (one && isOpen(one) ? one.missing.map((fact) => fact.what) : [])));
  if (what.size === 0) return '';
  const named = [...what].slice(0, mostNamed);
  if (what.size > named.length) named.push(`${what.size - named.length} more`);
  return `not stated: ${listed(named, 'and')}`;
}

/** The ends of a figure, each bounded, for drawing; an open upper end stays where the figure begins. */
export function ends({ lo, hi }: Figure): { readonly lo: number; readonly hi: number } {
  const low = Number.isFinite(lo) ? lo : 0;
  return { lo: low, hi: Number.isFinite(hi) ? hi : low };
}
