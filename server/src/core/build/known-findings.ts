// What a file of known findings says, entry by entry, and whether an entry counts.
import { knownFile, type knownFinding } from '../manifest/known-file';
import type { Grade } from '../manifest/house-file';
import type { Doc } from '../parts/doc';
import type { Group } from '../parts/fact';
import { readGroup } from '../parts/facts';
import type { Amount } from '../quantity';

/** One finding as it was recorded; `stated` is the entry as it stands. */
export interface KnownFinding {
  readonly stated: Group<typeof knownFinding>;
  readonly doc: Doc;
  /** The file it was found in, and what its build was called. */
  readonly file: string;
  readonly title: string | undefined;
  /** In a guide, the fenced block, from one. */
  readonly block: number | undefined;
  readonly id: string;
  readonly subject: string;
  readonly grade: Grade;
  readonly past: readonly Amount[];
  readonly text: string;
  readonly fingerprint: string;
  readonly by: string;
  readonly until: string;
}

/** All entries of a file that say who lets what stand until when. Read once a text. */
export const knownFindings = (doc: Doc): readonly KnownFinding[] => doc.kept(knownFindings, () => read(doc));

/** By the file they were found in. */
export const knownByFile = (doc: Doc): ReadonlyMap<string, readonly KnownFinding[]> =>
  doc.kept(knownByFile, () => byFile(knownFindings(doc)));

function byFile(all: readonly KnownFinding[]): Map<string, readonly KnownFinding[]> {
  const sorted = new Map<string, KnownFinding[]>();
  for (const one of all) {
    const own = sorted.get(one.file);
    if (own) own.push(one);
    else sorted.set(one.file, [one]);
  }
  return sorted;
}

/** What an entry lacks to count; a text that was not read whole lets nothing stand. */
export type Lack = 'name' | 'day' | 'finding' | 'grade';

export function lackOf({ stated, grade }: KnownFinding): Lack | undefined {
  if (!stated.finding.value || !stated.at.value) return 'finding';
  if (grade === 'harm') return 'grade';
  if (!stated.by.value?.trim()) return 'name';
  return stated.until.value === undefined ? 'day' : undefined;
}

function read(doc: Doc): KnownFinding[] {
  const { root, problems } = doc.parsed;
  if (root?.type !== 'map' || problems.length > 0) return [];
  const file = readGroup(knownFile, '', [{ doc, map: root, path: '', span: root.span }]);
  return [...(file.files.value ?? [])].flatMap(([name, of]) =>
    (of.findings.value ?? []).map((stated) => ({
      stated,
      doc,
      file: name,
      title: of.build.value,
      block: stated.block.value,
      id: stated.finding.value ?? '',
      subject: stated.at.value ?? '',
      grade: stated.grade.value ?? 'unknown',
      past: stated.past.value ?? [],
      text: stated.says.value ?? '',
      fingerprint: stated.mark.value ?? '',
      by: stated.by.value ?? '',
      until: stated.until.value ?? '',
    })),
  );
}
