// The way of the heat on one scale of temperature: room, inlet, air in the case, cooler, lid and die, drives.
import type { Finding } from '../../../core/judge/finding';
import type { Build, Placed } from '../../../core/build/build';
import {
  airNeeded,
  caseTemperature,
  deliveredAir,
  freeAir,
  inletTemperature,
  riseAllowed,
} from '../../../core/figures/air';
import { heatInCase, isOpenFrame } from '../../../core/figures/case-heat';
import { isLiquid } from '../../../core/figures/coolers';
import { figure, type Figure } from '../../../core/figures/figure';
import { airAtCooler, driveTemperature, heatSteps } from '../../../core/figures/heat-steps';
import { heatOf } from '../../../core/figures/heat';
import { marginFigure } from '../../../core/figures/margins';
import { heatLeft, stillHeat } from '../../../core/figures/still-air';
import { box, hatch, line, n, pageWidth, path, picture, small, thing, words } from './draw';
import { ends, isOpen, lacking, short, shorts } from './figures-said';
import { drawGauge, gaugeWords, limitMarks, type Gauge } from './gauges';
import { markRow, Marks, type Belongs } from './marks';
import { boldWidth, widthOf } from './measure';
import type { Drawer, Picture } from './picture';

const belongs: Belongs = {
  'cooler-capacity-short': 'parts.processor',
  'airflow-short': 'parts.case',
  'airflow-one-way': 'parts.case',
  'drive-too-hot': undefined,
  'dew-on-parts': 'place.ambient',
  'inlet-taken-as-room': 'place.ambient',
  'heat-into-room': 'place.ambient',
};

const mostDrives = 16;
const rowHeight = 42;
const barHeight = 10;
/** A bar without an end holds the words of what is missing. */
const openHeight = 16;

interface Row {
  readonly place: string;
  readonly name: string;
  readonly is: Figure;
  /** Where the heat comes from: the stage before. */
  readonly from?: Figure;
  readonly limit?: Figure;
  readonly more: string;
  /** A step on the way, no part by itself. */
  readonly isStep?: boolean;
}

export const heat: Drawer = { belongs, draw };

function draw(build: Build, findings: readonly Finding[]): Picture | undefined {
  const rows = rowsOf(build);
  if (rows.length === 0) return undefined;
  const gauges = gaugesOf(build);
  const marks = new Marks(
    findings,
    belongs,
    [...rows, ...gauges].map(({ place }) => place),
  );
  const scale = scaleOf(rows);
  const inner = [axis(scale, 16 + rows.length * rowHeight)];
  let y = 20;
  rows.forEach((row, i) => {
    inner.push(drawRow(row, rows[i + 1], scale, y, marks));
    y += rowHeight;
  });
  y += 14;
  for (const gauge of gauges) {
    const one = drawGauge(gauge, y, marks);
    inner.push(one.svg);
    y = one.bottom;
  }
  const list = marks.list(y + 2);
  return picture({
    id: 'heat',
    title: 'Heat',
    key:
      'Temperatures on one scale, from the room to the parts. Each bar begins where the stage before it ends; a pale ' +
      'end is a range, a dashed outline is not known, an upright stroke is the limit.',
    words: [...rows.map(saysOf), ...gauges.map(gaugeWords), ...marks.words],
    height: list.bottom,
    inner: [...inner, list.svg],
  });
}

function rowsOf(build: Build): readonly Row[] {
  const { place } = build.file;
  const { processor, cooler, drives, case: housing } = build.parts;
  if (!processor && drives.length === 0) return [];
  const rows: Row[] = [
    { place: place.ambient.path, name: 'room', is: figure(place.ambient, 'room temperature'), more: '' },
  ];
  const inlet = inletTemperature(build);
  if (place.inlet.entry) rows.push({ place: place.inlet.path, name: 'inlet', is: inlet, from: rows[0]!.is, more: '' });
  const air = caseTemperature(build);
  if (housing)
    rows.push({
      place: housing.path,
      name: isOpenFrame(build) ? 'air, open frame' : 'air in the case',
      is: air,
      from: inlet,
      more: `from ${short(heatInCase(build))}`,
    });
  return [
    ...rows,
    ...chainOf(build),
    ...drives.slice(0, mostDrives).map((drive) => driveRow(build, drive, air)),
  ].filter((row) => row.place !== processor?.path || cooler);
}

function chainOf(build: Build): Row[] {
  const { processor, cooler } = build.parts;
  if (!processor || !cooler) return [];
  const rows: Row[] = [];
  let from = airAtCooler(build, cooler);
  if (isLiquid(cooler))
    rows.push({ place: cooler.path, name: 'air at the radiator', is: from, from: inletTemperature(build), more: '' });
  const power = short(heatOf(processor));
  for (const { name, reached } of heatSteps(build, processor, cooler)) {
    const isDie = name === 'die';
    rows.push({
      place:
        name === 'cooler' ? cooler.path : name === 'lid' ? (build.parts.paste?.path ?? cooler.path) : processor.path,
      name: isDie ? processor.label : name === 'lid' ? 'lid, behind the paste' : `base of ${cooler.label}`,
      is: reached,
      from,
      limit: isDie ? processorLimit(build, processor) : undefined,
      more: isDie ? `at ${power}` : '',
      isStep: !isDie,
    });
    from = reached;
  }
  return rows;
}

/** What is promised of the processor, else where it slows itself down. */
function processorLimit(build: Build, { part, label }: Placed<'processor'>): Figure {
  const promise = build.file.expect.temperature.processor;
  return promise.entry
    ? figure(promise, 'promised temperature of the processor')
    : figure(part.hottest, `temperature limit of ${label}`);
}

function driveRow(build: Build, drive: Placed<'drives'>, air: Figure): Row {
  return {
    place: drive.path,
    name: drive.label,
    is: driveTemperature(build, drive),
    from: air,
    limit: figure(drive.part.hottest, `highest temperature of ${drive.label}`),
    more: '',
  };
}

function valueText({ is, limit }: Row): string {
  const [value, most] = shorts(limit && !isOpen(limit) ? [is, limit] : [is]);
  return most === undefined ? value! : `${value!} of ${most}`;
}

function saysOf(row: Row): string {
  const missing = lacking(row.is, row.limit);
  return [`${row.name}${row.more === '' ? '' : ` ${row.more}`}: ${valueText(row)}`, missing]
    .filter((one) => one !== '')
    .join('; ');
}

interface Scale {
  readonly at: (celsius: number) => number;
  readonly ticks: readonly number[];
}

/** From the coldest to the hottest that is known, limits too, in whole steps. */
function scaleOf(rows: readonly Row[]): Scale {
  const known = rows
    .flatMap(({ is, limit }) => [is, limit].flatMap((one) => (one ? [one.lo, one.hi] : [])))
    .filter(Number.isFinite);
  const [low, high] = known.length === 0 ? [0, 100] : [Math.min(...known), Math.max(...known)];
  const step = stepFor(high - low);
  const first = Math.floor(low / step) * step;
  const last = Math.max(first + step, Math.ceil(high / step) * step);
  const count = Math.round((last - first) / step);
  return {
    at: (celsius) => 6 + ((Math.min(last, Math.max(first, celsius)) - first) / (last - first)) * (pageWidth - 12),
    ticks: Array.from({ length: count + 1 }, (_, i) => first + i * step),
  };
}

/** A step of 1, 2 or 5 with noughts, such that there are at most ten. */
function stepFor(span: number): number {
  const rough = Math.max(span, 1) / 10;
  const power = 10 ** Math.floor(Math.log10(rough));
  return [1, 2, 5, 10].map((one) => one * power).find((one) => one >= rough) ?? 10 * power;
}

function axis({ at, ticks }: Scale, bottom: number): string {
  return ticks
    .map((tick, i) => {
      const x = at(tick);
      const align = i === 0 ? 'start' : i === ticks.length - 1 ? 'end' : 'middle';
      const text = i === ticks.length - 1 ? `${n(tick)} °C` : n(tick);
      const from = align === 'start' ? 0 : align === 'end' ? pageWidth : x;
      return line('p-rule', x, 18, x, bottom) + words(text, from, 12, { size: small, look: 'p-faint', align });
    })
    .join('');
}

function drawRow(row: Row, next: Row | undefined, { at }: Scale, top: number, marks: Marks): string {
  const own = marks.at(row.place);
  const value = valueText(row);
  const missing = lacking(row.is, row.limit);
  const bar = top + 21;
  const named = row.more === '' || missing !== '' ? row.name : `${row.name}, ${row.more}`;
  const left = pageWidth - widthOf(value, small) - 14;
  const marked = markRow(own, left, top + 15, Math.max(60, left - boldWidth(named, small) - 12), 'end');
  return thing(
    row.place,
    marks.said(saysOf(row), own),
    words(named, 0, top + 15, {
      size: small,
      look: row.isStep ? 'p-halo' : 'p-strong p-halo',
      room: left - marked.width - 10,
    }),
    marked.svg,
    words(value, pageWidth, top + 15, { size: small, align: 'end', look: 'p-halo' }),
    drawBar(row, at, bar),
    next?.from === row.is && !isOpen(row.is)
      ? line('p-link', at(row.is.lo), bar + barHeight, at(row.is.lo), top + rowHeight + 21)
      : '',
    missing === ''
      ? ''
      : words(missing, isOpen(row.is) ? Math.min(openFrom(row.is, at) + 6, pageWidth / 2) : 0, bar + 12, {
          size: small,
          look: 'p-faint p-halo',
          room: pageWidth - 16,
        }),
  );
}

const openFrom = ({ lo }: Figure, at: Scale['at']): number => (Number.isFinite(lo) ? at(lo) : 6);

function drawBar({ is, from, limit }: Row, at: Scale['at'], y: number): string {
  if (isOpen(is)) return box('p-open', openFrom(is, at), y, pageWidth - 6 - openFrom(is, at), openHeight);
  const { lo, hi } = ends(is);
  const start = from && !isOpen(from) ? Math.min(from.lo, lo) : lo;
  const parts: string[] = [];
  if (lo > start) parts.push(box('p-solid', at(start), y, at(lo) - at(start), barHeight));
  if (hi > lo) parts.push(box('p-band', at(lo), y, at(hi) - at(lo), barHeight));
  if (lo <= start && hi <= lo) parts.push(path('p-dot', `M${n(at(lo))} ${n(y)}l5 5l-5 5l-5 -5Z`));
  if (limit && !isOpen(limit)) {
    const most = ends(limit);
    if (hi > most.lo) {
      const past = Math.max(start, most.lo);
      parts.push(hatch('p-over', at(past), y, at(hi) - at(past), barHeight));
    }
    parts.push(limitMarks({ lo: at(most.lo), hi: at(most.hi) }, y, barHeight));
  }
  return parts.join('');
}

function gaugesOf(build: Build): readonly Gauge[] {
  const { case: housing } = build.parts;
  if (!housing || isOpenFrame(build)) return [];
  const rise = riseAllowed(build, marginFigure(build, 'room-rise', 'rise allowed in the case'));
  const place = `${housing.path}.fan-places`;
  // Without any fan the heat rises and leaks through walls and gaps: there is no flow to hold against another.
  if (freeAir(build).hi === 0) {
    const label = `heat without fans, ${short(rise)} of rise`;
    return [{ place, label, is: heatLeft(build), limit: stillHeat(build, rise), checks: [] }];
  }
  const label = `air for ${short(rise)} of rise`;
  const [is, limit] = [deliveredAir(build), airNeeded(build, rise)];
  return [{ place, label, is, limit, after: ' needed', isLeast: true, checks: [] }];
}
