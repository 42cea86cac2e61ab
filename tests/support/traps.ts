// Every place of a repository where git could be made to run something, each with a program that leaves a trace.
import { appendFileSync, chmodSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Repository } from './repository';

const hooks = [
  'pre-commit',
  'post-checkout',
  'post-index-change',
  'reference-transaction',
  'pre-auto-gc',
  'post-merge',
];

/** Where a program that was run leaves its trace: beside the repository. */
export const canaryOf = ({ folder }: Repository): string => join(folder, '..', `${folder.split('/').pop()}-ran`);

export const clearCanary = (repository: Repository): void => rmSync(canaryOf(repository), { force: true });

/** A program that leaves a trace, by whichever name it is called. */
export function trapIn(repository: Repository, name: string): string {
  const path = join(repository.folder, name);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, `#!/bin/sh\necho "$0 $*" >> '${canaryOf(repository)}'\nexit 0\n`);
  chmodSync(path, 0o755);
  return path;
}

/** Sets every trap; from here on the tests’ own git springs them too. */
export function setTraps(repository: Repository): void {
  const program = trapIn(repository, 'trap.sh');
  for (const hook of hooks) {
    trapIn(repository, `.git/hooks/${hook}`);
    trapIn(repository, `own-hooks/${hook}`);
  }
  const own = ['core.fsmonitor', 'core.pager', 'core.editor', 'core.sshCommand', 'core.alternateRefsCommand'];
  writeFileSync(
    join(repository.folder, 'more.config'),
    [...own, 'core.askPass'].map((key) => lineOf(key, program)).join(''),
  );
  const settings: readonly (readonly [string, string])[] = [
    ['include.path', '../more.config'],
    ['core.hooksPath', join(repository.folder, 'own-hooks')],
    ['filter "trap".smudge', program],
    ['filter "trap".clean', program],
    ['filter "trap".process', program],
    ['filter "trap".required', 'true'],
    ['diff "trap".textconv', program],
    ['diff "trap".command', program],
    ['diff.external', program],
    ['credential.helper', program],
    ['gpg.program', program],
    ['log.showSignature', 'true'],
    ...['rev-parse', 'ls-tree', 'cat-file'].map((word) => [`alias.${word}`, `!${program}`] as const),
  ];
  // Written as text: the tests’ own git would spring what is set already.
  const config = join(repository.folder, '.git/config');
  appendFileSync(config, settings.map(([key, value]) => lineOf(key, value)).join(''));
}

function lineOf(key: string, value: string): string {
  const at = key.lastIndexOf('.');
  return `[${key.slice(0, at)}]\n\t${key.slice(at + 1)} = ${value}\n`;
}
