// Data sheets in the manner of real ones, each with the facts that a technician would read in it.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Kind } from '../../server/src/core/parts/kinds';
import { drawFrom, type Draft, type DraftOptions } from '../../server/src/core/sheets';
import { Indexes } from '../../server/src/core/sheets/label-index';
import { shownValue } from '../../server/src/core/sheets/part-text';
import { isMarkup, markupSheet } from '../../server/src/core/sheets/markup';
import { separatedSheet } from '../../server/src/core/sheets/separated';

export interface DrawnSheet {
  readonly name: string;
  readonly file: string;
  readonly kind: Kind;
  readonly variant?: string;
  readonly text: string;
  /** By path, as a part file writes the value. */
  readonly expected: ReadonlyMap<string, string>;
}

const folder = join(__dirname, '../sheets/drawn');
/** What is made once is kept for all. */
export const readers = {
  indexes: new Indexes(),
  markup: { is: isMarkup, read: markupSheet },
  separated: separatedSheet,
};

function sheetIn(file: string): DrawnSheet {
  const [head = '', ...rest] = readFileSync(join(folder, file), 'utf8').split('\n\n');
  const [text = '', facts = ''] = rest.join('\n\n').split(/^====\n/m);
  const said = new Map(head.split('\n').map((line) => line.split(': ') as [string, string]));
  const variant = said.get('variant');
  return {
    name: file.replace('.sheet', ''),
    file: said.get('file')!,
    kind: said.get('kind') as Kind,
    ...(variant ? { variant } : {}),
    text,
    expected: new Map(
      facts
        .trimEnd()
        .split('\n')
        .filter((line) => line !== '')
        .map((line) => {
          const at = line.indexOf(': ');
          return [line.slice(0, at), line.slice(at + 2)] as const;
        }),
    ),
  };
}

export const drawnSheets: readonly DrawnSheet[] = readdirSync(folder).sort().map(sheetIn);

export function drawn(sheet: DrawnSheet, text = sheet.text, options: DraftOptions = {}): Draft {
  const given = { kind: sheet.kind, ...(sheet.variant ? { variant: sheet.variant } : {}), ...readers, ...options };
  const found = drawFrom({ name: sheet.file, text }, given);
  if (!('draft' in found)) throw new Error(`${sheet.name}: no kind`);
  return found.draft;
}

/** Facts by path, as they are written. */
export const factsOf = ({ kind, facts }: Draft): ReadonlyMap<string, string> =>
  new Map(facts.map((fact) => [fact.path.join('.'), shownValue(kind, fact)]));
