// Plain shapes of what features take and give: structurally those of the Language Server Protocol.
import type { Build } from '../core/build/build';
import type { Guide } from '../core/guide/guide';
import type { Judgement } from '../core/judge/finding';
import type { Grade } from '../core/manifest/house-file';
import type { Doc } from '../core/parts/doc';
import type { Edit, Position, Range } from '../core/text';
import type { DiagnosticData } from './diagnostic-data';

export type { Position, Range };

/** One judged file as a feature sees it. */
export interface View {
  readonly doc: Doc;
  /** Present when the file is a build. */
  readonly build?: Build;
  /** Present when the file is a guide. */
  readonly guide?: Guide;
  readonly judgement: Judgement;
  /** The address of a file, as the client spells it where it has it open. */
  readonly uriOf: (doc: Doc) => string;
  /** The version of a file that the client has open; null for one on disk. */
  readonly versionOf: (doc: Doc) => number | null;
}

/** A file with what it names, whether it was judged or not. */
export type Reading = Omit<View, 'judgement'>;

export interface Location {
  uri: string;
  range: Range;
}
export interface TextEdit {
  range: Range;
  newText: string;
}
export interface TextDocumentEdit {
  textDocument: { uri: string; version: number | null };
  edits: TextEdit[];
}
/** Always with versions, so that a client refuses an edit made for an older text. */
export interface WorkspaceEdit {
  documentChanges: TextDocumentEdit[];
}
export interface MarkupContent {
  kind: 'markdown' | 'plaintext';
  value: string;
}
export interface Command {
  title: string;
  command: string;
  arguments?: unknown[];
}

/** Source: LSP 3.17, DiagnosticSeverity. */
export const severities = { error: 1, warning: 2, information: 3, hint: 4 } as const;

/** Source: LSP 3.17, SymbolKind. */
export const symbolKinds = { file: 1, field: 8, array: 18, object: 19, key: 20 } as const;

/** Severity alone does not tell a grade. */
export const sourceOf = (grade: Grade): string => `fettle · ${grade}`;

/** The address of the page on a check, under the scheme by which the client opens such pages. */
export const pageAddress = (scheme: string, check: string): string => `${scheme}:/${check}.md`;

export interface Diagnostic {
  range: Range;
  severity: 1 | 2 | 3 | 4;
  code: string;
  /** Where the page on the check opens. */
  codeDescription?: { href: string };
  /** With the grade, as in `sourceOf`; what is none of a check’s is from `fettle` alone. */
  source: string;
  message: string;
  relatedInformation?: { location: Location; message: string }[];
  /** Tells it from all others of its file. */
  data?: DiagnosticData;
}

export const emptyRange: Range = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

/** Edits of one file as the protocol wants them, for the version of the text they were made for. */
export function documentEdit(view: Reading, doc: Doc, edits: readonly Edit[]): TextDocumentEdit {
  return {
    textDocument: { uri: view.uriOf(doc), version: view.versionOf(doc) },
    edits: edits.map(({ span, text }) => ({ range: doc.lines.rangeOf(span), newText: doc.written(text) })),
  };
}
