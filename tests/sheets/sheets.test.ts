// A desktop written from data sheets alone: what it waits for stays a list that someone works off, and only shrinks.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { waiting } from '../../server/src/core/judge/waiting';
import { bench } from '../support/bench';

/** So few that most of a build is decided with what data sheets print. */
const most = { answers: 8, facts: 15 };

const files = readdirSync(__dirname, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => ({ name: name.replaceAll('\\', '/'), text: readFileSync(join(__dirname, name), 'utf8') }));

it('finds nothing wrong with it, and waits for few facts', () => {
  const { findings } = judgeBuild(bench(files).build!, { throwOn: true });
  const open = findings.filter(({ grade }) => grade === 'unknown');
  expect(findings.filter((one) => !open.includes(one)).map(({ id, said: { text } }) => `${id}: ${text}`)).toEqual([]);
  expect(open.length, open.map(({ id }) => id).join(', ')).toBeLessThanOrEqual(most.answers);
  expect(waiting(open).length).toBeLessThanOrEqual(most.facts);
});
