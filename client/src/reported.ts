// What goes wrong in a command is told, and nothing else is held up.
import { window } from 'vscode';

export const wordsOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Runs a command; a failure is shown as a message. */
export async function reported(work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    void window.showErrorMessage(`Fettle: ${wordsOf(error)}`);
  }
}
