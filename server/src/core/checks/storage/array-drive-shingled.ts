// Disks that record in overlapping tracks, in arrays with parity.
import { missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { arrayDrives, isDisk } from '../../figures/storage';
import { fits, given, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, aspectOf, outcome, swap } from '../kit';

export default check({
  id: 'array-drive-shingled',
  area: 'storage',
  grade: 'shortfall',
  what: 'No disk of an array with parity records in overlapping tracks (SMR).',
  why:
    'Such a disk rewrites whole bands: a rebuild takes days instead of hours, and many an array drops the disk ' +
    'meanwhile for answering too late.',
  source: 'common practice; disk makers’ lists of recording methods',
  examples: [
    {
      faulty: `
parts:
  drives:
    - { name: archive, shape: 3.5 in, count: 4, recording: SMR }
#                                                          ^^^
expect:
  arrays: { vault: { kind: single parity, drives: [archive] } }
`,
      instead: 'Choose disks that record conventionally (CMR), or mirror these.',
    },
  ],
  test(build, report) {
    for (const [name, array] of build.file.expect.arrays.value ?? []) {
      const kind = array.kind.value;
      if (kind !== 'single parity' && kind !== 'double parity') continue;
      const names = array.drives.value?.map((item) => item.value ?? '') ?? [];
      for (const drive of arrayDrives(build, names)?.entries ?? []) {
        const { recording } = drive.part;
        if (!recording.node && !isDisk(drive)) continue;
        const truth = recording.node
          ? fits(recording, `recording of ${drive.label}`, (method) => method !== 'SMR')
          : lacking([missing(recording, `recording of ${drive.label}`)]);
        report(
          outcome(aspectOf(at(drive, recording), name), given(truth, array.kind, array.drives, drive.at.name), {
            broken: () =>
              sentence`${drive.label} records in overlapping tracks (${recording}); ${name}, with ${array.kind},
                needs disks
                that record conventionally (CMR).`,
            fixes: () => [swap(drive)],
          }),
        );
      }
    }
  },
});
