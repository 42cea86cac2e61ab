// What tells a diagnostic from all others of its file: a client gives it back when it asks what can be done about it.
import type { Finding } from '../core/judge/finding';
import type { Doc } from '../core/parts/doc';
import type { Diagnostic, Range } from './shapes';

export interface DiagnosticData {
  readonly check: string;
  readonly subject: string;
  /** Which of the findings of that check about that subject. */
  readonly ordinal: number;
  /** The paths of the facts that a hint names. */
  readonly facts?: readonly string[];
}

/** The same for the same finding. */
export const keyOfData = ({ check, subject, ordinal }: DiagnosticData): string => `${check}\n${subject}\n${ordinal}`;

/** The data of each finding of a judgement. */
export function dataOfFindings(findings: readonly Finding[]): ReadonlyMap<Finding, DiagnosticData> {
  const met = new Map<string, number>();
  return new Map(
    findings.map((finding) => {
      const { id: check, subject } = finding;
      const key = `${check}\n${subject}`;
      const ordinal = met.get(key) ?? 0;
      met.set(key, ordinal + 1);
      return [finding, { check, subject, ordinal }];
    }),
  );
}

/** The data of a hint at what is missing in a file, at a path or, where that is empty, anywhere. */
export const dataOfHint = (check: string, { name }: Doc, path: string, facts: readonly string[]): DiagnosticData => ({
  check,
  subject: `${name}#${path}`,
  ordinal: 0,
  facts,
});

/**
 * The client’s diagnostic that is this one of ours, if it named it. A client that does not keep `data` is known by
 * code, range and whole message.
 */
export function sameAs(own: Diagnostic, named: readonly Diagnostic[]): Diagnostic | undefined {
  return named.find((other) =>
    other.data === undefined
      ? other.code === own.code && other.message === own.message && isSameRange(other.range, own.range)
      : isSameData(other.data, own.data),
  );
}

const isSameData = (a: Diagnostic['data'], b: Diagnostic['data']): boolean =>
  a?.check === b?.check && a?.subject === b?.subject && a?.ordinal === b?.ordinal;

const isSameRange = (a: Range, b: Range): boolean => isSame(a.start, b.start) && isSame(a.end, b.end);
const isSame = (a: Range['start'], b: Range['start']): boolean => a.line === b.line && a.character === b.character;
