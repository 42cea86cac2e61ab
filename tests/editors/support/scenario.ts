// The one mistake that every editor is shown: which file and value, what is typed there, what must come of it.
import { cpSync, mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import './ending';

export interface Scenario {
  /** Files of the workspace, relative to its root. */
  build: string;
  part: string;
  settings: string;
  /** The whole line of the build that is changed; it occurs once. */
  at: string;
  /** The key on that line, which is hovered, and its good value. */
  key: string;
  value: string;
  /** What is typed over the good value. */
  typed: string;
  /** The id of the finding which this brings. */
  finding: string;
  /** The whole line that the quick fix changes, and what it makes of it. */
  mended: { line: string; becomes: string };
  /** A name that the build gives, the line that gives it, and what it becomes everywhere. */
  rename: { line: string; name: string; to: string };
  /** What is shown behind a value of the build, in an editor that shows such hints. */
  hint: string;
  /** A slip with one reading: the line that is spoilt, what it becomes, and the finding that this brings. */
  slip: { line: string; becomes: string; finding: string };
  /** What completion must offer, at the start of a text on a line of the good build. */
  offers: { line: string; at: string; labels: string[] }[];
  /**
   * A fact that the part file missingFacts: where the build asks for it, the action that puts its key in, and what that
   * puts.
   */
  filledIn: { line: string; at: string; title: string; puts: string };
  /** Texts that the page on the finding's check must hold. */
  pageSays: string[];
  /** Texts that the hover on the key must hold once the value is typed. */
  hoverSays: string[];
  /** Commands that the extension must register. */
  commands: string[];
}

const here = fileURLToPath(new URL('..', import.meta.url));

export const repository = fileURLToPath(new URL('../../..', import.meta.url));

/** The built files under test; `FETTLE_DIST` names another folder that holds `server.js` and `fettle.vsix`. */
const dist = process.env.FETTLE_DIST ?? join(repository, 'dist');
export const serverPath = join(dist, 'server.js');
export const vsixPath = join(dist, 'fettle.vsix');

export const scenario = JSON.parse(readFileSync(join(here, 'scenario.json'), 'utf8')) as Scenario;

const temporary = new Set<string>();
process.on('exit', () => temporary.forEach(removeFolder));

/** A fresh folder, by its real path; it goes away with this process at the latest. */
export function temporaryFolder(purpose: string): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), `fettle-${purpose}-`)));
  temporary.add(folder);
  return folder;
}

export function removeFolder(folder: string): void {
  rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  temporary.delete(folder);
}

/** A copy of the test workspace, with the mistake in the build already where asked for. */
export function workspaceCopy({ mistaken = false } = {}): string {
  const folder = temporaryFolder('workspace');
  cpSync(join(here, 'workspace'), folder, { recursive: true });
  if (mistaken) writeFileSync(join(folder, scenario.build), mistakenText());
  return folder;
}

/** A copy of the sample workspace, with further texts in it by their paths. */
export function samplesCopy(more: Readonly<Record<string, string>> = {}): string {
  const folder = temporaryFolder('samples');
  cpSync(join(repository, 'samples'), folder, { recursive: true });
  for (const [path, text] of Object.entries(more)) writeFileSync(join(folder, path), text);
  return folder;
}

/** A whole small build of the samples' parts, which is typed key by key. */
export const tideWindow = readFileSync(join(here, 'tide-window.pcbuild.yaml'), 'utf8').trimEnd();

function goodText(): string {
  return readFileSync(join(here, 'workspace', scenario.build), 'utf8');
}

/** The build's text with the mistake in it. */
export function mistakenText(): string {
  return replaceLine(goodText(), scenario.at, scenario.at.replace(scenario.value, scenario.typed));
}

/** The build's text after the quick fix. */
export function mendedText(): string {
  return replaceLine(mistakenText(), scenario.mended.line, scenario.mended.becomes);
}

/** Throws unless the line occurs exactly once, so that a changed workspace is noticed here and not in an editor. */
function replaceLine(text: string, line: string, by: string): string {
  const lines = text.split('\n');
  const count = lines.filter((each) => each === line).length;
  if (count !== 1) throw new Error(`${scenario.build}: the line "${line}" must occur once, found ${count}`);
  return lines.map((each) => (each === line ? by : each)).join('\n');
}

/** The mended text with the name changed wherever it stands. */
export const renamedText = (): string => mendedText().replaceAll(scenario.rename.name, scenario.rename.to);

/** The lines, counted from 1, on which the name stands: in the build, and in the marks of the guide to it. */
export function linesOfUses(): number[] {
  const { name } = scenario.rename;
  const guide = readFileSync(join(here, 'workspace/tide-logger.md'), 'utf8');
  const linesOf = (text: string, use: string): number[] =>
    text.split('\n').flatMap((line, i) => Array.from({ length: line.split(use).length - 1 }, () => i + 1));
  return [...linesOf(mendedText(), name), ...linesOf(guide, `drives.${name}.`)].sort((a, b) => a - b);
}

/** Where the name stands that is changed: line and character counted from 0. */
export function placeOfName(): { line: number; character: number } {
  const { line, name } = scenario.rename;
  const at = goodText().split('\n').indexOf(line);
  if (at < 0) throw new Error(`${scenario.build}: no line "${line}"`);
  return { line: at, character: line.indexOf(name) };
}

/** Where key and value stand in the build: line and characters counted from 0. */
export function places(): { line: number; key: number; value: number } {
  const line = goodText().split('\n').indexOf(scenario.at);
  if (line < 0) throw new Error(`${scenario.build}: no line "${scenario.at}"`);
  return { line, key: scenario.at.indexOf(scenario.key), value: scenario.at.indexOf(scenario.value) };
}
