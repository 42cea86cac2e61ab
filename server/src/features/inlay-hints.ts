// Inlay hints: what a line comes to, behind its value: the link a drive or card gets, watts, room to spare, years of
// use, the firmware that starts the processor. Each kind can be switched off; the working is its tooltip.
import type { Build, Placed } from '../core/build/build';
import { yearsOfUse, writtenPerDay } from '../core/figures/endurance';
import { copyWith, isBounded, type Figure } from '../core/figures/figure';
import { processorListed } from '../core/figures/firmware';
import { clearances, gapOf } from '../core/figures/rooms';
import { reached } from '../core/figures/lanes';
import { partDraws } from '../core/figures/power';
import { show } from '../core/figures/sentence';
import type { Seated } from '../core/figures/slots';
import { driveLinkRate } from '../core/figures/storage';
import type { Used } from '../core/figures/truth';
import { stepsOf } from '../core/judge/working-steps';
import type { UnitName } from '../core/quantity';
import { visible, type Span } from '../core/text';
import { english } from '../core/words/languages';
import type { Node } from '../core/yaml';
import { item, markup, type Block } from './prose';
import type { MarkupContent, Position, Range, Reading } from './shapes';
import { atMost, workingBlocks } from './working-markdown';

export const hintKinds = ['link', 'power', 'clearance', 'endurance', 'firmware'] as const;
export type HintKind = (typeof hintKinds)[number];

export interface InlayHint {
  position: Position;
  label: string;
  tooltip?: MarkupContent;
  paddingLeft: true;
}

/** A hint before it is printed: where, in what words, and what they rest on. */
export interface Told {
  readonly at: Span;
  readonly label: string;
  readonly uses: readonly Used[];
}

/**
 * The hints of a range of a file, in order, without their tooltips; what stands at one place is one hint. None where
 * the file is no build.
 */
export function hintsIn({ doc, build }: Reading, range: Range, shows: (kind: HintKind) => boolean): Told[] {
  if (!build) return [];
  const [start, end] = [doc.lines.offsetAt(range.start), doc.lines.offsetAt(range.end)];
  const byPlace = new Map<number, Told>();
  for (const told of hintKinds.filter(shows).flatMap((kind) => makers[kind](build))) {
    const { end: place } = told.at;
    if (place < start || place > end) continue;
    const before = byPlace.get(place);
    byPlace.set(place, before ? joined(before, told) : told);
  }
  return [...byPlace.values()].sort((a, b) => a.at.end - b.at.end);
}

const joined = (a: Told, b: Told): Told => ({
  at: a.at,
  label: `${a.label} · ${b.label}`,
  uses: [...a.uses, ...b.uses],
});

/** A hint as editors take it. */
export const printed = ({ doc }: Reading, { at, label }: Told, language = english()): InlayHint => ({
  position: doc.lines.positionAt(at.end),
  label: visible(language.plain(label)),
  paddingLeft: true,
});

const mostLines = 12;

/** Its working. */
export function tooltipOf(
  { doc }: Reading,
  { uses }: Told,
  kind: MarkupContent['kind'],
  language = english(),
): MarkupContent {
  const missing = uses.flatMap((used) => (used.type === 'figure' ? used.missing : []));
  const lacks: Block[] = [...new Set(missing.map(({ what }) => what))].map((what) =>
    item(0, language.words`Not stated: ${language.plain(what)}`),
  );
  return markup(
    [...atMost(workingBlocks(stepsOf(uses), { home: doc, language }), mostLines, 0, language), ...lacks],
    kind,
  );
}

type Maker = (build: Build) => Told[];

const makers: Readonly<Record<HintKind, Maker>> = {
  link: (build) => [
    ...build.parts.drives.flatMap((drive) => linkHint(drive, driveLinkRate(build, drive))),
    ...[...build.parts.graphics, ...build.parts.cards].flatMap((card) => linkHint(card, reached(build, card).link)),
  ],
  power: (build) =>
    [...partDraws(build)].flatMap(([placed, draw]) => {
      // A class of parts that is only bounded from above says little, and where nothing bounds it, nothing.
      const label = draw.lo > 0 || draw.hi === 0 ? show(draw, 'W', digits) : isUnknown(draw) ? '? W' : undefined;
      return label === undefined ? [] : hintAt(placed, label, [draw]);
    }),
  clearance: (build) =>
    clearances(build).flatMap(({ placed, need, room, gap, clear }) => {
      if (gap.lo >= 0) return hintAt(placed, `${show(gap, 'mm', digits)} to spare`, [gap]);
      const short = gapOf({ need: room, room: need });
      return short.lo > 0 && clear?.is !== true
        ? hintAt(placed, `${show(short, 'mm', digits)} too much`, [gap, ...(clear?.uses ?? [])])
        : [];
    }),
  endurance: (build) =>
    build.parts.drives.flatMap((drive) => {
      const promise = build.file.expect.drives.value?.get(drive.at.name.value ?? '');
      const perDay = writtenPerDay(build, drive);
      const node = promise?.['written-per-day'].node;
      if (!perDay || !node || perDay.missing.length > 0) return [];
      const years = yearsOfUse(drive, perDay);
      return [{ at: node.span, label: yearsOf(years), uses: [years] }];
    }),
  firmware: (build) => {
    const { processor } = build.parts;
    const listed = processorListed(build);
    const since = listed?.line?.since;
    return processor && since?.value !== undefined
      ? hintAt(processor, `starts from ${since.value}`, [since, ...(listed?.uses ?? [])])
      : [];
  },
};

const digits = 3;
const yearDigits = 2;

/** A figure in a few words: `8 W`, `at most 8 W`, `? W`. */
function inWords(one: Figure, unit: UnitName, most: number): string {
  if (!isBounded(one)) return `? ${unit}`;
  const isFromNothing = one.lo <= 0 && one.hi > 0 && one.hi !== Infinity;
  return show(isFromNothing ? copyWith(one, { lo: -Infinity }) : one, unit, most);
}

const yearsOf = (years: Figure): string => {
  const text = isBounded(years) ? show(years, undefined, yearDigits) : '?';
  return `${text} ${text === '1' ? 'year' : 'years'}`;
};

const isUnknown = ({ hi, missing }: Figure): boolean => hi === Infinity && missing.length > 0;

/** Behind the slot or port that a part names; where it names none, there is no link to speak of. */
function linkHint(placed: Seated, rate: Figure): Told[] {
  const { slot, port } = placed.at as { slot: { node?: Node }; port?: { node?: Node } };
  const node = slot.node ?? port?.node;
  if (!node || node.span.end === node.span.start) return [];
  return [{ at: node.span, label: inWords(rate, 'GB/s', digits), uses: [rate] }];
}

/** Behind the part’s name; of a part that is spelled out, behind its model, its name or its bare key. */
function hintAt(placed: Placed, label: string, uses: readonly Used[]): Told[] {
  const { used, map, doc } = placed;
  if (used && used.file === undefined) return [];
  const own = ['model', 'name', 'maker'].flatMap((key) => map?.get(key) ?? []).find(({ merged }) => !merged)?.value;
  const at = used?.span ?? own?.span;
  return at && at.end > at.start && at.end <= doc.text.length ? [{ at, label, uses }] : [];
}
