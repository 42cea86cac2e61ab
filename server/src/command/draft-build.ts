// `fettle draft build`: a build of a machine that stands already, from the outputs of common tools.
import type { Command } from 'commander';
import { kindOfPart } from '../core/build/placed';
import { distil } from '../core/machine/distill';
import { buildDraft } from '../core/machine/draft';
import { partDrafts, type PartDraft } from '../core/machine/draft-parts';
import { isBuildName } from '../features/first-files';
import { isTrouble } from '../host/host';
import { safe } from '../report/layout';
import { unreadText } from '../report/verify-text';
import { placeOfPart } from '../session/new-part';
import { readOutputs } from '../session/outputs';
import { shortPath } from '../session/run-trouble';
import { Texts } from '../session/texts';
import { currentFolder, writeNew } from './new-files';
import { refusal, type Status, type World } from './world';

export function addDraftBuild(draft: Command, world: World, end: (status: Status) => void): void {
  draft
    .command('build')
    .summary('draft a build from the outputs of a machine')
    .description(
      'Reads a folder of outputs, as the script that `fettle collect` prints writes it, and writes a build with ' +
        'what they say of each part and the line behind it. Parts that say what they are called have part files; ' +
        'what may be no part of the machine stands in comments. No file is ever written over.',
    )
    .argument('<folder>', 'the folder that holds the outputs')
    .option('--as <name>', 'what the build is called', 'machine')
    .addHelpText('after', '\nExit status: 0 written; 2 nothing was written, and why.')
    .action(async (folder: string, { as }: { as: string }) => end(await draftBuild(folder, as, world)));
}

async function draftBuild(folder: string, name: string, world: World): Promise<Status> {
  if (!isBuildName(name))
    throw refusal`${shortPath(name)}: a build is called by letters, digits, blanks, - and _ here.`;
  const read = await readOutputs(world.host, folder);
  if (isTrouble(read)) throw refusal`${shortPath(folder)}: ${read}`;
  const { machine, unknown } = distil(read.docs, read.shown, world.today);
  const parts = await partFiles(partDrafts(machine, world.today), world);
  const text = buildDraft(machine, name, new Set(parts.map(({ draft }) => draft.name)));
  if (text === undefined) throw refusal`${shortPath(folder)}: no output there says anything of a part.`;
  const language = world.language();
  const file = `${name.toLowerCase().replace(/ +/g, '-')}.pcbuild.yaml`;
  const written = parts.filter(({ stands }) => !stands);
  const all = new Map([[file, text], ...written.map(({ path, draft }) => [path, draft.text] as const)]);
  writeNew(all, refusal`${file}: is there already; nothing was written.`, world);
  for (const line of unreadText(unknown, language)) world.err(`fettle: ${line}\n`);
  const files = [file, ...written.map(({ path }) => path)].map(safe).join(', ');
  const next = language.words`Next: look it over, then fettle check ${safe(file)}`;
  world.out(`${language.words`Wrote ${files}.`}\n${next}\n`);
  return 0;
}

interface PartFile {
  readonly draft: PartDraft;
  readonly path: string;
  /** A part file of that name and kind, which is used as it stands. */
  readonly stands: boolean;
}

/** Where each part file is to lie; what stands there and is of another kind leaves the part spelled out. */
async function partFiles(drafts: readonly PartDraft[], { host }: World): Promise<readonly PartFile[]> {
  const { root } = await currentFolder(host);
  const texts = new Texts();
  const files: PartFile[] = [];
  for (const draft of drafts) {
    const place = await placeOfPart(texts, host, root, draft.name);
    if (!place) continue;
    const before = await texts.read(place);
    const path = host.shown(place.root, place.name);
    if (before === undefined) files.push({ draft, path, stands: false });
    else if (!isTrouble(before) && kindOfPart(before) === draft.kind) files.push({ draft, path, stands: true });
  }
  return files;
}
