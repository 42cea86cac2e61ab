// What the finished machine said of itself, for the hand-over record: from its record beside the build.
import type { Build } from '../../core/build/build';
import { recordText } from '../../core/figures/built-record';
import { type AnyPair, cardPairs, displayPairs, drivePairs } from '../../core/figures/built-pairs';
import type { AsBuilt } from '../../core/manifest/as-built';
import type { Fact } from '../../core/parts/fact';
import { benchName } from './parts';
import { oneLine, table, type Body, type Row } from './model';

/** What changes this part of the sheet: the record names no part of several that nothing tells apart. */
export const saidOf = (build: Build): string =>
  build.machine
    ? [recordText(build, ''), ...[...partRows(build)].map(({ cells: [what] }) => what?.text)].join('\n')
    : '';

/** Empty where the machine was not asked. */
export function asBuiltBodies(build: Build): readonly Body[] {
  const { machine } = build;
  if (!machine) return [];
  const rows = [...wholeRows(machine), ...partRows(build)];
  const day = machine.taken.value === undefined ? '' : ` on ${oneLine(machine.taken.text)}`;
  return rows.length === 0 ? [] : [table(`As the machine said of itself${day}`, ['What', 'It says'], rows)];
}

type Told = Fact<unknown> | string;

/** A row of what was told; none where nothing was. */
function row(what: string, place: string, ...told: readonly Told[]): readonly Row[] {
  const words = told.flatMap((one) => (typeof one === 'string' ? one : one.value === undefined ? [] : [one.text]));
  const text = words.filter((word) => word !== '').join(', ');
  return text === '' ? [] : [{ tick: false, place, cells: [{ text: oneLine(what) }, { text: oneLine(text) }] }];
}

const after = (word: string, fact: Fact<unknown>): string => (fact.value === undefined ? '' : `${word} ${fact.text}`);

function* wholeRows(machine: AsBuilt): Iterable<Row> {
  const { board, processor, memory, 'memory-ecc': ecc } = machine;
  yield* row('Board', 'parts.board', board.reports);
  yield* row('Firmware of the board', 'parts.board.firmware', board.firmware, after('of', board.dated));
  yield* row('Processor', 'parts.processor', processor.reports);
  for (const { slot, locator, reports, capacity, running } of memory.value ?? [])
    yield* row(
      `Memory in ${slot.text || locator.text}`,
      'parts.memory',
      reports,
      capacity,
      after('running at', running),
    );
  if (ecc.value !== undefined)
    yield* row('Errors of the memory', 'parts.memory', ecc.value ? 'corrected' : 'not corrected');
}

/** Of alike parts nothing tells which it is. */
const foundAs = ({ placed, alike }: AnyPair): string =>
  alike.length === 1 ? benchName(placed) : `${benchName(placed)} or one like it`;

function* partRows(build: Build): Iterable<Row> {
  for (const pair of drivePairs(build).pairs)
    for (const { reports, capacity, link, hours, worn, health } of pair.found)
      yield* row(
        foundAs(pair),
        pair.placed.path,
        ...[reports, capacity, link, after('ran', hours), after('worn', worn), after('health', health)],
      );
  for (const pair of cardPairs(build).pairs)
    for (const { reports, id, link } of pair.found) yield* row(foundAs(pair), pair.placed.path, reports, id, link);
  for (const pair of displayPairs(build).pairs)
    for (const { reports, connector } of pair.found)
      yield* row(foundAs(pair), pair.placed.path, reports, after('on', connector));
}
