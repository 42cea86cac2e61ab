// VS Code's own workbench with the packed extension: inside the extension host, trusted and not, and on the screen.
import { mkdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { provide, reportMissing } from './support/needs';
import {
  mendedText,
  removeFolder,
  repository,
  samplesCopy,
  scenario,
  temporaryFolder,
  tideWindow,
  vsixPath,
  workspaceCopy,
} from './support/scenario';
import { lookAtHostile } from './workbench/hostile';
import { runInHost, type HostResults, type Mode } from './workbench/host';
import { runInBrowser, type WebResults } from './web/window';
import { startBrowser, type Browser } from './workbench/page';
import { lookAtScreen, type Screen } from './workbench/screen';
import { lands, workWithPanel, type PanelSeen } from './workbench/panel';
import { startWorkbench, type Workbench } from './workbench/server';

const WHOLE_LIMIT_MS = 300_000;

const hostSteps = [
  'starts with a build and knows its kinds of file',
  'says nothing of the mistake before it is made',
  'offers what may stand at a place',
  'mends on request all that has one reading',
  'puts the key of a missing fact into the part’s own file',
  'renames a name and a part file with every use',
  'follows a part file that is moved',
  'shows numbers behind values and above files',
  'leads from a part to the builds that use it',
  'writes new builds and part files where they belong',
  'reads a pasted data sheet, and shows what the build makes of it',
  'writes a part file from a data sheet',
  'shows what a finished machine said at the lines of its build',
  'takes CRLF and a comment for other tools as any other text',
  'leads addresses on, and underlines no name of a part',
  'is calm while a build is typed key by key',
  'finds the mistake as it is typed',
  'explains the key on hover',
  'mends it with one quick fix, undone in one step',
  'registers its commands',
  'explains a check on a page of its own',
  'shows the whole working of a finding',
  'checks files on request that nobody has open',
  'finds the mistake again after a restart',
];

const webSteps = [
  'runs in the browser’s own host, and nowhere else',
  'starts its server for a command, not for Markdown that is tied to no build',
  'checks a guide',
  'finds the mistake, with the facts of part files that lie on no disk',
  'explains the key on hover',
  'leads from the finding’s name to the page on its check, in the editor',
];

/** Has a misspelled key on its last line. */
const shortBuild = {
  text: 'format: 1\nbuild: Typed\nplace:\n  ambient: 24 °C\n  flor: vinyl',
  finding: 'unknown-key 4',
  slip: 'flor',
};

/** The extension runs in a browser without a server only when its manifest names an entry for that. */
const { browser: workerEntry } = JSON.parse(readFileSync(join(repository, 'client/package.json'), 'utf8')) as {
  browser?: string;
};

const modes: Mode[] = [
  { name: 'a trusted folder', trusted: true, host: 'process' },
  { name: 'restricted mode', trusted: false, host: 'process' },
  ...(workerEntry ? [{ name: 'a browser worker', trusted: true, host: 'worker' } as const] : []),
];

const { missing, workbench: folder } = await provide({ packages: ['chromium'], files: [vsixPath], workbench: true });
if (missing) reportMissing('VS Code', missing);

describe.skipIf(missing)('VS Code', () => {
  let workbench: Workbench;
  let browser: Browser;

  beforeAll(async () => {
    [workbench, browser] = await Promise.all([startWorkbench(folder, vsixPath), startBrowser()]);
  });

  afterAll(async () => {
    await browser?.close();
    await workbench?.end();
  });

  describe.each(modes)('in $name', (mode) => {
    let results: HostResults;

    beforeAll(async () => {
      const workspace = workspaceCopy();
      try {
        results = await runInHost(workbench, browser, workspace, {
          scenario,
          mode,
          mended: mendedText(),
          typed: shortBuild,
          steps: hostSteps,
          stepLimitMs: 15_000,
        });
      } finally {
        removeFolder(workspace);
      }
      const measured = Object.assign({}, ...Object.values(results).map((result) => result.measured ?? {}));
      process.stderr.write(`VS Code, ${mode.name}: ${JSON.stringify(measured)}\n`);
    });

    test.each(hostSteps)('%s', (step) => {
      expect(results[step], 'the step did not run').toBeDefined();
      expect(results[step]?.error ?? '').toBe('');
    });
  });

  test('a whole build is typed in calm, with a list wherever something fits', { timeout: WHOLE_LIMIT_MS }, async () => {
    const step = 'is calm while a build is typed key by key';
    const workspace = samplesCopy();
    try {
      const { [step]: result } = await runInHost(workbench, browser, workspace, {
        scenario,
        mode: { name: 'a whole build', trusted: true, host: 'process' },
        mended: '',
        typed: { text: tideWindow, finding: 'cooler-too-tall 13' },
        steps: [step],
        stepLimitMs: WHOLE_LIMIT_MS - 60_000,
      });
      process.stderr.write(`VS Code, a whole build: ${JSON.stringify(result)}\n`);
      expect(result?.error ?? '').toBe('');
      expect(result?.measured?.keysTyped).toBeGreaterThan(600);
    } finally {
      removeFolder(workspace);
    }
  });

  test('a folder of Markdown starts no server before one is tied to a build', async () => {
    const step = 'starts its server for Markdown that is tied to a build, and for no other';
    const workspace = temporaryFolder('markdown');
    try {
      const { [step]: result } = await runInHost(workbench, browser, workspace, {
        scenario,
        mode: { name: 'Markdown', trusted: true, host: 'process' },
        mended: '',
        typed: shortBuild,
        steps: [step],
        stepLimitMs: 15_000,
      });
      expect(result, 'the step did not run').toBeDefined();
      expect(result?.error ?? '').toBe('');
    } finally {
      removeFolder(workspace);
    }
  });

  describe('in a browser alone, on a folder that lies on no disk', () => {
    let results: WebResults;

    beforeAll(async () => {
      workbench.configure({});
      const workspace = workspaceCopy();
      try {
        results = await runInBrowser(workbench, browser, workspace);
      } finally {
        removeFolder(workspace);
      }
    });

    test.each(webSteps)('%s', (step) => {
      expect(results[step]).toBe('');
    });
  });

  describe('with the bench sheet beside the text', () => {
    let seen: PanelSeen;

    beforeAll(async () => {
      workbench.configure({});
      const workspace = samplesCopy();
      try {
        seen = await workWithPanel(workbench, browser, workspace);
      } finally {
        removeFolder(workspace);
      }
    });

    test('before it is checked, the status bar does not say that nothing was found', () => {
      expect(seen.told.at(-1)).toMatch(/^Fettle: harm/);
      expect(seen.told.slice(0, -1).filter((text) => text !== 'Fettle is checking')).toEqual([]);
    });

    test('a click lands on the line of the build, another where it is described', () => {
      expect(seen).toMatchObject({ clicked: lands.clicked, again: lands.again });
    });

    test('so does Enter, and the cursor’s line lights up', () => {
      expect(seen.byKey).toBe(lands.byKey);
      expect(seen.lit).toContain('parts.paste');
    });

    test('what is typed is shown, and a broken text keeps the last good sheet', () => {
      expect(seen).toMatchObject({ heading: 'Survey desk two', mended: '' });
      expect(seen.broken).toContain('last text that could');
    });

    test('it is back after a reload, with its boxes ticked', () => {
      expect(seen).toMatchObject({ back: 'Survey desk two', isTicked: true });
    });
  });

  test('texts of a build that would run something are shown as text', async () => {
    workbench.configure({});
    const workspace = workspaceCopy();
    try {
      const { live, ...shown } = await lookAtHostile(workbench, browser, workspace);
      expect(live).toEqual([]);
      for (const text of Object.values(shown)) expect(text).toContain('<img src=x onerror=alert(1)>');
      expect(shown.hover).toContain('(command:workbench.action');
    } finally {
      removeFolder(workspace);
    }
  });

  describe('on the screen', () => {
    const pictures = process.env.FETTLE_TEST_PICTURES ?? join(tmpdir(), 'fettle-test-pictures');
    let screen: Screen;

    beforeAll(async () => {
      mkdirSync(pictures, { recursive: true });
      workbench.configure({});
      const workspace = workspaceCopy();
      try {
        screen = await lookAtScreen(workbench, browser, workspace, pictures);
      } finally {
        removeFolder(workspace);
      }
      process.stderr.write(`VS Code, screen: pictures in ${pictures}\n`);
    });

    test('the finding stands in the Problems list', () => {
      expect(screen.problems).toContain(scenario.finding);
      expect(screen.problems).toContain(scenario.build);
    });

    test('the finding’s name opens the page on its check', () => {
      expect(screen.page).toContain(scenario.finding);
      for (const text of scenario.pageSays) expect(screen.page).toContain(text.replace(/^# /, ''));
    });

    test('the extension’s details page shows its pictures', () => {
      const named = readFileSync(join(repository, 'client/README.md'), 'utf8').match(/\]\(media\/[\w-]+\.png\)/g);
      expect(screen.detailPictures).toEqual(named!.map(() => 1200));
    });

    test('the hover explains the key', () => {
      for (const text of scenario.hoverSays) expect(screen.hover).toContain(text);
    });

    test('the quick-fix menu offers a fix, and choosing it clears the finding', () => {
      expect(screen.menu).toContain(screen.chosen);
      expect(screen.textBeforeFix).toContain(scenario.mended.line);
      expect(screen.textAfterFix).toContain(scenario.mended.becomes);
      expect(screen.problemsAfterFix).not.toContain(scenario.finding);
    });
  });
});
