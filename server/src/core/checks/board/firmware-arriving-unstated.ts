// Builds that do not say which firmware the board arrives with, where that decides whether it starts.
import type { Build } from '../../build/build';
import { arriving, goesFromAny, processorListed, versionList, type Listed } from '../../figures/firmware';
import { sentence } from '../../figures/sentence';
import { any, lacking, sure, type Truth } from '../../figures/truth';
import { compareVersions } from '../../trade/firmware';
import { missing } from '../../figures/figure';
import { check } from '../check';
import { at, outcome } from '../kit';

type Board = NonNullable<Build['parts']['board']>;

export default check({
  id: 'firmware-arriving-unstated',
  area: 'board',
  grade: 'note',
  what:
    'The build says which firmware the board arrives with, where the board was ever sold with one too old ' +
    'for the processor and no update is planned that goes from any.',
  why: 'The version is printed on the box or the board; asked for at the shop it costs a question, at the bench a day.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  board:
# ^^^^^
    firmware: { versions: ["1.02", "1.20"] }
    processors: [{ family: Calder C7, since: "1.20" }]
  processor: { family: Calder C7 }
`,
      instead: 'Ask which version the board arrives with and write it as the board’s `firmware`.',
    },
  ],
  test(build, report) {
    const { board } = build.parts;
    const listed = processorListed(build);
    if (!board || !listed || (!listed.line && listed.missingFacts.length === 0)) return;
    report(
      outcome(at(board, arriving(board)), any(stated(board, listed), goesFromAny(build, board)), {
        broken: () =>
          sentence`The processor needs firmware ${listed.line!.since}, and ${board.label} was also sold with older; the
            build does not say which it arrives with.`,
      }),
    );
  },
});

/** Stated, or of no weight because the oldest version ever sold starts the processor. */
function stated(board: Board, { line, missingFacts, uses }: Listed): Truth {
  const version = arriving(board);
  if (version.value !== undefined) return sure(true, version);
  if (!line) return lacking(missingFacts, ...uses);
  const oldest = versionList(board)[0];
  if (oldest === undefined)
    return lacking([missing(board.part.firmware.versions, `firmware versions of ${board.label}`)], line.since);
  if (line.since.value === undefined)
    return lacking([missing(line.since, `first firmware of ${board.label} for the processor`)], line.since);
  const always = compareVersions(oldest, line.since.value, versionList(board));
  return sure(always !== undefined && always >= 0, version, line.since);
}
