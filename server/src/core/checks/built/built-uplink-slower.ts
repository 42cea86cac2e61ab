// The link between chipset and processor that a finished machine runs, against what the build’s figures say.
import type { Build } from '../../build/build';
import { readCount } from '../../figures/figure';
import { uplinkLanes } from '../../figures/link-rows';
import { missing } from '../../figures/figure';
import { many } from '../../figures/lists';
import { sentence } from '../../figures/sentence';
import { all, atLeast, given, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, type Outcome } from '../kit';

export default check({
  id: 'built-uplink-slower',
  area: 'built',
  grade: 'shortfall',
  what: 'The link between chipset and processor runs as wide and as fast as board and processor state.',
  why: 'All drives and cards behind the chipset share it.',
  source: 'PCI Express Base Specification: Link Status register',
  limits: ['Where no PCI port shows that link, as on many boards, nothing is said of it.'],
  examples: [
    {
      faulty: `
parts:
  board: { chipset-link: PCIe 4 x8, chipset-at: "00:02.1" }
# ^^^^^
`,
      instead: 'Set the chipset’s link to automatic in the firmware, and ask the maker if it stays so.',
      beside: { 'example.asbuilt.yaml': '\nfrom: [lspci]\nuplink: { port: "00:02.1", link: PCIe 4 x4 }\n' },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    const one = judged(build);
    if (one) report(one);
  },
});

function judged(build: Build): Outcome | undefined {
  const { board } = build.parts;
  const uplink = build.machine?.uplink;
  const lanes = uplinkLanes(build);
  if (!board || !uplink || !lanes || uplink.link.value?.bus !== 'PCIe') return undefined;
  const { link, port } = uplink;
  const { lanes: width, generation } = uplink.link.value;
  const where = board.part['chipset-at'];
  const broken = () => sentence`The link between chipset and processor runs as ${link}; stated:
    ${many(lanes.got, 'lane')} of generation ${lanes.generation}.`;
  const target = at(board, undefined, 'chipset-link');
  if (where.value === undefined) {
    const lacks = missing(where, `PCI port of the chipset of ${board.label}`);
    const isStated = [board, build.parts.processor].some((part) => part?.part['chipset-link'].node);
    return outcome(target, lacking([lacks], link, port), {
      broken,
      open: () => sentence`A switch behind ${port} runs as ${link}, which may be the chipset.`,
      // Where it is would still leave open what it is to run.
      ...(isStated ? {} : { usual: () => `the link of the chipset of ${board.label} runs as fast as it can` }),
    });
  }
  if (where.value.replace(/^0000:/, '') !== port.value) return undefined;
  const wide = atLeast(readCount(width, 'lanes of the chipset’s link that run', link), lanes.got);
  const fast = atLeast(readCount(generation, 'generation of the chipset’s link that runs', link), lanes.generation);
  return outcome(target, given(all(wide, fast), where, port), { broken });
}
