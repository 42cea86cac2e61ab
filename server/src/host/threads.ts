// Threads of this machine that judge files: each is handed plain data, one piece of work at a time.
import { parentPort, Worker, workerData } from 'node:worker_threads';

export interface Threads {
  /** Has a free thread do a piece of work. Rejects where the thread fails, which then does no more. */
  run(work: unknown): Promise<unknown>;
  end(): Promise<void>;
}

interface Waiting {
  readonly work: unknown;
  readonly done: (result: unknown) => void;
  readonly failed: (error: unknown) => void;
}

/** What one thread may hold, in MB: one that needs more ends, and its work is done elsewhere. */
const resourceLimits = { maxOldGenerationSizeMb: 128, maxYoungGenerationSizeMb: 48 };

/** Starts threads that run a script and are handed `setup` once. */
export function openThreads(script: string, count: number, setup: unknown): Threads {
  const queue: Waiting[] = [];
  const free: Worker[] = [];
  const all = new Set<Worker>();
  const busy = new Map<Worker, Waiting>();
  const next = (): void => {
    while (queue.length > 0 && free.length > 0) {
      const [worker, waiting] = [free.pop()!, queue.shift()!];
      busy.set(worker, waiting);
      worker.postMessage(waiting.work);
    }
    if (all.size === 0) for (const waiting of queue.splice(0)) waiting.failed(new Error('no thread is left'));
  };
  const lost = (worker: Worker, error: unknown): void => {
    all.delete(worker);
    busy.get(worker)?.failed(error);
    busy.delete(worker);
    if (free.includes(worker)) free.splice(free.indexOf(worker), 1);
    next();
  };
  for (let i = 0; i < count; i++) {
    const worker = new Worker(script, { workerData: setup, resourceLimits });
    all.add(worker);
    free.push(worker);
    worker.on('message', (result) => {
      const waiting = busy.get(worker);
      busy.delete(worker);
      free.push(worker);
      waiting?.done(result);
      next();
    });
    worker.on('error', (error) => lost(worker, error));
    worker.on('exit', () => lost(worker, new Error('the thread ended')));
  }
  return {
    run(work) {
      return new Promise((done, failed) => {
        queue.push({ work, done, failed });
        next();
      });
    },
    async end() {
      await Promise.all([...all].map((worker) => worker.terminate()));
    },
  };
}

/** In a thread: does one piece of work after another. */
export function serveThread(make: (setup: unknown) => (work: unknown) => Promise<unknown>): void {
  const work = make(workerData);
  // A rejection is the thread’s end: its work is done elsewhere.
  parentPort!.on('message', (message) => void work(message).then((result) => parentPort!.postMessage(result)));
}
