// Findings on a picture: numbered, each with a mark of its grade’s own shape where it belongs, and listed below.
import type { Finding } from '../../../core/judge/finding';
import type { Grade } from '../../../core/manifest/house-file';
import { htmlText, visible } from '../../../core/text';
import { box, n, pageWidth, path, small, thing, words } from './draw';
import { boldWidth, broken } from './measure';

export interface Mark {
  /** Its place among all findings that the sheet numbers. */
  readonly number: number;
  readonly finding: Finding;
  /** The thing on the picture that it sits on; undefined where none is drawn. */
  readonly place?: string;
}

/** Which checks a picture shows the findings of, each with the place for those whose own is not drawn. */
export type Belongs = Readonly<Record<string, string | undefined>>;

/** All that a picture shows of findings, as text. */
export const toldOf = (findings: readonly Finding[], belongs: Belongs): readonly string[] =>
  findings.flatMap(({ id, grade, accepted, subject, said }, i) =>
    Object.hasOwn(belongs, id) ? [`${i} ${id} ${grade}${accepted ? ', accepted' : ''} ${subject}\n${said.text}`] : [],
  );

/** More than these are counted and not listed. */
const mostListed = 12;
const mostOpen = 4;
const mostLines = 4;
const lineHeight = 16;
const markSize = 12;

export class Marks {
  readonly all: readonly Mark[];
  private readonly more: number;

  /** `drawn`: the places of all that is on the picture. */
  constructor(findings: readonly Finding[], belongs: Belongs, drawn: Iterable<string>) {
    const places = new Set(drawn);
    const own = findings.filter(({ id }) => Object.hasOwn(belongs, id));
    const open = own.filter(({ grade }) => grade === 'unknown');
    // What is not known is drawn as such; of the answers that wait for it a few are enough.
    const listed = [...own.filter((one) => !open.includes(one)), ...open.slice(0, mostOpen)].slice(0, mostListed);
    this.more = own.length - listed.length;
    this.all = listed.map((finding) => ({
      number: findings.indexOf(finding) + 1,
      finding,
      place: placeOf(finding, places, belongs[finding.id]),
    }));
  }

  /** The marks that sit on a place; of some checks alone, or of all others. */
  at(place: string, which: (id: string) => boolean = () => true): readonly Mark[] {
    return this.all.filter((mark) => mark.place === place && which(mark.finding.id));
  }

  /** What is read out of a thing with these marks. */
  said(text: string, marks: readonly Mark[]): string {
    return [text, ...marks.map((mark) => `${gradeOf(mark)}: ${mark.finding.said.text}`)]
      .join('. ')
      .replace(/\.\./g, '.');
  }

  /** The findings as lines of text. */
  get words(): readonly string[] {
    const lines = this.all.map((mark) => `${mark.number}. ${gradeOf(mark)}: ${mark.finding.said.text}`);
    return this.more > 0 ? [...lines, moreWords(this.more)] : lines;
  }

  /** The list of the findings from a height on. */
  list(top: number): { readonly svg: string; readonly bottom: number } {
    const parts: string[] = [];
    let y = top;
    const from = markSize + 6;
    const heads = this.all.map((mark) => `${mark.number} ${gradeOf(mark)}`);
    const first = from + Math.max(0, ...heads.map((head) => boldWidth(head, small))) + 10;
    const room = pageWidth - first;
    for (const [i, mark] of this.all.entries()) {
      const head = heads[i]!;
      const lines = broken(visible(mark.finding.said.text), room, small, mostLines);
      parts.push(
        thing(
          mark.place ?? keyOf(mark.finding.subject),
          `${gradeOf(mark)}: ${mark.finding.said.text}`,
          shape(mark.finding.grade, 0, y + 2),
          words(head, from, y + 13, { size: small, look: 'p-strong' }),
          ...lines.map((text, row) => words(text, first, y + 13 + row * lineHeight, { room, size: small })),
        ),
      );
      y += lines.length * lineHeight + 6;
    }
    if (this.more > 0) {
      parts.push(words(moreWords(this.more), 0, y + 13, { size: small, look: 'p-faint' }));
      y += lineHeight + 6;
    }
    return { svg: parts.join(''), bottom: y };
  }
}

const moreWords = (count: number): string => `and ${count} more, in the list of findings`;

const gradeOf = ({ finding }: Mark): string => (finding.accepted ? `${finding.grade}, accepted` : finding.grade);

/** A subject without what only tells one outcome from another. */
const keyOf = (subject: string): string => subject.split(':')[0]!;

function placeOf({ subject }: Finding, drawn: ReadonlySet<string>, otherwise: string | undefined): string | undefined {
  for (const start of [keyOf(subject), keyOf(subject).replace(/^expect\.drives\./, 'parts.drives.')])
    for (let key = start; key !== ''; key = shorter(key)) if (drawn.has(key)) return key;
  return otherwise !== undefined && drawn.has(otherwise) ? otherwise : undefined;
}

/** A path without its last step. */
function shorter(key: string): string {
  return key.slice(0, Math.max(0, key.lastIndexOf('.'), key.lastIndexOf('[')));
}

/** A grade’s own shape, twelve high: told apart without colour. */
export function shape(grade: Grade, x: number, y: number): string {
  const look = `p-mark p-${grade}`;
  const [r, s] = [markSize / 2, markSize];
  switch (grade) {
    case 'harm':
      return path(look, `M${n(x + r)} ${n(y)}L${n(x + s)} ${n(y + s)}H${n(x)}Z`);
    case 'stop':
      return box(look, x + 1, y + 1, s - 2, s - 2);
    case 'shortfall':
      return path(look, `M${n(x + r)} ${n(y)}L${n(x + s)} ${n(y + r)}L${n(x + r)} ${n(y + s)}L${n(x)} ${n(y + r)}Z`);
    default:
      return `<circle class="${look}" cx="${n(x + r)}" cy="${n(y + r)}" r="${n(r - 1)}"/>`;
  }
}

const markGap = 7;
const wordsOf = (mark: Mark, full: boolean): string =>
  full ? `${mark.number} ${mark.finding.grade}` : `${mark.number}`;

const rowWidth = (marks: readonly Mark[], full: boolean): number =>
  marks.reduce((sum, mark) => sum + markSize + 3 + boldWidth(wordsOf(mark, full), small) + markGap, -markGap);

/** Whether marks have room with their grades in words. */
export const fitsInWords = (marks: readonly Mark[], room: number): boolean => rowWidth(marks, true) <= room;

/** Marks in a row on a baseline, with their grades in words where there is room; and how wide they are. */
export function markRow(
  marks: readonly Mark[],
  x: number,
  baseline: number,
  room: number,
  align: 'start' | 'end' = 'start',
): { readonly svg: string; readonly width: number } {
  if (marks.length === 0) return { svg: '', width: 0 };
  const full = fitsInWords(marks, room);
  let shown = marks;
  while (shown.length > 1 && rowWidth(shown, full) > room) shown = shown.slice(0, -1);
  const width = rowWidth(shown, full);
  let at = align === 'start' ? x : x - width;
  const parts: string[] = [];
  for (const mark of shown) {
    const text = wordsOf(mark, full);
    parts.push(
      shape(mark.finding.grade, at, baseline - 10.5),
      `<text class="p-text p-small p-strong" x="${n(at + markSize + 3)}" y="${n(baseline)}">${htmlText(text)}</text>`,
    );
    at += markSize + 3 + boldWidth(text, small) + markGap;
  }
  return { svg: parts.join(''), width };
}
