// Where a part, a place or a firmware version is used, as text and JSON.
import type { Language } from '../core/words/language';
import { block, columns, padded, safe } from './layout';

/** One use in one build. */
export interface UseRow {
  readonly file: string;
  /** Counted from one. */
  readonly line: number;
  readonly title?: string;
  /** The part in words of the build, and its part file’s name. */
  readonly subject: string;
  readonly part?: string;
  readonly places: readonly string[];
  readonly firmware: readonly string[];
}

export interface UsesReport {
  readonly asked: string;
  readonly uses: readonly UseRow[];
  /** Builds that were looked through. */
  readonly builds: number;
}

export function usesText({ asked, uses, builds }: UsesReport, language: Language): string {
  const files = new Set(uses.map(({ file }) => file)).size;
  const used = files === 0 ? language.word('none') : String(files);
  const told =
    builds === 1
      ? language.words`${asked}: used by ${used} of 1 build.`
      : language.words`${asked}: used by ${used} of ${builds} builds.`;
  const head = block(told, 0);
  const rows = uses.map(({ file, line, title, subject, part, places, firmware }) => [
    title ?? file,
    `${file}:${line}`,
    subject,
    [part ?? '', ...places, ...firmware.map((version) => language.words`firmware ${version}`)]
      .filter((one) => one !== '')
      .join(', '),
  ]);
  const widths = [0, 1, 2].map((i) => Math.min(widest, Math.max(0, ...rows.map((row) => columns(safe(row[i]!))))));
  const lines = rows.map((row) => `  ${row.map((cell, i) => padded(safe(cell), widths[i] ?? 0)).join('  ')}`.trimEnd());
  return `${[...head, ...(lines.length > 0 ? ['', ...lines] : [])].join('\n')}\n`;
}

/** A column is no wider; what is longer pushes the rest of its own line. */
const widest = 40;
