// Of what a check finds, what a change brings: what a revision before it did not find, or found less bad.
import { FencedDoc } from '../core/guide/fenced';
import type { Doc } from '../core/parts/doc';
import { isTrouble } from '../host/host';
import type { Section } from '../report/section';
import { pairBlocks, type Block } from '../review/blocks';
import { broughtTo, type JudgedSide } from '../review/compare';
import { fileRef, heldByRun } from '../session/texts';
import { pairsOf } from './pairing';
import type { CheckRun } from './judged';
import { filesOf, folderSide, revisionSide, type Side, type SideFile } from './sides';
import type { World } from './world';

export class OnlyNew {
  /** Where files stood before that stand elsewhere now; looked for on first need. */
  private moved?: Promise<ReadonlyMap<string, SideFile>>;
  /** Findings left out, since they stood before. */
  known = 0;

  constructor(
    private readonly before: Side,
    private readonly after: Side,
  ) {}

  /** The section with what the change brings alone; what was not read stays. */
  async narrowed({ section, root, file }: CheckRun): Promise<Section> {
    const { doc, judgement, build } = section;
    const shown = this.after.host.shown(root, doc.name);
    const side: JudgedSide = { doc, judgement, ...(build ? { build } : {}), shown: ({ name }) => name };
    const { come, worse } = broughtTo(await this.judgedBefore(shown, doc, file?.blocks), side);
    const findings = judgement.findings.filter(
      (finding) => come.has(finding) || worse.has(finding) || finding.check.unread,
    );
    this.known += judgement.findings.length - findings.length;
    return { ...section, judgement: { ...judgement, findings }, since: { all: judgement.findings, worse } };
  }

  /** As it was judged before; for one of a guide’s fenced `blocks`, the block that it was. */
  private async judgedBefore(path: string, now: Doc, blocks?: readonly Block[]): Promise<JudgedSide | undefined> {
    const { host, loader } = this.before;
    const found = await host.find(path);
    const there = isTrouble(found) || found.kind !== 'file' ? (await this.movedFiles()).get(path) : found;
    const loaded = there && (await loader.load(fileRef(host, there.root, there.name)));
    loader.texts.evict(heldByRun);
    if (!loaded) return undefined;
    const inside = now instanceof FencedDoc ? pairBlocks(loaded.blocks ?? [], blocks ?? []) : undefined;
    const was = inside ? inside.find(({ after }) => after?.doc === now)?.before : loaded;
    if (!was) return undefined;
    const { doc, judgement, build } = was;
    return { doc, judgement, ...(build ? { build } : {}), shown: ({ name }) => name };
  }

  private movedFiles(): Promise<ReadonlyMap<string, SideFile>> {
    this.moved ??= this.findMoved();
    return this.moved;
  }

  private async findMoved(): Promise<ReadonlyMap<string, SideFile>> {
    const { before, after } = this;
    const pairs = await pairsOf(before, after, await filesOf(before), await filesOf(after));
    return new Map(
      pairs.flatMap(({ before: from, after: to }) =>
        from && to && from.key !== to.key ? [[after.host.shown(to.root, to.name), from] as const] : [],
      ),
    );
  }
}

/** @throws Refusal where there is no such revision. */
export const sinceRevision = (revision: string, on: string, world: World): OnlyNew =>
  new OnlyNew(revisionSide(world, revision, '.', on), folderSide(world, '.', 'working tree', on));
