// What is on the pictures of the README and the details page: which file, in which theme, and what someone does there.
import type { Page } from 'playwright-core';
import { tideWindow } from '../support/scenario';
import { actUntilShown, LOOK_LIMIT_MS } from './page';
import { showSheet } from './panel';
import { showHover, showMenu, showProblems } from './screen';

/** The themes of the editor, by what a picture calls them. */
export const themes = {
  light: 'Default Light Modern',
  dark: 'Default Dark Modern',
  contrast: 'Default High Contrast',
} as const;

export interface Scene {
  /** The picture’s name. */
  readonly name: string;
  readonly theme: keyof typeof themes;
  /** The file that is open, in a copy of the samples, and where the cursor is. */
  readonly file: { readonly path: string; readonly line: number; readonly column: number };
  /** Files beside the samples, by their paths. */
  readonly more?: Readonly<Record<string, string>>;
  readonly settings?: Readonly<Record<string, unknown>>;
  /** What is done until the picture is as it is to be. */
  readonly act: (page: Page) => Promise<void>;
}

const LIST = '.suggest-widget.visible';
const keyMs = 110;
const build = 'tide-window.pcbuild.yaml';

/** The build as far as `line`, which is begun and written on: everything before `begun` stands there. */
function writing(line: string, begun: string): Pick<Scene, 'file' | 'more'> {
  const lines = tideWindow.replace('boreas/tower-155', 'boreas/low-48').split('\n');
  const at = lines.findIndex((one) => one.startsWith(line));
  if (at < 0) throw new Error(`${build}: no line begins with "${line}"`);
  const text = [...lines.slice(0, at), begun].join('\n');
  return { file: { path: build, line: 1, column: 1 }, more: { [build]: text } };
}

/** Types as a person does, until the list shows `text`. */
async function typeUntilListed(page: Page, typed: string, text: string): Promise<void> {
  await settled(page);
  await page.keyboard.press('Control+End');
  await page.keyboard.type(typed, { delay: keyMs });
  await actUntilShown(page, LIST, text, async () => {
    if (!(await page.locator(LIST).isVisible())) await page.keyboard.press('Control+Space');
  });
  if (!(await page.locator('.suggest-details-container').isVisible())) await page.keyboard.press('Control+Space');
  await page.waitForTimeout(600);
}

/** The server has answered with its numbers. */
async function settled(page: Page): Promise<void> {
  await page
    .locator('.codelens-decoration', { hasText: /worst|nothing/ })
    .first()
    .waitFor({ timeout: LOOK_LIMIT_MS });
  await page.waitForTimeout(1_000);
}

const survey = 'survey-desk.pcbuild.yaml';

export const scenes: readonly Scene[] = [
  {
    name: 'typing',
    theme: 'light',
    ...writing('      slot: M2_1', '      '),
    act: (page) => typeUntilListed(page, 'slot: ', 'M2_1'),
  },
  {
    name: 'completion',
    theme: 'light',
    ...writing('  cooler:', '  cooler: '),
    act: (page) => typeUntilListed(page, '{ use: ', 'boreas/'),
  },
  {
    name: 'hover',
    theme: 'light',
    file: { path: survey, line: 16, column: 26 },
    act: async (page) => {
      await settled(page);
      await showHover(page, 'cooler-too-tall');
    },
  },
  {
    name: 'fixes',
    theme: 'light',
    file: { path: survey, line: 16, column: 26 },
    act: async (page) => {
      await settled(page);
      await showProblems(page, survey);
      await showMenu(page);
      await page.waitForTimeout(500);
    },
  },
  ...(['light', 'dark', 'contrast'] as const).map(
    (theme): Scene => ({
      name: `bench-sheet-${theme}`,
      theme,
      file: { path: survey, line: 23, column: 13 },
      settings: { 'editor.fontSize': 13 },
      act: (page) => showSheet(page, 'sheet-picture-lanes'),
    }),
  ),
];
