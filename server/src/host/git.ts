// One revision of a git repository, read as a workspace: its tree is listed once, and files are read from git’s object
// store by their ids. No working tree, index, hook, filter or text converter has a part in it.
import { realpathSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { kindOfFile } from '../core/parts/doc';
import { decode } from './decode';
import { gitFor, type Git } from './git-run';
import { GitTree, outside, type TreeEntry } from './git-tree';
import { folderOf, isTrouble, within, type FoundPath, type Host, type Listed, type ReadError } from './host';
import { limits } from './limits';
import { absent, isFolder, leadsOut, notRegular, tooFull, tooLarge } from './troubles';

/** What is asked of git in one go. */
const atOnce = { files: 4_000, bytes: 64_000_000 };
/** A link’s text past this is none. */
const longestLink = 4_096;
/** The names that git itself gives are far shorter. */
const longestRevision = 1_000;

const noRevision: ReadError = { trouble: 'is no revision: expected the name or the id of a commit.' };
const noCommit: ReadError = {
  trouble: 'names no commit of this repository; where the clone is shallow, fetch the commit first.',
};
const notHere: ReadError = { trouble: 'is not read: this clone lacks its content, and nothing is fetched.' };
const damaged: ReadError = { trouble: 'is not read: git’s answer about it cannot be understood.' };
const submodule: ReadError = { trouble: 'is a submodule, which is not looked into.' };
const pointer: ReadError = {
  trouble: 'is a pointer of git’s large file storage; what it stands for is kept elsewhere and is not read.',
};

const pointerText = /^version https:\/\/\S{1,200}\/spec\/v1\r?\noid sha256:[0-9a-f]{64}\r?\nsize \d+/;
const hexId = /^(?:[0-9a-f]{40}|[0-9a-f]{64})$/;

/** Where in the repository a run stands: real paths of its top, and of the folder from there down. */
interface Standing {
  readonly top: string;
  readonly here: string;
}

/** Opens a revision of the repository that a folder lies in; `env` says where git and the user’s settings are. */
export function openRevision(
  here: string,
  revision: string,
  env: Readonly<Record<string, string | undefined>>,
): GitHost | ReadError {
  if (revision === '' || revision.length > longestRevision || /\p{Cc}/u.test(revision)) return noRevision;
  const git = gitFor(here, env);
  if (isTrouble(git)) return git;
  const standing = standingOf(git, realpathSync.native(here));
  if (isTrouble(standing)) return standing;
  const resolved = git.run(['rev-parse', '--verify', '--quiet', '--end-of-options', `${revision}^{commit}`]);
  const id = isTrouble(resolved) ? '' : resolved.toString('latin1').trim();
  return hexId.test(id) ? GitHost.open(git, id, standing) : noCommit;
}

/** Git counts how many folders up its top lies; no name is read from what it writes. */
function standingOf(git: Git, here: string): Standing | ReadError {
  const up = git.run(['rev-parse', '--show-cdup']);
  if (isTrouble(up)) return up;
  const count = up
    .toString('latin1')
    .split('/')
    .filter((step) => step === '..').length;
  const all = here.split(sep);
  return { top: all.slice(0, all.length - count).join(sep) || sep, here };
}

export class GitHost implements Host {
  private readonly contents = new Map<string, Buffer | ReadError>();
  private tree!: GitTree;

  private constructor(
    private readonly git: Git,
    /** The commit’s. */
    readonly id: string,
    private readonly standing: Standing,
  ) {}

  static open(git: Git, id: string, standing: Standing): GitHost | ReadError {
    const listing = git.run(['ls-tree', '-r', '-z', '-l', '--full-tree', id]);
    if (isTrouble(listing)) return listing;
    const host = new GitHost(git, id, standing);
    const tree = GitTree.read(listing, (entry) => host.linkText(entry));
    if (isTrouble(tree)) return tree;
    host.tree = tree;
    return host;
  }

  find(path: string): FoundPath | ReadError {
    const named = this.named(path);
    const full = named === undefined ? outside : this.tree.real(named);
    if (full === undefined) return absent;
    if (full === outside) return leadsOut;
    const entry = this.tree.entry(full);
    if (entry && entry.kind !== 'file') return submodule;
    const folder = entry ? folderOf(full) : full;
    const marked = this.tree.rootOf(folder);
    const root = marked ?? folder;
    const name = root === '' ? full : full.slice(root.length + 1);
    return { kind: entry ? 'file' : 'folder', root: this.outer(root), name, isMarked: marked !== undefined };
  }

  /** A path from the repository’s top, with `/`; undefined for one outside. */
  private named(path: string): string | undefined {
    const { top, here } = this.standing;
    const below = slashed(relative(top, resolve(here, path)));
    return below === '..' || below.startsWith('../') || resolve(top, below) !== resolve(here, path) ? undefined : below;
  }

  /** Where a path of the tree would lie in the working tree: roots are called so, as on the folder’s own host. */
  private outer(path: string): string {
    return path === '' ? this.standing.top : join(this.standing.top, path);
  }

  /** A name below a root as a path of the tree. */
  private inner(root: string, name: string): string {
    const folder = slashed(relative(this.standing.top, root));
    return folder === '' || name === '' ? folder + name : within(folder, name);
  }

  list(root: string, folder: string): readonly Listed[] | ReadError | undefined {
    const real = this.tree.real(this.inner(root, folder));
    if (real === undefined) return undefined;
    if (!this.isIn(root, real)) return leadsOut;
    const entries = this.tree.folder(real);
    if (entries && entries.length > limits.folderEntries) return tooFull;
    return entries?.map(({ name, kind }) =>
      kind === 'link' ? this.listedLink(root, within(folder, name), name) : { name, kind },
    );
  }

  private listedLink(root: string, at: string, name: string): Listed {
    const real = this.tree.real(this.inner(root, at));
    const entry = real === undefined ? undefined : this.tree.entry(real);
    if (real === undefined || !this.isIn(root, real) || entry?.kind === 'other') return { name, kind: 'link' };
    const bound = this.inner(root, '');
    const below = bound === '' ? real : real.slice(bound.length + 1);
    return { name, kind: 'link', target: { kind: entry ? 'file' : 'folder', name: below } };
  }

  private isIn(root: string, path: string): boolean {
    const bound = this.inner(root, '');
    return path !== outside && (bound === '' || path === bound || path.startsWith(`${bound}/`));
  }

  read(root: string, name: string): string | ReadError | undefined {
    const real = this.tree.real(this.inner(root, name));
    if (real === undefined) return undefined;
    if (!this.isIn(root, real)) return leadsOut;
    const entry = this.tree.entry(real);
    if (entry?.kind !== 'file') return entry ? notRegular : isFolder;
    const bytes = this.bytesOf(entry);
    if (isTrouble(bytes)) return bytes;
    const text = decode(bytes);
    return typeof text === 'string' && pointerText.test(text) ? pointer : text;
  }

  pathIn(root: string, name: string): string {
    return name === '' ? root : join(root, name);
  }

  /** From the folder of the run, as the same file is shown in the working tree. */
  shown(root: string, name: string): string {
    return slashed(relative(this.standing.here, join(root, name))) || '.';
  }

  private linkText(entry: TreeEntry): string | undefined {
    const bytes = entry.size > longestLink ? undefined : this.bytesOf(entry);
    return bytes === undefined || isTrouble(bytes) ? undefined : bytes.toString('utf8');
  }

  private bytesOf(entry: TreeEntry): Buffer | ReadError {
    if (entry.size > limits.fileBytes) return tooLarge;
    if (!this.contents.has(entry.id)) this.fetch(entry);
    return this.contents.get(entry.id) ?? damaged;
  }

  /** Reads an object and, while git runs, the files of ours that stand behind it in the tree. */
  private fetch(wanted: TreeEntry): void {
    const ids = new Set([wanted.id]);
    let { size: bytes } = wanted;
    for (const { id, size, path } of this.tree.after(wanted)) {
      if (ids.size >= atOnce.files || bytes >= atOnce.bytes) break;
      if (!kindOfFile(path) || size > limits.fileBytes || this.contents.has(id) || ids.has(id)) continue;
      ids.add(id);
      bytes += size;
    }
    const answer = this.git.run(['cat-file', '--batch'], [...ids].map((id) => `${id}\n`).join(''));
    if (!isTrouble(answer)) this.take(answer, ids);
    else for (const id of ids) this.contents.set(id, answer);
  }

  /** `ID blob SIZE`, a line end, so many bytes, a line end; or `ID missing`. */
  private take(answer: Buffer, ids: ReadonlySet<string>): void {
    let at = 0;
    for (const id of ids) {
      const end = answer.indexOf('\n', at);
      const [own, type, size] = end < 0 ? [] : answer.toString('latin1', at, end).split(' ');
      if (own !== id || (type !== 'blob' && type !== 'missing')) return;
      at = end + 1;
      if (type === 'missing') this.contents.set(id, notHere);
      else {
        this.contents.set(id, answer.subarray(at, at + Number(size)));
        at += Number(size) + 1;
      }
    }
  }
}
const slashed = (path: string): string => (sep === '/' ? path : path.replaceAll(sep, '/'));
