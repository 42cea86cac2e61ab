// A pass over the screen: what a person sees of a mistake as it is typed, looked up, and mended by keys alone.
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { places, scenario } from '../support/scenario';
import { actUntilShown, LOOK_LIMIT_MS, openFile, shownText, untilGone, type Browser } from './page';
import type { Workbench } from './server';

/** Texts as they stood on the screen. */
export interface Screen {
  problems: string;
  hover: string;
  menu: string;
  /** The fix that was chosen from the menu. */
  chosen: string;
  /** The build as it is drawn, before and after. */
  textBeforeFix: string;
  textAfterFix: string;
  problemsAfterFix: string;
  /** The page that the finding’s name in the Problems list opens. */
  page: string;
  /** How wide each picture of the extension’s details page is as it is shown; 0 is one that does not show. */
  detailPictures: number[];
}

export const PROBLEMS = '.markers-panel';
export const HOVER = '.monaco-hover:not(.hidden)';
const MENU = '.action-widget';
const FADE_MS = 300;
const SQUIGGLES = '.monaco-editor .squiggly-error, .monaco-editor .squiggly-warning, .monaco-editor .squiggly-info';

/** Types the mistake, then looks at Problems, hover and quick-fix menu; pictures go into `pictures`. */
export async function lookAtScreen(
  workbench: Workbench,
  browser: Browser,
  workspace: string,
  pictures: string,
): Promise<Screen> {
  const page = await browser.context.newPage();
  const picture = (name: string) => page.screenshot({ path: join(pictures, `${name}.png`) });
  try {
    const { line, value } = places();
    await openFile(page, workbench, workspace, { path: scenario.build, line: line + 1, column: value + 1 });
    await typeMistake(page);
    const problems = await showProblems(page, scenario.finding);
    await picture('problems');
    const explained = await followName(page);
    await picture('page');
    await page.keyboard.press('Home');
    const hover = await showHover(page, scenario.hoverSays[0]!);
    await picture('hover');
    const textBeforeFix = await drawnText(page);
    const menu = await showMenu(page);
    await picture('quick-fix');
    const chosen = await chooseFirst(page);
    const problemsAfterFix = await untilGone(page, PROBLEMS, scenario.finding);
    await picture('mended');
    const textAfterFix = await drawnText(page);
    const detailPictures = await lookAtDetails(page);
    await picture('details');
    return {
      problems,
      hover,
      menu,
      chosen,
      textBeforeFix,
      textAfterFix,
      problemsAfterFix,
      page: explained,
      detailPictures,
    };
  } catch (error) {
    await picture('failed');
    throw error;
  } finally {
    await page.close();
  }
}

/** Types the wrong value over the good one. */
async function typeMistake(page: Page): Promise<void> {
  await page.keyboard.press('Shift+End');
  await page.keyboard.type(scenario.typed);
  await page.locator(SQUIGGLES).first().waitFor({ state: 'attached', timeout: LOOK_LIMIT_MS });
}

/** Opens the Problems list, waits until `text` is in it, and goes back to the file. */
export async function showProblems(page: Page, text: string): Promise<string> {
  await page.keyboard.press('Escape');
  const shown = await actUntilShown(page, PROBLEMS, text, async () => {
    if (!(await page.locator(PROBLEMS).isVisible())) await page.keyboard.press('Control+Shift+KeyM');
  });
  await page.keyboard.press('Control+1');
  return shown;
}

/** Opens the page on the first finding’s check by its name in the Problems list, and goes back to the file. */
async function followName(page: Page): Promise<string> {
  await page.locator(`${PROBLEMS} a.monaco-link`, { hasText: scenario.finding }).first().click();
  const text = await textOfFrame(page, 'pre');
  await page.locator('.tab', { hasText: scenario.build }).click();
  return text;
}

/** The text of the page in a frame, once something stands at `selector` in it. */
async function textOfFrame(page: Page, selector: string): Promise<string> {
  for (const start = Date.now(); Date.now() - start < LOOK_LIMIT_MS; await page.waitForTimeout(100)) {
    for (const frame of page.frames().slice(1)) {
      const shown = await frame
        .locator(selector)
        .count()
        .catch(() => 0);
      if (shown > 0) return frame.locator('body').innerText();
    }
  }
  throw new Error(`No frame shows ${selector}.`);
}

/** Opens the extension’s details page; returns how wide each of its pictures is as it is shown. */
async function lookAtDetails(page: Page): Promise<number[]> {
  await page.locator('.activitybar .action-label[aria-label^="Extensions"]').click();
  await page.locator('.extension-list-item', { hasText: 'Fettle' }).first().click();
  await textOfFrame(page, 'img');
  const frames = page.frames().slice(1);
  const widths = frames.map((frame) =>
    frame
      .locator('img')
      .evaluateAll((all) => all.map((one) => (one as unknown as { naturalWidth: number }).naturalWidth)),
  );
  return (await Promise.all(widths)).flat();
}

/** Shows the hover at the cursor by keys, as a person without a mouse would, and waits until `text` is in it. */
export async function showHover(page: Page, text: string): Promise<string> {
  const shown = await actUntilShown(page, HOVER, text, async () => {
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+KeyK');
    await page.keyboard.press('Control+KeyI');
  });
  await page.waitForTimeout(FADE_MS);
  return shown;
}

/** Opens the quick-fix menu at the finding; a hover still open can swallow the first try. */
export async function showMenu(page: Page): Promise<string> {
  return actUntilShown(page, MENU, 'Quick Fix', async () => {
    await page.keyboard.press('Escape');
    await page.keyboard.press('End');
    await page.keyboard.press('Control+Period');
  });
}

async function chooseFirst(page: Page): Promise<string> {
  const chosen = (await shownText(page, `${MENU} .monaco-list-row.action.focused`)).trim();
  await page.keyboard.press('Enter');
  return chosen;
}

/** The build's lines as they are drawn. */
async function drawnText(page: Page): Promise<string> {
  const lines = await page.locator('.monaco-editor .view-line').allInnerTexts();
  return lines.map((text) => text.replace(/\u00a0/g, ' ')).join('\n');
}
