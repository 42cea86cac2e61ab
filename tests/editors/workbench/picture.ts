// Draws pictures of the workbench at work: each scene in a window of its own, made small, and put in place when whole.
import { mkdirSync, renameSync, statSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { runGroup } from '../../tools/group.mjs';
import { programPath, providePackages, provideWorkbench } from '../../provide.mjs';
import { removeFolder, samplesCopy, vsixPath } from '../support/scenario';
import { openFile, startBrowser, type Browser } from './page';
import { scenes, themes, type Scene } from './scenes';
import { startWorkbench, type Workbench } from './server';

const SIZE = { width: 1200, height: 750 };
const MOST_BYTES = 150_000;

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
  'editor.cursorBlinking': 'solid',
  'editor.hover.above': false,
  'editor.occurrencesHighlight': 'off',
  'files.autoSave': 'off',
  'remote.autoForwardPorts': false,
};

/** Draws the scenes of these names, or all, into `folder`. Throws when something is not there. */
export async function drawPictures(folder: string, names: readonly string[]): Promise<void> {
  const unknown = names.filter((name) => !scenes.some((scene) => scene.name === name));
  if (unknown.length > 0) throw new Error(`There is no scene ${unknown.join(', ')}.`);
  const say = (text: string) => process.stderr.write(`${text}\n`);
  const { message } = await providePackages(['chromium', 'pngquant', 'optipng', 'advancecomp'], say);
  if (message) throw new Error(message);
  const workbench = await startWorkbench(await provideWorkbench(say), vsixPath);
  const browser = await startBrowser();
  try {
    for (const scene of scenes.filter(({ name }) => names.length === 0 || names.includes(name))) {
      const target = resolve(folder, `${scene.name}.png`);
      await draw(workbench, browser, scene, target);
      say(`Drawn: ${target}, ${statSync(target).size} bytes`);
    }
  } finally {
    await browser.close();
    await workbench.end();
  }
}

async function draw(workbench: Workbench, browser: Browser, scene: Scene, target: string): Promise<void> {
  const workspace = samplesCopy(scene.more);
  workbench.configure({ ...settings, 'workbench.colorTheme': themes[scene.theme], ...scene.settings });
  const page = await browser.context.newPage();
  mkdirSync(dirname(target), { recursive: true });
  try {
    await page.setViewportSize(SIZE);
    await openFile(page, workbench, workspace, scene.file);
    await page.keyboard.press('Control+KeyB'); // closes the side bar
    await scene.act(page);
    if ((await page.locator('.notification-toast').count()) > 0) throw new Error(`${scene.name}: a notice is shown`);
    await page.screenshot({ path: `${target}.unfinished.png` });
    await makeSmall(`${target}.unfinished.png`, target);
  } catch (error) {
    await page.screenshot({ path: `${target}.failed.png` });
    throw error;
  } finally {
    await page.close();
    removeFolder(workspace);
  }
}

/** A screen has few colours: 64 of them are enough, packed as tightly as it goes: the extension’s page carries each. */
async function makeSmall(picture: string, target: string): Promise<void> {
  const steps = {
    pngquant: ['--force', '--strip', '--speed', '1', '--output', picture, '64', '--', picture],
    optipng: ['-quiet', '-o5', picture],
    advpng: ['--recompress', '--shrink-insane', picture],
  };
  for (const [program, words] of Object.entries(steps)) {
    const { status, output } = await runGroup(programPath(program)!, words, { limitMs: 120_000 });
    if (status !== 0) throw new Error(`${program}: ${output}`);
  }
  if (statSync(picture).size > MOST_BYTES) throw new Error(`${target} would hold more than ${MOST_BYTES} bytes`);
  renameSync(picture, target);
}
