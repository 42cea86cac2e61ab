// Versions that withdraw a processor, against the version the board will run.
import type { Build } from '../../build/build';
import {
  arriving,
  listedLine,
  plannedUpdate,
  processorListed,
  versionsCompared,
  type Listed,
} from '../../figures/firmware';
import { sentence } from '../../figures/sentence';
import { given, lacking, sure, type Truth } from '../../figures/truth';
import type { Fact } from '../../parts/fact';
import { check } from '../check';
import { at, atKey, change, outcome } from '../kit';

type Board = NonNullable<Build['parts']['board']>;

export default check({
  id: 'firmware-drops-processor',
  area: 'board',
  grade: 'stop',
  what: 'The firmware that the board runs has not withdrawn the processor that must start under it.',
  why: 'Newer firmware may drop old processors to make room for new ones; the board then no longer starts with them.',
  source: 'common practice: the board maker’s firmware notes',
  examples: [
    {
      faulty: `
parts:
  board:
    firmware: { versions: ["1.02", "1.20", "1.31"] }
    processors: [{ family: Calder C6, since: "1.02", until: "1.20" }]
  processor: { family: Calder C6 }
bench:
  firmware-update: { to: "1.31", by: service }
#                        ^^^^^^
`,
      mended: `
parts:
  board:
    firmware: { versions: ["1.02", "1.20", "1.31"] }
    processors: [{ family: Calder C6, since: "1.02", until: "1.20" }]
  processor: { family: Calder C6 }
bench:
  firmware-update: { to: "1.20", by: service }
`,
    },
  ],
  test(build, report) {
    const { board, processor } = build.parts;
    if (!board) return;
    const update = plannedUpdate(build);
    const to = update?.to.value === undefined ? undefined : update.to;
    const own = processorListed(build);
    if (processor && own && (own.line ? own.line.until.entry : own.missingFacts.length > 0)) {
      const runs = to ?? arriving(board);
      report(
        outcome(to ? atKey(build, to) : at(board, runs), notAfter(board, runs, own), {
          broken: () =>
            sentence`Firmware ${runs} no longer starts ${processor.label}; ${own.line!.until} is the last that does.`,
          fixes: () => {
            const last = own.line!.until.value;
            return to && last !== undefined ? [change(to, last, `Set the target to ${last}`)] : [];
          },
        }),
      );
    }
    if (update?.by.value !== 'older processor') return;
    const older = update['older-processor'];
    const listed = listedLine(board, older, 'the older processor');
    if (!listed.line?.until.entry) return;
    const name = older.family.value === undefined ? older.model : older.family;
    report(
      outcome(atKey(build, name), notAfter(board, arriving(board), listed), {
        broken: () =>
          sentence`The board arrives with ${arriving(board)}, which no longer starts ${name}; ${listed.line!.until} is
            the last that does.`,
      }),
    );
  },
});

function notAfter(board: Board, runs: Fact<string>, { line, missingFacts, uses }: Listed): Truth {
  if (!line) return lacking(missingFacts, ...uses);
  const compared = versionsCompared(
    board,
    runs,
    'firmware the board runs',
    line.until,
    'last firmware for the processor',
  );
  const truth = 'order' in compared ? sure(compared.order <= 0) : lacking(compared.missingFacts);
  return given(truth, runs, line.until, board.part.firmware.versions, ...uses);
}
