// A revision read as a workspace: the same answers as the folder gives, and from a hostile repository nothing that
// runs, fetches, leads out or passes for read.
import { chownSync, existsSync, mkdirSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type GitHost, openRevision } from '../../server/src/host/git';
import { isTrouble } from '../../server/src/host/host';
import { NodeHost } from '../../server/src/host/node';
import { Repository } from '../support/repository';
import { canaryOf, clearCanary, setTraps, trapIn } from '../support/traps';

let repository: Repository;
beforeEach(() => void (repository = new Repository()));
afterEach(() => repository.drop());

const open = (revision: string, folder = repository.folder, env: NodeJS.ProcessEnv = process.env): GitHost => {
  const host = openRevision(folder, revision, env);
  if (isTrouble(host)) throw new Error(host.trouble);
  return host;
};
const troubleOf = (revision: string, env: NodeJS.ProcessEnv = process.env): string => {
  const host = openRevision(repository.folder, revision, env);
  return isTrouble(host) ? host.trouble : 'opened';
};

const desk = 'format: 1\nbuild: Desk\n';

describe('a revision', () => {
  beforeEach(() => {
    repository.write('fettle.yaml', 'format: 1\n');
    repository.write('benches/desk.pcbuild.yaml', desk);
    repository.write('parts/tarn/mid-3.part.yaml', 'kind: case\n');
    repository.commit('first');
    repository.write('benches/desk.pcbuild.yaml', `${desk}purpose: Charts\n`);
  });

  it('says what was committed, whatever lies in the folder now', () => {
    const host = open('HEAD');
    expect(host.read(repository.folder, 'benches/desk.pcbuild.yaml')).toBe(desk);
    expect(host.read(repository.folder, 'benches/none.pcbuild.yaml')).toBeUndefined();
  });

  it('finds and lists as the folder does', () => {
    const [host, node] = [open('HEAD'), new NodeHost(repository.folder)];
    for (const path of ['.', 'benches', 'benches/desk.pcbuild.yaml', 'parts/../fettle.yaml']) {
      const [a, b] = [host.find(path), node.find(path)];
      if (isTrouble(a) || isTrouble(b)) throw new Error(path);
      expect([a.kind, a.name, a.isMarked, host.shown(a.root, a.name)], path).toEqual([
        b.kind,
        b.name,
        b.isMarked,
        node.shown(b.root, b.name),
      ]);
    }
    const listed = node.list(repository.folder, '');
    expect(host.list(repository.folder, '')).toEqual(
      Array.isArray(listed) && listed.filter(({ name }) => name !== '.git'),
    );
    expect(host.list(repository.folder, 'none')).toBeUndefined();
  });

  it('is named from a folder below the repository’s top', () => {
    const host = open('HEAD', join(repository.folder, 'benches'));
    const found = host.find('desk.pcbuild.yaml');
    expect(found).toEqual({ kind: 'file', root: repository.folder, name: 'benches/desk.pcbuild.yaml', isMarked: true });
    expect([
      host.shown(repository.folder, 'benches/desk.pcbuild.yaml'),
      host.shown(repository.folder, 'fettle.yaml'),
    ]).toEqual(['desk.pcbuild.yaml', '../fettle.yaml']);
    expect(host.find('../../else')).toEqual({ trouble: 'leads out of the workspace, so it is not read.' });
  });

  it('is refused in one sentence where there is none', () => {
    expect(troubleOf('no-such-branch')).toContain('names no commit');
    expect(troubleOf('HEAD^{tree}')).toContain('names no commit');
    expect(troubleOf('')).toContain('is no revision');
    expect(troubleOf('HEAD\n')).toContain('is no revision');
    expect(troubleOf('HEAD', {})).toContain('needs git');
    rmSync(join(repository.folder, '.git'), { recursive: true });
    expect(troubleOf('HEAD')).toContain('lies in no git repository');
  });

  it('that looks like an option is a name like any other', () => {
    for (const word of ['--help', '--git-dir=/etc', '-h', '--upload-pack=x', '--all', '--show-toplevel'])
      expect(troubleOf(word), word).toContain('names no commit');
  });
});

describe('what a tree holds', () => {
  it('follows links that stay below the root, and no others', () => {
    repository.write('fettle.yaml', 'format: 1\n');
    repository.write('real/desk.pcbuild.yaml', desk);
    const links: [string, string][] = [
      ['inside.pcbuild.yaml', 'real/desk.pcbuild.yaml'],
      ['absolute.pcbuild.yaml', '/etc/passwd'],
      ['above.pcbuild.yaml', '../../../../etc/passwd'],
      ['circle.pcbuild.yaml', 'circle.pcbuild.yaml'],
      ['dangling.pcbuild.yaml', 'real/none'],
      ['folder', 'real'],
    ];
    for (const [name, target] of links) symlinkSync(target, join(repository.folder, name));
    repository.commit('links');
    const host = open('HEAD');
    expect(host.read(repository.folder, 'inside.pcbuild.yaml')).toBe(desk);
    expect(host.read(repository.folder, 'folder/desk.pcbuild.yaml')).toBe(desk);
    for (const name of ['absolute', 'above', 'circle'])
      expect(host.read(repository.folder, `${name}.pcbuild.yaml`), name).toEqual({
        trouble: 'leads out of the workspace, so it is not read.',
      });
    expect(host.read(repository.folder, 'dangling.pcbuild.yaml')).toBeUndefined();
    const listed = host.list(repository.folder, '');
    expect(Array.isArray(listed) && listed.filter(({ kind }) => kind === 'link').map(({ target }) => target)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      { kind: 'folder', name: 'real' },
      { kind: 'file', name: 'real/desk.pcbuild.yaml' },
    ]);
  });

  it('says of what cannot be read why', () => {
    repository.write('huge.pcbuild.yaml', 'x'.repeat(2_000_001));
    repository.write('wide.pcbuild.yaml', Buffer.from([0xff, 0xfe, 65, 0]));
    repository.write('zero.pcbuild.yaml', Buffer.from([65, 0, 65]));
    repository.write(
      'kept.pcbuild.yaml',
      `version https://example.invalid/spec/v1\noid sha256:${'a'.repeat(64)}\nsize 12\n`,
    );
    const id = repository.commit('first');
    repository.git('update-index', '--add', '--cacheinfo', `160000,${id},sub.pcbuild.yaml`);
    repository.git('commit', '-q', '-m', 'submodule');
    const host = open('HEAD');
    const why = (name: string): string => {
      const read = host.read(repository.folder, name);
      return isTrouble(read) ? read.trouble : 'read';
    };
    expect(why('huge.pcbuild.yaml')).toContain('is larger than');
    expect(why('wide.pcbuild.yaml')).toContain('UTF-16');
    expect(why('zero.pcbuild.yaml')).toContain('zero bytes');
    expect(why('kept.pcbuild.yaml')).toContain('large file storage');
    expect(why('sub.pcbuild.yaml')).toContain('no regular file');
  });

  it('keeps odd names as they are', () => {
    const names = [
      'a\nb.pcbuild.yaml',
      'tab\t.pcbuild.yaml',
      '"q".pcbuild.yaml',
      '-x.pcbuild.yaml',
      '__proto__',
      'ü.pcbuild.yaml',
    ];
    for (const name of names) repository.write(name, desk);
    repository.commit('odd');
    const host = open('HEAD');
    for (const name of names) expect(host.read(repository.folder, name), name).toBe(desk);
    const listed = host.list(repository.folder, '');
    expect(Array.isArray(listed) && listed.map(({ name }) => name).sort()).toEqual([...names].sort());
  });

  it('is read by its own ids, whatever stands in for an object', () => {
    repository.write('desk.pcbuild.yaml', desk);
    const first = repository.commit('first');
    repository.write('desk.pcbuild.yaml', 'format: 1\nbuild: Other\n');
    const second = repository.commit('second');
    repository.git('replace', first, second);
    expect(open(first).read(repository.folder, 'desk.pcbuild.yaml')).toBe(desk);
  });
});

describe('a hostile repository', () => {
  const canary = (): string => canaryOf(repository);
  afterEach(() => clearCanary(repository));
  const trap = (name: string): string => trapIn(repository, name);

  const laid = (): void => {
    repository.write('desk.pcbuild.yaml', desk);
    repository.write('other.pcbuild.yaml', 'format: 1\nbuild: Other\n');
    repository.git('add', 'desk.pcbuild.yaml', 'other.pcbuild.yaml');
    repository.git('commit', '-q', '-m', 'first');
    repository.write('.gitattributes', '*.yaml filter=trap diff=trap ident text eol=crlf\n');
    repository.git('add', '.gitattributes');
    repository.git('commit', '-q', '-m', 'attributes');
    setTraps(repository);
  };

  it('would have something run by plain commands', () => {
    laid();
    // Written anew, so that git cannot take it for unchanged by its time alone.
    repository.write('desk.pcbuild.yaml', desk);
    expect(() => repository.git('status')).toThrow();
    expect(existsSync(canary())).toBe(true);
  });

  it('has nothing run while a revision is read', () => {
    laid();
    const host = open('main');
    expect(host.read(repository.folder, 'desk.pcbuild.yaml')).toBe(desk);
    expect(host.list(repository.folder, '')).toHaveLength(3);
    expect(existsSync(canary())).toBe(false);
  });

  it('has no program called git of its own run', () => {
    laid();
    trap('bin/git');
    symlinkSync(join(repository.folder, 'bin'), join(repository.folder, 'linked'));
    const path = [join(repository.folder, 'bin'), join(repository.folder, 'linked'), 'bin', '.', ''].join(':');
    expect(open('main', repository.folder, { ...process.env, PATH: `${path}:${process.env.PATH}` }).id).toBeTruthy();
    expect(troubleOf('main', { ...process.env, PATH: path })).toContain('none is found on the PATH outside');
    expect(existsSync(canary())).toBe(false);
  });

  it('is not helped by the environment', () => {
    laid();
    const home = join(repository.folder, 'home');
    mkdirSync(home);
    writeFileSync(join(home, '.gitconfig'), `[core]\n\tfsmonitor = ${trap('home/trap.sh')}\n`);
    const program = join(repository.folder, 'trap.sh');
    const env = {
      ...process.env,
      HOME: home,
      GIT_DIR: '/nonexistent',
      GIT_EXTERNAL_DIFF: program,
      GIT_PAGER: program,
      GIT_SSH_COMMAND: program,
      GIT_EXEC_PATH: join(repository.folder, 'own-hooks'),
      GIT_CONFIG_COUNT: '1',
      GIT_CONFIG_KEY_0: 'core.fsmonitor',
      GIT_CONFIG_VALUE_0: program,
      GIT_TRACE: canary(),
    };
    expect(open('main', repository.folder, env).read(repository.folder, 'desk.pcbuild.yaml')).toBe(desk);
    expect(existsSync(canary())).toBe(false);
  });

  it('fetches nothing that the clone lacks, and says so', () => {
    laid();
    const program = join(repository.folder, 'trap.sh');
    const blob = repository.git('rev-parse', 'main:other.pcbuild.yaml');
    rmSync(join(repository.folder, '.git/objects', blob.slice(0, 2), blob.slice(2)));
    const set = (key: string, value: string): string => repository.git('config', key, value);
    set('core.repositoryFormatVersion', '1');
    set('extensions.partialClone', 'far');
    set('remote.far.promisor', 'true');
    set('remote.far.uploadpack', program);
    set('protocol.allow', 'always');
    set('protocol.ext.allow', 'always');
    set('protocol.file.allow', 'always');
    for (const url of [`ext::${program}`, repository.folder, 'ssh://nowhere.invalid/x', 'trap::x']) {
      set('remote.far.url', url);
      const host = openRevision(repository.folder, 'main', process.env);
      const read = isTrouble(host) ? host : host.read(repository.folder, 'other.pcbuild.yaml');
      expect(isTrouble(read), url).toBe(true);
    }
    expect(existsSync(canary())).toBe(false);
  });

  it('hidden in a folder as if it were a bare one is not taken for one', () => {
    repository.write('desk.pcbuild.yaml', desk);
    repository.commit('first');
    const bare = join(repository.folder, 'bare');
    repository.git('clone', '-q', '--bare', '.', 'bare');
    writeFileSync(join(bare, 'config'), `[core]\n\tbare = true\n\tfsmonitor = ${trap('trap.sh')}\n`);
    const host = openRevision(bare, 'main', process.env);
    expect(isTrouble(host)).toBe(true);
    expect(existsSync(canary())).toBe(false);
    expect(readdirSync(bare)).toContain('HEAD');
  });

  it.runIf(process.getuid?.() === 0)('of somebody else is refused in one sentence', () => {
    repository.write('desk.pcbuild.yaml', desk);
    repository.commit('first');
    for (const path of [repository.folder, join(repository.folder, '.git')]) chownSync(path, 12_345, 12_345);
    const env = { PATH: process.env.PATH };
    expect(troubleOf('main', env)).toContain('belongs to somebody else');
  });
});
