// `fettle draft part`: the facts that data sheets print, as a part file; what is not plain stays a comment in it.
import type { Command } from 'commander';
import { kindNames, type Kind } from '../core/parts/kinds';
import { addFacts } from '../core/sheets/add';
import {
  drawFrom,
  partNameOf,
  partText,
  togetherOf,
  type Draft,
  type SheetInput,
  type SheetReaders,
  type Unread,
} from '../core/sheets';
import type { Language } from '../core/words/language';
import { isTrouble } from '../host/host';
import { safe } from '../report/layout';
import { shortPath } from '../session/run-trouble';
import { sheetReaders } from '../session/sheet-readers';
import { Texts, type FileRef } from '../session/texts';
import { addDraftBuild } from './draft-build';
import { kindCalled, placeOfNew, writeNew } from './new-files';
import { refusal, type Refusal, type Status, type World } from './world';

interface Asked {
  readonly kind?: string;
  readonly as?: string;
  readonly add?: true;
  readonly variant?: string;
  readonly all?: true;
}

export function addDraft(program: Command, world: World, end: (status: Status) => void): void {
  const draft = program
    .command('draft')
    .summary('draft a part file from data sheets, or a build from a machine')
    .description('Drafts files from what others have written down; what is drafted is to be looked over.');
  addDraftBuild(draft, world, end);
  draft
    .command('part')
    .summary('draft a part file from data sheets')
    .description(
      'Reads data sheets, as they were copied or saved: text, HTML, CSV, TSV, JSON; the EDID of a display, binary or ' +
        'in hexadecimal; what decode-dimms prints, or smartctl -x -j. Each fact that label and value say plainly is ' +
        'written with the sheet’s own words behind it. No file is ever written over.',
    )
    .argument('<file...>', 'the sheets of one part; - is standard input')
    .option('--kind <kind>', `what the part is, where the sheet does not say: ${kindNames.join(', ')}`)
    .option('--as <maker/model>', 'what the part file is to be called')
    .option('--add', 'add to the part file that stands the facts that it lacks')
    .option('--variant <name>', 'which of several variants in one table, by its name or number')
    .option('--all', 'list the lines that nothing was read from')
    .addHelpText('after', '\nExit status: 0 written; 2 nothing was written, and why.')
    .action(async (files: readonly string[], asked: Asked) => {
      const read = await readAll(files, asked, world);
      await write(read, asked, world);
      end(0);
    });
}

async function readAll(files: readonly string[], asked: Asked, world: World): Promise<Draft> {
  const kind = asked.kind === undefined ? undefined : kindCalled(asked.kind);
  const readers = await sheetReaders();
  const drafts: { name: string; draft: Draft }[] = [];
  for (const name of files) {
    const text = name === '-' ? await world.input() : world.sheet(name);
    if (isTrouble(text)) throw refusal`${shortPath(name)}: ${text}`;
    const drawn = drawFrom(
      { name, text },
      {
        ...readers,
        ...(kind === undefined ? {} : { kind }),
        ...(asked.variant === undefined ? {} : { variant: asked.variant }),
        ...(asked.as === undefined ? {} : { name: asked.as }),
      },
    );
    if (!('draft' in drawn)) throw unplain(name, drawn.candidates);
    const plain = kind === undefined ? undefined : plainKind(drawn.draft, { name, text }, readers);
    if (plain) throw refusal`${shortPath(name)}: it speaks of a ${plain}, not of a ${drawn.draft.kind}.`;
    drafts.push({ name, draft: drawn.draft });
  }
  const draft = togetherOf(drafts);
  const other = drafts.find((one) => one.draft.kind !== (kind ?? draft.kind));
  if (other)
    throw refusal`${shortPath(other.name)}: it speaks of a ${other.draft.kind}, not of a ${kind ?? draft.kind}.`;
  if (draft.variants.length > 0) throw variantsOf(draft.variants, asked.variant);
  if (draft.facts.length === 0 && draft.perhaps.length === 0)
    throw refusal`no fact could be read; nothing was written.`;
  return draft;
}

/** How many facts of the asked kind make a sheet one of it, and how many of another make it plainly that one’s. */
const leastOfAsked = 2;
const leastOfOther = 4;

/** The kind that a sheet plainly speaks of, where hardly a fact of the asked one stands in it. */
function plainKind(draft: Draft, input: SheetInput, ways: SheetReaders): Kind | undefined {
  if (ownFacts(draft) >= leastOfAsked) return undefined;
  const drawn = drawFrom(input, ways);
  return 'draft' in drawn && drawn.draft.kind !== draft.kind && ownFacts(drawn.draft) >= leastOfOther
    ? drawn.draft.kind
    : undefined;
}

const ownFacts = ({ facts }: Draft): number =>
  facts.filter(({ path }) => !['maker', 'model', 'mass', 'in-the-box'].includes(path[0]!)).length;

function unplain(name: string, candidates: readonly Kind[]): Refusal {
  const file = shortPath(name);
  return candidates.length === 0
    ? refusal`${file}: of which kind of part it speaks is not plain; say it with --kind.`
    : refusal`${file}: of which kind of part it speaks is not plain, perhaps ${candidates.join(', ')}; --kind says it.`;
}

function variantsOf(names: readonly string[], asked: string | undefined): Refusal {
  const all = [...new Set(names)].map(safe).join(', ');
  return asked === undefined
    ? refusal`the sheet tells several variants apart: ${all}; name one with --variant.`
    : refusal`there is no variant ${safe(asked)}; the sheet has ${all}; name one with --variant.`;
}

async function write(draft: Draft, asked: Asked, world: World): Promise<void> {
  const name = asked.as ?? partNameOf(draft.facts);
  if (name === undefined) throw refusal`maker and model were not both read; name the part with --as maker/model.`;
  const place = await placeOfNew(name, world.host);
  const path = world.host.shown(place.root, place.name);
  const facts = asked.add ? await addTo(place, path, draft, world) : create(path, draft, name, world);
  world.out(summary(path, draft, facts, asked.all === true, world.language()));
}

function create(path: string, draft: Draft, name: string, world: World): number {
  const text = partText(draft, {
    today: world.today,
    title: draft.title ?? world.language().words`Data sheet of ${name}`,
  });
  const isThere = refusal`${shortPath(path)}: it stands there already; --add adds the facts that it lacks.`;
  writeNew(new Map([[path, text]]), isThere, world);
  return draft.facts.length;
}

async function addTo(place: FileRef, path: string, draft: Draft, world: World): Promise<number> {
  const before = await new Texts().read(place);
  if (before === undefined) return create(path, draft, path, world);
  if (isTrouble(before)) throw refusal`${shortPath(path)}: ${before}`;
  const kind = before.topText('kind')?.text;
  if (kind !== undefined && kind !== draft.kind)
    throw refusal`${shortPath(path)}: it holds a ${safe(kind)}, and the sheet speaks of a ${draft.kind}.`;
  const { text, facts } = addFacts(before.text, draft);
  const trouble = text === before.text ? undefined : world.rewrite(place.root, place.path, before.text, text);
  if (trouble) throw refusal`${shortPath(path)}: ${trouble}`;
  return facts.length;
}

function summary(path: string, draft: Draft, facts: number, isAll: boolean, language: Language): string {
  const doubts = draft.perhaps.length + draft.disagreeing.length;
  const unread = draft.unread.length;
  const lines = [
    (facts === 1 ? language.words`${safe(path)}: 1 fact` : language.words`${safe(path)}: ${facts} facts`) +
      `${doubts > 0 ? language.words`, ${doubts} in doubt, as comments` : ''}.`,
    unread === 0 ? language.word('Every line was read.') : unreadWords(unread, isAll, language),
    ...(isAll ? draft.unread.map((one) => unreadLine(one, language)) : []),
    language.words`Next: hold it against the sheet, then fettle check ${safe(path)}`,
  ];
  return `${lines.join('\n')}\n`;
}

const unreadWords = (unread: number, isAll: boolean, language: Language): string =>
  (unread === 1 ? language.word('1 line was not read') : language.words`${unread} lines were not read`) +
  (isAll ? ':' : language.word('; --all lists them.'));

function unreadLine({ line, text, file }: Unread, language: Language): string {
  const at = file === undefined ? language.words`line ${line}` : language.words`${safe(file)}, line ${line}`;
  return `  ${at}: ${safe(text.slice(0, 90))}`;
}
