// The lines of a guide that belong to a marked step or caution, and edits that move or put in such lines. Only what
// stands at the margin, begins with its mark and shares its lines with no other step is moved; the rest is left.
import type { Doc } from '../parts/doc';
import type { Edit, Span } from '../text';
import type { Guide } from './guide';
import type { MarkedCaution, MarkedStep } from './ties';

/** What may stand before the mark of a step on its line: a number or a dash with its box, or the signs of a heading. */
const lead = /^(?:(?:\d{1,9}[.)]|[-*+])[ \t]+(?:\[[ xX]\][ \t]+)?|(#{1,6})[ \t]+)?(?:\*\*|__|[*_])?$/;

/** What begins another block at the margin. */
const begins = /^(?:(?:\d{1,9}[.)]|[-*+])[ \t]|#{1,6}[ \t]|>|<!--)/;

const fence = /^[ \t>]*(?:```|~~~)/m;

class Rows {
  constructor(private readonly doc: Doc) {}

  at(offset: number): number {
    return this.doc.lines.positionAt(offset).line;
  }

  span(row: number): Span {
    return this.doc.lines.lineSpan(row);
  }

  text(row: number): string {
    const { start, end } = this.span(row);
    return this.doc.text.slice(start, end);
  }

  isBlank(row: number): boolean {
    return this.text(row).trim() === '';
  }

  get count(): number {
    return this.doc.lines.count;
  }
}

/** The block of a marked step; `whole`: with the cautions that stand right before it. */
interface StepBlock {
  readonly own: Span;
  readonly whole: Span;
}

/** The block of a step; undefined where it cannot be moved by itself. */
function blockOf({ doc, ties }: Guide, step: MarkedStep): StepBlock | undefined {
  const rows = new Rows(doc);
  const row = rows.at(step.marker.span.start);
  const first = rows.span(row).start;
  const before = lead.exec(doc.text.slice(first, step.marker.span.start));
  if (!before) return undefined;
  const last = before[1] ? endOfSection(rows, row, before[1].length) : endOfBlock(rows, row, before[0] !== '');
  const own = { start: first, end: rows.span(last).end };
  const isAlone = ties.steps.every((one) => one === step || !within(own, one.marker.span));
  if (!isAlone || fence.test(doc.text.slice(own.start, own.end))) return undefined;
  return { own, whole: { start: startWithCautions(rows, row, ties.cautions), end: own.end } };
}

const within = (whole: Span, { start, end }: Span): boolean => whole.start <= start && end <= whole.end;

function endOfSection(rows: Rows, row: number, level: number): number {
  let at = row + 1;
  while (at < rows.count && (/^(#{1,6})[ \t]/.exec(rows.text(at))?.[1]?.length ?? Infinity) > level) at++;
  return lastFilled(rows, at - 1);
}

function lastFilled(rows: Rows, row: number): number {
  let at = row;
  while (rows.isBlank(at)) at--;
  return at;
}

/** The last line of a list’s item or of a paragraph. */
function endOfBlock(rows: Rows, row: number, isItem: boolean): number {
  let last = row;
  for (let at = row + 1; at < rows.count; at++) {
    const text = rows.text(at);
    if (rows.isBlank(at)) {
      if (!isItem) break;
      continue;
    }
    const isIndented = /^(?: {2,}|\t)/.test(text);
    // Text at the margin goes on with a paragraph, and with nothing behind a blank line.
    if (!isIndented && (begins.test(text) || at > last + 1)) break;
    last = at;
  }
  return last;
}

/** Where the cautions right above a line begin; the line’s own start where there are none. */
function startWithCautions(rows: Rows, row: number, cautions: readonly MarkedCaution[]): number {
  let start = rows.span(row).start;
  for (let at = row - 1; at >= 0; ) {
    while (at > 0 && rows.isBlank(at)) at--;
    const found = cautions.map((one) => cautionRows(rows, one)).find((one) => one?.last === at);
    if (!found) break;
    start = rows.span(found.first).start;
    at = found.first - 1;
  }
  return start;
}

/** The lines of a caution that begins with its mark, at the margin or in a quote. */
function cautionRows(rows: Rows, { marker }: MarkedCaution): { first: number; last: number } | undefined {
  const first = rows.at(marker.span.start);
  const quote = /^(?:>[ \t]?)?$/.exec(rows.text(first).slice(0, marker.span.start - rows.span(first).start));
  if (!quote) return undefined;
  let last = first;
  const goesOn = (text: string): boolean =>
    quote[0] === '' ? text.trim() !== '' && !begins.test(text) : text[0] === '>';
  while (last + 1 < rows.count && goesOn(rows.text(last + 1))) last++;
  return { first, last };
}

/** The edits that move one marked step before or behind another; numbers of a list stay where they are. */
export function stepMoved(
  guide: Guide,
  step: MarkedStep,
  where: 'before' | 'behind',
  other: MarkedStep,
): Edit[] | undefined {
  const [block, at] = [blockOf(guide, step), blockOf(guide, other)];
  if (!block || !at || block.whole.start === at.whole.start) return undefined;
  const whole = { start: Math.min(block.whole.start, at.whole.start), end: Math.max(block.whole.end, at.whole.end) };
  const { text } = guide.doc;
  if (fence.test(text.slice(whole.start, whole.end)) || block.whole.start < at.whole.start !== (where === 'behind'))
    return undefined;
  return numbered(guide.doc, whole, block.whole, where);
}

/** The edits that bring a caution that stands behind a step before it. */
export function cautionMoved(guide: Guide, caution: MarkedCaution, step: MarkedStep): Edit[] | undefined {
  const rows = new Rows(guide.doc);
  const [at, block] = [cautionRows(rows, caution), blockOf(guide, step)];
  const own = at && { start: rows.span(at.first).start, end: rows.span(at.last).end };
  if (!own || !block || own.start < block.own.end) return undefined;
  const between = guide.doc.text.slice(block.own.start, own.end);
  return fence.test(between) ? undefined : moved(guide.doc, own, block.own.start);
}

/** The edits that put a caution in before a step. */
export function cautionPut(guide: Guide, step: MarkedStep, lines: readonly string[]): Edit[] | undefined {
  const { doc } = guide;
  const block = blockOf(guide, step);
  if (!block) return undefined;
  const end = /\r\n|\r|\n/.exec(doc.text)?.[0] ?? '\n';
  const rows = new Rows(doc);
  const row = rows.at(block.own.start);
  const gap = row > 0 && !rows.isBlank(row - 1) ? end : '';
  const { start } = block.own;
  return [{ span: { start, end: start }, text: gap + lines.map((line) => `> ${line}${end}`).join('') + end }];
}

/** Moves some lines up before an offset, with the blank lines before them behind them. */
function moved({ text }: Doc, { start, end }: Span, to: number): Edit[] {
  const gap = blankBefore(text, start);
  const blank = text.slice(gap, start);
  const between = /^(?:\r\n|\r|\n)$/.test(blank) ? blank.repeat(2) : blank;
  return [
    { span: { start: to, end: to }, text: text.slice(start, end) + between },
    { span: { start: gap, end }, text: '' },
  ];
}

/** Where the blank lines before an offset begin, with the end of the line before them. */
function blankBefore(text: string, offset: number): number {
  let at = offset;
  while (at > 0 && /\s/.test(text[at - 1]!)) at--;
  while (at < offset && /[ \t]/.test(text[at]!)) at++;
  return at;
}

/** Where the first line behind an offset begins that is not blank. */
function nextFilled(text: string, offset: number): number {
  let at = offset + (/^\s*/.exec(text.slice(offset))?.[0].length ?? 0);
  while (at > offset && !/[\r\n]/.test(text[at - 1]!)) at--;
  return at;
}

/** A stretch of lines with one block of it at its other end, each number of a list at the place where it stood. */
function numbered({ text }: Doc, whole: Span, block: Span, where: 'before' | 'behind'): Edit[] | undefined {
  const gapEnd = where === 'behind' ? nextFilled(text, block.end) : block.start;
  const gapStart = where === 'behind' ? block.end : blankBefore(text, block.start);
  const rest = where === 'behind' ? { start: gapEnd, end: whole.end } : { start: whole.start, end: gapStart };
  const order = where === 'behind' ? [rest, block] : [block, rest];
  const before = numbersIn(text, whole);
  const after = order.flatMap((span) => numbersIn(text, span));
  const edits: Edit[] = [];
  for (const [i, span] of after.entries()) {
    const number = text.slice(before[i]!.start, before[i]!.end);
    if (number.length !== span.end - span.start && holdsBlank(text, span.start, whole)) return undefined;
    if (text.slice(span.start, span.end) !== number) edits.push({ span, text: number });
  }
  const isIn = (one: Edit): boolean => within(block, one.span);
  let own = text.slice(block.start, block.end);
  for (const { span, text: number } of edits.filter(isIn).reverse())
    own = own.slice(0, span.start - block.start) + number + own.slice(span.end - block.start);
  const gap = text.slice(gapStart, gapEnd);
  const put =
    where === 'behind'
      ? { span: { start: whole.end, end: whole.end }, text: gap + own }
      : { span: { start: whole.start, end: whole.start }, text: own + gap };
  const taken = where === 'behind' ? { start: block.start, end: gapEnd } : { start: gapStart, end: block.end };
  return [...edits.filter((one) => !isIn(one)), put, { span: taken, text: '' }].sort(
    (a, b) => a.span.start - b.span.start,
  );
}

/** The numbers of list items at the margin. */
const numbersIn = (text: string, { start, end }: Span): Span[] =>
  [...text.slice(start, end).matchAll(/^\d{1,9}(?=[.)][ \t])/gm)].map(({ 0: number, index }) => ({
    start: start + index,
    end: start + index + number.length,
  }));

/** Whether an item may hold more than one paragraph, whose indentation hangs on the width of its number. */
function holdsBlank(text: string, start: number, { end }: Span): boolean {
  const next = /\n\d{1,9}[.)][ \t]|\n\n\S/.exec(text.slice(start, end));
  return /\n[ \t]*\r?\n[ \t]+\S/.test(text.slice(start, next ? start + next.index : end));
}
