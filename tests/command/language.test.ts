// The command in another language: what it writes, how wide, and what stays as it is.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { kindOfFile } from '../../server/src/core/parts/doc';
import { columns, pageWidth } from '../../server/src/report/layout';
import { fettle, fettleIn } from '../support/command';
import { pseudo } from '../support/pseudo';

const folder = join(__dirname, '../../samples');
const samples = Object.fromEntries(
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => kindOfFile(path))
    .map((path) => [path.replaceAll('\\', '/'), readFileSync(join(folder, path), 'utf8')]),
);
const wrong = {
  'desk.pcbuild.yaml': 'format: 1\nbuild: Desk\nparts:\n  board: { socket: LGA1851 }\n  processor: { socket: AM5 }\n',
};

interface Reported {
  readonly files: readonly { readonly findings: readonly { id: string; grade: string; message: string }[] }[];
}

it('says every finding of the samples through the catalogue, within the page', async () => {
  const { out } = await fettleIn(pseudo(), samples, 'check', '--from', 'note', '--format', 'json', '--accepted');
  const findings = (JSON.parse(out) as Reported).files.flatMap((file) => file.findings);
  expect(findings.length).toBeGreaterThan(50);
  expect(findings.filter(({ message }) => !message.includes('⟦'))).toEqual([]);
  const text = await fettleIn(pseudo(), samples, 'check', '--from', 'unknown');
  expect(text.out.split('\n').filter((line) => columns(line) > pageWidth)).toEqual([]);
  expect(text.out.trimEnd().split('\n').at(-1)).toMatch(/[⟦⟧]/);
});

it('prints the order of work in the language, cautions too', async () => {
  const { out } = await fettleIn(pseudo(), samples, 'order', 'survey-desk.pcbuild.yaml');
  const steps = out.split('\n').filter((line) => /^ {2}\d+\./.test(line));
  expect(steps.length).toBeGreaterThan(10);
  expect(steps.filter((line) => !line.includes('⟦'))).toEqual([]);
  expect(out).not.toMatch(/^ +(?:WARNING|CAUTION|DANGER|NOTICE)\b/m);
});

it('takes the language from the command line before or after the sub-command', async () => {
  for (const words of [
    ['--language', 'de', 'check', 'desk.pcbuild.yaml'],
    ['check', 'desk.pcbuild.yaml', '--language', 'de'],
  ])
    expect((await fettle(wrong, ...words)).out).toContain('Der Prozessor passt in AM5; das Mainboard hat LGA1851.');
  expect((await fettle(wrong, 'check', 'desk.pcbuild.yaml')).out).toContain('The processor fits AM5');
  const other = await fettle(wrong, 'check', 'desk.pcbuild.yaml', '--language', 'xx');
  expect([other.status, other.err]).toEqual([2, expect.stringContaining('Allowed choices are en, de.')]);
});

it('keeps ids, grades and keys as they are', async () => {
  const of = async (...more: string[]): Promise<unknown> => {
    const { out } = await fettle(samples, 'check', '--format', 'json', '--from', 'unknown', ...more);
    const shape = (JSON.parse(out) as Reported).files.map(({ findings }) =>
      findings.map(({ id, grade }) => [id, grade]),
    );
    return shape;
  };
  expect(await of('--language', 'de')).toEqual(await of());
});
