// What a report is made of: one section a file that was judged, and how to look at it.
import type { Build } from '../core/build/build';
import type { Finding, Judgement } from '../core/judge/finding';
import type { ProvenFix } from '../core/judge/prove';
import type { Grade } from '../core/manifest/house-file';
import { atLeastAsBad, type WorkspaceConfig } from '../core/build/workspace-config';
import type { Doc, SourceLocation } from '../core/parts/doc';
import type { Language } from '../core/words/language';

/** Proven fixes of the findings that a report lists, best first. */
export interface Fixes {
  readonly of: ReadonlyMap<Finding, readonly ProvenFix[]>;
  /** Findings whose fixes were not looked for. */
  readonly notSought: number;
}

/** One judged file: a build with its parts, or a part file or house settings by themselves. */
export interface Section {
  readonly doc: Doc;
  /** What the build is called. */
  readonly title?: string;
  /** Whether nobody named the file, and it rests on one that was named. */
  readonly along?: boolean;
  /** Of a guide’s fenced block: which it is, from one. */
  readonly block?: number;
  readonly judgement: Judgement;
  /** For a build: the settings it was judged by. */
  readonly settings?: WorkspaceConfig;
  readonly build?: Build;
  /** Absent where no fixes were looked for. */
  readonly fixes?: Fixes;
  /** Where only what a change brings is listed: all that was found, and what of it stood before, less bad. */
  readonly since?: Since;
}

export interface Since {
  readonly all: readonly Finding[];
  readonly worse: ReadonlySet<Finding>;
}

export interface FormatOptions {
  /** A file’s path as people see it. */
  readonly shown: (doc: Doc) => string;
  /** The lightest grade to list. */
  readonly from: Grade;
  /** With the figures behind every finding. */
  readonly working: boolean;
  /** With the findings that a build accepts. */
  readonly accepted: boolean;
  readonly language: Language;
}

/** What tells a section from all others, beside fingerprints: blocks of a guide share a file. */
export const keyOf = ({ doc, block }: Section, look: Pick<FormatOptions, 'shown'>): string =>
  block === undefined ? look.shown(doc) : `${look.shown(doc)} (${block})`;

/** Findings of one file past this many are counted and not listed. */
export const mostListed = 2_000;

/** What a section lists under a look, in its order; what was not read is listed under any. */
export function listed(section: Section, look: Pick<FormatOptions, 'from' | 'accepted'>): readonly Finding[] {
  const all = section.judgement.findings.filter(
    (finding) =>
      finding.check.unread || (atLeastAsBad(finding.grade, look.from) && (look.accepted || !finding.accepted)),
  );
  return all.length > mostListed ? all.slice(0, mostListed) : all;
}

/** `samples/desk.pcbuild.yaml:14`, the line counted from one as people and editors do. */
export function lineOf({ doc, span }: SourceLocation, look: Pick<FormatOptions, 'shown'>): string {
  return `${look.shown(doc)}:${doc.lines.positionAt(span.start).line + 1}`;
}
