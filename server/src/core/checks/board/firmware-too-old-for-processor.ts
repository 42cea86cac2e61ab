// The firmware a board arrives with against the first version that starts its processor, and the ways to update.
import type { Build } from '../../build/build';
import {
  arriving,
  atLeastVersion,
  goesFromAny,
  olderStarts,
  plannedUpdate,
  processorListed,
  startsAsItArrives,
  type ListedLine,
} from '../../figures/firmware';
import { sentence, type Sentence } from '../../figures/sentence';
import { any, given, type Truth } from '../../figures/truth';
import type { Value } from '../../yaml';
import { check } from '../check';
import { at, outcome, put, swap, type FixIdea } from '../kit';

type Board = NonNullable<Build['parts']['board']>;

export default check({
  id: 'firmware-too-old-for-processor',
  area: 'board',
  grade: 'stop',
  what: 'The board arrives with firmware that starts the processor, or the build plans an update by a way that works.',
  why:
    'A processor that fits the socket does not start under firmware older than itself; without a way to ' +
    'update, a working board looks dead.',
  source: 'common practice: the board maker’s processor support list and firmware notes',
  examples: [
    {
      faulty: `
parts:
  board:
    firmware:
      arriving: "1.08"
#               ^^^^^^
      versions: ["1.02", "1.08", "1.20"]
      update-without-processor: true
      update-port: FLASH
      update-file: B7.CAP
      update-cables: [24-pin]
    processors: [{ family: Calder C7, since: "1.20" }]
  processor: { family: Calder C7 }
`,
      mended: `
parts:
  board:
    firmware:
      arriving: "1.08"
      versions: ["1.02", "1.08", "1.20"]
      update-without-processor: true
      update-port: FLASH
      update-file: B7.CAP
      update-cables: [24-pin]
    processors: [{ family: Calder C7, since: "1.20" }]
  processor: { family: Calder C7 }
bench:
  firmware-update:
    to: "1.20"
    by: stick without processor
    stick: { filesystem: FAT32, port: FLASH, file-name: B7.CAP }
    cables: [24-pin]
`,
    },
  ],
  test(build, report) {
    const { board, processor } = build.parts;
    const starts = startsAsItArrives(build);
    const line = processorListed(build)?.line;
    if (!board || !processor || !starts) return;
    report(
      outcome(
        at(board, arriving(board)),
        given(
          any(starts, updateServes(build, board)),
          processor.part.family,
          line?.family,
          plannedUpdate(build)?.by,
          board.part.firmware['update-without-processor'],
        ),
        {
          broken: () =>
            sentence`${processor.label} needs firmware ${line!.since} of ${board.label}, which arrives with
            ${arriving(board)}${ways(build, board)}`,
          fixes: () => [...routes(board, line!), swap(board), swap(processor)],
        },
      ),
    );
  },
});

/** Whether the planned way of updating can be gone at all; its details are judged by themselves. */
function updateServes(build: Build, board: Board): Truth {
  const update = plannedUpdate(build);
  return update?.by.value === 'older processor'
    ? olderStarts(board, update['older-processor'])
    : goesFromAny(build, board);
}

/** The end of the sentence: the planned way that does not work, or the ways there are. */
function ways(build: Build, board: Board): Sentence {
  const update = plannedUpdate(build);
  const can = board.part.firmware['update-without-processor'];
  switch (update?.by.value) {
    case 'stick without processor':
      return sentence`; the board takes no update from a stick without a processor.`;
    case 'management controller':
      return sentence`; its management controller does not update it.`;
    case 'older processor':
      return sentence`; the older processor that is planned for the update does not start under it either.`;
    case 'with this processor':
      return sentence`; an update with this processor is planned, which does not start before it.`;
  }
  if (can.value === true)
    return sentence`; no update is planned, and the board takes one from a stick without a processor.`;
  const olders = startable(board);
  if (olders.length > 0)
    return sentence`; no update is planned, and it takes an older processor such as ${olders[0]!.family}, or a
      service.`;
  return sentence`; no update is planned.`;
}

/** The lines of the list that start under the firmware the board arrives with. */
function startable(board: Board): readonly ListedLine[] {
  return (board.part.processors.value ?? []).filter(
    (line) => atLeastVersion(board, arriving(board), '', line.since, '').is === true,
  );
}

function* routes(board: Board, line: ListedLine): Iterable<FixIdea | undefined> {
  const to = line.since.value;
  if (to === undefined) return;
  const plan = (value: Value, title: string): FixIdea | undefined =>
    put(board.doc, ['bench', 'firmware-update'], value, title);
  const { firmware } = board.part;
  if (firmware['update-without-processor'].value === true) {
    const cables = firmware['update-cables'].value?.flatMap((cable) => cable.value ?? []);
    yield plan(
      {
        to,
        by: 'stick without processor',
        stick: {
          filesystem: 'FAT32',
          ...stated('port', firmware['update-port'].value),
          ...stated('file-name', firmware['update-file'].value),
        },
        ...(cables ? { cables } : {}),
      },
      `Plan the update to ${to} from a stick, without a processor`,
    );
  }
  for (const older of startable(board)) {
    const name = older.family.value === undefined ? stated('model', older.model.value) : { family: older.family.value };
    yield plan(
      { to, by: 'older processor', 'older-processor': name },
      `Plan the update to ${to} with an older processor on hand (${Object.values(name)[0] ?? ''})`,
    );
  }
  yield plan({ to, by: 'service' }, `Plan the update to ${to} by a service`);
}

function stated(key: string, value: string | undefined): Record<string, string> {
  return value === undefined ? {} : { [key]: value };
}
