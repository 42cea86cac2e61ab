// Compares two sides: finds the builds that the change touches, judges them on both, and hands both to the comparison.
import { languageOf } from '../core/words/names';
import { isTrouble, lastStep, nameBelow } from '../host/host';
import { pairBlocks } from '../review/blocks';
import { compareFile, lackCount, type JudgedSide } from '../review/compare';
import { alters, changeKinds, type Comparison, type FileComparison, type Trouble } from '../review/comparison';
import type { Language } from '../core/words/language';
import type { LoadedFile } from '../session/loader';
import { failedWords, troubleAt, type RunTrouble } from '../session/run-trouble';
import { fileRef, heldByRun } from '../session/texts';
import { mayRestOn } from '../session/users';
import type { RestsOn } from '../session/walk';
import { pairsOf, type Pair } from './pairing';
import { filesOf, isAsked, type Side, type SideFile, type SideFiles } from './sides';

export async function compareSides(before: Side, after: Side, on: string, language?: Language): Promise<Comparison> {
  return new Comparing(before, after, await filesOf(before), await filesOf(after), language).run(on);
}

/** One side at work: what it holds, and what of it could not be read. */
interface Work {
  readonly side: Side;
  readonly all: SideFiles;
  readonly troubles: Map<string, RunTrouble>;
}

const workOn = (side: Side, all: SideFiles): Work => ({
  side,
  all,
  troubles: new Map(all.troubles.map((one) => [`${one.path}\n${one.trouble}`, one])),
});

class Comparing {
  private readonly before: Work;
  private readonly after: Work;
  private readonly files: FileComparison[] = [];
  private builds = 0;
  private touched = 0;
  private unknown = 0;

  constructor(
    before: Side,
    after: Side,
    old: SideFiles,
    now: SideFiles,
    private readonly language: Language | undefined,
  ) {
    this.before = workOn(before, old);
    this.after = workOn(after, now);
  }

  async run(on: string): Promise<Comparison> {
    const { before, after } = this;
    const pairs = await pairsOf(before.side, after.side, before.all, after.all);
    const changed = await this.changedAmong(pairs);
    const restsOn = [...changed].flatMap((pair) =>
      [pair.before, pair.after].flatMap((file) => (file ? use(file) : [])),
    );
    const ofBuilds = restsOn.filter(({ isBuild }) => !isBuild);
    for (const pair of pairs) {
      const { kind } = (pair.after ?? pair.before)!;
      if (![pair.before, pair.after].some((file) => file && isAsked(file))) continue;
      if (kind === 'build') this.builds++;
      const mayRest = kind === 'guide' ? restsOn : kind === 'build' ? ofBuilds : [];
      if (changed.has(pair) || (await this.mentions(pair, mayRest))) await this.compare(pair);
      for (const { side } of [before, after]) side.loader.texts.evict(heldByRun);
    }
    return {
      before: before.side.label,
      after: after.side.label,
      on,
      files: this.files.sort(byWeight),
      covers: { builds: this.builds, touched: this.touched, unknown: this.unknown },
      troubles: [...told('before', before), ...told('after', after)],
    };
  }

  /** Pairs whose text is not the same, or that stand on one side alone or elsewhere. */
  private async changedAmong(pairs: readonly Pair[]): Promise<ReadonlySet<Pair>> {
    const changed = new Set<Pair>();
    for (const pair of pairs) {
      const [was, now] = [await textOf(this.before, pair.before), await textOf(this.after, pair.after)];
      if (was !== now || pair.before?.key !== pair.after?.key) changed.add(pair);
      for (const { side } of [this.before, this.after]) side.loader.texts.evict(heldByRun);
    }
    return changed;
  }

  private async mentions({ after }: Pair, restsOn: readonly RestsOn[]): Promise<boolean> {
    const text = restsOn.length > 0 ? await textOf(this.after, after) : undefined;
    return text !== undefined && mayRestOn(text, restsOn);
  }

  private async compare({ before, after }: Pair): Promise<void> {
    const [was, now] = [await load(this.before, before), await load(this.after, after)];
    if (!was && !now) return;
    const because = restDiffering(this.before, was, this.after, now);
    const isSame = was && now && was.doc.text === now.doc.text && before?.key === after?.key;
    if (isSame && because.length === 0) return;
    this.compareSides(was && judged(this.before, was), now && judged(this.after, now), because);
    for (const pair of pairBlocks(was?.blocks ?? [], now?.blocks ?? []))
      this.compareSides(
        pair.before && judged(this.before, { ...was!, ...pair.before }),
        pair.after && judged(this.after, { ...now!, ...pair.after }),
        because,
        'block',
      );
  }

  private compareSides(
    was: JudgedSide | undefined,
    now: JudgedSide | undefined,
    because: readonly string[],
    of: 'file' | 'block' = 'file',
  ): void {
    const build = now?.build ?? was?.build;
    const told = this.language ? { language: languageOf(this.language, build) } : {};
    const compared = compareFile(was && { ...was, ...told }, now && { ...now, ...told }, because);
    if (of === 'block') {
      this.builds += compared.kind === 'build' ? 1 : 0;
      if (compared.state === 'touched' && !alters(compared)) return;
    }
    this.files.push(compared);
    if (compared.kind !== 'build') return;
    this.touched++;
    this.unknown += now ? lackCount(now) : 0;
  }
}

const told = (side: Trouble['side'], { troubles }: Work): Trouble[] =>
  [...troubles.values()].map((one) => ({ side, ...one }));

/** How others may come to rest on a file: on settings all do, on a part or a build those that hold its name’s end. */
function use({ kind, name }: SideFile): RestsOn[] {
  if (kind === 'house' || kind === 'known' || kind === 'asbuilt') return [{ path: name }];
  if (kind === 'build') return [{ path: name, word: lastStep(name), isBuild: true }];
  if (kind !== 'part') return [];
  return [{ path: name, word: lastStep(name).replace(/\.part\.yaml$/, '') }];
}

async function textOf({ side }: Work, file: SideFile | undefined): Promise<string | undefined> {
  const read = file && (await side.loader.texts.read(fileRef(side.host, file.root, file.name)));
  if (read === undefined) return undefined;
  // What cannot be read differs from any text, and from nothing.
  return isTrouble(read) ? `\0${read.trouble}` : read.text;
}

async function load({ side, troubles }: Work, file: SideFile | undefined): Promise<LoadedFile | undefined> {
  if (!file) return undefined;
  const { host, loader } = side;
  const place = fileRef(host, file.root, file.name);
  const loaded = await loader.load(place);
  const tell = (name: string, trouble: string): void => {
    const one = troubleAt(host.shown(file.root, name), trouble);
    troubles.set(`${one.path}\n${trouble}`, one);
  };
  // Nothing ties such a text to a build.
  if (!loaded && file.kind === 'guide' && loader.texts.troubleAt(place.path) === undefined) return undefined;
  if (!loaded) tell(file.name, loader.texts.troubleAt(place.path) ?? 'there is no such file.');
  for (const { name, trouble } of loaded?.troubles ?? []) tell(name, trouble);
  for (const failed of loaded?.judgement.failed ?? []) tell(file.name, failedWords(failed));
  return loaded;
}

export const judged = ({ all }: Pick<Work, 'all'>, { place, doc, judgement, build }: LoadedFile): JudgedSide => ({
  doc,
  judgement,
  ...(build ? { build } : {}),
  shown: (one) => all.keyOf(place.root, one.name),
});

/** The files that a build rests on, on either side, and that are not the same on both; itself left out. */
function restDiffering(old: Work, was: LoadedFile | undefined, now: Work, is: LoadedFile | undefined): string[] {
  if (!(was?.build || was?.guide) || !(is?.build || is?.guide)) return [];
  const [a, b] = [restOf(old, was), restOf(now, is)];
  return [...new Set([...a.keys(), ...b.keys()])].filter((key) => a.get(key) !== b.get(key)).sort();
}

function restOf({ all, side }: Work, { place, reads, doc }: LoadedFile): Map<string, string> {
  const rest = new Map<string, string>();
  const root = side.host.pathIn(place.root, '');
  for (const [path, read] of reads) {
    if (!read || read === doc) continue;
    rest.set(all.keyOf(place.root, nameBelow(root, path) ?? path), read.text);
  }
  return rest;
}

/** Files with the worst changes first, then by path. */
export function byWeight(a: FileComparison, b: FileComparison): number {
  return weight(a) - weight(b) || (a.file < b.file ? -1 : 1);
}

function weight(file: FileComparison): number {
  const first = file.findings[0];
  if (!alters(file) || !first) return 1000;
  const grades = ['harm', 'stop', 'shortfall', 'note', 'unknown'];
  return changeKinds.indexOf(first.kind) * 10 + grades.indexOf((first.after ?? first.before)!.grade);
}
