// A git repository in a temporary folder, for tests that read revisions. The tests’ own git knows no settings.
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

export class Repository {
  readonly folder = realpathSync(mkdtempSync(join(tmpdir(), 'fettle-repository-')));

  constructor() {
    this.git('init', '-q', '-b', 'main');
  }

  git(...words: string[]): string {
    return execFileSync('git', words, {
      cwd: this.folder,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'pipe'],
      env: {
        PATH: process.env.PATH,
        HOME: '/nonexistent',
        GIT_CONFIG_NOSYSTEM: '1',
        GIT_AUTHOR_NAME: 'bench',
        GIT_AUTHOR_EMAIL: 'bench@example.invalid',
        GIT_COMMITTER_NAME: 'bench',
        GIT_COMMITTER_EMAIL: 'bench@example.invalid',
        GIT_AUTHOR_DATE: '2026-11-01T12:00:00Z',
        GIT_COMMITTER_DATE: '2026-11-01T12:00:00Z',
      },
    }).trim();
  }

  write(name: string, text: string | Uint8Array): void {
    const path = join(this.folder, name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  }

  remove(name: string): void {
    rmSync(join(this.folder, name), { recursive: true, force: true });
  }

  /** Commits everything as it stands; the commit’s id. */
  commit(message: string): string {
    this.git('-c', 'core.autocrlf=false', 'add', '-A');
    this.git('-c', 'core.hooksPath=/dev/null', 'commit', '-q', '--allow-empty', '-m', message);
    return this.git('rev-parse', 'HEAD');
  }

  drop(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}
