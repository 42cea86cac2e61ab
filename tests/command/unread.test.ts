// A file that was not read, or not wholly read, never ends a run with status 0, whatever is set, chosen or accepted.
import { describe, expect, it } from 'vitest';
import { checks } from '../../server/src/core/checks/all';
import { fettle } from '../support/command';

const deep = `${'['.repeat(70)}${']'.repeat(70)}`;
const unread: Record<string, string> = {
  'yaml-syntax': 'format: 1\nbuild: A\nparts: { cooler: { height: 158 mm } } }\n',
  'limits-reached': `format: 1\nbuild: A\naccept: ${deep}\n`,
  'several-documents': 'format: 1\nbuild: A\n---\nbuild: B\n',
  'format-newer': 'format: 99\nbuild: A\n',
  'key-twice': 'format: 1\nbuild: A\nbuild: B\n',
  'wrong-kind-of-value': 'format: 1\nbuild: A\nparts: 3\n',
  'choice-unknown': 'format: 1\nbuild: A\nplace: { floor: cork }\n',
  'number-odd': 'format: 1\nbuild: A\nplace: { altitude: "4,000 m" }\n',
  'unit-missing': 'format: 1\nbuild: A\nplace: { altitude: 40 }\n',
  'unit-of-other-dimension': 'format: 1\nbuild: A\nplace: { altitude: 40 W }\n',
  'part-not-found': 'format: 1\nbuild: A\nparts: { cooler: { use: boreas/none } }\n',
  'part-kind-wrong-here': 'format: 1\nbuild: A\nparts: { cooler: { kind: fan } }\n',
};

/** A guide that is not held against anything. */
const guide = '---\nbuild: gone.pcbuild.yaml\n---\n';

/** Pasted into a part file, which is no YAML yet. */
const sheet = 'Fan size: 92 x 92 x 25 mm\nFan speed: 2200 RPM\nAirflow: 42 CFM\n';

const allOff = `format: 1\ngrades:\n${checks.map(({ id }) => `  ${id}: off\n`).join('')}`;

describe('what was not read', () => {
  it('is what the checks say of themselves, and no other', () => {
    expect([...Object.keys(unread), 'guide-build-missing', 'sheet-lines-not-facts'].sort()).toEqual(
      checks.flatMap((check) => (check.unread ? [check.id] : [])).sort(),
    );
  });

  it.each(Object.entries(unread))('%s stays whatever is switched off or chosen', async (id, text) => {
    const files = { 'a.pcbuild.yaml': text, 'fettle.yaml': allOff };
    for (const words of [[], ['--from', 'harm']]) {
      const { out, status } = await fettle(files, 'check', 'a.pcbuild.yaml', ...words);
      expect(out).toContain(id);
      expect(status).toBe(1);
    }
    expect((await fettle(files, 'missing', 'a.pcbuild.yaml')).status).toBe(1);
  });

  it('stays in a guide, too', async () => {
    const files = { 'a.md': guide, 'fettle.yaml': allOff };
    const { out, status } = await fettle(files, 'check', 'a.md', '--from', 'harm');
    expect(out).toContain('guide-build-missing');
    expect(status).toBe(1);
  });

  it('stays in a part file, too', async () => {
    const files = { 'parts/boreas/f92.part.yaml': sheet, 'fettle.yaml': allOff };
    const { out, status } = await fettle(files, 'check', 'parts', '--from', 'harm');
    expect(out).toContain('sheet-lines-not-facts');
    expect(status).toBe(1);
  });

  it('is accepted by no build', async () => {
    const accept = 'accept:\n  - { finding: part-not-found, at: parts.cooler, because: It comes., by: The workshop }\n';
    const { out, status } = await fettle({ 'a.pcbuild.yaml': unread['part-not-found'] + accept }, 'check');
    expect(out).toContain('part-not-found');
    expect(status).toBe(1);
  });

  it('counts in a part file or settings beside the build, too', async () => {
    const build = 'format: 1\nbuild: A\nparts: { cooler: { use: boreas/low } }\n';
    const broken = { 'parts/boreas/low.part.yaml': 'kind: cooler\nheight: {\n', 'builds/a.pcbuild.yaml': build };
    const own = await fettle({ ...broken, 'fettle.yaml': 'format: 1\n' }, 'check', 'builds', '--from', 'harm');
    expect(own.out).toContain('parts/boreas/low.part.yaml');
    expect(own.status).toBe(1);
    const settings = { 'fettle.yaml': 'format: 1\nmargins: {\n', 'builds/a.pcbuild.yaml': 'format: 1\nbuild: A\n' };
    expect((await fettle(settings, 'check', 'builds', '--from', 'harm')).status).toBe(1);
  });
});
