// Records of known findings whose files are not there any more, told where a record file itself is checked.
import { knownByFile } from '../core/build/known-findings';
import type { Doc } from '../core/parts/doc';
import { isTrouble, type Host } from '../host/host';
import type { CheckRun } from './judged';

export class Stale {
  private readonly files: { readonly root: string; readonly doc: Doc }[] = [];
  /** Files whose records speak of a file that was moved. */
  private readonly moved = new Set<string>();

  add({ section: { doc, judgement }, root }: CheckRun): void {
    if (doc.kind === 'known') this.files.push({ root, doc });
    for (const { known } of judgement.findings)
      if (known?.record && known.record.file !== doc.name) this.moved.add(known.record.file);
  }

  async count(host: Host): Promise<number> {
    let count = 0;
    for (const { root, doc } of this.files)
      for (const [file, records] of knownByFile(doc))
        if (!this.moved.has(file) && isTrouble(await host.find(host.pathIn(root, file)))) count += records.length;
    return count;
  }
}
