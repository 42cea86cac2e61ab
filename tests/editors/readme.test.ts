// The README’s own words for Neovim and Emacs, used as someone would: pasted, with the server on the path.
import { chmodSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { runGroup } from '../tools/group.mjs';
import { provide, reportMissing } from './support/needs';
import { removeFolder, repository, scenario, serverPath, temporaryFolder, workspaceCopy } from './support/scenario';

const page = readFileSync(join(repository, 'README.md'), 'utf8');
const workspace = workspaceCopy({ mistaken: true });
const scratch = temporaryFolder('readme');
afterAll(() => [workspace, scratch].forEach(removeFolder));

/** The README’s block in a language, followed by what shows whether it works. */
function script(language: string, name: string, more: string): string {
  const [, block] = new RegExp(`\`\`\`${language}\n([^]*?)\`\`\``).exec(page) ?? [];
  if (!block) throw new Error(`README.md shows nothing in ${language}.`);
  writeFileSync(join(scratch, name), `${block}\n${more}\n`);
  return join(scratch, name);
}

/** Runs an editor on the mistaken build and returns all that it printed. */
async function runEditor(program: string, args: string[]): Promise<string> {
  const bin = join(scratch, 'bin');
  mkdirSync(bin, { recursive: true });
  writeFileSync(join(bin, 'fettle-language-server'), `#!/bin/sh\nexec "${process.execPath}" "${serverPath}" "$@"\n`);
  chmodSync(join(bin, 'fettle-language-server'), 0o755);
  const env = { ...process.env, HOME: scratch, PATH: `${bin}${delimiter}${process.env.PATH}` };
  const { output } = await runGroup(program, args, { cwd: workspace, env, limitMs: 45_000 });
  return output;
}

const lua = `
vim.cmd('edit ' .. os.getenv('FETTLE_BUILD'))
vim.wait(20000, function() return #vim.diagnostic.get(0) > 0 end, 50)
for _, found in ipairs(vim.diagnostic.get(0)) do print(found.code or found.message) end
vim.cmd('qa!')
`;

const lisp = `
(setq eglot-sync-connect t)
(find-file (getenv "FETTLE_BUILD"))
(run-hooks 'post-command-hook) ; no command ends in batch, and no idle timer runs
(flymake-mode 1)
(flymake-start)
(let ((end (+ (float-time) 20)))
  (while (and (not (flymake-diagnostics)) (< (float-time) end)) (accept-process-output nil 0.05)))
(dolist (found (flymake-diagnostics)) (message "%s" (flymake-diagnostic-text found)))
(kill-emacs 0)
`;

/** Debian’s start file, which `-Q` skips, would put these folders on the path. */
const paths = `(dolist (folder (file-expand-wildcards "/usr/share/emacs/site-lisp/elpa/*"))
  (when (file-directory-p folder) (add-to-list 'load-path folder)))
(require 'eglot)`;

process.env.FETTLE_BUILD = scenario.build;

const neovim = await provide({ packages: ['neovim'], files: [serverPath] });
if (neovim.missing) reportMissing('Neovim', neovim.missing);
test.skipIf(neovim.missing)('the lines for Neovim bring findings', async () => {
  const output = await runEditor('nvim', ['--headless', '-n', '-u', 'NONE', '-S', script('lua', 'init.lua', lua)]);
  expect(output).toContain(scenario.finding);
});

const emacs = await provide({ packages: ['emacs-nox', 'elpa-eglot'], files: [serverPath] });
if (emacs.missing) reportMissing('Emacs', emacs.missing);
test.skipIf(emacs.missing)('the lines for Emacs bring findings', async () => {
  writeFileSync(join(scratch, 'paths.el'), paths);
  const args = ['-Q', '--batch', '-l', join(scratch, 'paths.el'), '-l', script('elisp', 'init.el', lisp)];
  expect(await runEditor('emacs', args)).toContain('scratch is to read');
});
