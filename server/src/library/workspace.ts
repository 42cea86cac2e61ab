// Workspaces of the library: a host with the files found on it, and what reads and keeps them.
import { isTrouble, type Host, type ReadError } from '../host/host';
import { MemoryHost } from '../host/memory';
import { SettingsFrom } from '../host/settings-from';
import { Loader } from '../session/loader';
import { walk, type Ours } from '../session/walk';
import type { Files, ReadOptions, Workspace } from './face';

/** What the library is given of a machine; the browser of a shop has none. */
export interface Machine {
  readonly folder: (path: string) => Host;
  readonly revision: (folder: string, revision: string) => (Host & { readonly id: string }) | ReadError;
}

/** Texts held at once, in UTF-16 units. */
export const heldText = 4_000_000;

export class OpenWorkspace implements Workspace {
  readonly builds: readonly string[];
  readonly parts: readonly string[];
  readonly notRead: Workspace['notRead'];
  /** Not among what a caller sees or prints: a workspace is its lists. */
  readonly #files: ReadonlyMap<string, Ours>;
  readonly #host: Host;
  readonly #label: string;
  #loader: Loader | undefined;

  constructor(host: Host, label: string, { files, troubles }: Awaited<ReturnType<typeof walk>>) {
    this.#host = host;
    this.#label = label;
    this.#files = new Map(files.map((file) => [host.shown(file.root, file.name), file]));
    const named = (kind: Ours['kind']): string[] =>
      [...this.#files].flatMap(([path, file]) => (file.kind === kind ? [path] : []));
    this.builds = named('build');
    this.parts = named('part');
    this.notRead = troubles;
  }

  /** What is behind a workspace that a caller handed in. @throws TypeError where it is none of ours. */
  static inside(workspace: Workspace): { readonly host: Host; readonly label: string; loader(on: string): Loader } {
    if (!(workspace instanceof OpenWorkspace)) throw new TypeError('Expected a workspace as readWorkspace gives it.');
    return { host: workspace.#host, label: workspace.#label, loader: (on) => workspace.#loaderOf(on) };
  }

  static fileOf(workspace: Workspace, path: string): Ours | undefined {
    return workspace instanceof OpenWorkspace ? workspace.#files.get(path) : undefined;
  }

  /** One loader a day: what it read is kept, and a build knows its day. */
  #loaderOf(on: string): Loader {
    if (this.#loader?.today() !== on) this.#loader = new Loader(() => on);
    return this.#loader;
  }
}

/** @throws Error where there is no such folder or revision. */
export async function openWorkspace(
  from: string | Files,
  options: ReadOptions,
  machine: Machine,
): Promise<OpenWorkspace> {
  const { host, label } = hostOf(from, options, machine);
  const found = await host.find('.');
  if (isTrouble(found)) throw new Error(`${label}: ${found.trouble}`);
  if (found.kind !== 'folder') throw new Error(`${label}: is no folder.`);
  return new OpenWorkspace(host, label, await walk(host, ['.']));
}

function hostOf(
  from: string | Files,
  { revision, settingsFrom }: ReadOptions,
  machine: Machine,
): { readonly host: Host; readonly label: string } {
  if (typeof from !== 'string') {
    if (revision !== undefined || settingsFrom !== undefined)
      throw new Error('Texts in memory have no revisions; name a folder.');
    return { host: new MemoryHost(textsOf(from)), label: 'texts' };
  }
  const at = (name: string): Host => {
    const host = machine.revision(from, name);
    if (isTrouble(host)) throw new Error(`${name}: ${host.trouble}`);
    return host;
  };
  const files = revision === undefined ? machine.folder(from) : at(revision);
  const host = settingsFrom === undefined ? files : new SettingsFrom(files, at(settingsFrom));
  return { host, label: revision ?? from };
}

/** @throws Error where a path is none that lies below a folder. */
function textsOf(files: Files): [string, string][] {
  const entries = isMap(files) ? [...files] : Object.entries(files);
  for (const [path, text] of entries) {
    if (typeof text !== 'string') throw new TypeError(`${path}: expected a text.`);
    if (path === '' || path.split('/').some((step) => step === '' || step === '.' || step === '..'))
      throw new Error(`${path}: expected a path below the folder, with / between folders.`);
  }
  return entries;
}

const isMap = (files: Files): files is ReadonlyMap<string, string> => files instanceof Map;
