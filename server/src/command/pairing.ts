// Pairs the files of two sides: by path, and what stands on one side alone with what was moved or renamed: what keeps
// most lines, else its name or what its build is called.
import { isTrouble, lastStep } from '../host/host';
import { fileRef } from '../session/texts';
import type { Side, SideFile, SideFiles } from './sides';

export interface Pair {
  readonly before?: SideFile;
  readonly after?: SideFile;
}

/** Files looked at for having been moved, on each side; past it only those of one path are pairs. */
const mostMoved = 400;
/** The share of lines that a moved file keeps at least. */
const leastAlike = 0.5;

export async function pairsOf(before: Side, after: Side, old: SideFiles, now: SideFiles): Promise<Pair[]> {
  const was = new Map(old.files.map((file) => [file.key, file]));
  const is = new Map(now.files.map((file) => [file.key, file]));
  const both = now.files.flatMap((file): Pair[] => {
    const other = was.get(file.key);
    return other ? [{ before: other, after: file }] : [];
  });
  const gone = old.files.filter(({ key }) => !is.has(key));
  const come = now.files.filter(({ key }) => !was.has(key));
  const moved =
    gone.length * come.length === 0 ? new Map<SideFile, SideFile>() : await movedAmong(before, after, gone, come);
  const found = new Set(moved.values());
  return [
    ...both,
    ...come.map((file): Pair => {
      const from = moved.get(file);
      return from ? { before: from, after: file } : { after: file };
    }),
    ...gone.filter((file) => !found.has(file)).map((file): Pair => ({ before: file })),
  ];
}

/** Where files that came were before: those that keep most lines first, each from one place. */
async function movedAmong(
  before: Side,
  after: Side,
  gone: readonly SideFile[],
  come: readonly SideFile[],
): Promise<Map<SideFile, SideFile>> {
  if (gone.length > mostMoved || come.length > mostMoved) return new Map();
  const linesBefore = await linesIn(before, gone);
  const linesAfter = await linesIn(after, come);
  const likely = come.flatMap((file) =>
    gone
      .filter(({ kind }) => kind === file.kind && kind !== 'house')
      .map((from) => ({ file, from, share: shareOf(linesBefore.get(from)!, linesAfter.get(file)!) }))
      .filter(
        ({ from, share }) =>
          share >= leastAlike ||
          lastStep(from.key) === lastStep(file.key) ||
          isCalledAlike(file, linesBefore.get(from)!, linesAfter.get(file)!),
      ),
  );
  likely.sort((a, b) => b.share - a.share);
  const moved = new Map<SideFile, SideFile>();
  const taken = new Set<SideFile>();
  for (const { file, from } of likely) {
    if (moved.has(file) || taken.has(from)) continue;
    moved.set(file, from);
    taken.add(from);
  }
  return moved;
}

type Lines = ReadonlySet<string>;

async function linesIn({ host, loader }: Side, files: readonly SideFile[]): Promise<Map<SideFile, Lines>> {
  const all = new Map<SideFile, Lines>();
  for (const file of files) {
    const read = await loader.texts.read(fileRef(host, file.root, file.name));
    const text = read === undefined || isTrouble(read) ? '' : read.text;
    const lines = text.split(/\r\n|\r|\n/).map((line) => line.trim());
    all.set(file, new Set(lines.filter((line) => line !== '')));
  }
  return all;
}

/** Whether two builds bear one name, as a whole line says it. */
function isCalledAlike({ kind }: SideFile, before: Lines, after: Lines): boolean {
  const title = kind === 'build' ? [...before].find((line) => line.startsWith('build:')) : undefined;
  return title !== undefined && after.has(title);
}

/** The lines in common as a share of the longer. */
function shareOf(a: Lines, b: Lines): number {
  let common = 0;
  for (const line of a) if (b.has(line)) common++;
  return common / Math.max(1, a.size, b.size);
}
