// Desktops written from data sheets alone: what each waits for stays a list that someone works off.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { wantedOf } from '../../server/src/report/missing';
import { bench } from '../support/bench';

/** So few that most of a build is decided with what data sheets print. */
const most = { answers: 8, facts: 15 };

const files = readdirSync(__dirname, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => ({ name: name.replaceAll('\\', '/'), text: readFileSync(join(__dirname, name), 'utf8') }));
const isBuild = ({ name }: { readonly name: string }): boolean => name.endsWith('.pcbuild.yaml');

it.each(files.filter(isBuild))('finds nothing wrong with $name, and waits for few facts', (build) => {
  const set = bench([build, ...files.filter((file) => !isBuild(file))]);
  const judgement = judgeBuild(set.build!, { throwOn: true });
  const { findings } = judgement;
  const open = findings.filter(({ grade }) => grade === 'unknown');
  expect(findings.filter((one) => !open.includes(one)).map(({ id, said: { text } }) => `${id}: ${text}`)).toEqual([]);
  expect(open.length, open.map(({ id }) => id).join(', ')).toBeLessThanOrEqual(most.answers);
  expect(wantedOf({ judgement: { ...judgement, findings: open } }).length).toBeLessThanOrEqual(most.facts);
});

it('is held against several shapes of desktop', () => {
  expect(files.filter(isBuild).length).toBeGreaterThanOrEqual(3);
});
