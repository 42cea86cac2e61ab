// A data drive that its partition table does not reach the end of.
import { figure, known } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { any, atMost, fits } from '../../figures/truth';
import { MBR_LIMIT_BYTES } from '../../trade/storage';
import { check } from '../check';
import { at, outcome, putOn } from '../kit';

export default check({
  id: 'partition-table-short',
  area: 'storage',
  grade: 'shortfall',
  what: 'The partition table of each data drive reaches its end.',
  why: 'A table of the MBR kind counts 2³² sectors; what lies behind them is paid for and cannot be used.',
  source: '`sfdisk` (util-linux): 2³² sectors of 512 bytes',
  limits: ['Sectors are taken for 512 bytes, as drives show them.'],
  remarks: ['The drive that the machine starts from is judged by `boot-drive-not-bootable`.'],
  examples: [
    {
      faulty: `
parts:
  drives:
    - { name: archive, capacity: 4 TB, partitions: MBR }
#                                                  ^^^
`,
      mended: `
parts:
  drives:
    - { name: archive, capacity: 4 TB, partitions: GPT }
`,
    },
  ],
  test({ parts: { drives } }, report) {
    const limit = known(MBR_LIMIT_BYTES, 'data-size', 'reach of an MBR table', {
      unit: 'TB',
      source: '`sfdisk`: 2³² × 512 bytes',
    });
    for (const drive of drives) {
      const { boot, partitions } = drive.at;
      if (boot.value || !partitions.entry) continue;
      const capacity = figure(drive.part.capacity, `capacity of ${drive.label}`);
      const gpt = fits(partitions, `partitions of ${drive.label}`, (kind) => kind === 'GPT');
      report(
        outcome(at(drive, partitions), any(gpt, atMost(capacity, limit)), {
          broken: () =>
            sentence`${drive.label} holds ${capacity} and is divided with MBR, which reaches ${limit}; divide it with
              GPT to use the rest.`,
          fixes: () => [putOn(drive, 'partitions', 'GPT', 'Divide it with GPT')],
        }),
      );
    }
  },
});
