// `fettle merge`: puts the reports of all shares of a run together; the result is the report of the whole run.
import type { Command } from 'commander';
import type { Grade } from '../core/manifest/house-file';
import { closingJson, openingJson, toJson } from '../report/json';
import type { Finding, JudgedFile } from '../report/plain';
import { Tally } from '../report/tally';
import { isTrouble } from '../host/host';
import { Budget } from '../session/mending';
import { shortPath, type RunTrouble } from '../session/run-trouble';
import { openOutput, tellTroubles } from './output';
import { separators } from './printers';
import { digestOf } from './shard';
import { tallyOf, type ShareFacts, type ShareFile, type SharePiece } from './shares';
import { statusOf } from './status';
import { refusal, type Status, type World } from './world';

interface ShareReport {
  /** The path of the report’s file, as people see it. */
  readonly path: string;
  readonly on: string;
  readonly from: Grade;
  readonly files: readonly JudgedFile[];
  readonly shard: ShareFacts;
}

export function addMerge(program: Command, world: World, end: (status: Status) => void): void {
  program
    .command('merge')
    .summary('put the reports of all shares of a run together')
    .description(
      'Puts the reports that `fettle check --format json --shard 1/3`, `2/3` and `3/3` wrote together: the same JSON ' +
        'that one run over all files writes, and its exit status. Reports that are missing, damaged, of another ' +
        'version, day, settings or state of the files are refused.',
    )
    .argument('<files...>', 'the report of each share')
    .option('--output <file>', 'write into a file, whole or not at all')
    .addHelpText('after', '\nExit status: as of the whole run; 2 where reports are refused.')
    .action((paths: string[], { output }: { output?: string }) => end(merge(paths, output, world)));
}

/** @throws Refusal where the reports are not those of one whole run. */
function merge(paths: readonly string[], output: string | undefined, world: World): Status {
  const reports = paths.map((path) => readReport(path, world));
  refuseOthers(reports);
  refuseGaps(reports);
  const [{ on, from, shard }] = reports as [ShareReport];
  const merged = new Merged(shard);
  const texts = inOrder(reports).flatMap(([file, report]) => merged.textsOf(file, report));
  const { tally } = merged;
  tally.cleared += merged.stale;
  const troubles = [...shard.run.walked, ...merged.troubles];
  if (!merged.hasAny && troubles.length === 0) troubles.push(...shard.run.ifNothing);
  tellTroubles(troubles, world);
  const to = openOutput(world, output);
  try {
    to.write(openingJson({ on, from }));
    to.write(texts.map((text) => `\n${text}`).join(separators.json));
    to.write(`\n${closingJson(tally, troubles, { from })}`);
    to.done();
  } finally {
    to.drop();
  }
  return statusOf(tally, troubles, shard.run.fails);
}

const notOne = 'is no report of a share: `fettle check --format json --shard 1/3` writes one.';

function readReport(path: string, world: World): ShareReport {
  const shown = shortPath(path);
  const text = world.report(path);
  if (isTrouble(text)) throw refusal`${shown}: ${text}`;
  let whole: (ShareReport & { readonly shard?: Partial<ShareFacts> }) | null;
  try {
    whole = JSON.parse(text) as typeof whole;
  } catch {
    throw refusal`${shown}: is damaged: it does not end as JSON does, or holds something else.`;
  }
  if (!isObject(whole) || !isObject(whole.shard) || !isObject(whole.shard.run))
    throw refusal`${shown}: ${{ trouble: notOne }}`;
  const { digest, ...facts } = whole.shard;
  // What stands in another version’s report is not known here.
  if (facts.run.version !== world.version) {
    const version = String(facts.run.version);
    throw refusal`${shown}: was written by version ${version} of Fettle; this is version ${world.version}.`;
  }
  if (digest === undefined || digest !== digestIn({ ...whole, shard: facts }, world))
    throw refusal`${shown}: is damaged: it is not as it was written.`;
  return { ...whole, path: shown };
}

/** Undefined for what no run writes: nested too deep to be written. */
function digestIn(report: object, world: World): string | undefined {
  try {
    return digestOf(report, world);
  } catch {
    return undefined;
  }
}

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null;

/** What tells runs apart, in words. */
const apart: readonly (readonly [string, (report: ShareReport) => unknown])[] = [
  ['day', ({ on }) => on],
  ['number of shares', ({ shard }) => shard.of],
  ['paths', ({ shard }) => shard.run.paths],
  [
    'options',
    ({ from, shard: { run } }) => [from, run.fails, run.working, run.allFixes, run.alone, run.language, run.settings],
  ],
  ['state of the files', ({ shard: { run } }) => [run.tree, run.walked]],
];

/** @throws Refusal where a report is of another run than the first. */
function refuseOthers(reports: readonly ShareReport[]): void {
  const [first, ...others] = reports as [ShareReport, ...ShareReport[]];
  for (const other of others)
    for (const [what, of] of apart)
      if (JSON.stringify(of(first)) !== JSON.stringify(of(other)))
        throw refusal`${other.path}: is of another ${{ trouble: what }} than ${first.path}; check all shares alike.`;
  const beside = new Map<string, readonly [string, string]>();
  for (const { path, shard } of reports)
    for (const [file, digest] of Object.entries(shard.beside)) {
      const [before, by] = beside.get(file) ?? [digest, path];
      if (before !== digest)
        throw refusal`${path}: read another text of ${file} than ${by}; check all shares of the same files.`;
      beside.set(file, [digest, by]);
    }
}

/** @throws Refusal where a share is missing or there twice. */
function refuseGaps(reports: readonly ShareReport[]): void {
  const held = new Map<number, string>();
  for (const { path, shard } of reports) {
    const other = held.get(shard.number);
    if (other !== undefined)
      throw refusal`${path}: is share ${shard.number} of ${shard.of}, and so is ${other}; name each share once.`;
    held.set(shard.number, path);
  }
  const { of, run } = reports[0]!.shard;
  const missing = Array.from({ length: of }, (_, i) => i + 1).filter((number) => !held.has(number));
  if (missing.length > 0)
    throw missing.length === 1
      ? refusal`share ${missing.join()} of ${of} is missing; name the reports of all shares.`
      : refusal`shares ${missing.join(', ')} of ${of} are missing; name the reports of all shares.`;
  const files = inOrder(reports);
  if (files.length !== run.files || files.some(([{ file }], i) => file !== i))
    throw refusal`the reports do not hold each file of the run once; check all shares anew.`;
}

const inOrder = (reports: readonly ShareReport[]): (readonly [ShareFile, ShareReport])[] =>
  reports
    .flatMap((report) => report.shard.judged.map((file) => [file, report] as const))
    .sort(([a], [b]) => a.file - b.file);

/** What depends on the order of all files: what is told once, and which findings have fixes looked for. */
class Merged {
  readonly tally = new Tally();
  hasAny = false;
  private readonly budget: Budget;
  private readonly brought = new Set<string>();
  private readonly told = new Map<string, RunTrouble>();
  private readonly absent: (readonly [string, number])[] = [];
  private readonly moved = new Set<string>();

  constructor({ run }: ShareFacts) {
    this.budget = new Budget(run.allFixes ? 'all' : 'first', run.builds);
  }

  get troubles(): readonly RunTrouble[] {
    return [...this.told.values()];
  }

  /** Records of known findings whose files are not there, where nothing was moved. */
  get stale(): number {
    return this.absent.reduce((sum, [file, records]) => sum + (this.moved.has(file) ? 0 : records), 0);
  }

  textsOf({ pieces, troubles, isApart }: ShareFile, { files }: ShareReport): readonly string[] {
    for (const trouble of troubles) {
      const key = JSON.stringify([isApart, trouble.path, trouble.trouble]);
      if (!this.told.has(key)) this.told.set(key, trouble);
    }
    return pieces.flatMap((piece) => {
      if (piece.brought !== undefined && this.brought.has(piece.brought)) return [];
      if (piece.brought !== undefined) this.brought.add(piece.brought);
      const report = this.take(piece, piece.at === null ? undefined : files[piece.at]);
      return report ? [toJson(report)] : [];
    });
  }

  private take(piece: SharePiece, report: JudgedFile | undefined): JudgedFile | undefined {
    const { kind, isBlock, mendable } = piece;
    this.hasAny = true;
    const sought = Math.min(this.budget.shareOf(kind), mendable.length, piece.sought);
    this.budget.passed(kind, isBlock);
    this.budget.left -= sought;
    this.tally.take(tallyOf(piece.tally));
    if (report) this.tally.notMended += mendable.length - sought;
    this.absent.push(...piece.absent);
    for (const file of piece.moved) this.moved.add(file);
    const past = new Set(mendable.slice(sought));
    return report && { ...report, findings: report.findings.map((one, i) => (past.has(i) ? without(one) : one)) };
  }
}

const without = (finding: Finding): Finding => ({ ...finding, fixes: [] });
