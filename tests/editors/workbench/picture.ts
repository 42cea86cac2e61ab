// Two pictures of the workbench at work: a build with a mistake, its hover and the Problems list; then its fixes.
import { cpSync, mkdirSync, renameSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { providePackages, provideWorkbench } from '../../provide.mjs';
import { places, removeFolder, scenario, temporaryFolder, vsixPath, workspaceCopy } from '../support/scenario';
import { openFile, startBrowser } from './page';
import { showHover, showMenu, showProblems } from './screen';
import { startWorkbench, type Workbench } from './server';

/** Only what the picture is about is on it. */
const settings = {
  'workbench.activityBar.location': 'hidden',
  'workbench.statusBar.visible': true,
  'workbench.layoutControl.enabled': false,
  'workbench.sideBar.location': 'right',
  'window.commandCenter': false,
  'breadcrumbs.enabled': false,
  'editor.minimap.enabled': false,
  'editor.fontSize': 15,
  'editor.hover.above': false,
  'editor.occurrencesHighlight': 'off',
  'workbench.colorTheme': 'Default Light Modern',
};

/** What is on the picture: a file, and where in it the hover opens. */
export interface Shown {
  workspace: string;
  file: { path: string; line: number; column: number };
}

/** Where the two pictures go: the one with the hover, and the one with the fixes. */
export interface Targets {
  hover: string;
  fixes: string;
}

/** Draws the pictures; each replaces an older one only when it is whole. Throws when something is not there. */
export async function drawPictures(targets: Targets, shown?: Shown): Promise<void> {
  const say = (text: string) => process.stderr.write(`${text}\n`);
  const { message } = await providePackages(['chromium'], say);
  if (message) throw new Error(message);
  const workbench = await startWorkbench(await provideWorkbench(say), vsixPath);
  const workspace = shown ? temporaryFolder('workspace') : workspaceCopy({ mistaken: true });
  if (shown) cpSync(shown.workspace, workspace, { recursive: true });
  try {
    workbench.configure(settings);
    await draw(workbench, workspace, shown?.file ?? mistakenPlace(), targets);
  } finally {
    removeFolder(workspace);
    await workbench.end();
  }
  say(`Drawn: ${targets.hover}, ${targets.fixes}`);
}

function mistakenPlace(): Shown['file'] {
  const { line, key } = places();
  return { path: scenario.build, line: line + 1, column: key + 1 };
}

async function draw(workbench: Workbench, workspace: string, file: Shown['file'], targets: Targets): Promise<void> {
  const browser = await startBrowser();
  try {
    const page = await browser.context.newPage();
    await openFile(page, workbench, workspace, file);
    await page.keyboard.press('Control+KeyB'); // closes the side bar
    await showProblems(page, file.path.split('/').at(-1)!);
    await showHover(page, '');
    await shoot(page, targets.hover);
    await showMenu(page);
    await shoot(page, targets.fixes);
  } finally {
    await browser.close();
  }
}

async function shoot(page: Page, target: string): Promise<void> {
  const unfinished = `${resolve(target)}.unfinished.png`;
  mkdirSync(dirname(unfinished), { recursive: true });
  await page.screenshot({ path: unfinished });
  renameSync(unfinished, target);
}
