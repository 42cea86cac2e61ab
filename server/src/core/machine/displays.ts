// Displays by the blocks of data with which they name themselves.
import type { Doc } from '../parts/doc';
import type { Told } from './as-built';
import { edidBytes, readEdid, type EdidMode } from './edid';
import { connectorOf } from './outputs';
import type { Reading } from './reading';
import { linesOf } from './said';

/** Undefined where no block was read at all. */
export function displaysOf(docs: readonly Doc[]): readonly Told[] | undefined {
  const found = docs.flatMap((doc) => {
    const bytes = edidBytes(doc.text);
    return bytes ? [displayOf(doc, bytes)] : [];
  });
  return docs.length === 0 ? undefined : found;
}

function displayOf(doc: Doc, bytes: Uint8Array): Told {
  const edid = readEdid(bytes);
  const connector = connectorOf(doc);
  const at = { doc, span: firstBytes(doc) };
  return {
    connector: connector === undefined ? undefined : { ...at, text: connector, what: 'the file’s name' },
    reports: edid.name && { ...at, text: edid.name.value, what: 'EDID, name' },
    id: edid.maker && { ...at, text: edid.maker.value + productCode(bytes), what: 'EDID, maker and product code' },
    modes: edid.modes.map((mode) => ({ ...at, text: modeText(mode), what: 'EDID, timing' })),
  };
}

/** Source: VESA E-EDID Standard: bytes 10 and 11, the lower first. */
const productCode = (bytes: Uint8Array): string =>
  ((bytes[11]! << 8) | bytes[10]!).toString(16).toUpperCase().padStart(4, '0');

const modeText = ({ value: { widthPx, heightPx, refreshHz } }: Reading<EdidMode>): string =>
  `${widthPx}x${heightPx} @ ${refreshHz} Hz`;

/** The line on which the block begins. */
function firstBytes({ text }: Doc): { start: number; end: number } {
  for (const line of linesOf(text))
    if (/00\s?ff\s?ff/i.test(line.text)) return { start: line.start, end: line.start + line.text.length };
  return { start: 0, end: 0 };
}
