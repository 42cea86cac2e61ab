// The workbench's screen in headless Chromium: opening it, and finding one's way about it by keys and by what is shown.
import { chromium, type BrowserContext, type Page } from 'playwright-core';
import { chromiumPath } from '../../provide.mjs';
import type { Workbench } from './server';

const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export const LOOK_LIMIT_MS = 20_000;

export interface Browser {
  /** Pages share one cache: the workbench is fetched and compiled once. */
  context: BrowserContext;
  close(): Promise<void>;
}

const SIZE = { width: 1280, height: 760 };

/** Starts Chromium; it ends with this process, since it hangs on a pipe of ours. */
export async function startBrowser(): Promise<Browser> {
  const browser = await chromium.launch({ executablePath: chromiumPath(), args: flags, timeout: 30_000 });
  return { context: await browser.newContext({ viewport: SIZE }), close: () => browser.close() };
}

export interface Opened {
  workspace: string;
  /** File to open, relative to the workspace, with line and column counted from 1. */
  file?: { path: string; line: number; column: number };
  /** Further pairs for the workbench, such as where its extension tests are. */
  payload?: [string, string][];
}

/** The address that opens a workspace. */
export function address({ authority }: Workbench, { workspace, file, payload = [] }: Opened): string {
  const remote = (path: string) => `vscode-remote://${authority}${path}`;
  const pairs = payload.map(([name, path]) => [name, remote(path)]);
  if (file)
    pairs.push(['openFile', remote(`${workspace}/${file.path}:${file.line}:${file.column}`)], ['gotoLineMode', 'true']);
  const query = new URLSearchParams({ folder: workspace, payload: JSON.stringify(pairs) });
  return `http://${authority}/?${query.toString()}`;
}

/** Opens a file and waits until its text is on the screen and has the keyboard. */
export async function openFile(
  page: Page,
  workbench: Workbench,
  workspace: string,
  file: NonNullable<Opened['file']>,
): Promise<void> {
  await page.goto(address(workbench, { workspace, file }), { waitUntil: 'domcontentloaded', timeout: LOOK_LIMIT_MS });
  await page.locator('.monaco-editor .view-line').first().waitFor({ timeout: LOOK_LIMIT_MS });
  await page.locator('.monaco-editor.focused').first().waitFor({ timeout: LOOK_LIMIT_MS });
}

/** The text of what is shown at `selector`, in one line of plain spaces. */
export async function shownText(page: Page, selector: string): Promise<string> {
  const texts = await page.locator(selector).allInnerTexts();
  return texts
    .join(' ')
    .replace(/[\s\u00a0]+/g, ' ')
    .trim();
}

/**
 * Does `act` again and again until something is shown at `selector` and holds `text`, which may be empty; returns all
 * that is shown there. Once is not enough: a menu or hover on its way out swallows keys.
 */
export async function actUntilShown(
  page: Page,
  selector: string,
  text: string,
  act: () => Promise<void>,
): Promise<string> {
  let shown = '';
  for (const start = Date.now(); Date.now() - start < LOOK_LIMIT_MS; ) {
    await act();
    for (let look = 0; look < 15; look += 1) {
      shown = await shownText(page, selector);
      if (shown?.includes(text)) return shown;
      await page.waitForTimeout(100);
    }
  }
  throw new Error(`"${text}" did not appear at ${selector}. Shown there: ${shown || 'nothing'}`);
}

/** Waits until what is shown at `selector` holds `text` no more; returns what is left. */
export async function untilGone(page: Page, selector: string, text: string): Promise<string> {
  for (const start = Date.now(); Date.now() - start < LOOK_LIMIT_MS; ) {
    const shown = await shownText(page, selector);
    if (!shown.includes(text)) return shown;
    await page.waitForTimeout(50);
  }
  throw new Error(`"${text}" is still shown at ${selector}`);
}
