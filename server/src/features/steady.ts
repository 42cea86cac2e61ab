// What is shown of findings while someone writes: what was there stays, what is new waits.
import { checks } from '../core/checks/all';
import { meet, shiftedRange, type Change } from '../core/text';
import type { Diagnostic, Range } from './shapes';

/** Where someone writes, as ranges of the text that stands there now; see `core/yaml/writing`. */
export interface WritingRanges {
  readonly span: Range;
  readonly begun: readonly Range[];
  readonly thing?: Range;
}

/** Checks of a text by itself: what they find is wrong in the very line, whatever is written next. */
const ofText: ReadonlySet<string> = new Set(checks.filter(({ on }) => on === 'file').map(({ id }) => id));

/** Whether a finding is of something that is only begun. */
export function isBegun({ code, range }: Diagnostic, { begun, thing }: WritingRanges): boolean {
  const at = { start: range.start, end: range.start };
  return begun.some((line) => meet(line, at)) || (!ofText.has(code) && thing !== undefined && meet(thing, at));
}

export interface Steadied {
  readonly shown: Diagnostic[];
  /** Whether that is other than what holds now. */
  readonly holds: boolean;
}

/**
 * What is shown where `before` was shown and `fresh` holds now. Nothing new is. While something new waits, the text is
 * not what it will be, so nothing goes either; what is new of things only begun says nothing of that.
 */
export function steadied(
  before: readonly Diagnostic[],
  fresh: readonly Diagnostic[],
  begun: (found: Diagnostic) => boolean,
): Steadied {
  const { of, rest } = paired(before, fresh);
  const isHalf = rest.some((found) => !begun(found));
  const shown = before.flatMap((found) => of.get(found) ?? (isHalf ? found : []));
  return { shown, holds: rest.length > 0 || shown.length > of.size };
}

/**
 * What is shown once the place of writing is another: all that holds, but what is new there or only begun there. A hint
 * that names more than it did stays there as it was.
 */
export function settledBeside(
  before: readonly Diagnostic[],
  fresh: readonly Diagnostic[],
  writing: WritingRanges,
): Diagnostic[] {
  const { rest, grown } = paired(before, fresh);
  const waits = new Set(rest.filter((found) => isBegun(found, writing) || meet(found.range, writing.span)));
  return fresh.flatMap((found) => (waits.has(found) ? (grown.get(found) ?? []) : found));
}

/**
 * Of what is to be shown since its place was left, what still holds or was shown `before`: the very change that left it
 * may have mended the rest, which nobody has seen.
 */
export function shownStill(
  shown: readonly Diagnostic[],
  before: readonly Diagnostic[] | undefined,
  fresh: readonly Diagnostic[],
): readonly Diagnostic[] {
  if (!before) return shown;
  const known = new Set([...before, ...fresh].map(keyOf));
  return shown.filter((found) => known.has(keyOf(found)));
}

interface Paired {
  /** Each finding shown with what it is now. */
  readonly of: ReadonlyMap<Diagnostic, Diagnostic>;
  /** What was not shown before. */
  readonly rest: readonly Diagnostic[];
  /** Of that, hints that name more than one that was shown, each with that. */
  readonly grown: ReadonlyMap<Diagnostic, Diagnostic>;
}

function paired(before: readonly Diagnostic[], fresh: readonly Diagnostic[]): Paired {
  const of = new Map<Diagnostic, Diagnostic>();
  const grown = new Map<Diagnostic, Diagnostic>();
  const left = new Set(before);
  const byKey = new Map(fresh.map((found) => [keyOf(found), found]));
  for (const found of before) {
    const now = byKey.get(keyOf(found));
    if (!now || !byKey.delete(keyOf(found))) continue;
    left.delete(found);
    if (namesMore(found, now)) grown.set(now, found);
    else of.set(found, now);
  }
  // A key or a word that is written on has another name each time: the same check at the same place is the same.
  for (const [key, found] of byKey) {
    const same = [...left].find(
      (one) => one.code === found.code && one.severity === found.severity && meet(one.range, found.range),
    );
    if (same && left.delete(same) && byKey.delete(key)) of.set(same, found);
  }
  return { of, rest: [...grown.keys(), ...byKey.values()], grown };
}

const namesMore = (before: Diagnostic, now: Diagnostic): boolean =>
  now.data?.facts?.some((path) => !before.data?.facts?.includes(path)) ?? false;

function keyOf({ code, severity, message, range, data }: Diagnostic): string {
  return data
    ? `${severity}\n${data.check}\n${data.subject}\n${data.ordinal}`
    : `${severity}\n${code}\n${message}\n${range.start.line}`;
}

/** Findings where they stand after the text of a file was changed. */
export function moved(found: readonly Diagnostic[], uri: string, changes: readonly Change[]): Diagnostic[] {
  const move = (range: Range): Range => changes.reduce(shiftedRange, range);
  return found.map((one) => ({
    ...one,
    range: move(one.range),
    ...(one.relatedInformation
      ? {
          relatedInformation: one.relatedInformation.map(({ location, message }) => ({
            location: location.uri === uri ? { uri, range: move(location.range) } : location,
            message,
          })),
        }
      : {}),
  }));
}
