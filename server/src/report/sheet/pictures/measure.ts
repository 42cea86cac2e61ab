// How wide text is before anyone draws it: a table of widths, cutting to a room, breaking into lines.
import { columns } from '../../layout';

/** Widths in hundredths of the font size, for a wide sans serif: any usual one is as wide or narrower. */
const table = [
  [28, 'ijl'],
  [30, "IJ|'"],
  [34, ' .,:;/\\·'],
  [39, 'ft()[]'],
  [42, 'r-!"“”’'],
  [52, 'sz'],
  [56, 'cL?*_'],
  [60, 'kvxyFPaeoTY'],
  [64, '0123456789bdghnpquES$€°–'],
  [70, 'ABCKRVXZ{}'],
  [78, 'DGHNOQU&'],
  [84, 'w+=<>~−×÷±→#'],
  [87, 'M'],
  [98, 'mW%@…—'],
] as const;
const other = 75;
const narrowest = 28;

const widths: ReadonlyMap<string, number> = new Map(
  table.flatMap(([width, characters]) => [...characters].map((character) => [character, width] as const)),
);
/** The same for plain letters, by their codes. */
const plain: readonly number[] = Array.from(
  { length: 128 },
  (_, code) => widths.get(String.fromCharCode(code)) ?? other,
);

/** Bold letters are wider. */
export const boldly = 1.16;

export const boldWidth = (text: string, size: number): number => widthOf(text, size) * boldly;

/** The width of a text set at a font size; no less than it takes on a page. */
export function widthOf(text: string, size: number): number {
  let sum = 0;
  for (let i = 0; i < text.length; i++) {
    const width = plain[text.charCodeAt(i)];
    if (width === undefined) return ((sum + widthOfAny(text.slice(i))) / 100) * size;
    sum += width;
  }
  return (sum / 100) * size;
}

function widthOfAny(text: string): number {
  let sum = 0;
  for (const character of text) sum += widths.get(character) ?? other * Math.max(1, columns(character));
  return sum;
}

/** The text, or as much of it as goes into a room, with three dots for what is left out. */
export function cut(text: string, room: number, size: number): string {
  // What is longer than the narrowest letters would be is not measured to its end.
  const most = Math.ceil((room / size) * (100 / narrowest)) + 1;
  if (text.length <= most && widthOf(text, size) <= room) return text;
  const characters = [...text.slice(0, most)];
  while (characters.length > 0 && widthOf(`${characters.join('').trimEnd()}…`, size) > room) characters.pop();
  return `${characters.join('').trimEnd()}…`;
}

/** Lines of at most a room; a word that is longer is cut, and what does not go into the last line too. */
export function broken(text: string, room: number, size: number, most: number): string[] {
  // A unit stays with its number.
  const pieces = text.replace(/(\d) (?=[A-Za-z°%µΩ])/g, '$1\u00a0').split(' ');
  const lines: string[] = [];
  let line = '';
  for (const piece of pieces) {
    const word = piece.replace('\u00a0', ' ');
    const next = line === '' ? word : `${line} ${word}`;
    if (line === '' || widthOf(next, size) <= room) line = next;
    else if (lines.length === most - 1) return [...lines, cut(`${line} ${word} …`, room, size)];
    else {
      lines.push(cut(line, room, size));
      line = word;
    }
  }
  return [...lines, cut(line, room, size)];
}
