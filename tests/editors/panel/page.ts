// The panel’s own page and script in Chromium, without the workbench around it: under the colours of a theme, handed
// messages as the editor hands them over.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import type { FromPanel, ToPanel } from '../../../client/src/views/sheet-messages';
import { sheetPage } from '../../../client/src/views/sheet-page';
import { sheetBlocks } from '../../../server/src/report/sheet/html';
import type { Sheet } from '../../../server/src/report/sheet/model';
import { sheetStyle } from '../../../server/src/report/sheet/style';
import { repository } from '../support/scenario';
import themes from './themes.json' with { type: 'json' };

export type Theme = keyof typeof themes;
export const themeNames = Object.keys(themes) as Theme[];

const origin = 'http://panel.test';

export interface Panel {
  readonly page: Page;
  /** Hands the page a message, as its editor does. */
  send(message: unknown): Promise<void>;
  /** What the page has said to its editor. */
  said(): Promise<FromPanel[]>;
  /** Whatever the page tried to load beside its script. */
  readonly loaded: string[];
  /** What the browser had to say. */
  readonly errors: string[];
}

interface Looks {
  readonly theme?: Theme;
  readonly width?: number;
  readonly height?: number;
  /** What the page kept when it was last shown. */
  readonly state?: unknown;
}

/** Opens the page; it shows nothing yet. */
export async function openPage(
  context: BrowserContext,
  { theme = 'light', width = 800, height = 900, state }: Looks = {},
): Promise<Panel> {
  const page = await context.newPage();
  page.setDefaultTimeout(10_000);
  await page.setViewportSize({ width, height });
  const { loaded, errors } = { loaded: [] as string[], errors: [] as string[] };
  const html = sheetPage({
    css: sheetStyle,
    script: `${origin}/sheet-script.js`,
    nonce: 'abc123',
    lang: 'en',
    word: (english) => english,
  });
  const script = readFileSync(join(repository, 'dist/sheet-script.js'), 'utf8');
  await page.route('**', (route) => {
    const { pathname, host } = new URL(route.request().url());
    if (host === 'panel.test' && pathname === '/') return route.fulfill({ contentType: 'text/html', body: html });
    if (host === 'panel.test' && pathname === '/sheet-script.js')
      return route.fulfill({ contentType: 'text/javascript', body: script });
    loaded.push(route.request().url());
    return route.abort();
  });
  page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('dialog', (dialog) => {
    errors.push(`a dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  await page.addInitScript(asEditor(state, themes[theme]));
  await page.goto(`${origin}/`);
  return {
    page,
    loaded,
    errors,
    send: (message) =>
      page.evaluate(`dispatchEvent(new MessageEvent('message', { data: ${JSON.stringify(message)} }))`),
    said: () => page.evaluate('said'),
  };
}

/** What the editor gives a page before its script runs, as that page’s own code. */
const asEditor = (state: unknown, { body, colours }: (typeof themes)[Theme]): string => `
  window.said = [];
  window.kept = ${JSON.stringify(state ?? null)};
  window.acquireVsCodeApi = () => ({
    postMessage: (message) => said.push(message),
    getState: () => kept,
    setState: (next) => (window.kept = next),
  });
  addEventListener('DOMContentLoaded', () => {
    document.body.className = ${JSON.stringify(body)};
    for (const [name, value] of Object.entries(${JSON.stringify(colours)}))
      document.documentElement.style.setProperty(name, value);
  });`;

/** A sheet as the message that puts it in whole. */
export function whole(sheet: Sheet, { uri = 'file:///a.pcbuild.yaml', old = false } = {}): ToPanel {
  const blocks = sheetBlocks(sheet);
  return { type: 'sheet', uri, order: blocks.map(({ id }) => id), blocks: [...blocks], old };
}

/** What changed from one sheet to the next, as the message that puts it in. */
export function changed(from: Sheet, to: Sheet, uri = 'file:///a.pcbuild.yaml'): ToPanel {
  const before = new Map(sheetBlocks(from).map(({ id, html }) => [id, html]));
  const blocks = sheetBlocks(to);
  const order = blocks.map(({ id }) => id);
  return {
    type: 'sheet',
    uri,
    order,
    blocks: blocks.filter(({ id, html }) => before.get(id) !== html),
    old: false,
  };
}
