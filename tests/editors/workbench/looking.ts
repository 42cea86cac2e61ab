// What the steps look at in the editor, and how they wait for it.
import * as vscode from 'vscode';

export const WAIT_LIMIT_MS = 6_000;

/** The check that a diagnostic names. */
export function codeOf({ code }: vscode.Diagnostic): unknown {
  return typeof code === 'object' ? code.value : code;
}

/** A file’s diagnostics of one check. */
export function coded(uri: vscode.Uri, id: string): vscode.Diagnostic[] {
  return vscode.languages.getDiagnostics(uri).filter((finding) => codeOf(finding) === id);
}

/** Looks again and again until there is something. Throws with `what` when nothing comes. */
export async function until<T>(what: string, look: () => T | Promise<T>): Promise<NonNullable<T>> {
  for (const start = Date.now(); Date.now() - start < WAIT_LIMIT_MS; ) {
    const seen = await look();
    if (seen) return seen;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  throw new Error(`Waited in vain: ${what}`);
}
