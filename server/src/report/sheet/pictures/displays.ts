// Display links: each output, what its mode needs against what goes through, and the display at the other end.
import type { Finding } from '../../../core/judge/finding';
import type { Build } from '../../../core/build/build';
import { outputs } from '../../../core/figures/display';
import { displayLinks, type DisplayLink } from '../../../core/figures/display-links';
import { listed } from '../../../core/text';
import { box, hatch, pageWidth, picture, small, thing, words } from './draw';
import { ends, isOpen, lacking, shorts } from './figures-said';
import { limitMarks } from './gauges';
import { markRow, Marks, type Belongs } from './marks';
import { broken } from './measure';
import type { Drawer, Picture } from './picture';

const belongs: Belongs = {
  'display-mode-beyond-link': undefined,
  'display-on-board': undefined,
  'display-ports-short': undefined,
  'no-picture': 'parts.displays[0]',
};

const mostLinks = 16;
const mostNamed = 12;
const rowGap = 16;
const markHeight = 18;
const lineHeight = 15;
const blockHeight = 56;
const leftWidth = 134;
const rightX = 322;
const barHeight = 12;

interface Row {
  readonly link: DisplayLink;
  readonly output: { readonly place: string; readonly lines: readonly string[] };
  readonly display: { readonly place: string; readonly lines: readonly string[] };
  readonly place: string;
  readonly above: string;
  readonly below: string;
  readonly says: string;
}

export const displays: Drawer = { belongs, draw };

function draw(build: Build, findings: readonly Finding[]): Picture | undefined {
  const all = displayLinks(build);
  if (all.length === 0) return undefined;
  const rows = all.slice(0, mostLinks).map((link) => rowOf(build, link));
  const marks = new Marks(
    findings,
    belongs,
    rows.flatMap((row) => [row.place, row.display.place]),
  );
  const inner: string[] = [];
  let y = 4;
  for (const row of rows) {
    inner.push(drawRow(row, y, marks));
    const isMarked = [row.place, row.display.place].some((place) => marks.at(place).length > 0);
    y += blockHeight + rowGap + (isMarked ? markHeight : 0) + (belowLines(row).length - 1) * lineHeight;
  }
  const beside = besideWords(build, all.length - rows.length);
  for (const text of beside.flatMap((one) => broken(one, pageWidth, small, 3))) {
    inner.push(words(text, 0, y + 13, { size: small, look: 'p-faint' }));
    y += 17;
  }
  const list = marks.list(y + 8);
  return picture({
    id: 'displays',
    title: 'Displays',
    key:
      'Each row is one link: the output, what its mode needs against what the link carries, the display. A pale bar ' +
      'is a range, a dashed outline is not known, an upright stroke is what the link carries.',
    words: [...rows.map(({ says }) => says), ...beside, ...marks.words],
    height: list.bottom,
    inner: [...inner, list.svg],
  });
}

function rowOf(build: Build, link: DisplayLink): Row {
  const { promise, displays: shown, output } = link;
  const squeezed = link.squeezed;
  const needs = squeezed?.needed ?? link.needed;
  const carried = squeezed?.carried ?? link.carried;
  const display = shown[0];
  const port = output?.name ?? promise?.port.text ?? display?.at.port.text ?? '';
  const named = port === '' ? 'output not named' : `output ${port}`;
  const to = display ? many(shown.map(({ label }) => label)) : 'no display listed';
  const [need, offer] = needs ? shorts([needs, carried]) : [undefined, shorts([carried])[0]!];
  const missing = lacking(needs, carried);
  const mode = promise ? [promise.mode.text, promise.depth.text].filter((one) => one !== '') : [];
  const above = need === undefined ? 'no mode is promised' : `needs ${need}${squeezed ? ', compressed' : ''}`;
  const below = isOpen(carried) ? missing || 'carries: not known' : `carries ${offer!}`;
  const place = promise?.$.path ?? display!.path;
  const from = output?.on ?? build.parts.graphics[0] ?? build.parts.board;
  return {
    link,
    place,
    output: {
      place: from?.path ?? 'parts',
      lines: [port === '' ? 'not named' : port, output?.on.label ?? 'not known'],
    },
    display: {
      place: display?.path ?? place,
      lines: [to, ...mode],
    },
    above,
    below,
    says: [
      `${output ? `${named} of ${output.on.label}` : named} to ${[to, ...mode].join(', ')}: ${above}; ${below}`,
      ...(missing !== '' && missing !== below ? [missing] : []),
    ].join('; '),
  };
}

const many = (labels: readonly string[]): string =>
  labels.length > 1 ? `${labels[0]!} and ${labels.length - 1} more` : labels[0]!;

const belowLines = (row: Row): readonly string[] => broken(row.below, rightX - leftWidth - 12, small, 2);

function drawRow(row: Row, top: number, marks: Marks): string {
  const own = marks.at(row.place);
  const beside = row.display.place === row.place ? [] : marks.at(row.display.place);
  const { link } = row;
  const middle = top + blockHeight / 2;
  const from = leftWidth;
  const width = rightX - from;
  const text = from + 8;
  const room = width - 12;
  const below = belowLines(row);
  return (
    thing(
      row.output.place,
      `output ${row.output.lines.join(' of ')}`,
      block(row.output.lines, 0, top, leftWidth, !link.output),
    ) +
    thing(
      row.place,
      marks.said(row.says, own),
      words(row.above, text, middle - 13, { room, size: small }),
      drawBar(link, from, middle - barHeight / 2, width),
      ...below.map((part, i) => words(part, text, middle + 24 + i * lineHeight, { room, size: small })),
      markRow(own, text, top + blockHeight + 15 + (below.length - 1) * lineHeight, room).svg,
    ) +
    thing(
      row.display.place,
      marks.said(`display ${row.display.lines.join(', ')}`, beside),
      block(row.display.lines, rightX, top, pageWidth - rightX, link.displays.length === 0),
      markRow(beside, rightX, top + blockHeight + 15, pageWidth - rightX).svg,
    )
  );
}

function block(lines: readonly string[], x: number, y: number, width: number, isUnknown: boolean): string {
  const room = width - 12;
  return (
    box(isUnknown ? 'p-open' : 'p-block', x, y, width, blockHeight) +
    lines
      .slice(0, 3)
      .map((text, i) =>
        words(text, x + 7, y + (lines.length > 2 ? 16 : 23) + i * 17, {
          room,
          size: small,
          look: i === 0 ? 'p-strong' : '',
        }),
      )
      .join('')
  );
}

function drawBar({ needed, carried, squeezed }: DisplayLink, x: number, y: number, width: number): string {
  const needs = squeezed?.needed ?? needed;
  const through = squeezed?.carried ?? carried;
  const need = needs && !isOpen(needs) ? ends(needs) : undefined;
  const most = isOpen(through) ? undefined : ends(through);
  const full = Math.max(need?.hi ?? 0, most?.hi ?? 0, Number.MIN_VALUE) * 1.08;
  const at = (rate: number): number => x + (Math.max(0, rate) / full) * width;
  const parts = [box(most ? 'p-track' : 'p-open', x, y, width, barHeight)];
  if (need) {
    if (need.hi > need.lo) parts.push(box('p-band', at(need.lo), y, at(need.hi) - at(need.lo), barHeight));
    parts.push(box('p-solid', x, y, at(need.lo) - x, barHeight));
    if (most && need.hi > most.lo) parts.push(hatch('p-over', at(most.lo), y, at(need.hi) - at(most.lo), barHeight));
  }
  if (most) {
    parts.push(limitMarks({ lo: at(most.lo), hi: at(most.hi) }, y, barHeight));
  }
  return parts.join('');
}

/** What is not drawn: outputs that nothing is plugged into, and links past those that are. */
function besideWords(build: Build, left: number): string[] {
  const used = new Set([
    ...build.parts.displays.map(({ at }) => at.port.value),
    ...(build.file.expect.displays.value ?? []).map(({ port }) => port.value),
  ]);
  const free = outputs(build).list.filter(({ name }) => !used.has(name));
  const names = free.slice(0, mostNamed).map(({ name, on }) => `${name} of ${on.label}`);
  if (free.length > names.length) names.push(`${free.length - names.length} more`);
  return [
    ...(left > 0 ? [`and ${left} more links, not drawn`] : []),
    ...(names.length > 0 ? [`free outputs: ${listed(names)}`] : []),
  ];
}
