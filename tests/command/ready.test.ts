// What stands ready for use: the recipes of the page on review, the composite action and the hooks, each run as it
// stands in a repository of its own.
import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { kindOfFile } from '../../server/src/core/parts/doc';
import { bundle } from '../support/bundle';
import { Repository } from '../support/repository';

const root = join(__dirname, '../..');
const read = (path: string): string => readFileSync(join(root, path), 'utf8');
const desk = (cooler: string): string =>
  `format: 1\nbuild: Desk\nparts:\n  cooler: ${cooler}\n  case: { cooler-height: 160 mm }\n`;
const tower = 'parts/boreas/tower.part.yaml';
const old = 'old.pcbuild.yaml';

let top: string;
let command: string;
let repository: Repository;
beforeAll(() => {
  top = mkdtempSync(join(tmpdir(), 'fettle-ready-'));
  command = join(top, 'action/dist/fettle.js');
  bundle('fettle', command);
  mkdirSync(join(top, 'bin'));
  writeFileSync(join(top, 'bin/fettle'), `#!/bin/sh\nexec "${process.execPath}" "${command}" "$@"\n`);
  chmodSync(join(top, 'bin/fettle'), 0o755);
  repository = new Repository();
  repository.write('fettle.yaml', 'format: 1\n');
  repository.write(tower, 'kind: cooler\nheight: 155 mm\n');
  repository.write('desk.pcbuild.yaml', desk('{ use: boreas/tower }'));
  repository.write(old, desk('{ height: 170 mm }').replace('Desk', 'Old'));
  repository.commit('base');
});
afterAll(() => {
  repository.drop();
  rmSync(top, { recursive: true, force: true });
});

interface Ran {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

function shell(words: readonly string[], env: Record<string, string> = {}): Ran {
  const { status, stdout, stderr } = spawnSync(words[0]!, words.slice(1), {
    cwd: repository.folder,
    encoding: 'utf8',
    timeout: 60_000,
    env: { PATH: `${join(top, 'bin')}:${process.env.PATH}`, HOME: '/nonexistent', ...env },
  });
  return { status, out: stdout, err: stderr };
}

/** The files of a change on top of what was committed; a plain one makes a cooler too tall. */
function change(files: Record<string, string> = { [tower]: 'kind: cooler\nheight: 172 mm\n' }): void {
  repository.git('reset', '-q', '--hard', 'main');
  repository.git('clean', '-fdqx');
  for (const [name, text] of Object.entries(files)) repository.write(name, text);
  repository.git('add', '-A');
}

const onPosix = process.platform === 'win32' ? describe.skip : describe;

onPosix('the recipes of the page', () => {
  const page = read('server/docs/review.md');
  /** Blocks of shell, each under the title of its section. */
  const recipes: { readonly title: string; readonly lines: string }[] = [];
  for (const section of page.split(/^## /m))
    for (const [, lines] of section.matchAll(/```sh\n([^]*?)```/g))
      recipes.push({ title: section.slice(0, section.indexOf('\n')), lines: lines! });

  /** Each block of a section by itself; the worst status, and all that was written. */
  function run(title: string): Ran {
    const own = recipes.filter((recipe) => recipe.title === title);
    const ran = own.map(({ lines }) => shell(['sh', '-eu', '-c', lines], { BASE: 'main', CACHE: join(top, 'kept') }));
    return {
      status: Math.max(...ran.map(({ status }) => status ?? 9)),
      out: ran.map(({ out }) => out).join(''),
      err: ran.map(({ err }) => err).join(''),
    };
  }
  const made = (name: string): string => readFileSync(join(repository.folder, name), 'utf8');

  it('check what a change brings, and nothing else', () => {
    change();
    const { status, out } = run('Check what a change brings');
    expect(status).toBe(1);
    expect(out).toMatch(/desk\.pcbuild\.yaml:4[^]*cooler-too-tall/);
    expect(out).not.toMatch(/^Old$/m);
  });

  it('show what it does, and put it beside the lines', () => {
    change();
    expect(run('Show what it does')).toMatchObject({ status: 1, err: '' });
    const { out, status } = run('Beside the changed lines');
    expect(status).toBe(1);
    expect(out).toMatch(/^::error /m);
    expect((JSON.parse(made('fettle.sarif')) as { version: string }).version).toBe('2.1.0');
    expect(JSON.parse(made('fettle-quality.json'))).toBeInstanceOf(Array);
    expect(made('fettle-tests.xml')).toContain('<testsuite');
  });

  it('write a comment with the marker that the page names', () => {
    change();
    expect(run('One comment that is kept up to date')).toMatchObject({ status: 1, out: '<!-- fettle-comment -->\n' });
    expect(page).toContain('`<!-- fettle-comment -->`');
  });

  it('start with old findings, and go on without them', () => {
    change({});
    expect(run('A shop with many old findings')).toMatchObject({ status: 0 });
    expect(made('old.known.yaml')).toContain('cooler-too-tall');
  });

  it('check a commit, and mend slips', () => {
    change({ [old]: desk('{ hieght: 150 mm }') });
    run('Before a commit');
    expect(made('slips.diff')).toContain('+  cooler: { height: 150 mm }');
    expect(made(old)).toContain('{ height: 150 mm }');
  });

  it('share a check among machines, and put it together', () => {
    change();
    expect(run('Over several machines')).toMatchObject({ status: 1, err: '' });
    const { stdout } = spawnSync('fettle', ['check', '--format', 'json'], {
      cwd: repository.folder,
      encoding: 'utf8',
      env: { PATH: `${join(top, 'bin')}:${process.env.PATH}` },
    });
    expect(made('findings.json')).toBe(stdout);
  });

  it('keep judgements from run to run', () => {
    change();
    const [first, again] = [run('Kept from run to run'), run('Kept from run to run')];
    expect(again).toEqual(first);
    expect(first).toMatchObject({ status: 1, err: '' });
    expect(readdirSync(join(top, 'kept')).every((name) => name.endsWith('.judged'))).toBe(true);
  });

  it('judge a text that is not saved yet', () => {
    change();
    expect(run("In an editor's terminal, and on the fly").out).toMatch(
      /^new\.pcbuild\.yaml:4:\d+: stop: .*\(cooler-too-tall\)$/m,
    );
  });

  it('are all run here', () => {
    expect([...new Set(recipes.map(({ title }) => title))]).toEqual([
      'Check what a change brings',
      'Show what it does',
      'Beside the changed lines',
      'One comment that is kept up to date',
      'A shop with many old findings',
      'Before a commit',
      'Over several machines',
      'Kept from run to run',
      "In an editor's terminal, and on the fly",
    ]);
  });
});

onPosix('the composite action', () => {
  interface Action {
    readonly inputs: Readonly<Record<string, { readonly default: string }>>;
    readonly runs: { readonly steps: readonly [{ readonly env: Record<string, string>; readonly run: string }] };
  }
  const action = parse(read('action.yml')) as Action;
  const [step] = action.runs.steps;

  /** The step as a runner runs it: inputs put into its environment, its text handed to bash. */
  function act(inputs: Record<string, string>): Ran & { summary: string; outputs: string } {
    const [summary, outputs] = [join(top, 'summary'), join(top, 'outputs')];
    for (const file of [summary, outputs]) writeFileSync(file, '');
    const given = Object.entries(step.env).map(([name, value]): [string, string] => {
      const input = /^\$\{\{ inputs\.([\w-]+) \}\}$/.exec(value)![1]!;
      return [name, inputs[input] ?? action.inputs[input]!.default];
    });
    const ran = shell(['bash', '--noprofile', '--norc', '-eo', 'pipefail', '-c', step.run], {
      ...Object.fromEntries(given),
      GITHUB_ACTION_PATH: join(top, 'action'),
      GITHUB_STEP_SUMMARY: summary,
      GITHUB_OUTPUT: outputs,
      RUNNER_TEMP: top,
    });
    return { ...ran, summary: readFileSync(summary, 'utf8'), outputs: readFileSync(outputs, 'utf8') };
  }

  it('has no input in the text of its script, and names no address', () => {
    expect(step.run).not.toContain('${{');
    expect(read('action.yml')).not.toMatch(/https?:|npx|curl|npm install(?! )/);
  });

  it('annotates what a change brings, sums it up, and writes the files asked for', () => {
    change();
    const ran = act({ base: 'main', 'comment-file': 'comment.md', 'sarif-file': 'fettle.sarif' });
    expect({ status: ran.status, err: ran.err, outputs: ran.outputs }).toEqual({
      status: 1,
      err: '',
      outputs: 'status=1\n',
    });
    expect(ran.out.match(/^::error .*$/gm)).toHaveLength(1);
    expect(ran.summary).toMatch(/^<!-- fettle-comment -->[^]*Desk/);
    expect(readFileSync(join(repository.folder, 'comment.md'), 'utf8')).toBe(ran.summary);
    expect(existsSync(join(repository.folder, 'fettle.sarif'))).toBe(true);
  });

  it('is green and silent where a change alters nothing', () => {
    change({ 'notes.txt': 'a' });
    expect(act({ base: 'main' })).toMatchObject({ status: 0, summary: '', outputs: 'status=0\n' });
  });

  it('lets a change switch nothing off, write through no link, and start nothing', () => {
    change({
      [tower]: 'kind: cooler\nheight: 172 mm\n',
      'fettle.yaml': 'format: 1\ngrades: { cooler-too-tall: off }\n',
    });
    const target = join(top, 'target');
    writeFileSync(target, 'kept');
    symlinkSync(target, join(repository.folder, 'comment.txt'));
    const ran = act({ base: 'main', 'comment-file': 'comment.txt' });
    expect({ status: ran.status, err: ran.err }).toEqual({ status: 1, err: '' });
    expect(ran.out).toContain('cooler-too-tall');
    expect(readFileSync(target, 'utf8')).toBe('kept');
    const before = readdirSync(top);
    const bad = ['$(touch canary)', '`touch canary`', "'; touch canary; '", '--output=canary'];
    expect(act({ paths: bad.join('\n'), summary: 'false' }).status).toBe(2);
    expect(act({ base: bad[0]!, from: bad[2]!, summary: 'false' }).status).toBe(2);
    expect(readdirSync(repository.folder)).not.toContain('canary');
    expect(readdirSync(top)).toEqual(before);
  });

  it('says in one line what is to be done where it is not packed', () => {
    const { status, out } = act({ command: join(top, 'nowhere.js') });
    expect({ status, lines: out.trimEnd().split('\n').length }).toEqual({ status: 2, lines: 1 });
  });
});

onPosix('the hooks', () => {
  interface Hook {
    readonly id: string;
    readonly entry: string;
    readonly files: string;
  }
  const hooks = parse(read('.pre-commit-hooks.yaml')) as Hook[];

  it('ask for our files, and run the command as it is', () => {
    change({});
    for (const { entry, files } of hooks) {
      const asks = new RegExp(files);
      for (const name of ['a.pcbuild.yaml', 'parts/b/c.part.yaml']) expect(asks.test(name)).toBe(true);
      for (const name of ['a.yaml', 'xfettle.yaml', 'README.md', 'a.pcbuild.yaml.bak'])
        expect(asks.test(name)).toBe(false);
      expect(['fettle.yaml', 'a/fettle.yaml'].every((name) => kindOfFile(name) === 'house')).toBe(true);
      const [program, ...words] = entry.split(' ');
      expect(program).toBe('fettle');
      if (!entry.includes('mend')) continue;
      const { status } = shell([program!, ...words, old]);
      expect(status).toBe(1);
    }
  });
});
