// One build of a workspace, judged for a caller: findings as plain data, with their working and proven fixes.
import type { Doc } from '../core/parts/doc';
import { dayAt, isDay } from '../core/text';
import { languageIn, tags } from '../core/words/languages';
import { Mending } from '../session/mending';
import { explainedJson, sectionJson } from '../report/json';
import { listed, type FormatOptions, type Section } from '../report/section';
import type { LoadedFile, Loader } from '../session/loader';
import { failedWords } from '../session/run-trouble';
import { fileRef } from '../session/texts';
import type { JudgedBuild, JudgeOptions, Workspace } from './face';
import { heldText, OpenWorkspace } from './workspace';

/** @throws Error where the workspace has no such build, or it cannot be read. */
export async function judgeIn(workspace: Workspace, file: string, options: JudgeOptions): Promise<JudgedBuild> {
  const { host, loader: loaderOf } = OpenWorkspace.inside(workspace);
  const found = OpenWorkspace.fileOf(workspace, file);
  if (found?.kind !== 'build') throw new Error(`${file}: the workspace has no such build.`);
  const loader = loaderOf(dayOf(options.on));
  const place = fileRef(host, found.root, found.name);
  const loaded = await loader.load(place);
  if (!loaded) throw new Error(`${file}: ${loader.texts.troubleAt(place.path) ?? 'there is no such file.'}`);
  const shown = ({ name }: Doc): string => host.shown(found.root, name);
  const look = lookOf(options, shown);
  const section = await withFixes(loaded, loader, look, options.fixes ?? 'best');
  loader.texts.evict(heldText);
  const { judgement, fixes } = section;
  return {
    ...sectionJson(section, look),
    explained: explainedJson(new Set(judgement.findings.map(({ check }) => check))),
    fixesNotSought: fixes?.notSought ?? 0,
    notRead: [
      ...loaded.troubles.map(({ name, trouble }) => ({ path: host.shown(found.root, name), trouble })),
      ...judgement.failed.map((failed) => ({ path: file, trouble: failedWords(failed) })),
    ],
  };
}

function lookOf({ language = 'en', working = true }: JudgeOptions, shown: FormatOptions['shown']): FormatOptions {
  if (!tags.includes(language)) throw new TypeError(`${String(language)}: expected one of ${tags.join(', ')}.`);
  return { shown, from: 'unknown', working, accepted: true, language: languageIn(language) };
}

async function withFixes(
  loaded: LoadedFile,
  loader: Loader,
  look: FormatOptions,
  fixes: NonNullable<JudgeOptions['fixes']>,
): Promise<Section> {
  const { doc, judgement, build } = loaded;
  const title = build?.file.build.value;
  const section: Section = { doc, judgement, ...(build ? { build } : {}), ...(title ? { title } : {}) };
  if (fixes === 'none') return section;
  const mending = new Mending(loader, fixes === 'all' ? 'all' : 'first', 1);
  return { ...section, fixes: await mending.fixesOf(section, loaded, listed(section, look)) };
}

/** The day that counts as today. @throws TypeError where what was given is none. */
export function dayOf(on: string | undefined): string {
  if (on === undefined) return dayAt(new Date());
  if (isDay(on)) return on;
  throw new TypeError(`${on}: expected a day as 2027-06-30.`);
}
