// Records of known findings whose files are not there any more, told where a record file itself is checked.
import { knownByFile } from '../core/build/known-findings';
import type { Doc } from '../core/parts/doc';
import { isTrouble, type Host } from '../host/host';
import type { CheckRun } from './judged';

export class Stale {
  private readonly files: { readonly root: string; readonly doc: Doc }[] = [];
  /** Files whose records speak of a file that was moved. */
  private readonly moved = new Set<string>();

  add(run: CheckRun): void {
    if (run.section.doc.kind === 'known') this.files.push({ root: run.root, doc: run.section.doc });
    for (const file of movedIn(run)) this.moved.add(file);
  }

  /** What another thread found. */
  take(root: string, known: Doc | undefined, moved: readonly string[]): void {
    if (known) this.files.push({ root, doc: known });
    for (const file of moved) this.moved.add(file);
  }

  async count(host: Host): Promise<number> {
    let count = 0;
    for (const { root, doc } of this.files)
      for (const [file, records] of await absentIn(host, root, doc)) if (!this.moved.has(file)) count += records;
    return count;
  }
}

/** The files that records of known findings speak of and that are not there, with the number of their records. */
export async function absentIn(host: Host, root: string, doc: Doc): Promise<readonly (readonly [string, number])[]> {
  const absent: [string, number][] = [];
  for (const [file, records] of knownByFile(doc))
    if (isTrouble(await host.find(host.pathIn(root, file)))) absent.push([file, records.length]);
  return absent;
}

/** The files that records of known findings speak of, where a file was moved since. */
export const movedIn = ({ section: { doc, judgement } }: CheckRun): readonly string[] =>
  judgement.findings.flatMap(({ known }) =>
    known?.record && known.record.file !== doc.name ? [known.record.file] : [],
  );
