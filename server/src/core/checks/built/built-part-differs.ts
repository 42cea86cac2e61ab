// Drives, cards and displays that stand in the place of another part of the build.
import { anyPairs, type AnyPair } from '../../figures/built-pairs';
import { figure } from '../../figures/figure';
import { sentence, type Sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { described } from './built-kit';

export default check({
  id: 'built-part-differs',
  area: 'built',
  grade: 'shortfall',
  what: 'The drive, card or display in a place of the build is the one that it lists.',
  why: 'What was ordered, paid for and worked out is another part.',
  source: 'common practice: the outputs of lsblk, smartctl, lspci and a display’s EDID',
  examples: [
    {
      faulty: `
parts:
  drives: [{ name: scratch, bus: NVMe, capacity: 2 TB }]
#          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Exchange the drive, or correct the build.',
      beside: {
        'example.asbuilt.yaml': '\nfrom: [lsblk]\ndrives: [{ reports: RAPID-1T, bus: NVMe, capacity: 1 TB }]\n',
      },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    for (const pair of anyPairs(build)) {
      const { placed, instead, found } = pair;
      const thing = instead ?? found[0];
      if (!thing) continue;
      report(
        outcome(at(placed), sure(!instead, thing.reports, placed.part['identified-by']), {
          broken: () => words(pair),
          fixes: () => [swap(placed)],
        }),
      );
    }
  },
});

function words({ placed, instead }: AnyPair): Sentence {
  const is = described(instead!);
  if (placed.role !== 'drives') return sentence`In the place of ${placed.label} the machine has ${is}.`;
  const wanted = figure(placed.part.capacity, `capacity of ${placed.label}`);
  return wanted.missing.length > 0
    ? sentence`In the place of ${placed.label} the machine has ${is}.`
    : sentence`In the place of ${placed.label}, which is to hold ${wanted}, the machine has ${is}.`;
}
