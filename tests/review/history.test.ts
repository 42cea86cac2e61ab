// A history of commits as a workshop makes them, and what each is said to do to the builds.
import { english } from '../../server/src/core/words/languages';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openRevision } from '../../server/src/host/git';
import type { AddressedHost } from '../../server/src/host/addressed';
import {
  isTrouble,
  type Awaitable,
  type FoundPath,
  type Host,
  type Listed,
  type ReadError,
} from '../../server/src/host/host';
import { comparisonComment } from '../../server/src/report/comment';
import { altersAnything, isBrought, type Comparison } from '../../server/src/review/comparison';
import { Session } from '../../server/src/session/session';
import { walk } from '../../server/src/session/walk';
import { today } from '../support/bench';
import { fettleAmong } from '../support/command';
import { readComment } from '../support/comments';
import { Repository } from '../support/repository';

const repository = new Repository();
afterAll(() => repository.drop());

const texts = new Map<string, string>();
const put = (name: string, text: string): void => {
  texts.set(name, text);
  repository.write(name, text);
};
const edit = (name: string, from: string, to: string): void => {
  const text = texts.get(name)!;
  if (!text.includes(from)) throw new Error(`${name} lacks ${from}`);
  put(name, text.replace(from, to));
};
const drop = (name: string): void => {
  texts.delete(name);
  repository.remove(name);
};

const desk = 'desk.pcbuild.yaml';
const moved = 'benches/desk.pcbuild.yaml';
const cooler = 'parts/boreas/tower-155.part.yaml';
const renamed = 'parts/boreas/tower-156.part.yaml';
const board = 'parts/norrvik/i5-skiff.part.yaml';
const drive = 'parts/lumen/flat-1t.part.yaml';
const box = 'parts/tarn/mid-3.part.yaml';

const start = (): void => {
  put('fettle.yaml', 'format: 1\ncurrency: EUR\n');
  put(
    board,
    'kind: board\nchipset-link: PCIe 4 x4\nprice: 120 EUR\nfirmware: { versions: ["1.00", "1.04"] }\nslots:\n' +
      '  M2_1: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 4 x4], from: processor, takes-from: [] }\n  M2_2: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 3 x2], from: chipset, takes-from: [] }\n',
  );
  put(cooler, 'kind: cooler\nheight: 150 mm\nprice: 48 EUR\n');
  put(box, 'kind: case\ncooler-height: 160 mm\nprice: 80 EUR\n');
  put(
    drive,
    'kind: drive\nbus: NVMe\nlink: PCIe 4 x4\nkey: M\nsize: 2280\nshape: M.2\nread: 5 GB/s\nwrite: 4 GB/s\ncapacity: 1 TB\nprice: 90 EUR\n',
  );
  put(
    desk,
    'format: 1\nbuild: Desk\nparts:\n  board: { use: norrvik/i5-skiff, firmware: "1.04" }\n' +
      '  cooler: { use: boreas/tower-155 }\n  case: { use: tarn/mid-3 }\n  drives:\n' +
      '    - { name: scratch, use: lumen/flat-1t, slot: M2_1 }\nexpect:\n  cost: 400 EUR\n',
  );
};

interface Commit {
  readonly says: string;
  readonly does: () => void;
  /** What the comparison with the commit before tells, open answers left out. */
  readonly told: readonly string[];
}

const commits: Commit[] = [
  {
    says: 'a part corrected',
    does: () => edit(cooler, '150 mm', '155 mm'),
    told: ['room left, cooler height of boreas/tower-155: 10 mm → 5 mm'],
  },
  {
    says: 'a part corrected so that it does not fit',
    does: () => edit(cooler, '155 mm', '166 mm'),
    told: ['new stop: cooler-too-tall parts.cooler', 'room left, cooler height of boreas/tower-155: 5 mm → −6 mm'],
  },
  {
    says: 'a part corrected so that it fits less',
    does: () => edit(cooler, '166 mm', '170 mm'),
    told: ['worse stop: cooler-too-tall parts.cooler', 'room left, cooler height of boreas/tower-155: −6 mm → −10 mm'],
  },
  {
    says: 'that taken back',
    does: () => edit(cooler, '170 mm', '155 mm'),
    told: ['cleared stop: cooler-too-tall parts.cooler', 'room left, cooler height of boreas/tower-155: −10 mm → 5 mm'],
  },
  {
    says: 'a drive moved to a slower slot',
    does: () => edit(desk, 'slot: M2_1', 'slot: M2_2'),
    told: [
      'new note: drive-in-slow-slot parts.drives.scratch.slot',
      'read rate of scratch: 5 GB/s → 1.969 GB/s',
      'write rate of scratch: 4 GB/s → 1.969 GB/s',
    ],
  },
  {
    says: 'that reverted by git',
    does: () => {
      repository.git('revert', '--no-edit', 'HEAD');
      texts.set(desk, texts.get(desk)!.replace('slot: M2_2', 'slot: M2_1'));
    },
    told: [
      'cleared note: drive-in-slow-slot parts.drives.scratch.slot',
      'read rate of scratch: 1.969 GB/s → 5 GB/s',
      'write rate of scratch: 1.969 GB/s → 4 GB/s',
    ],
  },
  { says: 'the list of firmware extended', does: () => edit(board, '"1.04"]', '"1.04", "1.08"]'), told: [] },
  {
    says: 'a firmware that the list lacks',
    does: () => edit(desk, 'firmware: "1.04"', 'firmware: "2.00"'),
    told: ['new note: firmware-arriving-unlisted parts.board.firmware'],
  },
  {
    says: 'the firmware put right',
    does: () => edit(desk, 'firmware: "2.00"', 'firmware: "1.08"'),
    told: ['cleared note: firmware-arriving-unlisted parts.board.firmware'],
  },
  {
    says: 'a part renamed',
    does: () => {
      put(renamed, texts.get(cooler)!);
      drop(cooler);
      edit(desk, 'boreas/tower-155', 'boreas/tower-156');
    },
    told: ['parts/boreas/tower-156.part.yaml: moved'],
  },
  { says: 'a drive renamed', does: () => edit(desk, 'name: scratch', 'name: fast'), told: [] },
  {
    says: 'the margin of the house changed',
    does: () => put('fettle.yaml', 'format: 1\ncurrency: EUR\nmargins: { clearance: 8 mm }\n'),
    told: ['new note: loose-margin parts.cooler.height'],
  },
  {
    says: 'the margin taken back',
    does: () => put('fettle.yaml', 'format: 1\ncurrency: EUR\n'),
    told: ['cleared note: loose-margin parts.cooler.height'],
  },
  {
    says: 'a build moved',
    does: () => {
      put(moved, texts.get(desk)!);
      drop(desk);
    },
    told: ['benches/desk.pcbuild.yaml: moved'],
  },
  { says: 'line ends switched', does: () => put(moved, texts.get(moved)!.replaceAll('\n', '\r\n')), told: [] },
  {
    says: 'a conflict left in',
    does: () =>
      put(
        moved,
        texts.get(moved)!.replace('expect:\r\n', '<<<<<<< ours\r\nexpect:\r\n=======\r\nexpect:\r\n>>>>>>> theirs\r\n'),
      ),
    told: ['new stop: yaml-syntax ', 'undecided note: parts-left-out parts'],
  },
  {
    says: 'the conflict resolved',
    does: () =>
      put(
        moved,
        texts
          .get(moved)!
          .replace(/<<<<<<<[^]*?>>>>>>> theirs\r\n/, 'expect:\r\n')
          .replaceAll('\r\n', '\n'),
      ),
    told: ['new note: parts-left-out parts', 'cleared stop: yaml-syntax '],
  },
  {
    says: 'keys in another order',
    does: () => put(moved, texts.get(moved)!.replace('format: 1\nbuild: Desk\n', 'build: Desk\nformat: 1\n')),
    told: [],
  },
  { says: 'another layout', does: () => edit(moved, '{ use: tarn/mid-3 }', '\n    use: tarn/mid-3'), told: [] },
  { says: 'comments', does: () => edit(moved, 'parts:', '# Bought in spring.\n\nparts:'), told: [] },
  {
    says: 'a drive added',
    does: () => edit(moved, 'expect:', '    - { name: store, use: lumen/flat-1t, slot: M2_2 }\nexpect:'),
    told: [
      'new shortfall: cost-over expect.cost',
      'read rate of fast: 5 GB/s → 3.938 to 5 GB/s',
      'write rate of fast: 4 GB/s → 3.938 to 4 GB/s',
      'read rate of store: none → 0.9846 to 1.969 GB/s',
      'write rate of store: none → 0.9846 to 1.969 GB/s',
      'price: 338 EUR → 428 EUR',
      'step added: fit M.2 drive store',
    ],
  },
  {
    says: 'a price risen past the promise',
    does: () => edit(box, '80 EUR', '180 EUR'),
    told: ['worse shortfall: cost-over expect.cost', 'price: 428 EUR → 528 EUR'],
  },
  {
    says: 'the finding accepted',
    does: () => put(moved, `${texts.get(moved)!}accept:\n  - { finding: cost-over, because: It is paid for. }\n`),
    told: ['accepted shortfall: cost-over expect.cost'],
  },
  {
    says: 'the acceptance taken back',
    does: () => put(moved, texts.get(moved)!.replace(/accept:[^]*/, '')),
    told: ['worse shortfall: cost-over expect.cost'],
  },
  {
    says: 'prices that cancel out',
    does: () => {
      edit(box, '180 EUR', '170 EUR');
      edit(board, '120 EUR', '130 EUR');
    },
    told: ['price: 528 EUR → 528 EUR'],
  },
  {
    says: 'a fact taken out',
    does: () => edit(renamed, 'height: 155 mm\n', ''),
    told: ['room left, cooler height of boreas/tower-156: 5 mm → not known', 'unknown: height of boreas/tower-156'],
  },
  {
    says: 'the fact stated again',
    does: () => edit(renamed, 'kind: cooler\n', 'kind: cooler\nheight: 155 mm\n'),
    told: ['room left, cooler height of boreas/tower-156: not known → 5 mm', 'known: height of boreas/tower-156'],
  },
  {
    says: 'a branch with another build merged',
    does: () => {
      repository.git('checkout', '-q', '-b', 'side', 'HEAD~2');
      repository.write(
        'store.pcbuild.yaml',
        'format: 1\nbuild: Store\nparts:\n  cooler: { use: boreas/tower-156 }\n  case: { use: tarn/mid-3 }\n',
      );
      repository.commit('another build');
      repository.git('checkout', '-q', 'main');
      repository.git('merge', '-q', '--no-ff', '--no-edit', 'side');
    },
    told: ['store.pcbuild.yaml: added', 'new note: parts-left-out parts'],
  },
  {
    says: 'a check switched off',
    does: () => put('fettle.yaml', 'format: 1\ncurrency: EUR\ngrades: { cost-over: off }\n'),
    told: ['silenced shortfall: cost-over expect.cost'],
  },
  {
    says: 'a part file taken away',
    does: () => drop(drive),
    told: [
      'new stop: part-not-found parts.drives.fast',
      'new stop: part-not-found parts.drives.store',
      'read rate of fast: 3.938 to 5 GB/s → not known',
      'write rate of fast: 3.938 to 4 GB/s → not known',
      'read rate of store: 0.9846 to 1.969 GB/s → not known',
      'write rate of store: 0.9846 to 1.969 GB/s → not known',
      'price: 528 EUR → at least 348 EUR',
      'unknown: everything about lumen/flat-1t, whose file is not found',
      'step added: fit drive fast',
      'step added: fit drive store',
      'step added: connect drive cables',
      'step removed: fit M.2 drive fast',
      'step removed: fit M.2 drive store',
      'parts/lumen/flat-1t.part.yaml: removed',
    ],
  },
  {
    says: 'a build taken away',
    does: () => drop('store.pcbuild.yaml'),
    told: ['store.pcbuild.yaml: removed', 'cleared note: parts-left-out parts'],
  },
];

/** One line for each change that a reviewer is told, those of open answers left out. */
function tell(comparison: Comparison): string[] {
  return comparison.files.flatMap((file) => [
    ...(file.state === 'changed' || file.state === 'touched' ? [] : [`${file.file}: ${file.state}`]),
    ...file.findings.flatMap(({ kind, before, after }) => {
      const { id, grade, subject } = (after ?? before)!;
      return kind === 'unchanged' || grade === 'unknown' ? [] : [`${kind} ${grade}: ${id} ${subject}`];
    }),
    ...file.moved.map(({ what, before, after }) => `${what}: ${before ?? 'none'} → ${after ?? 'none'}`),
    ...file.newlyUnknown.map((what) => `unknown: ${what}`),
    ...file.newlyKnown.map((what) => `known: ${what}`),
    ...file.steps.map(({ kind, step }) => `step ${kind}: ${step}`),
  ]);
}

const ids: string[] = [];
const revisions: Record<string, Host> = {};
beforeAll(() => {
  start();
  ids.push(repository.commit('start'));
  for (const { says, does } of commits) {
    does();
    ids.push(repository.commit(says));
  }
  for (const id of ids) {
    const host = openRevision(repository.folder, id, process.env);
    if (isTrouble(host)) throw new Error(host.trouble);
    revisions[id] = host;
  }
}, 120_000);

const compared = async (from: string, to: string): Promise<Comparison> =>
  JSON.parse(
    (await fettleAmong(revisions, {}, 'compare', from, to, '--in', repository.folder, '--format', 'json')).out,
  ) as Comparison;

it.each(commits.map(({ says, told }, i) => ({ says, told, i })))('$says', async ({ told, i }) => {
  const comparison = await compared(ids[i]!, ids[i + 1]!);
  expect(tell(comparison)).toEqual(told);
  expect(comparison.troubles).toEqual([]);
  const comment = comparisonComment(comparison, { from: 'note', working: true, language: english() });
  expect(comment === '').toBe(!altersAnything(comparison));
  expect(readComment(comment).seen.length).toBeLessThanOrEqual(25);
});

it('holds at least 25 commits, and says nothing of a commit against itself', async () => {
  expect(commits.length).toBeGreaterThanOrEqual(25);
  expect(altersAnything(await compared(ids[3]!, ids[3]!))).toBe(false);
});

/** A revision with a few texts of our own laid over it. */
class Overlaid implements AddressedHost {
  constructor(
    private readonly under: Host,
    private readonly over: ReadonlyMap<string, (text: string) => string>,
  ) {}
  find(path: string): Awaitable<FoundPath | ReadError> {
    return this.under.find(path);
  }
  list(root: string, folder: string): Awaitable<readonly Listed[] | ReadError | undefined> {
    return this.under.list(root, folder);
  }
  read(root: string, name: string): Awaitable<string | ReadError | undefined> {
    const text = this.under.read(root, name) as string | ReadError | undefined;
    const own = this.over.get(name);
    return own ? own(typeof text === 'string' ? text : '') : text;
  }
  pathIn(root: string, name: string): string {
    return this.under.pathIn(root, name);
  }
  shown(root: string, name: string): string {
    return this.under.shown(root, name);
  }
  pathOf(uri: string): string {
    return uri.replace('git:', '');
  }
  uriOf(path: string): string {
    return `git:${path}`;
  }
}

interface Checked {
  readonly files: readonly {
    readonly file: string;
    readonly findings: readonly { readonly id: string; readonly path: string; readonly accepted?: object }[];
  }[];
}
const everything = ['--from', 'unknown'];
const openIn = ({ files }: Checked): string[] =>
  files
    .flatMap(({ file, findings }) =>
      findings.filter(({ accepted }) => !accepted).map(({ id, path }) => `${file} ${id} ${path}`),
    )
    .sort();
const checkedAt = async (files: Host, ...words: string[]): Promise<string[]> =>
  openIn(
    JSON.parse(
      (await fettleAmong(revisions, files, 'check', '--format', 'json', ...everything, ...words)).out,
    ) as Checked,
  );

/** A revision as it stands with what another left as known. */
async function withRecordOf(from: string, to: string): Promise<Overlaid> {
  const named = (text: string): string => `${text}known: [old.known.yaml]\n`;
  const words = ['check', '--record-known', 'old.known.yaml', '--by', 'bench', '--until', '2099-01-01'];
  const { files } = await fettleAmong({}, revisions[from]!, ...words, ...everything);
  const record = files.get('old.known.yaml')!;
  return new Overlaid(
    revisions[to]!,
    new Map([
      ['fettle.yaml', named],
      ['old.known.yaml', () => record],
    ]),
  );
}

/** What an editor shows of every file, each opened in turn. */
async function editorView(host: Overlaid): Promise<string[]> {
  const session = new Session({ hostFor: () => host, today: () => today });
  const { files } = await walk(host, ['.']);
  const shown = await Promise.all(
    files.map(async ({ root, name }) => {
      const judged = await session.judge(host.uriOf(host.pathIn(root, name)));
      const open = judged?.judgement.findings.filter(({ accepted }) => !accepted) ?? [];
      return open.map(({ id, subject }) => `${host.shown(root, name)} ${id} ${subject}`);
    }),
  );
  return shown.flat().sort();
}

/** Changes of one commit and of several at once. */
const spans = [
  [1, 2],
  [9, 10],
  [13, 14],
  [23, 24],
  [0, 3],
  [5, 24],
];

it.each(spans)('the same is new to a check, a comparison and an editor, from commit %i to %i', async (i, j) => {
  const [from, to] = [ids[i]!, ids[j]!];
  const brought = (await compared(from, to)).files
    .flatMap(({ file, findings }) =>
      findings
        .filter((change) => isBrought(change) && !change.after!.accepted)
        .map(({ after }) => `${file} ${after!.id} ${after!.subject}`),
    )
    .sort();
  const known = await withRecordOf(from, to);
  expect(await checkedAt(revisions[to]!, '--only-new', from)).toEqual(brought);
  expect(await checkedAt(known)).toEqual(brought);
  expect(await editorView(known)).toEqual(brought);
  if (['a part renamed', 'a drive renamed', 'a build moved'].includes(commits[i]!.says) && j === i! + 1)
    expect(brought).toEqual([]);
});
