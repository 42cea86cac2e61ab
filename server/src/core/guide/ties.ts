// What ties a Markdown text to builds: its front matter, fenced blocks, marked values, steps and cautions.
import type { Doc } from '../parts/doc';
import { CAUTIONS, type CautionId } from '../trade/cautions';
import { STEP_KINDS, type StepKind } from '../trade/steps';
import type { Span } from '../text';
import { FencedDoc } from './fenced';
import { buildIn, headOf, type NamedBuild } from './front-matter';
import { blocksOf, type Blocks, type Prose } from './markdown';
import { markersIn, type Marker } from './markers';
import { mayTie } from './may-tie';

/** A value between its marks. */
export interface MarkedValue {
  readonly name: string;
  readonly marker: Marker;
  /** What is written, without emphasis around it. */
  readonly text: string;
  readonly span: Span;
}

export interface MarkedStep {
  readonly marker: Marker;
  /** What it says behind `step`. */
  readonly says: string;
  /** Where that stands. */
  readonly span: Span;
  readonly kind?: StepKind;
  /** The part that it names. */
  readonly part: string;
  /** The prose of the step. */
  readonly prose: Span;
}

export interface MarkedCaution {
  readonly marker: Marker;
  readonly says: string;
  readonly span: Span;
  readonly id?: CautionId;
  readonly prose: Span;
}

/** A marker that means nothing where it stands. */
export interface LooseMarker {
  readonly marker: Marker;
  readonly fault: 'not closed' | 'nothing to close' | 'says nothing';
}

export interface Ties {
  /** The build that the front matter names. */
  readonly build?: NamedBuild;
  readonly fences: readonly FencedDoc[];
  readonly values: readonly MarkedValue[];
  readonly steps: readonly MarkedStep[];
  readonly cautions: readonly MarkedCaution[];
  readonly loose: readonly LooseMarker[];
  /** All markers, in order. */
  readonly markers: readonly Marker[];
}

const none: Ties = { fences: [], values: [], steps: [], cautions: [], loose: [], markers: [] };

/** Worked out once for a text. */
export const tiesOf = (doc: Doc): Ties => doc.kept(tiesOf, () => (mayTie(doc.text) ? read(doc) : none));

/** Whether anything ties a text to a build; without, it is none of ours. */
export function isTied(doc: Doc): boolean {
  const { build, fences, markers } = tiesOf(doc);
  return fences.length + markers.length > 0 || build?.path.endsWith('.pcbuild.yaml') === true;
}

function read(doc: Doc): Ties {
  const { text, lines } = doc;
  const own: string[] = [];
  for (let i = 0; i < lines.count; i++) {
    const { start, end } = lines.lineSpan(i);
    own.push(text.slice(start, end));
  }
  const head = headOf(own);
  const blocks = blocksOf(own.map((line, i) => (i < head ? '' : line.replace('\uFEFF', ' '))));
  const spanOf = ({ from, to }: Prose): Span => ({
    start: lines.lineSpan(from).start,
    end: lines.lineSpan(to - 1).end,
  });
  const markers = markersIn(text, blocks.prose, spanOf);
  const build =
    head > 0 ? buildIn(text, { start: lines.lineSpan(1).start, end: lines.lineSpan(head - 1).start }) : undefined;
  return {
    ...(build ? { build } : {}),
    fences: blocks.fences.flatMap((fence) => {
      const kind = kindOfInfo(fence.info);
      return kind ? [FencedDoc.of(doc, kind, fence)] : [];
    }),
    ...markedIn(doc, markers, blocks, spanOf),
    markers,
  };
}

function kindOfInfo(info: string): 'build' | 'part' | undefined {
  const word = /^[^\s{]+/.exec(info)?.[0];
  return word === 'pcbuild' ? 'build' : word === 'part' ? 'part' : undefined;
}

type Marked = Pick<Ties, 'values' | 'steps' | 'cautions' | 'loose'>;

function markedIn(doc: Doc, markers: readonly Marker[], blocks: Blocks, spanOf: (prose: Prose) => Span): Marked {
  const marked = { values: [] as MarkedValue[], steps: [] as MarkedStep[], cautions: [] as MarkedCaution[] };
  const loose: LooseMarker[] = [];
  const headings = blocks.prose.filter(({ type }) => type === 'heading').map((one) => spanOf(one).start);
  const blockEnds = blocks.prose.map((one) => spanOf(one).end);
  const points = markers.filter(({ says }) => /^step\b/.test(says)).map(({ span }) => span.start);
  const until = endsBefore([...headings, ...points], doc.text.length);
  for (let i = 0; i < markers.length; i++) {
    const marker = markers[i]!;
    const word = /^(step|caution)(?=\s|$)/.exec(marker.says)?.[1];
    if (marker.closes) loose.push({ marker, fault: 'nothing to close' });
    else if (word === 'step')
      marked.steps.push(stepOf(marker, { start: marker.span.end, end: until(marker.span.end) }));
    else if (word === 'caution')
      marked.cautions.push(cautionOf(marker, { start: marker.span.end, end: proseEnd(doc, marker, blockEnds) }));
    else if (marker.says === '') loose.push({ marker, fault: 'says nothing' });
    else {
      const next = markers[i + 1];
      if (!next?.closes || next.prose !== marker.prose) loose.push({ marker, fault: 'not closed' });
      else {
        marked.values.push(valueBetween(doc, marker, { start: marker.span.end, end: next.span.start }));
        i++;
      }
    }
  }
  return { ...marked, loose };
}

/** Where the words behind a marker end: with its own prose, or with the next where it stands alone. */
function proseEnd({ text }: Doc, { span, prose }: Marker, ends: readonly number[]): number {
  const own = ends[prose]!;
  return text.slice(span.end, own).trim() === '' ? (ends[prose + 1] ?? own) : own;
}

/** The first of some places after a place; asked in rising order. */
function endsBefore(places: readonly number[], last: number): (from: number) => number {
  const sorted = [...places].sort((a, b) => a - b);
  let at = 0;
  return (from) => {
    while (at < sorted.length && sorted[at]! < from) at++;
    return sorted[at] ?? last;
  };
}

function valueBetween({ text }: Doc, marker: Marker, { start, end }: Span): MarkedValue {
  const between = text.slice(start, end);
  const from = /^[\s*_`]*/.exec(between)![0].length;
  let to = between.length;
  while (to > from && /[\s*_`]/.test(between[to - 1]!)) to--;
  const span = { start: start + from, end: start + to };
  return { name: marker.says, marker, text: text.slice(span.start, span.end), span };
}

const byLength = [...STEP_KINDS].sort((a, b) => b.length - a.length);

function stepOf(marker: Marker, prose: Span): MarkedStep {
  const { says, span } = behindWord(marker, 'step');
  const kind = byLength.find((one) => says === one || says.startsWith(`${one} `));
  const part = kind ? says.slice(kind.length).trim() : '';
  return { marker, says, span, ...(kind ? { kind } : {}), part, prose };
}

function cautionOf(marker: Marker, prose: Span): MarkedCaution {
  const { says, span } = behindWord(marker, 'caution');
  const id = Object.hasOwn(CAUTIONS, says) ? (says as CautionId) : undefined;
  return { marker, says, span, ...(id ? { id } : {}), prose };
}

function behindWord({ says: whole, words }: Marker, word: string): { says: string; span: Span } {
  const says = whole.slice(word.length).trim();
  return { says, span: { start: says === '' ? words.start : words.end - says.length, end: words.end } };
}
