// The bench sheet of a build: everything that is printed, in its order, as plain data.
import type { Build } from '../../core/build/build';
import { countsByGrade, type Judgement } from '../../core/judge/finding';
import { grades } from '../../core/manifest/house-file';
import { listed } from '../../core/text';
import type { Language } from '../../core/words/language';
import { english } from '../../core/words/languages';
import { plural } from '../layout';
import { saidOf } from './as-built';
import { atHandBlock } from './at-hand';
import { contextOf, part, type Context } from './context';
import { fullBlocks, shortBlock } from './findings';
import { firmwareBlock } from './firmware';
import { firstStartBlock } from './first-start';
import { handOverBlock } from './hand-over';
import { blocksIn, sheetIn } from './in-language';
import type { Kept } from './kept';
import { lines, oneLine, type Block, type Line, type Sheet, type SheetStep } from './model';
import { pictures } from './pictures';
import type { Picture } from './pictures/picture';
import { promisesBlock, promisesOf } from './promises';
import { testsBlock } from './tests';
import { uncheckedBlock } from './unchecked';
import { workOf, type Work } from './work';

export interface SheetOptions {
  /** The day it is printed, as `2026-11-25`. */
  readonly date: string;
  /** How the build’s file is called where no name stands in it. */
  readonly fileName: string;
  readonly fixes?: Context['fixes'];
  /** What was kept of the sheet of an earlier state of the same build. */
  readonly kept?: Kept;
  /** Absent: English. */
  readonly language?: Language;
}

export function sheetOf(build: Build, judgement: Judgement, options: SheetOptions): Sheet {
  const language = options.language ?? english();
  const context = contextOf(build, judgement, options.fixes, options.kept, language);
  const sheet = sheetFrom(context, options);
  return language.tag === 'en' ? sheet : { ...sheetIn(language, sheet, context.kept), language };
}

function sheetFrom(context: Context, options: SheetOptions): Sheet {
  const { build } = context;
  const { findings, kept } = context;
  const work = keptWork(context);
  const promises = promisesOf(context);
  const firmware = firmwarePart(context, work);
  return {
    ...headOf(context, options),
    blocks: [
      kept.asBefore(kept.of(promises, promisesBlock)),
      kept.asBefore(shortBlock(context)),
      ...pictures(build, findings, kept).map((picture) => kept.of(picture, pictureBlock)),
      part(context, 'at hand', work.kinds, (own) => atHandBlock(own, work.kinds)),
      ...(firmware ? [firmware] : []),
      ...kept.of(work, workBlocks).map((block) => kept.asBefore(block)),
      asBefore(context, 'first start', [work.start], (own) => firstStartBlock(own, work.start)),
      asBefore(context, 'tests', [promises, work.tests], (own) => testsBlock(own, promises, work.tests)),
      asBefore(context, 'hand-over', [work.handOver, saidOf(build)], (own) => handOverBlock(own, work.handOver)),
      kept.asBefore(uncheckedBlock(context)),
      ...fullBlocks(context),
    ],
  };
}

/** The pictures of a build alone, as they are on its sheet. */
export function pictureBlocks(build: Build, judgement: Judgement, kept: Kept, language = english()): readonly Block[] {
  const { findings } = contextOf(build, judgement, undefined, kept, language);
  const blocks = pictures(build, findings, kept).map((picture) => kept.of(picture, pictureBlock));
  return blocksIn(language, blocks, kept);
}

/** The order of work depends on which findings harm or stop, not on what they say. */
function keptWork(context: Context): Work {
  const told = context.findings.map(({ grade, id, subject }) => `${grade} ${id} ${subject}`);
  return part(context, 'work', told, workOf);
}

function firmwarePart(context: Context, work: Work): Block | undefined {
  const number = work.numberOf('update firmware');
  return part(context, 'firmware', [`${number}`], (own) => firmwareBlock(own, number));
}

/** A part of the sheet that is a block: made anew, it is still the one before where it says the same. */
const asBefore: typeof part<Block> = (context, ...made) => context.kept.asBefore(part(context, ...made));

function headOf({ build, judgement, findings }: Context, { date, fileName }: SheetOptions): Omit<Sheet, 'blocks'> {
  const open = findings.filter(({ accepted }) => !accepted);
  const counts = countsByGrade(open);
  const told = grades.flatMap((grade, i) => (counts[i]! > 0 ? [`${counts[i]} ${grade}`] : []));
  const waits = judgement.findings.filter(({ grade }) => grade === 'unknown').length;
  const worst = open[0]?.grade;
  const first =
    worst === 'harm' || worst === 'stop'
      ? `Do not begin yet: ${listed(told)}.`
      : worst
        ? `Nothing harms or stops it: ${listed(told)}.`
        : 'Nothing was found against it.';
  return {
    title: oneLine(build.file.build.value ?? '') || fileName,
    purpose: oneLine(build.file.purpose.value ?? ''),
    verdict: `${first} ${plural(waits, 'answer waits', 'answers wait')} for facts.`,
    ...(worst ? { worst } : {}),
    facts: [{ text: `As of ${date}.` }, ...placeLines(build)],
    write: ['Order or machine', 'Built by', 'Begun on'],
  };
}

/** Where it will stand: what decides at the bench and at its place. */
function placeLines({ file: { place } }: Build): readonly Line[] {
  const { ambient, humidity, altitude, mains } = place;
  const facts = [
    [ambient, 'room at its hottest '],
    [humidity, 'air humidity '],
    [altitude, 'height above the sea '],
    [mains.voltage, 'mains '],
    [mains.circuit, 'circuit '],
  ] as const;
  const told = facts.filter(([fact]) => fact.node).map(([fact, words]) => `${words}${oneLine(fact.text)}`);
  return told.length === 0 ? [] : [{ text: `Where it will stand: ${told.join(', ')}.`, place: 'place' }];
}

const pictureBlock = (picture: Picture): Block => ({
  id: `picture-${picture.id}`,
  heading: picture.title,
  level: 2,
  bodies: [{ type: 'picture', picture }],
});

const whose: Readonly<Record<Work['of'], string>> = {
  parts: 'Worked out from the parts; the build states no order of its own.',
  build: 'The build’s own order; it leaves out nothing that the parts ask for.',
  both: 'Worked out from the parts. What the build alone lists stands between; findings say where its own order fails.',
};

function workBlocks(work: Work): readonly Block[] {
  const stretch = (id: string, heading: string, steps: readonly SheetStep[]): Block[] =>
    steps.length === 0 ? [] : [{ id, heading, level: 3, bodies: [{ type: 'steps', steps }] }];
  return [
    {
      id: 'work',
      heading: 'Order of work',
      level: 2,
      bodies: [
        lines({ text: whose[work.of], place: 'steps' }, { text: 'The makers’ handbooks come before this list.' }),
      ],
    },
    ...stretch('work-before', 'Before the first part', work.before),
    ...stretch('work-bench', 'On the bench', work.bench),
    ...stretch('work-case', 'In the case', work.inCase),
  ];
}
