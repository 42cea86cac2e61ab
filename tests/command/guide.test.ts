// `fettle check` over guides: named, found in folders, left alone.
import { describe, expect, it } from 'vitest';
import { fettle } from '../support/command';

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
