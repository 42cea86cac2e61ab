// Types of provide.mjs, which stays plain JavaScript so that it runs before anything is built.

/** Says one line about progress. */
type Say = (text: string) => void;

/** The Debian packages the tests know how to look for. */
export const packageNames: string[];

/** The full path of a program, looked up on PATH and in the system's own folders. */
export function programPath(name: string): string | undefined;

/** The full path of Chromium. */
export function chromiumPath(): string | undefined;

/** Those of `names` which are not on this machine. */
export function missingPackages(names?: string[]): string[];

/** Installs what is missing where we may; says what is still missing and why. Never throws. */
export function providePackages(names?: string[], say?: Say): Promise<{ missing: string[]; message: string }>;

/** The cache folder for what the tests download. */
export function cacheFolder(): string;

/** The folder of VS Code's server and workbench, installed on first use. Throws when it cannot be. */
export function provideWorkbench(say?: Say): Promise<string>;
