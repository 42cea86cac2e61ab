// The readers of pages and tables, brought in with the first data sheet: nothing else needs their libraries.
import type { SheetReaders } from '../core/sheets';

export async function sheetReaders(): Promise<SheetReaders> {
  const [{ isMarkup, markupSheet }, { separatedSheet }] = await Promise.all([
    import('../core/sheets/markup'),
    import('../core/sheets/separated'),
  ]);
  return { markup: { is: isMarkup, read: markupSheet }, separated: separatedSheet };
}
