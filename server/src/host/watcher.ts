// Tells of files of ours that come, go or change on this machine, once they have settled; until someone ends the run.
import { basename, relative, resolve, sep } from 'node:path';
import { kindOfFile } from '../core/parts/doc';

/** Changes as they come in bunches. */
export interface Watcher {
  /** Watches further files or folders. */
  add(paths: readonly string[]): void;
  /** Whole paths that changed since it was asked last, once there are any; undefined when the run is to end. */
  next(): Promise<readonly string[] | undefined>;
  close(): Promise<void>;
}

/** How long nothing may change before a bunch is told: an editor saves in several steps, a checkout in many. */
const settledMs = 80;
/** A file counts as written once its size has stood still for so long. */
const written = { stabilityThreshold: 60, pollInterval: 20 };

/** Folders that are not looked into, as in a walk. */
const isPassed = (step: string): boolean =>
  step === 'node_modules' || (step.startsWith('.') && step !== '.' && step !== '..');

/** Watches files and folders; answers once all of them are under watch. */
export async function openWatcher(here: string, paths: readonly string[]): Promise<Watcher> {
  // Loaded only where a run watches: every other one starts without it.
  const { watch } = await import('chokidar');
  const bunch = new Bunch();
  const watcher = watch([...paths], {
    cwd: here,
    ignoreInitial: true,
    followSymlinks: false,
    awaitWriteFinish: written,
    ignored: (path, stats) =>
      relative(here, resolve(here, path)).split(sep).some(isPassed) ||
      (stats?.isFile() === true && kindOfFile(basename(path)) === undefined),
  });
  const take = (path: string): void => {
    if (kindOfFile(basename(path)) !== undefined) bunch.take(resolve(here, path));
  };
  watcher.on('add', take).on('change', take).on('unlink', take);
  // What cannot be watched is still read with the rest.
  watcher.on('error', () => undefined);
  const end = (): void => bunch.end();
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, end);
  await new Promise<void>((ready) => watcher.once('ready', () => ready()));
  return {
    add: (more) => void watcher.add([...more]),
    next: () => bunch.next(),
    async close() {
      for (const signal of ['SIGINT', 'SIGTERM'] as const) process.off(signal, end);
      bunch.end();
      await watcher.close();
    },
  };
}

/** Paths gathered until none has come for a while. */
class Bunch {
  private readonly paths = new Set<string>();
  private timer: NodeJS.Timeout | undefined;
  private isSettled = false;
  private isEnded = false;
  private tell: (() => void) | undefined;

  take(path: string): void {
    this.paths.add(path);
    this.isSettled = false;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => {
      this.isSettled = true;
      this.tell?.();
    }, settledMs);
  }

  end(): void {
    this.isEnded = true;
    clearTimeout(this.timer);
    this.tell?.();
  }

  async next(): Promise<readonly string[] | undefined> {
    while (!this.isEnded && !this.isSettled)
      await new Promise<void>((tell) => {
        this.tell = tell;
      });
    if (this.isEnded) return undefined;
    const paths = [...this.paths].sort();
    this.paths.clear();
    this.isSettled = false;
    return paths;
  }
}
