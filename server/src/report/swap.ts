// Candidates for one place of a build, as a table: what each brings and clears, what it costs and draws.
import type { Build, Placed } from '../core/build/build';
import { show } from '../core/figures/sentence';
import { howMany, partDraw, sustainedDraw } from '../core/figures/power';
import { derive, figure, times, type Figure } from '../core/figures/figure';
import type { Finding } from '../core/judge/finding';
import type { Swapped } from '../core/judge/swaps';
import { grades } from '../core/manifest/house-file';
import type { Language } from '../core/words/language';
import { block, columns, padded, safe } from './layout';
import { findingJson } from './json';
import type { FormatOptions, Section } from './section';

export interface SwapRanking {
  readonly build: Build;
  readonly section: Section;
  readonly placed: Placed;
  /** The best of them, best first. */
  readonly ranked: readonly Swapped[];
  /** How many there are beside the one that stands there. */
  readonly others: number;
  readonly shown: FormatOptions['shown'];
  readonly language: FormatOptions['language'];
}

const headsIn = (language: Language): readonly string[] => [
  language.word('part'),
  language.word('brings'),
  language.word('clears'),
  language.word('price'),
  language.word('draw'),
];

export function swapText({ build, section, placed, ranked, others, shown, language }: SwapRanking): string {
  const title = safe(section.title ?? shown(section.doc));
  const now = placed.used
    ? language.words`${title}, ${placed.path}: now ${placed.used.name}.`
    : language.words`${title}, ${placed.path}: now spelled out in the build.`;
  const intro = block(`${now} ${othersWords(others, language)}`, 0);
  if (others === 0) return `${intro.join('\n')}\n`;
  const rows = ranked.map((swapped) => rowOf(build, placed, swapped, language));
  const heads = headsIn(language);
  const widths = heads.map((head, i) => Math.max(columns(head), ...rows.map((row) => columns(row[i]!))));
  const table = [heads, ...rows].map((row) =>
    `  ${row.map((cell, i) => padded(cell, widths[i]!)).join('   ')}`.trimEnd(),
  );
  const rest =
    others > ranked.length ? [language.words`${others - ranked.length} more; --most ${others} lists all.`] : [];
  return `${[
    ...intro,
    '',
    ...table,
    '',
    ...rest,
    ...block(language.word('What a part brings and clears is counted in findings by grade, over the whole build.'), 0),
  ].join('\n')}\n`;
}

function othersWords(count: number, language: Language): string {
  if (count === 0) return language.word('No other part of this kind stands in the parts folders.');
  return count === 1
    ? language.word('1 other part of this kind.')
    : language.words`${count} other parts of this kind, best first.`;
}

function rowOf(build: Build, placed: Placed, swapped: Swapped, language: Language): string[] {
  const { price, draw } = differences(build, placed, swapped);
  return [
    safe(swapped.candidate.name),
    byGrade(swapped.brings, language),
    byGrade(swapped.clears, language),
    price ? signed(price) : '',
    draw ? signed(draw) : '',
  ];
}

/** `1 stop, 2 unknown`, or `nothing`. */
function byGrade(findings: readonly Finding[], language: Language): string {
  const counts = grades.map((grade) => ({
    grade,
    count: findings.filter((finding) => finding.grade === grade).length,
  }));
  return (
    counts
      .filter(({ count }) => count > 0)
      .map(({ grade, count }) => `${count} ${grade}`)
      .join(', ') || language.word('nothing')
  );
}

/** What the swap changes in price and sustained draw; undefined where it is not known exactly. */
function differences(build: Build, placed: Placed, swapped: Swapped): { price?: Figure; draw?: Figure } {
  const changed = build.withPart(placed, swapped.candidate.name);
  const other = changed.inPlaceOf(placed);
  const price = other && minus('price difference', priceOf(other), priceOf(placed));
  const draw =
    minus('draw difference', sustainedDraw(changed), sustainedDraw(build)) ??
    (other && placeDraw(build, placed, changed, other));
  return { ...(price ? { price } : {}), ...(draw ? { draw } : {}) };
}

const priceOf = (placed: Placed): Figure =>
  times(figure(placed.part.price, `price of ${placed.label}`), howMany(placed));

/** Where the whole sum is open for want of other parts’ facts, the place alone still tells the difference. */
function placeDraw(build: Build, placed: Placed, changed: Build, other: Placed): Figure | undefined {
  const [before, after] = [partDraw(build, placed), partDraw(changed, other)];
  return before && after && minus('draw difference', after, before);
}

function minus(label: string, a: Figure, b: Figure): Figure | undefined {
  const known =
    a.lo === a.hi && b.lo === b.hi && Number.isFinite(a.lo) && Number.isFinite(b.lo) && a.currency === b.currency;
  if (!known) return undefined;
  return derive(label, a.dimension, [a, b], `${a.label} − ${b.label}`, (x, y) => x - y, {
    ...(a.unit ? { unit: a.unit } : {}),
    ...(a.currency ? { currency: a.currency } : {}),
  });
}

/** With its sign, as it is a difference. */
const signed = (one: Figure): string => (one.lo > 0 ? `+${show(one)}` : show(one).replace(/^-/, '−'));

export function swapReport({ build, section, placed, ranked, others, shown, language }: SwapRanking): object {
  const look = { shown, from: 'unknown', working: false, accepted: true, language } as const;
  return {
    version: 1,
    file: shown(section.doc),
    path: placed.path,
    ...(placed.used ? { now: placed.used.name } : {}),
    others,
    parts: ranked.map((swapped) => {
      const { price, draw } = differences(build, placed, swapped);
      return {
        name: swapped.candidate.name,
        brings: swapped.brings.map((finding) => findingJson(finding, look)),
        clears: swapped.clears.map((finding) => findingJson(finding, look)),
        ...(price ? { price: { value: price.lo, currency: price.currency } } : {}),
        ...(draw ? { drawW: draw.lo } : {}),
      };
    }),
  };
}
