// Guides and the builds that their front matter names, when the editor moves either: by which path each is found then.
import { kindOfFile } from '../core/parts/doc';
import { isTrouble, nameFrom, pathBetween } from '../host/host';
import type { AddressedHost } from '../host/addressed';
import type { Named } from '../features/subject';
import type { AddressedFile } from '../session/session';
import { fileRef, type FileRef } from '../session/texts';
import type { Asker } from '../session/use-index';
import type { Across } from './across';
import type { Shared } from './findings';
import { nameInWorkspace, type Move } from './moves';

type Place = FileRef<AddressedHost>;

/** A move within a workspace, by names below its root; `to` is undefined where it leads out. */
interface NamedMove {
  readonly place: Place;
  readonly to: string | undefined;
}

interface GuideLeft {
  readonly guide: AddressedFile & Named;
  /** The path by which it names its build once all is moved. */
  readonly path: string;
}

/** The guides that would lose their build to some moves. */
export async function* guidesLeft(
  shared: Shared,
  across: Across,
  moves: readonly Move[],
  asker: Asker,
): AsyncGenerator<GuideLeft> {
  const named = (await Promise.all(moves.map((move) => namedMove(shared, move)))).flatMap((move) => move ?? []);
  for (const root of new Set(named.map(({ place }) => place.root))) {
    const own = named.filter(({ place }) => place.root === root);
    for await (const guide of across.readAll(await guidesAmong(across, own, asker), asker)) {
      const path = pathAfter(guide, own);
      if (path !== undefined) yield { guide, path };
    }
  }
}

/** Part files and settings are no concern of a guide’s front matter. */
async function namedMove({ session }: Shared, { oldUri, newUri }: Move): Promise<NamedMove | undefined> {
  const kind = session.kindAt(oldUri);
  const target = session.hostFor(newUri)?.pathOf(newUri);
  const host = session.hostFor(oldUri);
  const path = host?.pathOf(oldUri);
  if (!host || path === undefined || kind === 'part' || kind === 'house') return undefined;
  const found = await host.find(path);
  if (isTrouble(found) || (!kind && found.kind !== 'folder')) return undefined;
  const place = fileRef(host, found.root, found.name);
  return { place, to: target === undefined ? undefined : nameInWorkspace({ place }, target) };
}

/** The guides that moves may concern: those that are moved, and, where a build may be, all of the workspace. */
async function guidesAmong(across: Across, moves: readonly NamedMove[], asker: Asker): Promise<readonly Place[]> {
  const isGuide = ({ name }: Place): boolean => kindOfFile(name) === 'guide';
  const places = moves.map(({ place }) => place);
  if (places.every(isGuide)) return places;
  const all = (await across.index.filesOf(places[0]!)).filter(isGuide);
  const mayName = (text: string): boolean => /^build[ \t]*:/m.test(text);
  return across.index.filesWhere(
    all,
    (file) => {
      const text = across.index.textOf(file);
      return text instanceof Promise ? text.then(mayName) : mayName(text);
    },
    asker,
  );
}

/** The path that a guide has to name after some moves; undefined where its own still leads there, or nothing does. */
function pathAfter({ guide, doc }: Named, moves: readonly NamedMove[]): string | undefined {
  const { named, ties } = guide ?? {};
  if (!named || !ties?.build) return undefined;
  const [at, build] = [moved(doc.name, moves), moved(named.doc.name, moves)];
  if (at === undefined || kindOfFile(build ?? '') !== 'build' || nameFrom(at, ties.build.path) === build)
    return undefined;
  return pathBetween(at, build!);
}

/** The name of a file after some moves. */
function moved(name: string, moves: readonly NamedMove[]): string | undefined {
  const holds = (folder: string): boolean => name === folder || name.startsWith(`${folder}/`);
  const move = moves.find(({ place }) => place.name !== '' && holds(place.name));
  return move ? move.to && move.to + name.slice(move.place.name.length) : name;
}
