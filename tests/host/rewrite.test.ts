// A file’s text replaced: whole, with what is not text kept, and only while it says what was read.
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { rewriteFile } from '../../server/src/host/rewrite';

const top = mkdtempSync(join(tmpdir(), 'fettle-rewrite-'));
const root = join(top, 'root');
mkdirSync(root);
afterAll(() => rmSync(top, { recursive: true, force: true }));
const file = join(root, 'desk.pcbuild.yaml');

it('writes the new text, keeps permissions and the byte order mark, and leaves nothing beside it', () => {
  writeFileSync(file, '\uFEFFbuild: A\r\n');
  chmodSync(file, 0o640);
  expect(rewriteFile(root, file, 'build: A\r\n', 'build: B\r\n')).toBeUndefined();
  expect(readFileSync(file, 'utf8')).toBe('\uFEFFbuild: B\r\n');
  if (process.platform !== 'win32') expect(statSync(file).mode & 0o777).toBe(0o640);
  expect(readdirSync(root)).toEqual(['desk.pcbuild.yaml']);
});

it('refuses a file that says something else by now, or is gone', () => {
  writeFileSync(file, 'build: C\n');
  expect(rewriteFile(root, file, 'build: A\n', 'build: B\n')?.trouble).toContain('has changed since it was read');
  expect(readFileSync(file, 'utf8')).toBe('build: C\n');
  expect(rewriteFile(root, join(root, 'gone.yaml'), 'a', 'b')?.trouble).toContain('no such file');
  expect(readdirSync(root)).toEqual(['desk.pcbuild.yaml']);
});

it.skipIf(process.platform === 'win32')('writes through no link, and below its root only', () => {
  const outside = join(top, 'outside.pcbuild.yaml');
  writeFileSync(outside, 'build: A\n');
  symlinkSync(outside, join(root, 'link.pcbuild.yaml'));
  symlinkSync(top, join(root, 'out'));
  expect(rewriteFile(root, join(root, 'link.pcbuild.yaml'), 'build: A\n', 'b')?.trouble).toContain('is a link');
  expect(rewriteFile(root, join(root, 'out/outside.pcbuild.yaml'), 'build: A\n', 'b')?.trouble).toContain('leads out');
  expect(readFileSync(outside, 'utf8')).toBe('build: A\n');
});
