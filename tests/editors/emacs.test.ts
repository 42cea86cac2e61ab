// Emacs with Eglot and Flymake, which never ask for findings and do not resolve code actions.
import { fileURLToPath } from 'node:url';
import { describePlainEditor } from './support/plain-suite';

const script = fileURLToPath(new URL('./emacs/check.el', import.meta.url));
await describePlainEditor({
  name: 'Emacs',
  packages: ['emacs-nox', 'elpa-eglot'],
  program: 'emacs',
  args: ['-Q', '--batch', '-l', script],
});
