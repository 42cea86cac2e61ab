// Opens the one build that a sub-command is about.
import { kindOfFile, type Doc } from '../core/parts/doc';
import { isTrouble } from '../host/host';
import { Workspace, type JudgedBuild } from '../host/workspace';
import { safe } from '../report/layout';
import type { FormatOptions, Section } from '../report/section';
import { Refusal, type World } from './world';

export interface OneBuild extends JudgedBuild {
  readonly workspace: Workspace;
  readonly section: Section;
  readonly shown: FormatOptions['shown'];
}

/** @throws Refusal when the path is no build, or the build cannot be read. */
export async function openBuild(path: string, world: World): Promise<OneBuild> {
  const { host } = world;
  const found = await host.find(path);
  if (isTrouble(found)) throw new Refusal(`${path}: ${found.trouble}`);
  if (found.kind !== 'file' || kindOfFile(found.name) !== 'build')
    throw new Refusal(`${path}: is no build; a build is a file whose name ends in .pcbuild.yaml.`);
  const workspace = await Workspace.open(host, found.root, world.today);
  const doc = await workspace.doc(found.name, 'build');
  if (!doc) throw new Refusal(workspace.troubles.map(({ path: at, trouble }) => `${at}: ${trouble}`).join('; '));
  const judged = await workspace.judge(doc);
  const title = judged.build.file.build.value;
  const shown = (one: Doc): string => host.shown(found.root, one.name);
  return { ...judged, workspace, section: { doc, judgement: judged.judgement, ...(title ? { title } : {}) }, shown };
}

/** Says what could not be read or run; true when there was anything. */
export function reportTroubles({ workspace, judgement }: OneBuild, world: World): boolean {
  for (const { path, trouble } of workspace.troubles) world.err(`fettle: ${safe(`${path}: ${trouble}`)}\n`);
  for (const { id, error } of judgement.failed)
    world.err(`fettle: the check ${id} failed by a fault of its own: ${safe(error)}\n`);
  return workspace.troubles.length + judgement.failed.length > 0;
}
