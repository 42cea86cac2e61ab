// What is on the pictures of the README and the details page: which file, in which theme, and what someone does there.
import type { Page } from 'playwright-core';
import { tideWindow } from '../support/scenario';
import { LOOK_LIMIT_MS } from './page';
import { showSheet } from './panel';
import { showHover, showMenu } from './screen';

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

/** The build without its drives and what follows, then the lines that begin with `these`, then one that is begun. */
function writing(these: readonly string[], begun: string): Pick<Scene, 'file' | 'more'> {
  const all = tideWindow.split('\n');
  const before = all.slice(0, all.indexOf('  drives:'));
  const isNext = begun.startsWith('  cooler:');
  const first = before.filter((line) => !(isNext && line.startsWith('  cooler:')));
  const more = these.map((start) => all.find((line) => line.startsWith(start))!);
  const text = [...first, ...more, begun].join('\n').replace('boreas/tower-155', 'boreas/low-48');
  return { file: { path: build, line: 1, column: 1 }, more: { [build]: text } };
}

/** Types as a person does, until the list shows `text`. */
async function typeUntilListed(page: Page, typed: string, text: string): Promise<void> {
  await settled(page);
  await page.keyboard.press('Control+End');
  await page.keyboard.type(typed, { delay: keyMs });
  await page.locator(LIST, { hasText: text }).waitFor({ timeout: LOOK_LIMIT_MS });
  await page.waitForTimeout(300);
  if (!(await page.locator('.suggest-details-container').isVisible())) await page.keyboard.press('Control+Space');
  await page.waitForTimeout(900);
}

/** The server has answered, with its numbers too. */
async function settled(page: Page): Promise<void> {
  await page
    .locator('.statusbar-item', { hasText: /Fettle: / })
    .first()
    .waitFor({ timeout: LOOK_LIMIT_MS });
  await page.waitForTimeout(2_500);
}

/** Asks for a file or a line by the editor’s own list. */
async function choose(page: Page, key: string, text: string): Promise<void> {
  await page.keyboard.press(key);
  await page.locator('.quick-input-widget').waitFor({ timeout: LOOK_LIMIT_MS });
  await page.keyboard.press('Control+KeyA');
  await page.keyboard.type(text);
  await page.waitForTimeout(800);
  await page.keyboard.press('Enter');
}

/** Draws the hover’s lower edge down, as far as there is room. */
async function makeTall(page: Page): Promise<void> {
  const box = await page.locator('.monaco-hover:not(.hidden)').first().boundingBox();
  if (!box) throw new Error('No hover is shown.');
  const [x, y] = [box.x + box.width / 2, box.y + box.height];
  await page.mouse.move(x, y - 20);
  await page.mouse.move(x, y, { steps: 4 });
  await page.mouse.down();
  await page.mouse.move(x, 715, { steps: 10 });
  await page.mouse.up();
  await page.mouse.move(x, y - 60, { steps: 4 }); // off the edge, which would be drawn thick
  await page.waitForTimeout(500);
}

/** A guide whose build has changed since one value was written. */
const guide = `---
build: counter-pc.pcbuild.yaml
---

# The counter PC

It sells tickets and prints the tide tables at the visitors’ door.

It takes <!-- fettle: power.wall -->118 W<!-- /fettle --> from the wall and holds
<!-- fettle: memory.capacity -->32 GB<!-- /fettle --> of memory. Its drive reads
<!-- fettle: drives.system.rate -->3.2 GB/s<!-- /fettle -->.

## One day, a second drive

\`\`\`pcbuild
format: 1
build: Counter PC with room for pictures
parts:
  board: { use: norrvik/b5-quay, firmware: "2.14" }
  drives:
    - { name: pictures, use: lumen/vault-4t, port: SATA_1 }
\`\`\`
`;

/** A cooler's data sheet as a page's table is pasted, below what a part file begins with. */
const pasted = `kind: cooler
maker: Boreas
model: Tower 162

Height\t162 mm
Sockets\tAM5, LGA1851
Max. TDP\t220 W
Fan\t120 x 120 x 25 mm
Fan speed\t500 - 1,800 RPM
Weight\t780 g (with fan)
Colour\tSand
Warranty\t6 years
`;

const survey = 'survey-desk.pcbuild.yaml';

export const scenes: readonly Scene[] = [
  {
    name: 'typing',
    theme: 'light',
    settings: { 'fettle.pause': 30_000 },
    ...writing(['  drives:', '    - name: system', '      use: lumen/steady-500g'], '      '),
    act: (page) => typeUntilListed(page, 'sl', 'slot'),
  },
  {
    name: 'completion',
    theme: 'light',
    ...writing(['  supply:', '  case:'], '  cooler: '),
    act: (page) => typeUntilListed(page, '{ use: ', 'boreas/'),
  },
  {
    name: 'hover',
    theme: 'light',
    file: { path: survey, line: 48, column: 20 },
    act: async (page) => {
      await settled(page);
      for (let line = 0; line < 14; line++) await page.keyboard.press('Control+ArrowDown');
      await showHover(page, 'shows the whole working');
      await makeTall(page);
    },
  },
  {
    name: 'fixes',
    theme: 'light',
    file: { path: survey, line: 16, column: 26 },
    act: async (page) => {
      await settled(page);
      await showMenu(page);
      await page.waitForTimeout(500);
    },
  },
  ...(['light', 'dark', 'contrast'] as const).map(
    (theme): Scene => ({
      name: `sheet-${theme}`,
      theme,
      file: { path: survey, line: 32, column: 20 },
      settings: { 'editor.fontSize': 13 },
      act: async (page) => {
        await settled(page);
        await showSheet(page, 'sheet-picture-power');
      },
    }),
  ),
  {
    name: 'guide',
    theme: 'light',
    file: { path: 'counter-pc.md', line: guide.slice(0, guide.indexOf('118 W')).split('\n').length, column: 40 },
    more: { 'counter-pc.md': guide },
    settings: { 'editor.wordWrap': 'on' },
    act: async (page) => {
      await page.locator('.squiggly-warning').first().waitFor({ state: 'attached', timeout: LOOK_LIMIT_MS });
      await page.waitForTimeout(2_000);
      await showHover(page, 'guide-value-stale');
    },
  },
  {
    name: 'pasted',
    theme: 'light',
    file: { path: 'parts/boreas/tower-162.part.yaml', line: 5, column: 1 },
    more: {
      'parts/boreas/tower-162.part.yaml': pasted,
      [build]: tideWindow.replace('boreas/tower-155', 'boreas/tower-162'),
    },
    settings: { 'editor.fontSize': 13, 'fettle.from': 'note' },
    act: async (page) => {
      await settled(page);
      await showMenu(page);
      await page.keyboard.press('Enter'); // reads the lines as facts
      await page.locator('.squiggly-error').first().waitFor({ state: 'detached', timeout: LOOK_LIMIT_MS });
      await page.keyboard.press('Control+KeyS');
      await page.keyboard.press('Control+Backslash');
      await choose(page, 'Control+KeyP', build);
      await page.locator('.tab.active', { hasText: build }).waitFor({ timeout: LOOK_LIMIT_MS });
      await choose(page, 'Control+KeyG', ':14:20');
      await page.locator('.squiggly-error').first().waitFor({ state: 'attached', timeout: LOOK_LIMIT_MS });
      await page.waitForTimeout(2_500);
      await showHover(page, 'cooler-too-tall');
    },
  },
];
