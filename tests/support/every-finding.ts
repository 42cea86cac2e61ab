// Every finding that the fixtures and examples of the checks bring, each judged by its own check.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checks } from '../../server/src/core/checks/all';
import type { Check } from '../../server/src/core/checks/check';
import { judgeBuild, judgeFile } from '../../server/src/core/judge/judge';
import type { Finding } from '../../server/src/core/judge/finding';
import { bench } from './bench';
import { buildName, readFixture } from './fixture';

const folder = join(__dirname, '../checks');

export interface Found {
  readonly finding: Finding;
  /** All texts that were judged together. */
  readonly texts: string;
}

export function everyFinding(): readonly Found[] {
  return checks.flatMap((check) =>
    [...examplesOf(check), ...fixturesOf(check)].flatMap((files) => judged(check, files)),
  );
}

type Files = readonly { readonly name: string; readonly text: string }[];

function judged(check: Check, files: Files): Found[] {
  const { build, docs } = bench(files);
  const options = { checks: [check] };
  const { findings } = build ? judgeBuild(build, options) : judgeFile([...docs.values()][0]!, options);
  const texts = files.map(({ text }) => text).join('\n');
  return findings.map((finding) => ({ finding, texts }));
}

const examplesOf = (check: Check): Files[] =>
  check.examples.map(({ faulty, file, beside = {} }) => [
    { name: file ?? buildName, text: faulty },
    ...Object.entries(beside).map(([name, text]) => ({ name, text })),
  ]);

function fixturesOf(check: Check): readonly Files[] {
  const own = join(folder, check.area);
  return readdirSync(own)
    .filter((file) => file === `${check.id}.md`)
    .flatMap((file) => readFixture(readFileSync(join(own, file), 'utf8')).map(({ files }) => files));
}
