// Draws the pictures of the README and the extension’s details page with the real workbench, from the built extension.
// Run: node tests/editors/picture.mjs [FOLDER [WORKSPACE BUILD LINE COLUMN]]
// Without more, the tests' own workspace is shown. LINE and COLUMN, counted from 1, say where the hover opens.
import { tsImport } from 'tsx/esm/api';

const { drawPictures } = await tsImport('./workbench/picture.ts', import.meta.url);
const [folder = 'client/media', workspace, path, line, column] = process.argv.slice(2);
const shown = workspace ? { workspace, file: { path, line: Number(line), column: Number(column) } } : undefined;
const targets = { hover: `${folder}/editor.png`, fixes: `${folder}/fix.png` };
await drawPictures(targets, shown).catch((error) => {
  process.stderr.write(`No picture: ${error.message}\n`);
  process.exitCode = 1;
});
