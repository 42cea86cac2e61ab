// Opens the one build that a sub-command is about.
import type { Build } from '../core/build/build';
import type { Judgement } from '../core/judge/finding';
import { kindOfFile, type Doc } from '../core/parts/doc';
import { languageOf } from '../core/words/names';
import { isTrouble } from '../host/host';
import { safe } from '../report/layout';
import type { FormatOptions, Section } from '../report/section';
import { Loader, type LoadedFile } from '../session/loader';
import { failedWords, shortPath, troubleAt, type RunTrouble } from '../session/run-trouble';
import { fileRef } from '../session/texts';
import { tellTroubles } from './output';
import { refusal, type World } from './world';

export interface OneBuild {
  readonly build: Build;
  readonly judgement: Judgement;
  readonly loader: Loader;
  readonly loaded: LoadedFile;
  readonly section: Section;
  readonly shown: FormatOptions['shown'];
  /** What could not be read; whoever reads more adds to it. */
  readonly troubles: RunTrouble[];
}

/**
 * @param on the day that counts as today; the world’s where none is given.
 * @throws Refusal when the path is no build, or the build cannot be read.
 */
export async function openBuild(path: string, world: World, on?: string): Promise<OneBuild> {
  const { host, today } = world;
  const found = await host.find(path);
  const shownPath = shortPath(path);
  if (isTrouble(found)) throw refusal`${shownPath}: ${found}`;
  if (found.kind !== 'file' || kindOfFile(found.name) !== 'build')
    throw refusal`${shownPath}: is no build; a build is a file whose name ends in .pcbuild.yaml.`;
  const loader = new Loader(() => on ?? today);
  const place = fileRef(host, found.root, found.name);
  const loaded = await loader.load(place);
  const { build } = loaded ?? {};
  if (!loaded || !build) {
    const trouble = loader.texts.troubleAt(place.path) ?? 'there is no such file.';
    throw refusal`${shownPath}: ${{ trouble }}`;
  }
  const { doc, judgement } = loaded;
  const title = build.file.build.value;
  const shown = (one: Doc): string => host.shown(found.root, one.name);
  const troubles = loaded.troubles.map(({ name, trouble }) => troubleAt(host.shown(found.root, name), trouble));
  return {
    build,
    judgement,
    loader,
    loaded,
    section: { doc, judgement, ...(title ? { title } : {}) },
    shown,
    troubles,
  };
}

/** Says, where it is so, that not everything in the build itself was read; true then. */
export function reportUnread({ build, judgement, shown }: OneBuild, world: World): boolean {
  const unread = judgement.findings.find(({ check }) => check.unread);
  if (!unread) return false;
  const language = languageOf(world.language(), build);
  const said = language.words`${shown(build.doc)}: not everything was read: ${language.said(unread.said)}`;
  world.err(`fettle: ${safe(said)}\n`);
  return true;
}

/** Says what could not be read or run; true when there was anything. */
export function reportTroubles({ troubles, judgement }: OneBuild, world: World): boolean {
  const all = [...troubles, ...judgement.failed.map((failed) => ({ path: '', trouble: failedWords(failed) }))];
  tellTroubles(all, world);
  return all.length > 0;
}
