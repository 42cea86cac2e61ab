// A build whose names would do something in a page or in Markdown: what the workbench shows of it is only text.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { openBeside } from './panel';
import { openFile, type Browser } from './page';
import { HOVER, PROBLEMS, showHover, showProblems } from './screen';
import type { Workbench } from './server';

const nasty =
  '<img src=x onerror=alert(1)> [run](command:workbench.action.closeAllEditors) ![b](http://127.0.0.1:9/b.png) **b**';

const text = `build: ${JSON.stringify(`${nasty} \u202e\u0007`)}
place:
  floor: ${JSON.stringify(nasty)}
parts:
  drives:
    - { name: ${JSON.stringify(nasty)}, slot: ${JSON.stringify(nasty)} }
`;

export interface HostileSeen {
  /** What is shown, as text, at each place. */
  readonly problems: string;
  readonly hover: string;
  readonly sheet: string;
  /** What of it is live: elements, links that run something, addresses that were asked for, dialogs. */
  readonly live: readonly string[];
}

/** Elements that only a text taken for markup could bring. */
const brought =
  'img[src="x"], img[src*="b.png"], script[src*="alert"], [onerror], a[href^="command:"], a[data-href^="command:"]';

export async function lookAtHostile(workbench: Workbench, browser: Browser, workspace: string): Promise<HostileSeen> {
  const page = await browser.context.newPage();
  const live: string[] = [];
  page.on('dialog', (dialog) => {
    live.push(`dialog ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('request', (request) => {
    if (request.url().endsWith('b.png') || request.url().endsWith('/x')) live.push(`request ${request.url()}`);
  });
  try {
    writeFileSync(join(workspace, 'hostile.pcbuild.yaml'), text);
    await openFile(page, workbench, workspace, { path: 'hostile.pcbuild.yaml', line: 3, column: 12 });
    const problems = await showProblems(page, '<img');
    live.push(...(await elements(page, PROBLEMS)));
    const hover = await showHover(page, '<img');
    live.push(...(await elements(page, HOVER)));
    const frame = await openBeside(page);
    const sheet = await frame.locator('main').innerText();
    for (const one of await frame.locator(brought).all()) live.push(`sheet ${await one.evaluate(String)}`);
    return { problems, hover, sheet, live };
  } finally {
    await page.close();
  }
}

async function elements(page: Page, place: string): Promise<string[]> {
  const found = await page.locator(place).locator(brought).all();
  return Promise.all(found.map(async (one) => `${place} ${await one.evaluate((node) => String(node))}`));
}
