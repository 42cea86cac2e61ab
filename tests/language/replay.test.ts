// Builds typed key by key: nothing is said of the entry that is being typed, and in the end what an opened file says.
import { afterEach, describe, expect, test } from 'vitest';
import type { Diagnostic } from 'vscode-languageserver-protocol';
import { TestClient } from '../support/client';
import { Clock } from '../support/clock';
import { readSamples } from '../support/samples';

const { docs } = readSamples();
const files = Object.fromEntries([...docs].map(([name, { text }]) => [`ws/${name}`, text]));
const name = 'typed.pcbuild.yaml';

let client: TestClient;
let clock: Clock;
afterEach(() => client.dispose());

const said = (found: readonly Diagnostic[]): string[] =>
  found.map(({ code, message, range }) => `${code} ${JSON.stringify(range)} ${message}`).sort();

/** The keys of a text as an editor takes them: a line end brings its next line’s indentation along. */
const keysOf = (text: string): string[] => text.match(/\n[ ]*|[^]/g) ?? [];

interface Replayed {
  /** Errors shown on the line that was being typed. */
  readonly onEntry: string[];
  /** Errors shown that the finished text has not. */
  readonly early: Set<string>;
}

async function found(text: string): Promise<readonly Diagnostic[]> {
  await client.open('opened.pcbuild.yaml', text);
  return client.shown('opened.pcbuild.yaml');
}

/** Types a text below what is there at first. */
async function replay(before: string, text: string, keys = keysOf(text)): Promise<Replayed> {
  clock = new Clock();
  client = new TestClient(files, clock.after);
  await client.start();
  const last = new Set((await found(before + text)).map(({ code, message }) => `${code} ${message}`));
  await client.open(name, before);
  const replayed: Replayed = { onEntry: [], early: new Set() };
  let at = before.length;
  for (const key of keys) {
    await client.put(name, at, key);
    at += key.length;
    const line = client.text(name).slice(0, at).split('\n').length - 1;
    for (const { code, message, range, severity } of await client.shown(name)) {
      if (severity !== 1) continue;
      if (range.end.line >= line) replayed.onEntry.push(`${line + 1} ${key}: ${code} ${message}`);
      if (!last.has(`${code} ${message}`)) replayed.early.add(`${code} at ${range.start.line + 1}`);
    }
  }
  return replayed;
}

async function end(): Promise<readonly Diagnostic[]> {
  const before = client.published.length;
  clock.pass();
  await client.findings(name);
  return (
    client.published.findLast(({ uri }, i) => i >= before && uri === client.uri(name))?.diagnostics ??
    client.shown(name)
  );
}

const textOf = (sample: string): string => docs.get(`${sample}.pcbuild.yaml`)!.text;

describe('a build typed key by key', () => {
  test('that holds shows no error at all', async () => {
    const text = textOf('counter-pc');
    const { onEntry, early } = await replay('', text);
    expect(onEntry).toEqual([]);
    expect([...early]).toEqual([]);
    expect(said(await end())).toEqual(said(await found(text)));
  }, 60_000);

  test('that holds shows none either where indentation is typed blank by blank', async () => {
    const text = textOf('counter-pc').split('\n').slice(5, 25).join('\n');
    const { onEntry, early } = await replay('format: 1\nbuild: Counter PC\n', text, [...text]);
    expect(onEntry).toEqual([]);
    expect([...early]).toEqual([]);
  }, 60_000);

  test('with faults shows those of entries that were left, and none on the one being typed', async () => {
    const lines = textOf('survey-desk').split('\n');
    const [before, text] = [lines.slice(0, 12).join('\n'), `\n${lines.slice(12, 36).join('\n')}`];
    const { onEntry, early } = await replay(before, text);
    expect(onEntry).toEqual([]);
    expect([...early]).toEqual([]);
    expect((await client.shown(name)).map(({ code }) => code)).toContain('cooler-too-tall');
    expect(said(await end())).toEqual(said(await found(before + text)));
  }, 60_000);

  test('is not told of steps that are still to be typed', async () => {
    const lines = textOf('flood-gauge').split('\n');
    const [before, text] = [lines.slice(0, 35).join('\n'), `\n${lines.slice(35, 56).join('\n')}`];
    const { onEntry, early } = await replay(before, text);
    expect(onEntry).toEqual([]);
    expect([...early]).toEqual([]);
    const ended = said(await end());
    expect(ended.join('\n')).toContain('step-missing');
    expect(ended).toEqual(said(await found(before + text)));
  }, 60_000);
});
