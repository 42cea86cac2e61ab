// The bench sheet’s panel in a real browser: what it shows, keeps and says, in every theme, and what no text of a
// build makes it do.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import type { Sheet } from '../../server/src/report/sheet/model';
import { readSamples } from '../support/samples';
import { hostile, hostileSheet, sheetFor, withText } from '../support/sheets';
import { changed, openPage, themeNames, whole, type Panel, type Theme } from './panel/page';
import { provide, reportMissing } from './support/needs';
import { startBrowser, type Browser } from './workbench/page';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const { missing } = await provide({ packages: ['chromium'], files: [] });
if (missing) reportMissing('The panel', missing);

const desk = readSamples().builds.find(({ doc }) => doc.name === 'survey-desk.pcbuild.yaml')!;
const sheetWith = (...edits: readonly (readonly [string, string])[]): Sheet =>
  sheetFor(
    withText(
      desk,
      edits.reduce((text, [old, by]) => replaced(text, old, by), desk.doc.text),
    ),
  );

function replaced(text: string, old: string, by: string): string {
  if (!text.includes(old)) throw new Error(`"${old}" is not in the sample`);
  return text.replace(old, by);
}

describe.skipIf(missing)('the panel', () => {
  let browser: Browser;
  let panel: Panel;
  const sheet = sheetFor(desk);
  const show = async (looks: Parameters<typeof openPage>[1] = {}, shown = sheet): Promise<Page> => {
    panel = await openPage(browser.context, looks);
    await panel.send(whole(shown));
    return panel.page;
  };

  beforeAll(async () => void (browser = await startBrowser()));
  afterAll(() => browser?.close());
  afterEach(() => panel?.page.close());

  describe.each(themeNames)('in the theme %s', (theme: Theme) => {
    test.each([360, 1400])('has nothing that bars anyone from it, %i wide', async (width) => {
      const page = await show({ theme, width });
      await panel.send({ type: 'lit', on: ['parts.drives.scratch', 'parts.cooler'], around: [] });
      expect(await violations(page)).toEqual([]);
      await panel.send({ ...(whole(sheet) as object), old: true });
      expect(await violations(page)).toEqual([]);
      expect(await page.evaluate('document.documentElement.scrollWidth - innerWidth')).toBe(0);
      expect(panel.errors).toEqual([]);
    });
  });

  test('keeps lit lines apart where the system gives the colours', async () => {
    const page = await show();
    await page.emulateMedia({ forcedColors: 'active' });
    await panel.send({ type: 'lit', on: ['parts.cooler'], around: [] });
    expect(await page.evaluate("getComputedStyle(document.querySelector('tr.here')).outlineStyle")).toBe('dashed');
    expect(await violations(page)).toEqual([]);
  });

  test('replaces changed blocks and leaves the others alone', async () => {
    const page = await show();
    await page.evaluate(watched);
    await panel.send(changed(sheet, sheetWith(['build: Survey desk', 'build: Desk by the window'])));
    expect(await page.locator('h1').innerText()).toBe('Desk by the window');
    expect(await page.evaluate('touched')).toEqual(['sheet-head']);
    const without = sheetWith(['  displays:\n    - { use: pharos/p32-4k120, port: DP_1 }\n', '']);
    await panel.send(changed(sheetWith(['build: Survey desk', 'build: Desk by the window']), without));
    const ids = "[...document.querySelector('main').children].map(({ id }) => id)";
    const shown = await page.evaluate(ids);
    await panel.send(whole(without));
    expect(shown).toEqual(await page.evaluate(ids));
  });

  test('says after any change what it says from anew', async () => {
    const page = await show();
    await page.evaluate("for (const one of document.querySelectorAll('details')) one.open = true");
    await page.locator('#sheet-picture-power .p-thing').first().focus();
    await page.evaluate('window.focused = document.activeElement');
    await panel.send({ type: 'lit', on: ['parts.supply'], around: [] });
    const chain = [
      ['circuit: 10 A', 'circuit: 6 A'],
      ['ambient: 31', 'ambient: 29'],
      ['cables: holm/s1000', 'cables: holm/s750'],
      ['  displays:\n    - { use: pharos/p32-4k120, port: DP_1 }\n', ''],
      ['  supply:  ', '  paste:     { use: lindqvist/grey-4 }\n  supply:  '],
    ] as const;
    let before = sheet;
    const fresh = await openPage(browser.context);
    const sheets = [...chain.map((edit) => sheetWith(edit)), sheet, hostileSheet(hostile[0]!), sheet];
    for (const [i, next] of sheets.entries()) {
      await panel.send(changed(before, next));
      before = next;
      const shown = await page.evaluate(said);
      if (i <= chain.length) {
        expect(await page.evaluate('document.activeElement === focused')).toBe(true);
        expect(await page.locator('#sheet-picture-power details[open]').count()).toBe(1);
        expect(await page.locator('.here').count()).toBeGreaterThan(0);
      }
      // As another build’s.
      await fresh.send(whole(next, { uri: `file:///${i}.pcbuild.yaml` }));
      expect(shown).toBe(await fresh.page.evaluate(said));
    }
    await fresh.page.close();
  });

  test('keeps boxes ticked that ask for the same, and no others', async () => {
    const page = await show();
    const boxOf = (words: string) => page.locator('#sheet-at-hand tr', { hasText: words }).locator('input');
    await boxOf('Holm S750').check();
    await boxOf('Tarn Mid 3').check();
    // One more part before them, and another case.
    const next = sheetWith(
      ['  supply:  ', '  paste:     { use: lindqvist/grey-4 }\n  supply:  '].map((one) => one) as [string, string],
      ['tarn/mid-3', 'tarn/mid-4'],
    );
    await panel.send(changed(sheet, next));
    expect(await boxOf('Holm S750').isChecked()).toBe(true);
    expect(await page.locator('#sheet-at-hand input:checked').count()).toBe(1);
    await panel.send({ ...(whole(sheet) as object), uri: 'file:///b.pcbuild.yaml' });
    expect(await page.locator('input:checked').count()).toBe(0);
    await panel.send(whole(sheet));
    expect(await boxOf('Holm S750').isChecked()).toBe(true);
    const state = await page.evaluate('kept');
    await page.close();
    await show({ state });
    expect(await panel.page.locator('#sheet-at-hand tr', { hasText: 'Holm S750' }).locator('input').isChecked()).toBe(
      true,
    );
  });

  test('keeps what the keyboard is on, and what stands at the top', async () => {
    const page = await show();
    const row = page.locator('#sheet-at-hand [data-place="parts.supply"]').first();
    await row.focus();
    await row.scrollIntoViewIfNeeded();
    await page.evaluate("document.getElementById('sheet-at-hand').scrollIntoView()");
    const top = "document.getElementById('sheet-at-hand').getBoundingClientRect().top";
    const before = await page.evaluate(top);
    // The findings above grow fewer, and the block itself changes.
    await panel.send(
      changed(sheet, sheetWith(['cables: holm/s1000', 'cables: holm/s750'], ['tarn/mid-3', 'tarn/mid-4'])),
    );
    expect(Math.abs((await page.evaluate<number>(top)) - (before as number))).toBeLessThan(2);
    expect(await page.evaluate("document.activeElement.getAttribute('data-place')")).toBe('parts.supply');
  });

  test('lights up the cursor’s line, and scrolls only to what cannot be seen', async () => {
    const page = await show({ height: 500 });
    // The keyboard is in the text.
    await page.evaluate('document.hasFocus = () => false');
    const lit = () =>
      page.evaluate<string[]>("[...document.querySelectorAll('.here')].map((one) => one.dataset.place)");
    await panel.send({ type: 'lit', on: ['expect.power.wall'], around: [] });
    expect(new Set(await lit())).toEqual(new Set(['expect.power.wall']));
    const at = await page.evaluate<number>('scrollY');
    await panel.send({ type: 'lit', on: ['expect.power.wall'], around: [] });
    expect(await page.evaluate('scrollY')).toBe(at);
    await panel.send({ type: 'lit', on: ['parts.case.no-such-fact'], around: ['parts.case', 'parts'] });
    expect(new Set(await lit())).toEqual(new Set(['parts.case']));
    expect(await page.locator('.here').first().getAttribute('aria-current')).toBe('true');
    await panel.send({ type: 'lit', on: ['parts.drives.scratch.slot'], around: ['parts.drives.scratch', 'parts'] });
    expect(new Set(await lit())).toEqual(new Set(['parts.drives.scratch.slot', 'parts.drives.scratch']));
    expect(await page.locator('.p-thing.here').count()).toBeGreaterThan(0);
    const tops = "[...document.querySelectorAll('.here')].map((one) => one.getBoundingClientRect().top)";
    expect((await page.evaluate<number[]>(tops)).some((top) => top >= 0 && top < 500)).toBe(true);
    await panel.send({ type: 'lit', on: [], around: [] });
    expect(await lit()).toEqual([]);
  });

  test('says where a click leads; a box is ticked by itself', async () => {
    const page = await show();
    const row = page.locator('#sheet-at-hand tr', { hasText: 'Holm S750' });
    await row.locator('label').getByText('Supply').click();
    await row.locator('input').click();
    await page.locator('.p-thing[data-place="parts.drives.scratch"] text').first().click();
    expect(await row.locator('input').isChecked()).toBe(true);
    expect((await panel.said()).slice(1)).toEqual([
      { type: 'go', place: 'parts.supply' },
      { type: 'go', place: 'parts.drives.scratch' },
    ]);
    await page.locator('a[href="#finding-2"]').first().click();
    expect(await page.evaluate('document.activeElement.id')).toBe('finding-2');
    expect(await panel.said()).toHaveLength(3);
  });

  test('leads anywhere by keys alone: one stop a block, arrows within, Enter to the text', async () => {
    const page = await show();
    const at = () => page.evaluate("document.activeElement.getAttribute('data-place')");
    await page.keyboard.press('Tab');
    const first = await at();
    expect(first).not.toBe(null);
    await page.keyboard.press('Enter');
    await page.keyboard.press('ArrowDown');
    const second = await at();
    expect(second).not.toBe(first);
    await page.keyboard.press('Enter');
    expect((await panel.said()).slice(1)).toEqual([
      { type: 'go', place: first },
      { type: 'go', place: second },
    ]);
    const outline = 'getComputedStyle(document.activeElement).outlineStyle';
    expect(await page.evaluate(outline)).toBe('solid');
    const stops =
      "[...document.querySelectorAll('main > *')].map((one) => " +
      'one.querySelectorAll(\'[data-place][tabindex="0"]\').length)';
    expect(Math.max(...(await page.evaluate<number[]>(stops)))).toBe(1);
    const box = page.locator('#sheet-at-hand tr', { hasText: 'Holm S750' }).locator('input');
    await box.focus();
    await page.keyboard.press('Space');
    await page.keyboard.press('Enter');
    expect(await box.isChecked()).toBe(true);
    expect((await panel.said()).at(-1)).toEqual({ type: 'go', place: 'parts.supply' });
  });

  test('says that a sheet is the last good one, and that there is none', async () => {
    const page = await show();
    expect(await page.locator('[role=status]').innerText()).toBe('');
    await panel.send({ ...(whole(sheet) as object), blocks: [], old: true });
    expect(await page.locator('[role=status]').innerText()).toContain('last text that could');
    expect(await page.locator('h1').innerText()).toBe('Survey desk');
    await panel.send({ type: 'none', why: 'There is no build here.' });
    expect(await page.locator('[role=status]').innerText()).toBe('There is no build here.');
    expect(await page.locator('main > *').count()).toBe(0);
  });

  test('does nothing at messages of another shape', async () => {
    const page = await show();
    const before = await page.locator('main').innerHTML();
    for (const message of [
      null,
      3,
      'sheet',
      {},
      { type: 'sheet' },
      { type: 'lit', on: 'x' },
      { ...whole(sheet), blocks: [{ id: 1 }] },
    ])
      await panel.send(message);
    expect(await page.locator('main').innerHTML()).toBe(before);
    expect(panel.errors).toEqual([]);
  });

  test.each(hostile)('shows a build whose every text is %j as text, and loads and runs nothing', async (text) => {
    const page = await show({}, hostileSheet(text));
    await page.evaluate("for (const one of document.querySelectorAll('details')) one.open = true");
    await page.locator('.p-thing text').first().click();
    await page.keyboard.press('Tab');
    await page.waitForTimeout(50);
    expect(panel.loaded).toEqual([]);
    expect(panel.errors).toEqual([]);
    expect(await page.locator('main :is(script, img, iframe, object, embed, form, base, link, meta)').count()).toBe(0);
    expect(await page.locator('main a:not([href^="#finding-"])').count()).toBe(0);
    expect(page.url()).toBe('http://panel.test/');
  });

  test('runs and loads nothing even of a block that is not ours', async () => {
    const page = await show();
    const html =
      '<div><img src="http://example.org/a.png" onerror="window.ran = 1"><script>window.ran = 2</script>' +
      '<svg onload="window.ran = 3"></svg><p style="color: red">red</p>' +
      '<iframe src="http://example.org/"></iframe></div>';
    await panel.send({ ...(whole(sheet) as object), order: ['x'], blocks: [{ id: 'x', html }] });
    await page.waitForTimeout(200);
    expect(await page.evaluate('window.ran')).toBeUndefined();
    expect(panel.loaded).toEqual([]);
    expect(await page.evaluate("getComputedStyle(document.querySelector('main p')).color")).not.toBe('rgb(255, 0, 0)');
  });
});

/** Has the page note, as `touched`, the blocks in which anything was put in, taken out or made to say another thing. */
const watched = `
  window.touched = [];
  new MutationObserver((changes) => {
    for (const { target } of changes) {
      const { id } = (target.closest ? target : target.parentElement).closest('main > *') ?? target;
      if (!touched.includes(id)) touched.push(id);
    }
  }).observe(document.querySelector('main'), { childList: true, characterData: true, attributes: true, subtree: true });
`;

/** All that the blocks say, without the marks that the page itself makes. */
const said = `(() => {
  const main = document.querySelector('main').cloneNode(true);
  for (const one of main.querySelectorAll('*')) {
    for (const name of ['tabindex', 'data-stop', 'aria-current', 'open']) one.removeAttribute(name);
    one.classList.remove('here');
    if (one.getAttribute('class') === '') one.removeAttribute('class');
  }
  return main.innerHTML;
})()`;

/** What axe finds wrong: the rule, and where. */
async function violations(page: Page): Promise<string[]> {
  // Through the browser’s own door: the page’s policy lets no further script in.
  await page.evaluate(axe);
  const found = await page.evaluate<{ id: string; nodes: { target: string[]; failureSummary: string }[] }[]>(
    'axe.run().then(({ violations }) => violations)',
  );
  return found.flatMap(({ id, nodes }) =>
    nodes.slice(0, 5).map((one) => `${id}: ${one.target.join(' ')} ${one.failureSummary}`),
  );
}
