// The drive the machine starts from: a bus its firmware starts from, and a table that covers it.
import type { Build } from '../../build/build';
import { figure, known, missing } from '../../figures/figure';
import { spoken } from '../../figures/lists';
import { sentence } from '../../figures/sentence';
import { carriesBus, seatOf } from '../../figures/slots';
import type { Drive } from '../../figures/storage';
import { any, atMost, fits, lacking, sure } from '../../figures/truth';
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
  limits: [
    'Where the board’s list is not stated, SATA, USB and NVMe in its own sockets are taken to start: common practice.',
  ],
  remarks: ['A drive that the machine does not start from is judged by `partition-table-short`.'],
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
            ? lacking([
                missing(bus, `bus of ${drive.label}`),
                // From some buses it starts anyway, from others only where its list says so.
                ...(starts.value ? [] : [missing(starts, `buses ${board.label} starts from`)]),
              ])
            : starts.node === undefined && startsUsually(build, drive)
              ? sure(true, bus)
              : fits(starts, `buses ${board.label} starts from`, (list) => list.some((one) => one.value === bus.value));
        report(
          outcome(at(drive, boot), listed, {
            broken: () =>
              sentence`The machine is to start from ${drive.label}, on ${bus}; the firmware of ${board.label}
                starts from
                ${spoken(starts.value ?? [])}.`,
            fixes: () => [swap(drive), swap(board)],
          }),
        );
      }
      if (!boot.value) continue;
      const capacity = figure(drive.part.capacity, `capacity of ${drive.label}`);
      const gpt = partitions.entry
        ? fits(partitions, `partitions of ${drive.label}`, (kind) => kind === 'GPT')
        : lacking([missing(partitions, `partitions of ${drive.label}`)]);
      report(
        outcome(at(drive, partitions), any(gpt, atMost(capacity, limit)), {
          broken: () =>
            sentence`${drive.label} holds ${capacity} and is divided with MBR, which reaches ${limit}; divide it with
              GPT.`,
          fixes: () => [putOn(drive, 'partitions', 'GPT', 'Divide it with GPT')],
        }),
      );
    }
  },
});

/**
 * Where its list is not stated: firmware starts from SATA, from USB, and from NVMe in an M.2 socket of its own board
 * that carries PCIe. Source: common practice.
 */
function startsUsually(build: Build, drive: Drive): boolean {
  const bus = drive.part.bus.value;
  if (bus !== 'NVMe') return bus === 'SATA' || bus === 'USB';
  const { slot } = seatOf(build, drive);
  return slot?.kind.value === 'M.2' && carriesBus(slot, 'PCIe') === true;
}
