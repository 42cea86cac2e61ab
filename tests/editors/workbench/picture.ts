// One picture of the workbench at work: a build with a mistake, its hover, and the Problems list.
import { mkdirSync, renameSync, rmSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { providePackages, provideWorkbench } from '../../provide.mjs';
import { places, removeFolder, scenario, vsixPath, workspaceCopy } from '../support/scenario';
import { openFile, startBrowser } from './page';
import { FADE_MS, showHover, showProblems } from './screen';
import { startWorkbench } from './server';

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

/** Draws the picture into `target`, which is replaced only by a whole one. Throws when something is not there. */
export async function drawPicture(target: string): Promise<void> {
  const say = (text: string) => process.stderr.write(`${text}\n`);
  const { message } = await providePackages(['chromium'], say);
  if (message) throw new Error(message);
  const workbench = await startWorkbench(await provideWorkbench(say), vsixPath);
  const workspace = workspaceCopy({ mistaken: true });
  try {
    workbench.configure(settings);
    await draw(workbench, workspace, resolve(target));
  } finally {
    removeFolder(workspace);
    await workbench.end();
  }
  say(`Drawn: ${target}`);
}

async function draw(workbench: Parameters<typeof openFile>[1], workspace: string, target: string): Promise<void> {
  const browser = await startBrowser();
  const unfinished = `${target}.unfinished.png`;
  try {
    const page = await browser.context.newPage();
    const { line, value } = places();
    await openFile(page, workbench, workspace, { path: scenario.build, line: line + 1, column: value + 1 });
    await page.keyboard.press('Control+KeyB'); // closes the side bar
    await showProblems(page);
    await showHover(page);
    await page.waitForTimeout(FADE_MS);
    mkdirSync(dirname(target), { recursive: true });
    await page.screenshot({ path: unfinished });
    renameSync(unfinished, target);
  } finally {
    rmSync(unfinished, { force: true });
    await browser.close();
  }
}
