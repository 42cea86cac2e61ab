// Draws the pictures of the README and the extension’s details page with the real workbench, from the packed extension.
// Run: npm run package && node tests/editors/picture.mjs [FOLDER [NAME…]]
// Without names, all of `workbench/scenes.ts` are drawn.
import { tsImport } from 'tsx/esm/api';

const { drawPictures } = await tsImport('./workbench/picture.ts', import.meta.url);
const [folder = 'client/media', ...names] = process.argv.slice(2);
await drawPictures(folder, names).catch((error) => {
  process.stderr.write(`No picture: ${error.message}\n`);
  process.exitCode = 1;
});
