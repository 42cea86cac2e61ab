// Any number of threads writes the same bytes as one, whichever thread is done first, and though some fail.
import { describe, expect, it } from 'vitest';
import { fettle } from '../support/command';
import { MemoryHost } from '../support/memory-host';

const builds = 130;

/** Builds in two workspaces, most with findings that have fixes, some sound, broken or not to be read. */
function files(): Record<string, string> {
  const all: Record<string, string> = {
    'fettle.yaml': 'checks:\n  parts-not-named: off\n',
    'zoo/fettle.yaml': 'parts: [parts, ../outside]\n',
    'zoo/parts/norrvik/b1.part.yaml': 'kind: board\nsocket: P-100\n',
    'parts/boreas/t1.part.yaml': 'kind: cooler\nheight: 158 mm\nheigth: 1 mm\n',
    'parts/boreas/t2.part.yaml': 'kind: cooler\nheight: [158 mm\n',
  };
  for (let i = 0; i < builds; i++) {
    const folder = i % 3 === 0 ? 'zoo/' : '';
    const cooler =
      i % 5 === 0 ? '{ use: boreas/t2 }' : i % 2 === 0 ? '{ use: boreas/t1 }' : `{ height: ${150 + i} mm }`;
    all[`${folder}b${i}.pcbuild.yaml`] =
      `format: 1\nbuild: Desk ${i}\nparts:\n  cooler: ${cooler}\n  case: { cooler-hight: 1 mm, cooler-height: 155 mm }\n`;
  }
  return { ...all, 'zoo/y.pcbuild.yaml': 'a: [', 'z.pcbuild.yaml': '' };
}

describe('a run on several threads', () => {
  it.each([
    ['text', []],
    ['text', ['--all-fixes', '--from', 'unknown']],
    ['json', ['--working']],
  ] as const)('writes as %s what one thread writes, with %j', async (format, more) => {
    const words = ['--format', format, ...more];
    const one = await fettle(files(), 'check', ...words, '--workers', '1');
    const many = await fettle(files(), 'check', ...words, '--workers', '4');
    expect(many).toEqual(one);
    expect(one.status).toBe(2);
    expect(one.out).toContain('Desk 129');
  });

  it('tells once what several builds bring from outside the named paths', async () => {
    const host = (): MemoryHost => new MemoryHost(Object.entries(files()));
    const named = Object.keys(files()).filter((name) => name.endsWith('.pcbuild.yaml'));
    const one = await fettle(host(), 'check', ...named, '--workers', '1');
    const many = await fettle(host(), 'check', ...named, '--workers', '3');
    expect(many).toEqual(one);
    expect(one.out.match(/^ *parts\/boreas\/t2\.part\.yaml/gm)?.length).toBe(1);
  });
});
