// A stranger’s pull request, end to end: whatever it holds, no run over it ends green, runs anything or writes what
// cannot be seen.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, rmSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { run } from '../../server/src/command/run';
import { english } from '../../server/src/core/words/languages';
import { openRevision } from '../../server/src/host/git';
import { NodeHost } from '../../server/src/host/node';
import { digest } from '../../server/src/host/report-file';
import { today } from '../support/bench';
import { Repository } from '../support/repository';
import { canaryOf, clearCanary, setTraps } from '../support/traps';

const desk = (cooler: string): string =>
  `format: 1\nbuild: Desk\nparts:\n  cooler: { use: ${cooler} }\n  case: { use: tarn/mid-3 }\n`;

let repository: Repository;
beforeEach(() => {
  repository = new Repository();
  repository.write('fettle.yaml', 'format: 1\n');
  repository.write('parts/tarn/mid-3.part.yaml', 'kind: case\ncooler-height: 160 mm\n');
  repository.write('parts/boreas/tower-155.part.yaml', 'kind: cooler\nheight: 155 mm\n');
  repository.write('parts/boreas/tower-168.part.yaml', 'kind: cooler\nheight: 168 mm\n');
  repository.write('desk.pcbuild.yaml', desk('boreas/tower-155'));
  repository.commit('base');
});
afterEach(() => {
  clearCanary(repository);
  repository.drop();
});

async function fettle(...words: string[]): Promise<{ status: number; text: string }> {
  const { folder } = repository;
  const refuse = (): never => {
    throw new Error('nothing is to be written');
  };
  let text = '';
  const status = await run(words, {
    host: new NodeHost(folder),
    version: '1.2.3',
    today,
    colour: false,
    language: english,
    cores: 1,
    threads: refuse,
    out: (more) => void (text += more),
    err: (more) => void (text += more),
    revision: (revision) => openRevision(folder, revision, process.env),
    input: async () => ({ trouble: 'is empty.' }),
    anew: () => new NodeHost(folder),
    watch: refuse,
    rewrite: refuse,
    sheet: refuse,
    report: refuse,
    digest,
    program: refuse,
    store: refuse,
    sink: refuse,
    create: refuse,
  });
  return { status, text };
}

const link = (target: string, name: string): void => {
  rmSync(join(repository.folder, name), { recursive: true, force: true });
  symlinkSync(target, join(repository.folder, name));
};
const tall = desk('boreas/tower-168');
const off = 'format: 1\ngrades: { cooler-too-tall: off }\n';
const record = `files:
  desk.pcbuild.yaml:
    build: Desk
    findings:
      - { finding: cooler-too-tall, at: parts.cooler, grade: stop, past: 900 mm, by: nobody, until: 2999-01-01 }
`;
const keys = (count: number): string => Array.from({ length: count }, (_, i) => `q${i}: 1\n`).join('');

/** So many that one run over them is enough. */
const many = 'a hundred thousand findings';

/** What a pull request may hold; each by itself turns every run red. */
const requests: Record<string, () => void> = {
  'settings that switch the check off': () => {
    repository.write('desk.pcbuild.yaml', tall);
    repository.write('fettle.yaml', off);
  },
  'settings put nearer to the build': () => {
    repository.write('benches/desk.pcbuild.yaml', tall);
    repository.write('benches/fettle.yaml', `${off}parts: [../parts]\n`);
  },
  'records of known findings': () => {
    repository.write('desk.pcbuild.yaml', tall);
    repository.write('fettle.yaml', 'format: 1\nknown: [mine.known.yaml]\n');
    repository.write('mine.known.yaml', record);
  },
  'a part file that breaks a build, itself clear': () =>
    repository.write('parts/boreas/tower-155.part.yaml', 'kind: cooler\nheight: 199 mm\n'),
  'a file past what is read': () => repository.write('desk.pcbuild.yaml', `${tall}#${'x'.repeat(2_100_000)}\n`),
  [many]: () => {
    repository.write('a.pcbuild.yaml', `build: A\n${keys(50_000)}`);
    repository.write('b.pcbuild.yaml', `build: B\n${keys(50_000)}`);
  },
  'lists in lists without end': () => repository.write('desk.pcbuild.yaml', `build: ${'['.repeat(40_000)}`),
  'aliases of aliases': () =>
    repository.write(
      'desk.pcbuild.yaml',
      `a0: &a0 [x]\n${Array.from({ length: 40 }, (_, i) => `a${i + 1}: &a${i + 1} [*a${i}, *a${i}]\n`).join('')}`,
    ),
  'a conflict left in': () =>
    repository.write('desk.pcbuild.yaml', `<<<<<<< ours\n${desk('boreas/tower-155')}=======\n>>>>>>> theirs\n`),
  'a build that is a link out of the workspace': () => link('/etc/hostname', 'desk.pcbuild.yaml'),
  'a build that is a link to itself': () => link('desk.pcbuild.yaml', 'desk.pcbuild.yaml'),
  'parts that are a link out of the workspace': () => link('/etc', 'parts'),
  'bytes that are no text': () =>
    repository.write('desk.pcbuild.yaml', Uint8Array.from([0xff, 0xfe, 0x00, 0x62, 0xc3, 0x28, 0x0a])),
  'names with controls, turned letters and commands': () => {
    repository.write('\u001b[2J\u202edesk\u0007\r.pcbuild.yaml', tall);
    repository.write(
      '::error::\u2066x%0A.pcbuild.yaml',
      tall.replace('Desk', '"\\u001b]0;x\\u0007 \\u202e ::error::"'),
    );
  },
};

/** What must not reach a terminal. */
const unseen = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u200b-\u200f\u202a-\u202e\u2066-\u2069]/;

describe('a pull request', () => {
  it('that changes nothing ends green', async () => {
    repository.git('checkout', '-q', '-b', 'request');
    setTraps(repository);
    for (const words of runs) expect((await fettle(...words)).status, words.join(' ')).toBe(0);
    expect(existsSync(canaryOf(repository))).toBe(false);
  });

  it.each(Object.entries(requests))(
    'with %s never ends green, and runs nothing',
    async (_, lay) => {
      repository.git('checkout', '-q', '-b', 'request');
      lay();
      repository.write('.gitattributes', '*.yaml filter=trap diff=trap ident text eol=crlf\n');
      repository.commit('request');
      setTraps(repository);
      for (const words of runs) {
        const { status, text } = await fettle(...words);
        expect([1, 2], words.join(' ')).toContain(status);
        expect(unseen.exec(text)?.[0], words.join(' ')).toBeUndefined();
      }
      expect(existsSync(canaryOf(repository))).toBe(false);
    },
    60_000,
  );

  it('with a submodule in place of a build is no success', async () => {
    repository.git('checkout', '-q', '-b', 'request');
    const id = repository.git('rev-parse', 'HEAD');
    repository.write('.gitmodules', `[submodule "x"]\n\tpath = sub.pcbuild.yaml\n\turl = ext::sh -c touch% ran\n`);
    repository.git('add', '.gitmodules');
    repository.git('update-index', '--add', '--cacheinfo', `160000,${id},sub.pcbuild.yaml`);
    repository.git('commit', '-q', '-m', 'request');
    setTraps(repository);
    const { status, text } = await fettle('compare', 'main', 'request');
    expect([status, text]).toEqual([2, expect.stringContaining('sub.pcbuild.yaml')]);
    expect(existsSync(canaryOf(repository))).toBe(false);
  });

  it('of which the clone lacks a file is no success, and nothing is fetched', async () => {
    repository.git('checkout', '-q', '-b', 'request');
    repository.write('desk.pcbuild.yaml', tall);
    repository.commit('request');
    const blob = repository.git('rev-parse', 'request:desk.pcbuild.yaml');
    repository.git('checkout', '-q', 'main');
    rmSync(join(repository.folder, '.git/objects', blob.slice(0, 2), blob.slice(2)));
    setTraps(repository);
    const set = (key: string, value: string): string => repository.git('config', key, value);
    set('core.repositoryFormatVersion', '1');
    set('extensions.partialClone', 'far');
    set('remote.far.promisor', 'true');
    set('remote.far.uploadpack', join(repository.folder, 'trap.sh'));
    set('remote.far.url', repository.folder);
    set('core.sparseCheckout', 'true');
    set('protocol.allow', 'always');
    const { status } = await fettle('compare', 'main', 'request');
    expect(status).toBe(2);
    expect((await fettle('check', '--only-new', 'request')).status).not.toBe(0);
    expect(existsSync(canaryOf(repository))).toBe(false);
  });

  it('with a pipe in place of a build is no success, and nothing waits for it', async () => {
    rmSync(join(repository.folder, 'desk.pcbuild.yaml'));
    execFileSync('mkfifo', [join(repository.folder, 'desk.pcbuild.yaml')]);
    mkdirSync(join(repository.folder, 'folder.pcbuild.yaml'));
    setTraps(repository);
    for (const words of [['check'], ['check', '--only-new', 'main'], ['compare', 'main']])
      expect((await fettle(...words)).status).toBe(2);
  });

  it('is compared with no revision by a name that git could take for something else', async () => {
    setTraps(repository);
    for (const revision of ['--output=ran', '--upload-pack=touch ran', 'main..request', 'main\n', '-'])
      expect((await fettle('compare', '--', revision)).status, revision).toBe(2);
    expect(existsSync(canaryOf(repository))).toBe(false);
  });
});

/** What a forge would run over a request: each judged by the settings of the base. */
const runs = [
  ['check', '--settings-from', 'main'],
  ['check', '--only-new', 'main', '--settings-from', 'main'],
  ['compare', 'main', '--settings-from', 'main'],
  ['compare', 'main', 'request', '--settings-from', 'main'],
];
