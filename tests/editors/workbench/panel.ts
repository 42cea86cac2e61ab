// The bench sheet’s panel in the workbench: opened, found among the frames, clicked, and looked at.
import { join } from 'node:path';
import type { Frame, Page } from 'playwright-core';
import { LOOK_LIMIT_MS, openFile, type Opened } from './page';
import type { Workbench } from './server';

/** Opens a build and its bench sheet beside it; gives the frame that shows the sheet. */
export async function openPanel(
  page: Page,
  workbench: Workbench,
  workspace: string,
  file: NonNullable<Opened['file']>,
): Promise<Frame> {
  await openFile(page, workbench, workspace, file);
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

export const shoot = (page: Page, pictures: string, name: string): Promise<Buffer> =>
  page.screenshot({ path: join(pictures, `${name}.png`) });
