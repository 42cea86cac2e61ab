// Promised room for data against what the drives hold, counted in the same unit.
import { figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { driveCapacity } from '../../figures/storage';
import { atLeast, given } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome, swap, type FixIdea } from '../kit';
import { floorSize } from './storage-kit';

export default check({
  id: 'capacity-short',
  area: 'storage',
  grade: 'shortfall',
  what: 'Each drive holds what is promised of it, in the promise’s own kind of unit.',
  why:
    'Drives are sold in terabytes of 10¹² bytes; programs often count tebibytes of 2⁴⁰: a tenth of the room ' +
    'is only on paper.',
  source: 'IEC 80000-13',
  examples: [
    {
      faulty: `
parts:
  drives:
    - { name: archive, capacity: 12 TB }
expect:
  drives: { archive: { capacity: 11 TiB } }
#                                ^^^^^^
`,
      mended: `
parts:
  drives:
    - { name: archive, capacity: 12 TB }
expect:
  drives: { archive: { capacity: 12 TB } }
`,
    },
  ],
  test(build, report) {
    for (const drive of build.parts.drives) {
      const promise = build.file.expect.drives.value?.get(drive.at.name.value ?? '')?.capacity;
      if (!promise?.node) continue;
      const wanted = figure(promise, `capacity promised of ${drive.label}`);
      const held = driveCapacity(drive);
      report(
        outcome(atKey(build, promise), given(atLeast(held, wanted), drive.at.name), {
          broken: () => {
            const plain = sentence`${drive.label} is to hold ${wanted}; it holds ${held}.`;
            // In the promise's unit it may be another number than the one on its box.
            return plain.shown[1] === drive.part.capacity.text
              ? plain
              : sentence`${drive.label} is to hold ${wanted}; sold as ${drive.part.capacity}, it holds ${held}.`;
          },
          *fixes(): Iterable<FixIdea | undefined> {
            if (held.lo > 0) yield change(promise, floorSize(held.lo), `Lower the promise to ${floorSize(held.lo)}`);
            yield swap(drive);
          },
        }),
      );
    }
  },
});
