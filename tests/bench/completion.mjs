// Completion over the standard streams, in a workspace of many part files: the first answer of a server, asked as soon
// as the findings of the file are shown, and once it was open for a second; and the answers after it.
// Run: npm run build && node tests/bench/completion.mjs [part files]. Prints a line a place.
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fettleServer, greet, manyParts, startServer } from './server.mjs';

const partFiles = Number(process.argv[2] ?? 2000);
const warm = Number(process.argv[3] ?? 15);

/** `open`: for how many milliseconds the file was open before somebody asked. */
async function measure(folder, place, open, more) {
  const { connection, end } = startServer(fettleServer);
  const shown = new Promise((done) => connection.onNotification('textDocument/publishDiagnostics', done));
  connection.listen();
  try {
    const base = await greet(connection, folder, {
      textDocument: { completion: { completionItem: { snippetSupport: true } } },
    });
    const text = readFileSync(join(folder, 'survey-desk.pcbuild.yaml'), 'utf8');
    const uri = `${base}/survey-desk.pcbuild.yaml`;
    await connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: 'fettle-build', version: 1, text },
    });
    await shown;
    await new Promise((done) => setTimeout(done, open));
    const lines = text.split('\n');
    const line = lines.findIndex((one) => one.includes(place));
    const character = lines[line].indexOf(place) + place.length;
    const times = [];
    let count = 0;
    for (let i = 0; i <= more; i++) {
      const begun = performance.now();
      const answer = await connection.sendRequest('textDocument/completion', {
        textDocument: { uri },
        position: { line, character },
      });
      times.push(performance.now() - begun);
      // Who types takes so long for the next letter.
      await new Promise((done) => setTimeout(done, 110));
      count = (answer.items ?? answer).length;
      // A letter more of the name, as someone types on.
      await connection.sendNotification('textDocument/didChange', {
        textDocument: { uri, version: i + 2 },
        contentChanges: [
          { range: { start: { line, character }, end: { line, character: character + 1 } }, text: 'ab'[i % 2] },
        ],
      });
    }
    return { first: times[0], times: times.slice(1).sort((a, b) => a - b), count };
  } finally {
    end();
  }
}

const folder = manyParts(partFiles);
try {
  for (const place of ['cooler:    { use: ', 'processor: { use: ', 'use: lumen/', 'supply:    { use: ']) {
    const { first: atOnce } = await measure(folder, place, 0, 0);
    const { first, times, count } = await measure(folder, place, 1000, warm);
    console.log(
      `${place.trim().padEnd(20)} first ${first.toFixed(1)} ms  asked at once ${atOnce.toFixed(1)} ms  warm median ` +
        `${times[Math.floor(times.length / 2)].toFixed(1)} ms  most ${times.at(-1).toFixed(1)} ms  (${count} offered)`,
    );
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
