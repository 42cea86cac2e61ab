// Keystroke to findings over the standard streams: the built server against the floor, taking turns in one run.
// Run: npm run build && node tests/bench/keystroke.mjs [keystrokes]. Prints medians, 95th percentiles and their ratio.
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { fettleServer, greet, manyParts, root, startServer } from './server.mjs';

const strokes = Number(process.argv[2] ?? 300);
const warmUp = 60;
const partFiles = 2000;

/** The sample desk, lengthened with drives until it has so many lines. */
function buildOf(lines) {
  const desk = readFileSync(join(root, 'samples/survey-desk.pcbuild.yaml'), 'utf8').trimEnd().split('\n');
  const at = desk.findIndex((line) => line.startsWith('  graphics:'));
  for (let i = 1; desk.length < lines; i++) {
    const drive = [
      `    - name: shelf-${i}`,
      '      use: lumen/vault-12t',
      `      port: SATA_${(i % 6) + 1}`,
      '      bay: 3.5 in',
      `      capacity: ${i + 1} TB`,
      '      partitions: GPT',
    ];
    desk.splice(at, 0, ...drive.slice(0, lines - desk.length));
  }
  return `${desk.join('\n')}\n`;
}

/** The sample workspace with the build, and part files enough that looking through them all would show. */
function workspaceOf(text) {
  const folder = manyParts(partFiles);
  writeFileSync(join(folder, 'bench.pcbuild.yaml'), text);
  return folder;
}

/** A contestant: a server process with the build open. */
class Contestant {
  times = [];
  count = 0;

  constructor(name, command) {
    this.name = name;
    Object.assign(this, startServer(command));
    this.connection.onNotification('textDocument/publishDiagnostics', ({ uri, version, diagnostics }) =>
      this.arrived?.(uri, version, diagnostics),
    );
    this.connection.listen();
  }

  async open(folder, text) {
    const uri = await greet(this.connection, folder);
    this.uri = `${uri}/bench.pcbuild.yaml`;
    this.version = 1;
    const line = text.split('\n').findIndex((each) => each.includes('ambient:'));
    const character = text.split('\n')[line].indexOf('31') + 1;
    this.range = { start: { line, character }, end: { line, character: character + 1 } };
    const first = this.until(1);
    await this.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri: this.uri, languageId: 'fettle-build', version: 1, text },
    });
    this.found = await first;
  }

  until(version) {
    return new Promise(
      (resolve) =>
        (this.arrived = (uri, got, diagnostics) => uri === this.uri && got === version && resolve(diagnostics.length)),
    );
  }

  /** One keystroke: a digit typed over another. */
  async stroke(keep) {
    const version = ++this.version;
    const done = this.until(version);
    const begun = performance.now();
    void this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri: this.uri, version },
      contentChanges: [{ range: this.range, text: String(version % 10) }],
    });
    await done;
    if (keep) this.times.push(performance.now() - begun);
  }

  share(part) {
    const sorted = [...this.times].sort((a, b) => a - b);
    return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))];
  }
}

async function race(lines) {
  const text = buildOf(lines);
  const folder = workspaceOf(text);
  const contestants = [
    new Contestant('floor', [fileURLToPath(new URL('floor.mjs', import.meta.url))]),
    new Contestant('fettle', fettleServer),
  ];
  try {
    for (const one of contestants) await one.open(folder, text);
    for (let i = 0; i < warmUp + strokes; i++) for (const one of contestants) await one.stroke(i >= warmUp);
    const [floor, fettle] = contestants;
    for (const one of contestants)
      console.log(
        `${lines} lines  ${one.name.padEnd(7)} median ${one.share(0.5).toFixed(2)} ms  p95 ` +
          `${one.share(0.95).toFixed(2)} ms  (${one.found} findings)`,
      );
    console.log(`${lines} lines  ratio   median ${(fettle.share(0.5) / floor.share(0.5)).toFixed(2)}`);
  } finally {
    for (const one of contestants) one.end();
    rmSync(folder, { recursive: true, force: true });
  }
}

for (const lines of [150, 600]) await race(lines);
