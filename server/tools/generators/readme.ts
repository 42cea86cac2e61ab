// What the README shows of the program at work: the output of its own example, and the checks counted by area.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { checks } from '../../src/core/checks/all';
import { areas, type Area } from '../../src/core/checks/check';
import { root } from '../build.mjs';
import type { Generator } from './index';

/** The example takes place on a fixed day; its findings must not change with the calendar. */
const day = '2026-11-25';
const name = 'desk.pcbuild.yaml';

/** Runs the command from its sources over one build in a folder of its own. */
function outputOn(build: string): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'fettle-readme-')));
  try {
    writeFileSync(join(folder, name), build);
    const command = [join(root, 'node_modules/tsx/dist/cli.mjs'), join(root, 'server/src/fettle.ts')];
    const words = ['check', name, '--working', '--on', day];
    const { status, stdout, stderr } = spawnSync(process.execPath, [...command, ...words], {
      cwd: folder,
      encoding: 'utf8',
      // Colours of the terminal that generates do not belong on the page.
      env: { PATH: process.env.PATH },
    });
    if (status !== 1) throw new Error(`The README’s example ended with status ${status}: ${stderr}`);
    return stdout.trimEnd();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function areaList(): string {
  const counted = (Object.keys(areas) as Area[]).map(
    (area) => `${areas[area]} (${checks.filter((check) => check.area === area).length})`,
  );
  return `${checks.length} checks: ${counted.join(' · ')}.`;
}

/** Puts `text` between the marks of `block`. @throws Error where they are not there. */
function filled(page: string, block: string, text: string): string {
  const marks = new RegExp(`(<!-- ${block}: generated -->\n)[^]*?(<!-- end of ${block} -->)`);
  if (!marks.test(page)) throw new Error(`README.md has no marks for ${block}.`);
  return page.replace(marks, (_, start: string, end: string) => `${start}${text}\n${end}`);
}

export const readme: Generator = {
  make(read) {
    const page = read('README.md') ?? '';
    const [, build] = /```yaml\n(format: 1\n[^]*?)```/.exec(page) ?? [];
    if (build === undefined) throw new Error('README.md shows no build.');
    const shown = filled(page, 'output', `\`\`\`text\n${outputOn(build)}\n\`\`\``);
    return new Map([['README.md', filled(shown, 'checks', areaList())]]);
  },
};
