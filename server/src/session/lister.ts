// Lists folders one after another, within limits, and lets others have their turn in between.
import { isTrouble, within, type Host, type Listed } from '../host/host';
import { limits, spelled } from '../host/limits';
import { troubleAt, type RunTrouble } from './run-trouble';
import { Turns } from './turns';

export interface ListedFolder {
  /** Its name below the root. */
  readonly folder: string;
  readonly entries: readonly Listed[];
}

export interface ListOptions {
  /** Whether a folder is looked into, by its name below the root. */
  readonly enters: (folder: string) => boolean;
  /** Whether links to folders that lie below the root are looked into; each folder once. */
  readonly followsLinks: boolean;
}

interface Waiting {
  readonly folder: string;
  readonly depth: number;
}

/** How long one stretch of listing lasts before others get their turn. */
const stretchMs = 8;

export class Lister {
  /** Folders that could not be listed, and limits that were reached. */
  readonly troubles: RunTrouble[] = [];
  private entries = 0;
  private readonly turns: Turns;

  constructor(
    private readonly host: Host,
    pause?: () => Promise<void>,
  ) {
    this.turns = new Turns(pause, stretchMs);
  }

  /** A folder below a root and the folders in it; nothing where there is no such folder. */
  async *below(root: string, folder: string, options: ListOptions): AsyncGenerator<ListedFolder> {
    const waiting: Waiting[] = [{ folder, depth: 0 }];
    const linked = new Set<string>();
    for (let next = waiting.pop(); next; next = waiting.pop()) {
      if (this.turns.isOver) await this.turns.give();
      const listed = await this.host.list(root, next.folder);
      if (listed === undefined) continue;
      if (isTrouble(listed)) this.tell(root, next.folder, listed.trouble);
      else if (!this.count(listed.length)) return;
      else {
        yield { folder: next.folder, entries: listed };
        waiting.push(...this.foldersIn(root, next, listed, options, linked));
      }
    }
  }

  private foldersIn(
    root: string,
    at: Waiting,
    listed: readonly Listed[],
    { enters, followsLinks }: ListOptions,
    linked: Set<string>,
  ): Waiting[] {
    const depth = at.depth + 1;
    return listed.flatMap((entry) => {
      const folder = within(at.folder, entry.name);
      const target = followsLinks && entry.target?.kind === 'folder' ? entry.target.name : undefined;
      if ((entry.kind !== 'folder' && target === undefined) || !enters(folder)) return [];
      if (target !== undefined && (linked.has(target) || leadsBack(target, folder))) return [];
      if (target !== undefined) linked.add(target);
      if (depth <= limits.depth) return [{ folder, depth }];
      this.tell(root, folder, `lies more than ${limits.depth} folders deep, so it is not looked into.`);
      return [];
    });
  }

  private tell(root: string, folder: string, trouble: string): void {
    this.troubles.push(troubleAt(this.host.shown(root, folder), trouble));
  }

  private count(entries: number): boolean {
    this.entries += entries;
    if (this.entries <= limits.entries) return true;
    const most = spelled(limits.entries);
    const trouble = `There are more than ${most} entries of folders; the rest is left out. Name fewer folders.`;
    if (!this.troubles.some((told) => told.trouble === trouble)) this.troubles.push({ path: '', trouble });
    return false;
  }
}

/** Whether a link leads to a folder that it lies in itself. */
const leadsBack = (target: string, link: string): boolean => target === '' || link.startsWith(`${target}/`);
