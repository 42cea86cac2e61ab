// What installs the tests' needs: it says what it cannot do, waits for nobody, and leaves nothing half done.
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { cacheFolder } from '../provide.mjs';
import { runGroup } from './group.mjs';

const script = fileURLToPath(new URL('../provide.mjs', import.meta.url));
let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-provide-'));
});

afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true, force: true });
});

/** Runs the script where only what lies in `folder/bin` is on the path. */
function provide(...names: string[]) {
  const env = { PATH: join(folder, 'bin'), HOME: folder, FETTLE_TEST_CACHE: join(folder, 'cache') };
  return runGroup(process.execPath, [script, ...names], { limitMs: 30_000, env });
}

function program(name: string, shell: string): void {
  mkdirSync(join(folder, 'bin'), { recursive: true });
  writeFileSync(join(folder, 'bin', name), `#!/bin/sh\n${shell}\n`);
  chmodSync(join(folder, 'bin', name), 0o755);
}

describe('provide', () => {
  test('names what is missing, and how to get it, where it may not install', async () => {
    const { status, output } = await provide('neovim');
    expect(status).toBe(1);
    expect(output).toContain('Missing: neovim.');
    expect(output).toContain('sudo apt-get install neovim');
  });

  test('installs nothing that is there already', async () => {
    program('nvim', 'exit 0');
    program('apt-get', 'echo asked for; exit 1');
    expect(await provide('neovim')).toEqual({ status: 0, output: '' });
  });

  test.runIf(process.getuid?.() === 0)(
    'refreshes the lists and tries again when apt-get does not find a package',
    async () => {
      const bin = join(folder, 'bin');
      program('env', 'exec /usr/bin/env "$@"');
      program(
        'apt-get',
        `
      echo "$DEBIAN_FRONTEND $*" >> ${folder}/asked
      case "$*" in
        *update*) /usr/bin/touch ${folder}/lists ;;
        *install*) [ -e ${folder}/lists ] && /bin/cp ${bin}/env ${bin}/nvim ;;
      esac`,
      );
      expect((await provide('neovim')).status).toBe(0);
      const asked = readFileSync(join(folder, 'asked'), 'utf8').trim().split('\n');
      expect(asked.map((line) => /(install|update)/.exec(line)?.[0])).toEqual(['install', 'update', 'install']);
      for (const line of asked) expect(line).toMatch(/^noninteractive .*-y /);
    },
  );

  test('refuses a name it does not know, and lists those it knows', async () => {
    const { status, output } = await provide('sextant');
    expect(status).toBe(2);
    expect(output).toMatch(/Unknown: sextant\. Known: .*chromium.*workbench/);
  });

  test('leaves nothing of an install that failed', async () => {
    program('npm', 'echo half > half-done; echo the disk is full >&2; exit 1');
    const { status, output } = await provide('workbench');
    expect(status).toBe(1);
    expect(output).toContain('the disk is full');
    expect(readdirSync(join(folder, 'cache'))).toEqual([]);
  });

  test.each([
    { chosen: '/a', caches: '/b', expected: '/a' },
    { chosen: '', caches: '/b', expected: '/b/fettle-tests' },
  ])('keeps downloads in $expected', ({ chosen, caches, expected }) => {
    vi.stubEnv('FETTLE_TEST_CACHE', chosen);
    vi.stubEnv('XDG_CACHE_HOME', caches);
    expect(cacheFolder()).toBe(expected);
  });
});
