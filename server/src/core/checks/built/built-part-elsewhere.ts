// Drives and cards that sit in another slot than the build names, and drives that speak another bus.
import type { Build } from '../../build/build';
import { cardPairs, drivePairs, plainName, slotBuilt } from '../../figures/built-pairs';
import { sentence, type Sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import type { BuiltDevice, BuiltDrive } from '../../manifest/as-built';
import type { Seated } from '../../figures/slots';
import { check } from '../check';
import { aspectOf, at, change, outcome, putOn, type Reporter } from '../kit';
import { foundAs } from './built-kit';

export default check({
  id: 'built-part-elsewhere',
  area: 'built',
  grade: 'note',
  what: 'Drives and cards sit in the slots that the build names, and drives speak the bus that it names.',
  why: 'In another slot a part shares other lanes and switches other ports off than was worked out.',
  source: 'DMTF DSP0134, SMBIOS: type 9; common practice: the PCI port behind a slot',
  limits: ['A slot is known where its `at` names the PCI port, or the firmware’s own table does.'],
  examples: [
    {
      faulty: `
parts:
  board: { slots: { M2_1: { at: "00:01.2" }, M2_2: { at: "00:02.2" } } }
  drives: [{ name: scratch, bus: NVMe, capacity: 2 TB, slot: M2_2 }]
#                                                            ^^^^
`,
      mended: `
parts:
  board: { slots: { M2_1: { at: "00:01.2" }, M2_2: { at: "00:02.2" } } }
  drives: [{ name: scratch, bus: NVMe, capacity: 2 TB, slot: M2_1 }]
`,
      beside: {
        'example.asbuilt.yaml': '\nfrom: [lsblk, lspci]\ndrives: [{ bus: NVMe, capacity: 2 TB, port: "00:01.2" }]\n',
      },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    for (const pair of [...drivePairs(build).pairs, ...cardPairs(build).pairs])
      for (const thing of pair.found.slice(0, 1)) {
        const { placed } = pair;
        place(build, placed, foundAs(pair), thing, report);
        if (placed.role === 'drives' && 'bus' in thing) bus(placed, foundAs(pair), thing, report);
      }
  },
});

function place(
  build: Build,
  placed: Seated,
  name: string | Sentence,
  thing: BuiltDevice | BuiltDrive,
  report: Reporter,
): void {
  const { slot } = placed.at;
  const is = slotBuilt(build, thing);
  if (slot.value === undefined || !is) return;
  report(
    outcome(at(placed, slot), sure(plainName(is.name) === plainName(slot.value), slot, is.by), {
      broken: () => sentence`${name} sits in ${is.name} (${is.by}), and not in ${slot}.`,
      fixes: () => [change(slot, is.name, `Write ${is.name}, where it sits`)],
    }),
  );
}

function bus(
  placed: Extract<Seated, { role: 'drives' }>,
  name: string | Sentence,
  { bus: speaks }: BuiltDrive,
  report: Reporter,
): void {
  const { bus: stated } = placed.part;
  if (stated.value === undefined || speaks.value === undefined) return;
  const spoken = speaks.value;
  report(
    outcome(aspectOf(at(placed, stated), 'bus'), sure(stated.value === spoken, stated, speaks), {
      grade: 'shortfall',
      broken: () => sentence`${name} speaks ${speaks}, and not ${stated}.`,
      fixes: () => [putOn(placed, 'bus', spoken, `Write ${spoken}, which it speaks`)],
    }),
  );
}
