// What an unsaved change of a part file does: the builds that use it are judged with the saved text and with the new.
import { Build } from '../core/build/build';
import { judgeBuild } from '../core/judge/judge';
import type { Doc } from '../core/parts/doc';
import { changeBetween, type Change } from '../features/lenses';
import type { Named } from '../features/subject';
import type { AddressedFile } from '../session/session';
import type { Asker } from '../session/use-index';
import type { Shared } from './findings';
import { cancelled } from './guard';

/** So many builds are tried, for so long; of the others nothing is said. */
const mostBuilds = 200;
const mostMs = 500;

/** A change for each build that was tried; undefined where the text is saved, or never was. */
export async function unsavedChanges(
  { session }: Shared,
  { place, partName }: AddressedFile & Named,
  uris: readonly string[],
  asker: Asker,
  pause: () => Promise<void>,
): Promise<Change[] | undefined> {
  const saved = await session.texts.saved(place);
  if (!saved) return undefined;
  const changes: Change[] = [];
  const begun = performance.now();
  for (const uri of uris.slice(0, mostBuilds)) {
    if (changes.length > 0 && performance.now() - begun > mostMs) break;
    const judged = await session.judge(uri);
    if (judged?.build) {
      const { build } = judged;
      const find = (name: string): Doc | undefined => (name === partName ? saved : build.find(name));
      const before = judgeBuild(new Build(build.doc, find, build.house, build.today, build.machine));
      changes.push(changeBetween(before, judged.judgement));
    }
    await pause();
    if (asker.stopped()) throw cancelled();
  }
  return changes;
}
