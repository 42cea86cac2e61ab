// The version a firmware update is planned to, against the board’s list.
import { plannedUpdate, processorListed } from '../../figures/firmware';
import { missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { lacking, sure } from '../../figures/truth';
import { nearest } from '../../text';
import { check } from '../check';
import { atKey, change, outcome } from '../kit';

export default check({
  id: 'firmware-target-unknown',
  area: 'board',
  grade: 'stop',
  what: 'The version that the update goes to is on the board’s list.',
  why: 'A version that the maker never published cannot be downloaded, and a slip of a digit may be another board’s.',
  source: 'common practice: the board maker’s list of firmware versions',
  examples: [
    {
      faulty: `
parts:
  board: { firmware: { versions: ["1.02", "1.08", "1.20"] } }
bench:
  firmware-update: { to: "1.21", by: service }
#                        ^^^^^^
`,
      mended: `
parts:
  board: { firmware: { versions: ["1.02", "1.08", "1.20"] } }
bench:
  firmware-update: { to: "1.20", by: service }
`,
    },
  ],
  test(build, report) {
    const { board } = build.parts;
    const to = plannedUpdate(build)?.to;
    if (!board || to?.value === undefined) return;
    const list = board.part.firmware.versions;
    const names = list.value?.flatMap((version) => version.value ?? []);
    report(
      outcome(
        atKey(build, to),
        names
          ? sure(names.includes(to.value), to, list)
          : lacking([missing(list, `firmware versions of ${board.label}`)], to),
        {
          broken: () => sentence`${board.label} lists no firmware ${to}.`,
          fixes: () => {
            const since = processorListed(build)?.line?.since.value;
            const near = since !== undefined && names?.includes(since) ? since : nearest(to.value!, names ?? []);
            return near === undefined ? [] : [change(to, near, `Set the target to ${near}`)];
          },
        },
      ),
    );
  },
});
