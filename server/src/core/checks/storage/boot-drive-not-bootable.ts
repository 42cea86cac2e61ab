// The drive the machine starts from: a bus its firmware starts from, and a table that covers it.
import { figure, known, missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { any, atMost, fits, lacking } from '../../figures/truth';
import { MBR_LIMIT_BYTES } from '../../trade/storage';
import { check } from '../check';
import { at, outcome, putOn, swap } from '../kit';

export default check({
  id: 'boot-drive-not-bootable',
  area: 'storage',
  grade: 'stop',
  what: 'The firmware starts from the boot drive’s bus, and a drive over 2 TiB is divided with GPT.',
  why: 'The machine finds no system, or the part of the drive past the old table’s end cannot be used.',
  source: '`sfdisk` (util-linux): 2³² sectors of 512 bytes; common practice',
  examples: [
    {
      faulty: `
parts:
  drives:
    - { name: archive, capacity: 4 TB, boot: true, partitions: MBR }
#                                                              ^^^
`,
      mended: `
parts:
  drives:
    - { name: archive, capacity: 4 TB, boot: true, partitions: GPT }
`,
    },
  ],
  test(build, report) {
    const { board, drives } = build.parts;
    const limit = known(MBR_LIMIT_BYTES, 'data-size', 'reach of an MBR table', {
      unit: 'TB',
      source: '`sfdisk`: 2³² × 512 bytes',
    });
    for (const drive of drives) {
      const { boot, partitions } = drive.at;
      const { bus } = drive.part;
      if (boot.value && board) {
        const starts = board.part.firmware['boots-from'];
        const listed =
          bus.value === undefined
            ? lacking([missing(bus, `bus of ${drive.label}`)])
            : fits(starts, `buses ${board.label} starts from`, (list) => list.some((one) => one.value === bus.value));
        report(
          outcome(at(drive, boot), listed, {
            broken: () =>
              sentence`The machine is to start from ${drive.label}; the firmware of ${board.label} does not start from
                ${bus}.`,
            fixes: () => [swap(drive), swap(board)],
          }),
        );
      }
      if (!partitions.entry && !boot.value) continue;
      const capacity = figure(drive.part.capacity, `capacity of ${drive.label}`);
      const gpt = partitions.entry
        ? fits(partitions, `partitions of ${drive.label}`, (kind) => kind === 'GPT')
        : lacking([missing(partitions, `partitions of ${drive.label}`)]);
      report(
        outcome(at(drive, partitions), any(gpt, atMost(capacity, limit)), {
          broken: () => sentence`${drive.label} holds ${capacity} and is divided with MBR, which reaches ${limit}.`,
          fixes: () => [putOn(drive, 'partitions', 'GPT', 'Divide it with GPT')],
        }),
      );
    }
  },
});
