// Types of group.mjs, which stays plain JavaScript so that it runs before anything is built.

/** How a command ended: its status (124 past its limit, 125 ended by us, 127 not started) and what it printed last. */
export interface Ended {
  status: number;
  output: string;
}

export interface Group {
  /** Settles when the command and all it started are gone; never rejects. */
  ended: Promise<Ended>;
  /** What was printed so far, both streams, the last 200,000 characters. */
  output(): string;
  /** Ends the whole group and waits until it is gone. */
  end(): Promise<void>;
}

export interface GroupOptions {
  limitMs: number;
  /** A folder that is removed once everything has ended. */
  scratch?: string;
  cwd?: string;
  env?: NodeJS.ProcessEnv;
}

/** Starts `command` in its own process group, which cannot outlive this process. */
export function startGroup(command: string, args: string[], options: GroupOptions): Group;

/** Runs `command` to its end in its own process group. */
export function runGroup(command: string, args: string[], options: GroupOptions): Promise<Ended>;
