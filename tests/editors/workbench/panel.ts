// The bench sheet’s panel in the workbench: opened, found among the frames, clicked, and looked at.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Frame, Page } from 'playwright-core';
import { address, LOOK_LIMIT_MS, openFile, type Browser, type Opened } from './page';
import type { Workbench } from './server';

/** Opens a build and its bench sheet beside it; gives the frame that shows the sheet. */
export async function openPanel(
  page: Page,
  workbench: Workbench,
  workspace: string,
  file: NonNullable<Opened['file']>,
): Promise<Frame> {
  await openFile(page, workbench, workspace, file);
  return openBeside(page);
}

export async function openBeside(page: Page): Promise<Frame> {
  await page.locator('.editor-actions .action-label[aria-label^="Open Bench Sheet Beside"]').first().click();
  return sheetFrame(page);
}

/** The frame that shows a sheet, once it shows one. */
export async function sheetFrame(page: Page): Promise<Frame> {
  for (const start = Date.now(); Date.now() - start < LOOK_LIMIT_MS; await page.waitForTimeout(50))
    for (const frame of page.frames().slice(1))
      if (
        (await frame
          .locator('main.sheet > *')
          .count()
          .catch(() => 0)) > 0
      )
        return frame;
  throw new Error('No frame shows a bench sheet.');
}

/** What is seen of a build and its sheet, worked with by pointer and keys. */
export interface PanelSeen {
  /** What the status bar said of the build, up to its grade. */
  readonly told: readonly string[];
  /** The file and line at the cursor: after a click on the supply, after another on it, after Enter on the cooler. */
  readonly clicked: string;
  readonly again: string;
  readonly byKey: string;
  /** Keys lit after the cursor went a line down. */
  readonly lit: readonly string[];
  /** The heading once a word is typed; what is said while the text is broken, and once it is mended. */
  readonly heading: string;
  readonly broken: string;
  readonly mended: string;
  /** After a reload of the window: the heading, and whether the box is still ticked. */
  readonly back: string;
  readonly isTicked: boolean;
}

const build = 'survey-desk.pcbuild.yaml';
/** Where the sample says what the sheet’s things lead to. */
export const lands = {
  clicked: `${build} Ln 33`,
  again: 's750.part.yaml Ln 1',
  byKey: `${build} Ln 16`,
};
const nameLine = { path: build, line: 3, column: 19 };

/** Notes each text of ours in the status bar. */
const noteStatus = `
  globalThis.told = [];
  setInterval(() => {
    for (const { innerText } of document.querySelectorAll('.statusbar-item'))
      if (/^Fettle/.test(innerText) && !told.includes(innerText)) told.push(innerText);
  }, 20);
`;

/** Works with the sample desk’s sheet. */
export async function workWithPanel(workbench: Workbench, browser: Browser, workspace: string): Promise<PanelSeen> {
  const page = await browser.context.newPage();
  try {
    await page.addInitScript(noteStatus);
    let frame = await openPanel(page, workbench, workspace, nameLine);
    const told = await until(
      page,
      () => page.evaluate<string[]>('told'),
      (all) => all.some((text) => text.includes('harm')),
    );
    const box = () => frame.locator('#sheet-at-hand tr', { hasText: 'Holm S750' }).locator('input');
    await box().check();
    const supply = frame.locator('#sheet-at-hand tr', { hasText: 'Holm S750' }).getByText('Supply');
    await supply.click();
    const clicked = await landed(page, lands.clicked);
    await supply.click();
    const again = await landed(page, lands.again);
    await page.locator('.tab', { hasText: build }).first().click();
    await landed(page, lands.clicked);
    await frame.locator('tr[data-place="parts.cooler"]').first().focus();
    await page.keyboard.press('Enter');
    const byKey = await landed(page, lands.byKey);
    await page.locator('.monaco-editor.focused').first().waitFor();
    await page.keyboard.press('ArrowDown');
    const lit = await until(
      page,
      () => litKeys(frame),
      (keys) => keys.includes('parts.paste'),
    );
    const typed = await typeInName(page, frame);
    await page.keyboard.press('Control+KeyS');
    // A tab that is saved by itself after a while shows no sign of it.
    await until(
      page,
      async () => readFileSync(join(workspace, build), 'utf8'),
      (text) => text.includes(' two\n'),
    );
    // In a browser the editor writes down what it keeps every five seconds, when idle, and not on leaving.
    await page.waitForTimeout(8_000);
    // Opened anew as it was left; no file is asked for.
    await page.goto(address(workbench, { workspace }), { waitUntil: 'domcontentloaded' });
    frame = await sheetFrame(page);
    const back = await until(
      page,
      () => frame.locator('h1').innerText(),
      (text) => text.endsWith('two'),
    );
    // Ticks follow the blocks, which come one by one.
    const isTicked = await until(
      page,
      () => box().isChecked(),
      (ticked) => ticked,
    );
    return { told, clicked, again, byKey, lit, ...typed, back, isTicked };
  } finally {
    await page.close();
  }
}

async function typeInName(page: Page, frame: Frame): Promise<Pick<PanelSeen, 'heading' | 'broken' | 'mended'>> {
  await page.keyboard.press('Control+KeyG');
  await page.keyboard.type('3');
  await page.keyboard.press('Enter');
  await page.keyboard.press('End');
  await page.keyboard.type(' two');
  const heading = await until(
    page,
    () => frame.locator('h1').innerText(),
    (text) => text.endsWith('two'),
  );
  const status = (): Promise<string> => frame.locator('[role=status]').innerText();
  await page.keyboard.type(': x');
  const broken = await until(page, status, (text) => text !== '');
  for (let i = 0; i < 3; i++) await page.keyboard.press('Backspace');
  return { heading, broken, mended: await until(page, status, (text) => text === '') };
}

const litKeys = (frame: Frame): Promise<string[]> =>
  frame.evaluate<string[]>("[...document.querySelectorAll('.here')].map((one) => one.dataset.place)");

/** The file that is written in, and the line of its cursor. */
async function cursor(page: Page): Promise<string> {
  const tab = await page.locator('.editor-group-container .tab.active').allInnerTexts();
  const place = await page.locator('#status\\.editor\\.selection').allInnerTexts();
  const file = tab.find((text) => text.includes('.yaml')) ?? '';
  return `${/[\w.-]+\.yaml/.exec(file)?.[0] ?? ''} ${/Ln \d+/.exec(place.join(' '))?.[0] ?? ''}`;
}

/** Waits until the cursor is where it is expected; gives where it is. */
const landed = (page: Page, where: string): Promise<string> =>
  until(
    page,
    () => cursor(page),
    (now) => now === where,
  );

async function until<T>(page: Page, look: () => Promise<T>, isIt: (seen: T) => boolean): Promise<T> {
  let seen = await look();
  for (const start = Date.now(); !isIt(seen); seen = await look()) {
    if (Date.now() - start > LOOK_LIMIT_MS) throw new Error(`Waited in vain; last seen: ${JSON.stringify(seen)}`);
    await page.waitForTimeout(50);
  }
  return seen;
}

/** Opens the sheet of the build at hand, and scrolls to one of its blocks once the cursor’s line is lit up in it. */
export async function showSheet(page: Page, block: string): Promise<void> {
  const frame = await openBeside(page);
  await until(
    page,
    () => litKeys(frame),
    (keys) => keys.length > 0,
  );
  await frame.evaluate(`document.getElementById(${JSON.stringify(block)}).scrollIntoView()`);
  // Part of the blank above it gives way to what would stand at the window’s lower edge.
  await frame.evaluate('scrollBy(0, 14)');
  await page.waitForTimeout(500);
}
