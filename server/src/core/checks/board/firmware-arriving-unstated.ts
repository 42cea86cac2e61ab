// Builds that do not say which firmware the board arrives with, where that decides whether it starts.
import { arriving, processorListed, versionList } from '../../figures/firmware';
import { say } from '../../figures/say';
import { lacking, sure } from '../../figures/truth';
import { compareVersions } from '../../trade/firmware';
import { missing } from '../../figures/figure';
import { check } from '../check';
import { at, outcome } from '../kit';

export default check({
  id: 'firmware-arriving-unstated',
  area: 'board',
  grade: 'note',
  what: 'The build says which firmware the board arrives with, where the board was ever sold with one too old for the processor.',
  why: 'The version is printed on the box or the board; asked for at the shop it costs a question, at the bench a day.',
  source: 'common practice',
  examples: [{
    faulty: `
parts:
  board:
# ^^^^^
    firmware: { versions: ["1.02", "1.20"] }
    processors: [{ family: Calder C7, since: "1.20" }]
  processor: { family: Calder C7 }
`,
    instead: 'Ask which version the board arrives with and write it as the board’s `firmware`.',
  }],
  *test(build) {
    const { board } = build.parts;
    const line = processorListed(build)?.line;
    if (!board || !line || line.since.value === undefined) return;
    const oldest = versionList(board)[0];
    if (oldest === undefined) {
      yield outcome(at(board), lacking([missing(board.part.firmware.versions, `firmware versions of ${board.label}`)], line.since), { broken: () => say`` });
      return;
    }
    const always = compareVersions(oldest, line.since.value, versionList(board));
    const stated = arriving(board);
    yield outcome(at(board, stated), sure(stated.value !== undefined || (always !== undefined && always >= 0), stated, line.since), {
      broken: () => say`The processor needs firmware ${line.since}, and ${board.label} was also sold with older; the build does not say which it arrives with.`,
    });
  },
});
