// Neovim's own language client, which knows only pushed findings and UTF-16 columns.
import { fileURLToPath } from 'node:url';
import { describePlainEditor } from './support/plain-suite';

const script = fileURLToPath(new URL('./neovim/check.lua', import.meta.url));
await describePlainEditor({
  name: 'Neovim',
  packages: ['neovim'],
  program: 'nvim',
  args: ['--headless', '-n', '-u', 'NONE', '-S', script],
});
