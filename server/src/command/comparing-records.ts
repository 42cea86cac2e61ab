// Compares two records of machines by themselves, wherever they lie and whatever build they belong to.
import { isTrouble } from '../host/host';
import { kindOfFile } from '../core/parts/doc';
import { compareFile } from '../review/compare';
import type { Comparison, FileComparison } from '../review/comparison';
import { Loader, type LoadedFile } from '../session/loader';
import { shortPath } from '../session/run-trouble';
import { fileRef } from '../session/texts';
import { refusal, type World } from './world';

/** Undefined where not both name a record that lies here. @throws Refusal where one cannot be read. */
export async function compareRecords(
  base: string,
  head: string,
  on: string,
  world: World,
): Promise<Comparison | undefined> {
  if (![base, head].every((path) => kindOfFile(path.replaceAll('\\', '/')) === 'asbuilt')) return undefined;
  const [before, after] = [await recordAt(base, on, world), await recordAt(head, on, world)];
  const files = before.doc.text === after.doc.text ? [] : [between(before, after, world)];
  return { before: base, after: head, on, files, covers: { builds: 0, touched: 0, unknown: 0 }, troubles: [] };
}

function between(before: LoadedFile, after: LoadedFile, { host, language }: World): FileComparison {
  const side = ({ doc, judgement, place }: LoadedFile) => ({
    doc,
    judgement,
    language: language(),
    shown: () => host.shown(place.root, place.name),
  });
  // Neither was moved: both lie here.
  const { movedFrom: _, ...compared } = compareFile(side(before), side(after));
  return { ...compared, state: 'changed' };
}

async function recordAt(path: string, on: string, { host }: World): Promise<LoadedFile> {
  const found = await host.find(path);
  if (isTrouble(found)) throw refusal`${shortPath(path)}: ${found}`;
  const loader = new Loader(() => on);
  const place = fileRef(host, found.root, found.name);
  const loaded = found.kind === 'file' ? await loader.load(place) : undefined;
  if (!loaded) {
    const trouble = loader.texts.troubleAt(place.path) ?? 'is no file.';
    throw refusal`${shortPath(path)}: ${{ trouble }}`;
  }
  return loaded;
}
