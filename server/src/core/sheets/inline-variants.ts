// Several variants in one value, `500 GB / 1 TB / 2 TB`: told apart by capacity, rating or name, and chosen alike.
import { plainLine } from './clean';
import { indexOf, type Line } from './columns';
import type { Matcher } from './matching';
import { scalarOf } from './take';

export interface Inline {
  readonly lines: readonly Line[];
  readonly variants: readonly string[];
  readonly isUndecided: boolean;
}

const KEYS = new Set(['capacity', 'rating', 'model']);

/** The parts of a value, each with the unit that stands behind the last. */
function partsOf(text: string): readonly string[] {
  const parts = plainLine(text)
    .split(/\s?[/|;]\s?|,\s/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const unit = /\d ?([A-Za-zµ³°/]{1,6})$/.exec(parts.at(-1) ?? '')?.[1];
  return unit === undefined ? parts : parts.map((part) => (/^[\d.,]+$/.test(part) ? `${part} ${unit}` : part));
}

export function chooseInline(lines: readonly Line[], matcher: Matcher, variant: string | undefined): Inline {
  const names = variantsIn(lines, matcher);
  if (names.length < 2) return { lines, variants: [], isUndecided: false };
  const chosen = variant === undefined ? undefined : indexOf(names, variant);
  const several = (line: Line): readonly string[] | undefined => {
    const parts = partsOf(line.text);
    const targets = matcher.match(line)?.targets ?? [];
    const isMeasured = targets.some(
      ({ field }) => field.type === 'quantity' && parts.every((part) => scalarOf(field, part) !== undefined),
    );
    const isNames = targets.some(({ path }) => path.join() === 'model') && parts.length === names.length;
    return parts.length === names.length && (isMeasured || isNames) ? parts : undefined;
  };
  return {
    lines: lines.flatMap((line) => {
      const parts = several(line);
      if (!parts) return [line];
      return chosen === undefined ? [] : [{ ...line, text: parts[chosen]! }];
    }),
    variants: names,
    isUndecided: chosen === undefined,
  };
}

/** The names of the variants: the parts of the capacity, else of the rating; of model names only beside such a line. */
function variantsIn(lines: readonly Line[], matcher: Matcher): readonly string[] {
  for (const line of lines) {
    if (!/[/|;,]/.test(line.text)) continue;
    const target = matcher
      .match(line)
      ?.targets.find(({ path, field }) => KEYS.has(path.join()) && field.type === 'quantity');
    if (!target) continue;
    const parts = partsOf(line.text);
    const read = parts.map((part) => (target.field.type === 'quantity' ? scalarOf(target.field, part) : undefined));
    if (parts.length > 1 && read.every((one) => one !== undefined) && new Set(read).size === read.length) return parts;
  }
  return [];
}
