// Opens the one build that a sub-command is about.
import type { Build } from '../core/build/build';
import type { Judgement } from '../core/judge/finding';
import { kindOfFile, type Doc } from '../core/parts/doc';
import { isTrouble } from '../host/host';
import { safe } from '../report/layout';
import type { FormatOptions, Section } from '../report/section';
import { Loader, type LoadedFile } from '../session/loader';
import { shortPath, troubleAt, type RunTrouble } from '../session/run-trouble';
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

/** @throws Refusal when the path is no build, or the build cannot be read. */
export async function openBuild(path: string, world: World): Promise<OneBuild> {
  const { host } = world;
  const found = await host.find(path);
  const shownPath = shortPath(path);
  if (isTrouble(found)) throw refusal`${shownPath}: ${found}`;
  if (found.kind !== 'file' || kindOfFile(found.name) !== 'build')
    throw refusal`${shownPath}: is no build; a build is a file whose name ends in .pcbuild.yaml.`;
  const loader = new Loader(() => world.today);
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

/** Says what could not be read or run; true when there was anything. */
export function reportTroubles({ troubles, judgement }: OneBuild, world: World): boolean {
  tellTroubles(troubles, world);
  const language = world.language();
  for (const { id, error } of judgement.failed)
    world.err(`fettle: ${safe(language.words`the check ${id} failed by a fault of its own: ${error}`)}\n`);
  return troubles.length + judgement.failed.length > 0;
}
