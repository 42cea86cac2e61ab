// The processes that the installed extension runs, as the system lists them.
import { readdirSync, readFileSync } from 'node:fs';
import * as vscode from 'vscode';

/** Process ids of what runs out of the installed extension's folder. */
export function serverProcesses(): number[] {
  const home = vscode.extensions.getExtension('fettle.fettle')?.extensionPath;
  if (!home) return [];
  const pids = readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .map(Number);
  return pids.filter((pid) => pid !== process.pid && commandLine(pid).includes(home));
}

function commandLine(pid: number): string {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8');
  } catch {
    return ''; // ended meanwhile
  }
}
