// Draws the README's picture with the real workbench. Run: node tests/editors/picture.mjs [FILE.png]
// Without an argument the picture goes to client/media/editor.png.
import { tsImport } from 'tsx/esm/api';

const { drawPicture } = await tsImport('./workbench/picture.ts', import.meta.url);
await drawPicture(process.argv[2] ?? 'client/media/editor.png');
