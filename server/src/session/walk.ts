// Finds the files of ours under what someone named, each with the workspace it belongs to.
import { kindOfFile, type DocKind } from '../core/parts/doc';
import { isTrouble, lastStep, within, type Host, type Listed } from '../host/host';
import { limits, spelled } from '../host/limits';
import { Lister } from './lister';
import { troubleAt, type RunTrouble } from './run-trouble';

/** A file of ours: its root, its name below it, its kind. */
export interface Ours {
  readonly root: string;
  readonly name: string;
  readonly kind: DocKind;
  /** Whether the file itself was named, not a folder above it. */
  readonly named: boolean;
  /** A build that nobody named, and that a named guide is about. */
  readonly along?: true;
  /** A build or a guide that is of interest only if it rests on one of these. */
  readonly restsOn?: readonly RestsOn[];
}

/** A file that others rest on, by its path. */
export interface RestsOn {
  readonly path: string;
  /** What a text that names it has to hold: a part’s name, of a build the file’s. Undefined: any may rest on it. */
  readonly word?: string;
  /** Whether it is a build, on which guides alone rest. */
  readonly isBuild?: true;
}

export interface Walked {
  readonly files: readonly Ours[];
  readonly troubles: readonly RunTrouble[];
}

/** Folders that are not looked into unless they are named themselves. */
const isPassed = (name: string): boolean => name === 'node_modules' || name.startsWith('.');

/**
 * Walks all named paths; files come in order of their place, each once. A link to a folder is not followed. `pause`
 * lets others have their turn; `deep`: whether folders in a named folder are looked into.
 */
export async function walk(
  host: Host,
  paths: readonly string[],
  pause?: () => Promise<void>,
  deep = true,
): Promise<Walked> {
  const walk = new Walk(host, pause, deep);
  for (const path of paths) await walk.named(path);
  return walk.done();
}

class Walk {
  private readonly files = new Map<string, Ours>();
  private readonly troubles: RunTrouble[] = [];
  private readonly lister: Lister;

  constructor(
    private readonly host: Host,
    pause: (() => Promise<void>) | undefined,
    private readonly deep: boolean,
  ) {
    this.lister = new Lister(host, pause);
  }

  async named(path: string): Promise<void> {
    const found = await this.host.find(path);
    if (isTrouble(found)) return void this.troubles.push(troubleAt(path, found.trouble));
    if (found.kind === 'folder') return this.folders(found.root, found.name);
    const kind = kindOfFile(found.name);
    if (kind) return void this.take({ root: found.root, name: found.name, kind, named: true });
    this.troubles.push(
      troubleAt(
        path,
        'is none of the files that are checked: NAME.pcbuild.yaml, MODEL.part.yaml, fettle.yaml, NAME.known.yaml, ' +
          'NAME.asbuilt.yaml, or a guide as Markdown.',
      ),
    );
  }

  /** Looks through a folder and those in it. */
  private async folders(root: string, folder: string): Promise<void> {
    const enters = (name: string): boolean => this.deep && !isPassed(lastStep(name));
    for await (const at of this.lister.below(root, folder, { enters, followsLinks: false }))
      if (!(await this.takeFrom(root, at.folder, at.entries))) return;
  }

  /**
   * Takes the files of ours in one folder, below the root that the folder lies under; false once there are too many.
   * Links and whatever else bears a name of ours are taken too: reading them says what is wrong with them.
   */
  private async takeFrom(root: string, folder: string, entries: readonly Listed[]): Promise<boolean> {
    const ours = entries.flatMap(({ name, kind: is }) => {
      const kind = is === 'folder' ? undefined : kindOfFile(name);
      return kind ? [{ name, kind }] : [];
    });
    if (ours.length === 0) return true;
    const found = await this.host.find(this.host.pathIn(root, folder));
    const at = isTrouble(found) || !found.isMarked ? { root, name: folder } : found;
    return ours.every(({ name, kind }) =>
      this.take({ root: at.root, name: within(at.name, name), kind, named: false }),
    );
  }

  private take(file: Ours): boolean {
    const key = this.host.shown(file.root, file.name);
    if (this.files.has(key)) return true;
    if (this.files.size >= limits.files) {
      const most = spelled(limits.files);
      const trouble = `There are more than ${most} files to check; the rest is left out. Name fewer folders.`;
      this.troubles.push({ path: '', trouble });
      return false;
    }
    this.files.set(key, file);
    return true;
  }

  done(): Walked {
    const files = [...this.files].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, file]) => file);
    return { files, troubles: [...this.troubles, ...this.lister.troubles] };
  }
}
