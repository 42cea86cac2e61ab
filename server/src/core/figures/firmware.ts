// Figures of firmware: which version a board arrives with, which one its processor needs, and how it could be updated.
import type { Build } from '../build/build';
import type { Fact } from '../parts/fact';
import { sameProcessorName } from '../trade/processor-names';
import { compareVersions, type Order } from '../trade/firmware';
import { missing, type Missing } from './figure';
import { memo } from './memo';
import { fits, lacking, sure, type Truth, type Used } from './truth';

type Board = NonNullable<Build['parts']['board']>;
export type ListedLine = NonNullable<Board['part']['processors']['value']>[number];

/** A processor as boards list it: by family, by model, or both. */
export interface Named {
  readonly family: Fact<string>;
  readonly model: Fact<string>;
  readonly maker?: Fact<string>;
}

/** The line of the board’s support list for a processor; or the facts without which it cannot be found. */
export interface Listed {
  readonly line?: ListedLine;
  readonly missingFacts: readonly Missing[];
  readonly uses: readonly Used[];
}

/** The version the board arrives with: the build says it, in either of two ways. */
export function arriving(board: Board): Fact<string> {
  const short = board.at.firmware;
  return short.node?.type === 'map' ? board.part.firmware.arriving : short;
}

/** The board’s versions, oldest first; empty where none are stated. */
export function versionList(board: Board): readonly string[] {
  return board.part.firmware.versions.value?.flatMap((version) => version.value ?? []) ?? [];
}

/** Finds a processor in the board’s list: the line of its model before that of its family. */
export function listedLine(board: Board, processor: Named, label: string): Listed {
  const lines = board.part.processors;
  const uses = [lines, processor.model, processor.family];
  if (!lines.value) return { missingFacts: [missing(lines, `processors listed by ${board.label}`)], uses };
  const byModel = lines.value.find(
    (line) =>
      line.model.value !== undefined &&
      processor.model.value !== undefined &&
      sameProcessorName(line.model.value, processor.model.value, processor.maker?.value),
  );
  const byFamily = lines.value.find(
    (line) =>
      line.model.value === undefined &&
      line.family.value !== undefined &&
      processor.family.value !== undefined &&
      sameProcessorName(line.family.value, processor.family.value, processor.maker?.value),
  );
  const line = byModel ?? byFamily;
  if (line) return { line, missingFacts: [], uses };
  const missingFacts = [
    ...(processor.family.value === undefined && lines.value.some((one) => one.model.value === undefined)
      ? [missing(processor.family, `family of ${label}`)]
      : []),
    ...(processor.model.value === undefined && lines.value.some((one) => one.model.value !== undefined)
      ? [missing(processor.model, `model of ${label}`)]
      : []),
  ];
  return { missingFacts, uses };
}

/** The build’s processor in the board’s list; undefined where the build lacks either. */
export const processorListed = memo((build: Build): Listed | undefined => {
  const { board, processor } = build.parts;
  return board && processor && listedLine(board, processor.part, processor.label);
});

/** Compares two versions by the board’s list, else by their spelling; undefined with the fact that would decide. */
export function versionsCompared(
  board: Board,
  a: Fact<string>,
  aWhat: string,
  b: Fact<string>,
  bWhat: string,
): { order: Order } | { missingFacts: readonly Missing[] } {
  const missingFacts = [
    ...(a.value === undefined ? [missing(a, aWhat)] : []),
    ...(b.value === undefined ? [missing(b, bWhat)] : []),
  ];
  if (missingFacts.length > 0) return { missingFacts };
  const order = compareVersions(a.value!, b.value!, versionList(board));
  return order === undefined
    ? { missingFacts: [missing(board.part.firmware.versions, `order of the firmware versions of ${board.label}`)] }
    : { order };
}

/** Whether version `a` is `b` or later. */
export function atLeastVersion(board: Board, a: Fact<string>, aWhat: string, b: Fact<string>, bWhat: string): Truth {
  const compared = versionsCompared(board, a, aWhat, b, bWhat);
  const uses = [a, b, board.part.firmware.versions];
  return 'order' in compared ? sure(compared.order >= 0, ...uses) : lacking(compared.missingFacts, ...uses);
}

/** Whether the firmware the board arrives with starts the processor. */
export const startsAsItArrives = memo((build: Build): Truth | undefined => {
  const { board } = build.parts;
  const listed = processorListed(build);
  if (!board || !listed) return undefined;
  if (!listed.line) return listed.missingFacts.length > 0 ? lacking(listed.missingFacts, ...listed.uses) : undefined;
  return atLeastVersion(
    board,
    arriving(board),
    `firmware ${board.label} arrives with`,
    listed.line.since,
    `first firmware of ${board.label} for the processor`,
  );
});

/** Whether an older processor on hand starts under the firmware the board arrives with. */
export function olderStarts(board: Board, older: Named): Truth {
  const listed = listedLine(board, older, 'the older processor');
  if (!listed.line)
    return listed.missingFacts.length > 0 ? lacking(listed.missingFacts, ...listed.uses) : sure(false, ...listed.uses);
  return atLeastVersion(
    board,
    arriving(board),
    `firmware ${board.label} arrives with`,
    listed.line.since,
    'first firmware for the older processor',
  );
}

/** Whether the planned update goes whatever version the board arrives with; its details are judged by themselves. */
export function goesFromAny(build: Build, board: Board): Truth {
  const by = plannedUpdate(build)?.by;
  if (by?.value === 'service') return sure(true, by);
  if (by?.value === 'management controller')
    return fits(
      board.part.firmware['update-by-controller'],
      `whether the management controller of ${board.label} updates it`,
      (can) => can,
    );
  if (by?.value !== 'stick without processor') return sure(false);
  return fits(
    board.part.firmware['update-without-processor'],
    `update without processor of ${board.label}`,
    (can) => can,
  );
}

/** The planned update, where the build plans one. */
export function plannedUpdate(build: Build): Build['file']['bench']['firmware-update'] | undefined {
  const update = build.file.bench['firmware-update'];
  return update.$.stated ? update : undefined;
}
