// The firmware that a finished machine runs, against the version that is planned and the one its processor needs.
import type { Build } from '../../build/build';
import { arriving, plannedUpdate, processorListed, versionList } from '../../figures/firmware';
import { missing, type Missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { lacking, sure } from '../../figures/truth';
import type { Fact } from '../../parts/fact';
import { compareVersions, type Order } from '../../trade/firmware';
import { check } from '../check';
import { at, aspectOf, change, outcome, type FixIdea, type Reporter } from '../kit';
import { notShown } from './built-kit';

type Board = NonNullable<Build['parts']['board']>;

export default check({
  id: 'built-firmware-differs',
  area: 'built',
  grade: 'shortfall',
  what: 'The firmware of the machine is the version that the build plans, and not older than its processor needs.',
  why: 'An update that was planned and not done leaves faults in that it was to mend; a newer version was never tried.',
  source: 'DMTF DSP0134, SMBIOS: type 0; common practice',
  limits: ['Versions whose order neither the maker’s list nor their spelling tells are not compared.'],
  examples: [
    {
      faulty: `
parts:
  board: { firmware: { arriving: "1.08", versions: ["1.08", "1.20"] } }
# ^^^^^
bench: { firmware-update: { to: "1.20", by: service } }
`,
      instead: 'Update the firmware as planned, by the maker’s handbook.',
      beside: { 'example.asbuilt.yaml': '\nfrom: [dmidecode]\nboard: { firmware: "1.08" }\n' },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    const { board } = build.parts;
    if (!board) return;
    const update = plannedUpdate(build)?.to;
    const planned = update?.node ? update : arriving(board);
    const since = processorListed(build)?.line?.since;
    const isOutgrown = !update?.node && since?.value !== undefined && isOlder(board, planned, since.value);
    // A board that arrives with what does not start its processor is updated, whether the build plans it or not.
    if (planned.value !== undefined && !isOutgrown) compare(build, board, planned, 'planned', report);
    if (since?.value !== undefined && since.value !== planned.value) compare(build, board, since, 'needed', report);
  },
});

type Why = 'planned' | 'needed';

function compare(build: Build, board: Board, wanted: Fact<string>, why: Why, report: Reporter): void {
  const { firmware } = build.machine!.board;
  const target =
    why === 'planned' ? at(board, undefined, 'firmware') : aspectOf(at(board, undefined, 'firmware'), 'processor');
  const broken = () =>
    why === 'planned'
      ? sentence`The machine runs firmware ${firmware}; ${wanted} is planned. Update it by the maker’s handbook.`
      : sentence`The machine runs firmware ${firmware}; its processor needs ${wanted}. Update it by the maker’s
        handbook.`;
  if (firmware.value === undefined)
    return report(notShown(target, firmware, 'the version of its firmware', { broken }));
  const order = orderOf(firmware.value, wanted.value!, versionList(board));
  const uses = [firmware, wanted, board.part.firmware.versions];
  if (order === undefined)
    return report(
      outcome(target, lacking([orderMissing(board, firmware.value)], ...uses), {
        broken,
        open: () => sentence`The machine runs firmware ${firmware}, and ${wanted} is ${why}.`,
      }),
    );
  const isNewer = order > 0 && why === 'planned';
  report(
    outcome(target, sure(order === 0 || (order > 0 && why === 'needed'), ...uses), {
      broken: isNewer
        ? () => sentence`The machine runs firmware ${firmware}, which is newer than the ${wanted} planned.`
        : broken,
      ...(isNewer ? { grade: 'note' as const, fixes: () => corrections(build, wanted, firmware.value!) } : {}),
    }),
  );
}

/** A list that lacks the version is asked for it by name. */
const orderMissing = (board: Board, printed: string): Missing =>
  missing(
    board.part.firmware.versions,
    versionList(board).length === 0
      ? `order of the firmware versions of ${board.label}`
      : `${printed} among the firmware versions of ${board.label}`,
  );

const isOlder = (board: Board, { value }: Fact<string>, than: string): boolean =>
  value !== undefined && compareVersions(value, than, versionList(board)) === -1;

/** A version may be one word of what the firmware prints, as in `B7FORGE 1.20`. */
function orderOf(printed: string, wanted: string, list: readonly string[]): Order | undefined {
  const words = [printed, ...printed.split(/[\s()]+/)];
  if (words.includes(wanted)) return 0;
  const listed = words.find((word) => list.includes(word));
  return compareVersions(listed ?? printed, wanted, list);
}

function* corrections(build: Build, wanted: Fact<string>, is: string): Iterable<FixIdea | undefined> {
  if (wanted.doc === build.doc) yield change(wanted, is, `Write ${is}, which it runs`);
}
