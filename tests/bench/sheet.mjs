// Keystroke to changed bench sheet: the built server over the standard streams, then the panel’s own page in Chromium.
// Run: npm run build && node tests/bench/sheet.mjs [keystrokes]. Prints a line a build: server, page, both together until
// the pictures have changed, then until the whole sheet has, and of the same run the floor, which is parsing the text once
// as `yaml` does.
import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { tsImport } from 'tsx/esm/api';
import { parseDocument } from 'yaml';
import { chromiumPath } from '../provide.mjs';

const require = createRequire(import.meta.url);
const {
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} = require('vscode-languageserver-protocol/node');
const { openPage } = await tsImport('../editors/panel/page.ts', import.meta.url);

const samples = fileURLToPath(new URL('../../samples', import.meta.url));
const strokes = Number(process.argv[2] ?? 200);
const warmUp = 40;

/** From the message to the painted page. Frames do not wait for a screen’s beat: that would be most of the time. */
const painted = (message) => `new Promise((done) => {
  const begun = performance.now();
  dispatchEvent(new MessageEvent('message', { data: ${JSON.stringify(message)} }));
  requestAnimationFrame(() => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => done(performance.now() - begun);
    port2.postMessage(0);
  });
})`;

/** Milliseconds for which a process has had a processor: on a busy machine, less than has passed. Linux alone tells. */
function workOf(pid) {
  const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1].split(' ');
  return 10 * (Number(fields[11]) + Number(fields[12]));
}

/** Digits typed at a place of a build, and the picture that shows them, which is in sight. */
async function measure(context, name, { place, digits, picture }) {
  const server = spawn(process.execPath, [fileURLToPath(new URL('../../dist/server.js', import.meta.url)), '--stdio'], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const connection = createProtocolConnection(
    new StreamMessageReader(server.stdout),
    new StreamMessageWriter(server.stdin),
  );
  let told = () => undefined;
  connection.onNotification('fettle/sheetChanged', () => told());
  connection.listen();
  const panel = await openPage(context, { width: 700, height: 900 });
  try {
    const root = pathToFileURL(samples).href;
    await connection.sendRequest('initialize', {
      processId: process.pid,
      rootUri: root,
      workspaceFolders: [{ uri: root, name: 'samples' }],
      capabilities: {},
      initializationOptions: { settings: { pause: 0 } },
    });
    await connection.sendNotification('initialized', {});
    const text = readFileSync(join(samples, name), 'utf8');
    const uri = `${root}/${name}`;
    await connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: 'fettle-build', version: 1, text },
    });
    const put = ({ order, blocks, old }) => panel.page.evaluate(painted({ type: 'sheet', uri, order, blocks, old }));
    const ask = (have) => connection.sendRequest('fettle/sheet', { textDocument: { uri }, have, picturesFirst: true });
    let shown = await connection.sendRequest('fettle/sheet', { textDocument: { uri } });
    await put(shown);
    await panel.page.evaluate(`document.getElementById('sheet-picture-${picture}').scrollIntoView()`);
    const line = text.split('\n').findIndex((one) => one.includes(place));
    const character = text.split('\n')[line].indexOf(place) + place.length;
    const times = [];
    let count = 0;
    let before = 0;
    for (let i = 0; i < warmUp + strokes; i++) {
      if (i === warmUp) before = workOf(server.pid);
      const begun = performance.now();
      const changed = new Promise((done) => (told = done));
      void connection.sendNotification('textDocument/didChange', {
        textDocument: { uri, version: i + 2 },
        contentChanges: [
          {
            range: { start: { line, character }, end: { line, character: character + 1 } },
            text: digits[i % digits.length],
          },
        ],
      });
      await changed;
      shown = await ask(shown.id);
      const served = performance.now() - begun;
      const drawn = await put(shown);
      let all = served + drawn;
      let blocks = shown.blocks.length;
      while (shown.more) {
        const asked = performance.now();
        shown = await ask(shown.id);
        all += performance.now() - asked + (await put(shown));
        blocks += shown.blocks.length;
      }
      const parsing = performance.now();
      parseDocument(text);
      const floor = performance.now() - parsing;
      if (i < warmUp) continue;
      count += blocks;
      times.push([served, drawn, served + drawn, floor, all]);
    }
    const share = (of, part) => times.map((one) => one[of]).sort((a, b) => a - b)[Math.floor(times.length * part)];
    const both = (of) => `${share(of, 0.5).toFixed(1)} / ${share(of, 0.95).toFixed(1)}`;
    console.log(
      `${name.padEnd(26)} ${text.split('\n').length} lines  ${(count / strokes).toFixed(1)} blocks  ` +
        `median / p95 ms: server ${both(0)}  page ${both(1)}  together ${both(2)}  whole ${both(4)}  floor ${both(3)}  ` +
        `server’s own work ${((workOf(server.pid) - before) / strokes).toFixed(1)} a key`,
    );
  } finally {
    connection.dispose();
    server.kill();
    await panel.page.close();
  }
}

const browser = await chromium.launch({
  executablePath: chromiumPath(),
  args: ['--no-sandbox', '--disable-gpu', '--disable-frame-rate-limit', '--disable-gpu-vsync'],
});
try {
  const context = await browser.newContext();
  const room = { place: 'ambient: ', digits: '123', picture: 'heat' };
  await measure(context, 'flood-gauge.pcbuild.yaml', room);
  await measure(context, 'survey-desk.pcbuild.yaml', room);
  await measure(context, 'survey-desk.pcbuild.yaml', { place: 'circuit: 1', digits: '0246', picture: 'power' });
} finally {
  await browser.close();
}
