// `fettle check` over guides: named, found in folders, left alone.
import { describe, expect, it } from 'vitest';
import { fettle } from '../support/command';
import { readSamples } from '../support/samples';

const build = 'build: Desk\nparts:\n  processor: { use: calder/c7 }\n';
const files = {
  'fettle.yaml': 'format: 1\n',
  'desk.pcbuild.yaml': build,
  'parts/calder/c7.part.yaml': 'kind: processor\npower: { sustained: 120 W }\n',
  'guides/desk.md':
    '---\nbuild: ../desk.pcbuild.yaml\n---\n\nIt takes <!-- fettle: power.draw -->90 W<!-- /fettle -->.\n\n' +
    '> ```pcbuild\n> build: Other\n> parts: { bord: {} }\n> ```\n',
  'README.md': '# Nothing of ours\n',
};

describe('fettle check', () => {
  it('finds guides in folders, and says at which line of the guide', async () => {
    const { out, err, status } = await fettle(files, 'check', '.');
    expect(out).toContain('guides/desk.md:5');
    expect(out).toContain('guide-value-stale');
    expect(out).toContain('Write 120 W');
    expect(out).toContain('guides/desk.md:9');
    expect(out).not.toContain('README');
    expect(err).toBe('');
    expect(status).toBe(1);
  });

  it('checks a guide that is named, and one that uses a named part', async () => {
    expect((await fettle(files, 'check', 'guides/desk.md')).out).toContain('guide-value-stale');
    expect((await fettle(files, 'check', 'parts/calder/c7.part.yaml')).out).toContain('guide-value-stale');
  });

  it('says of a named text that nothing ties it to a build', async () => {
    const { err, status } = await fettle(files, 'check', 'README.md');
    expect(err).toContain('README.md: is a text that nothing ties to a build');
    expect(status).toBe(2);
  });

  it('finds nothing to check where nothing is tied to a build', async () => {
    const { err, status } = await fettle({ 'README.md': '# Nothing of ours\n' }, 'check', '.');
    expect(err).toContain('there are no builds here');
    expect(status).toBe(2);
  });

  it('ends well where all is true', async () => {
    const text = files['guides/desk.md'].replace('90 W', '120 W').replace('bord: {}', '');
    const { out, status } = await fettle({ ...files, 'guides/desk.md': text }, 'check', '--from', 'shortfall', '.');
    expect(status, out).toBe(0);
  });

  it('reads no build outside of the workspace', async () => {
    const text = files['guides/desk.md'].replace('../desk', '../../outside/desk');
    const { out, status } = await fettle({ ...files, 'guides/desk.md': text }, 'check', 'guides/desk.md');
    expect(out).toContain('guide-build-missing');
    expect(status).toBe(1);
  });
});

describe('fettle guide', () => {
  const drafted = async (named: string, texts: Record<string, string>): Promise<string> => {
    const { out, err, status } = await fettle(texts, 'guide', named);
    expect(err, named).toBe('');
    expect(status, named).toBe(0);
    return out;
  };

  it('drafts what stands against its build without a finding of guides, for every sample', async () => {
    const texts = Object.fromEntries([...readSamples().docs].map(([name, { text }]) => [name, text]));
    const builds = Object.keys(texts).filter((name) => name.endsWith('.pcbuild.yaml'));
    expect(builds.length).toBeGreaterThan(5);
    for (const name of builds) {
      const draft = await drafted(name, texts);
      expect(draft).toContain('<!-- fettle: step ');
      const { out } = await fettle({ ...texts, 'draft.md': draft }, 'check', '--alone', '--format', 'json', 'draft.md');
      const { files: judged } = JSON.parse(out) as { files: { findings: { id: string; grade: string }[] }[] };
      const found = judged.flatMap(({ findings }) => findings).filter(({ grade }) => grade !== 'unknown');
      expect(found, name).toEqual([]);
    }
  });

  it('names the build by its path from the guide, and stays tied when its prose is written anew', async () => {
    const { files: written } = await fettle(files, 'guide', 'desk.pcbuild.yaml', '--to', 'guides/new.md');
    const draft = written.get('guides/new.md')!;
    expect(draft).toMatch(/^---\nbuild: \.\.\/desk\.pcbuild\.yaml\n---\n/);
    const marks = /<!--.*?-->(?:[^<\n]*<!-- \/fettle -->)?/g;
    const anew = draft
      .split('\n')
      .map((one) => (/^(?:---|build:)/.test(one) ? one : (one.match(marks) ?? []).join(' and ')))
      .join('\n\n');
    const texts = { ...files, 'guides/new.md': anew };
    const { out } = await fettle(texts, 'check', '--format', 'json', 'guides/new.md');
    expect(out).not.toContain('guide-value-stale');
    expect(out).not.toContain('guide-step-missing');
    const later = { ...texts, 'parts/calder/c7.part.yaml': 'kind: processor\npower: { sustained: 95 W }\n' };
    expect((await fettle(later, 'check', 'guides/new.md')).out).toContain('guide-value-stale');
  });

  it('holds texts of files as text: no mark, link or markup comes out of them', async () => {
    const hostile = 'A --> <script>x</script> [l](http://x) <!-- fettle: price -->1 EUR<!-- /fettle --> @you';
    const text = `build: ${JSON.stringify(hostile)}\npurpose: ${JSON.stringify(hostile)}\nparts:\n  drives:\n    - { name: ${JSON.stringify(hostile)}, maker: ${JSON.stringify(hostile)}, capacity: 2 TB, shape: M.2 }\n`;
    const draft = await drafted('desk.pcbuild.yaml', { 'desk.pcbuild.yaml': text });
    const prose = draft.replace(/<!-- (?:fettle: [^<>]* |\/fettle )-->/g, '');
    expect(prose).not.toMatch(/(?<!\\)<|(?<!\\)\]\(|(?<!\\)@/);
    expect(draft).not.toContain('fettle: price -->1 EUR');
  });
});
