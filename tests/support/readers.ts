// Readers of the formats that we write for others, to hold our reports against: SARIF’s own schema, a package that
// reads JUnit XML, the properties of a code quality report, and how a build’s log is read for commands.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Ajv from 'ajv';
import addFormats from 'ajv-formats';
import type { Log } from 'sarif';
import { parse } from 'test-results-parser';
import { elementsOf, readXml, type Element } from './xml';

// The schema’s one pattern for languages is no regular expression under the flag `u`.
const ajv = new Ajv({ strict: false, unicodeRegExp: false });
addFormats(ajv);

function sarifSchema(): object {
  const path = require.resolve('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json');
  const { $schema: _, id: __, ...schema } = JSON.parse(readFileSync(path, 'utf8')) as Record<string, unknown>;
  return schema;
}
const validSarif = ajv.compile(sarifSchema());

/** @throws where the text is no SARIF 2.1.0. */
export function readSarif(text: string): Log {
  const log = JSON.parse(text) as Log;
  if (!validSarif(log)) throw new Error(ajv.errorsText(validSarif.errors));
  return log;
}

// Source: GitLab Docs, “Code Quality”, the table of properties of a report.
const validQuality = ajv.compile({
  type: 'array',
  items: {
    type: 'object',
    required: ['description', 'check_name', 'fingerprint', 'location', 'severity'],
    properties: {
      description: { type: 'string', minLength: 1 },
      check_name: { type: 'string', minLength: 1 },
      fingerprint: { type: 'string', minLength: 1 },
      severity: { enum: ['info', 'minor', 'major', 'critical', 'blocker'] },
      location: {
        type: 'object',
        required: ['path', 'lines'],
        properties: {
          path: { type: 'string', pattern: '^(?!\\./|/).' },
          lines: { type: 'object', required: ['begin'], properties: { begin: { type: 'integer', minimum: 1 } } },
        },
      },
    },
  },
});

export interface QualityEntry {
  readonly description: string;
  readonly check_name: string;
  readonly fingerprint: string;
  readonly severity: string;
  readonly location: { readonly path: string; readonly lines: { readonly begin: number } };
}

/** @throws where it is no report, or two entries have one fingerprint: of those readers show the first alone. */
export function readQuality(text: string): QualityEntry[] {
  const entries = JSON.parse(text) as QualityEntry[];
  if (!validQuality(entries)) throw new Error(ajv.errorsText(validQuality.errors));
  const prints = new Set(entries.map(({ fingerprint }) => fingerprint));
  if (prints.size !== entries.length) throw new Error('fingerprints are not all different');
  return entries;
}

export interface JunitCase {
  readonly name: string;
  readonly file: string;
  readonly end: string;
  readonly message: string;
}

/** As our strict reader of XML reads it, and as the package counts it. @throws where these differ. */
export function readJunit(text: string): JunitCase[] {
  const [declaration, ...rest] = text.split('\n');
  if (declaration !== '<?xml version="1.0" encoding="UTF-8"?>') throw new Error(`no declaration: ${declaration}`);
  const cases = elementsOf(readXml(rest.join('\n').trim())).filter(({ name }) => name === 'testcase');
  const folder = mkdtempSync(join(tmpdir(), 'fettle-junit-'));
  try {
    const path = join(folder, 'report.xml');
    writeFileSync(path, text);
    const { suites } = parse({ type: 'junit', files: [path] });
    const read = suites.flatMap((suite) => suite.cases.map(({ status }) => status as string));
    const own = cases.map(endOf);
    if (read.join() !== own.map((end) => statusOf[end]).join()) throw new Error(`read as ${read.join()}`);
    for (const [i, suite] of suites.entries())
      if (suite.failed + suite.errors !== suite.cases.filter(({ status }) => status === 'FAIL').length)
        throw new Error(`suite ${i} counts wrongly`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return cases.map((one) => {
    const end = endOf(one);
    const inner = one.children.find((child) => typeof child !== 'string' && child.name === end) as Element | undefined;
    const { name = '', file = '' } = one.attributes;
    return { name, file, end, message: inner?.attributes.message ?? '' };
  });
}

const statusOf: Readonly<Record<string, string>> = { failure: 'FAIL', error: 'FAIL', skipped: 'SKIP', passed: 'PASS' };
const endOf = ({ children }: Element): string =>
  children.flatMap((child) => (typeof child === 'string' || child.name === 'system-out' ? [] : [child.name]))[0] ??
  'passed';

export interface LogCommand {
  readonly name: string;
  readonly properties: Readonly<Record<string, string>>;
  readonly data: string;
}

// Source: actions/runner, src/Runner.Common/ActionCommand.cs, and the commands that are registered there.
const registered = new Set(
  'error warning notice debug group endgroup add-mask add-matcher remove-matcher set-output set-env add-path save-state stop-commands echo'.split(
    ' ',
  ),
);
const decoded = (text: string, of: readonly string[]): string =>
  of.reduce(
    (now, one) => now.replaceAll(`%${one.charCodeAt(0).toString(16).toUpperCase().padStart(2, '0')}`, one),
    text,
  );

/** The commands that a log holds, in both of their forms. */
export function commandsIn(log: string): LogCommand[] {
  return log.split(/\r\n|\r|\n/).flatMap((line) => {
    const command = newForm(line) ?? oldForm(line);
    return command && registered.has(command.name.toLowerCase()) ? [command] : [];
  });
}

function newForm(line: string): LogCommand | undefined {
  const match = /^\s*::(.*?)::(.*)$/.exec(line);
  if (!match) return undefined;
  const [name = '', ...rest] = match[1]!.split(' ');
  const pairs = rest.join(' ').split(',');
  const properties = pairs.flatMap((pair) => {
    const at = pair.indexOf('=');
    return at < 1 ? [] : [[pair.slice(0, at), decoded(pair.slice(at + 1), ['\r', '\n', ':', ',', '%'])] as const];
  });
  return { name, properties: Object.fromEntries(properties), data: decoded(match[2]!, ['\r', '\n', '%']) };
}

function oldForm(line: string): LogCommand | undefined {
  const match = /##(?:[a-z]+)?\[(.*?)\](.*)$/i.exec(line);
  return match ? { name: match[1]!.split(/[ .]/)[0]!, properties: {}, data: match[2]! } : undefined;
}
