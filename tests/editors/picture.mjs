// Draws the README's picture with the real workbench, from the built extension.
// Run: node tests/editors/picture.mjs [FILE.png [WORKSPACE BUILD LINE COLUMN]]
// Without more, the tests' own workspace is shown. LINE and COLUMN, counted from 1, say where the hover opens.
import { tsImport } from 'tsx/esm/api';

const { drawPicture } = await tsImport('./workbench/picture.ts', import.meta.url);
const [target = 'client/media/editor.png', workspace, path, line, column] = process.argv.slice(2);
const shown = workspace ? { workspace, file: { path, line: Number(line), column: Number(column) } } : undefined;
await drawPicture(target, shown).catch((error) => {
  process.stderr.write(`No picture: ${error.message}\n`);
  process.exitCode = 1;
});
