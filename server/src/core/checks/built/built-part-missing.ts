// Drives, cards and displays of a build that its finished machine does not find.
import { identifierMissing } from '../../figures/built-names';
import { anyPairs, type AnyPair } from '../../figures/built-pairs';
import { sentence, type Sentence } from '../../figures/sentence';
import { lacking, sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { described, undecided, witnessed, WITNESSES } from './built-kit';

export default check({
  id: 'built-part-missing',
  area: 'built',
  grade: 'shortfall',
  what: 'The machine finds each drive, card and display of the build.',
  why: 'What is not found is not seated, not plugged in, switched off by another slot, or was never fitted.',
  source: 'common practice: the outputs of lsblk, smartctl, lspci and a display’s EDID',
  limits: [
    'Only an output that would show a part tells that it is missing.',
    'Coolers, supplies, cases, leads and paste show in no output.',
  ],
  examples: [
    {
      faulty: `
parts:
  drives:
    - { name: scratch, bus: NVMe, capacity: 2 TB }
#     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    - { name: archive, bus: SATA, capacity: 12 TB }
`,
      instead: 'Switch off, unplug, and look whether it sits and is plugged in.',
      beside: { 'example.asbuilt.yaml': '\nfrom: [lsblk]\ndrives: [{ bus: SATA, capacity: 12 TB }]\n' },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    const { machine } = build;
    for (const pair of anyPairs(build)) {
      const { placed, found, wanted, instead, perhaps } = pair;
      const role = placed.role as keyof typeof WITNESSES;
      const witness = witnessed(machine, ...WITNESSES[role]);
      // What stands in its place is judged by itself.
      if (instead) continue;
      const broken = (): Sentence =>
        (wanted > 1 && found.length > 0) || pair.alike.length > 1
          ? sentence`The machine finds fewer of ${listed(pair)} than the build lists.`
          : sentence`The machine does not find ${placed.label}.`;
      if (found.length >= wanted) {
        report(outcome(at(placed), sure(true, ...found.map(({ reports }) => reports)), { broken }));
        continue;
      }
      if (perhaps.length > 0) {
        report(
          outcome(at(placed), lacking([identifierMissing(placed)], ...perhaps.map(({ reports }) => reports)), {
            broken,
            open: () => candidates(pair),
          }),
        );
        continue;
      }
      if (!witness) {
        const tool = WITNESSES[role].find((name) => name !== 'CIM')!;
        report(
          outcome(at(placed), undecided(), {
            broken,
            open: () => sentence`No output shows whether ${placed.label} is there; ${tool} would.`,
          }),
        );
        continue;
      }
      report(outcome(at(placed), sure(false, witness), { broken }));
    }
  },
});

const listed = ({ alike }: AnyPair): string => alike.map(({ label }) => label).join(', ');

/** Which of the things that are there it is, nobody can tell. */
function candidates({ placed, perhaps }: AnyPair): Sentence {
  const [first, ...others] = perhaps.map((thing) => described(thing));
  const list = others.reduce((said, one) => sentence`${said}, ${one}`, first!);
  return sentence`Which of these is ${placed.label}, nothing tells: ${list}.`;
}
