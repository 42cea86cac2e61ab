// Links that parts really get: wiring, halving, processor, riser and uplink together.
// Rates: PCI Express Base Specification, line rate × coding ÷ 8, as drivers/pci/pci.h of the Linux kernel has the
// codings.
import { describe, expect, it } from 'vitest';
import { chipsetDemand } from '../../../server/src/core/figures/lane-budget';
import { reached, uplink } from '../../../server/src/core/figures/lanes';
import { seated } from '../../../server/src/core/figures/slots';
import { bench } from '../../support/bench';

const gigabytes = (lanes: number, gigatransfers: number): number => (lanes * gigatransfers * 128) / 130 / 8;

function build(parts: string) {
  return bench([{ name: 'case.pcbuild.yaml', text: `parts:\n${parts}` }]).build!;
}

function rateOf(parts: string): { lo: number; hi: number; missing: string[] } {
  const made = build(parts);
  const { link } = reached(made, seated(made)[0]!);
  return { lo: link.lo / 1e9, hi: link.hi / 1e9, missing: link.missing.map((lack) => lack.path) };
}

const slots = (more: string): string => `  board:
    slots:
      PCIE_1: { kind: PCIe, lanes: 16, generation: 5, from: processor }
      PCIE_2: { kind: PCIe, lanes: 8, generation: 5, from: processor${more} }
`;

describe('reached', () => {
  it('runs at the lower generation on the fewer lanes', () => {
    expect(rateOf(`${slots('')}  graphics: { link: PCIe 4 x16, slot: PCIE_1 }`).lo).toBeCloseTo(gigabytes(16, 16), 9);
    expect(rateOf(`${slots('')}  graphics: { link: PCIe 4 x16, slot: PCIE_2 }`).lo).toBeCloseTo(gigabytes(8, 16), 9);
  });

  it('halves the lanes once, however many slots halve them', () => {
    const cards = '  graphics: { link: PCIe 4 x16, slot: PCIE_1 }\n  cards: [{ slot: PCIE_2 }, { slot: PCIE_3 }]';
    const both = rateOf(`${slots(', halves: [PCIE_1]')}      PCIE_3: { kind: PCIe, halves: [PCIE_1] }\n${cards}`);
    expect([both.lo, both.hi]).toEqual([gigabytes(8, 16), gigabytes(8, 16)].map((rate) => expect.closeTo(rate, 9)));
  });

  it('lies between half and all while nothing states what another slot halves, and names that fact', () => {
    const open = rateOf(`${slots('')}  graphics: { link: PCIe 4 x16, slot: PCIE_1 }\n  cards: [{ slot: PCIE_2 }]`);
    expect(open.lo).toBeCloseTo(gigabytes(8, 16), 9);
    expect(open.hi).toBeCloseTo(gigabytes(16, 16), 9);
    expect(open.missing).toEqual(['parts.board.slots.PCIE_2.halves']);
  });

  it('is held back by a riser and by an older processor', () => {
    expect(rateOf(`${slots('')}  graphics: { link: PCIe 4 x16, slot: PCIE_1, riser: PCIe 3 }`).lo).toBeCloseTo(
      gigabytes(16, 8),
      9,
    );
    expect(
      rateOf(`${slots('')}  processor: { generation: 3 }\n  graphics: { link: PCIe 5 x16, slot: PCIE_1 }`).lo,
    ).toBeCloseTo(gigabytes(16, 8), 9);
  });

  it('is bounded from above by what is known, and by nothing from below', () => {
    const open = rateOf(`${slots('')}  graphics: { slot: PCIE_2 }`);
    expect(open.hi).toBeCloseTo(gigabytes(8, 32), 9);
    expect(open.lo).toBe(0);
    expect(open.missing).toEqual(['parts.graphics[0].link']);
  });
});

describe('uplink', () => {
  it('is the narrower of board and processor', () => {
    const made = build('  board: { chipset-link: PCIe 4 x8 }\n  processor: { chipset-link: PCIe 4 x4 }');
    expect(uplink(made)!.lo / 1e9).toBeCloseTo(gigabytes(4, 16), 9);
  });

  it('is at most what the board says while the processor says nothing', () => {
    const open = uplink(build('  board: { chipset-link: PCIe 3 x4 }\n  processor: { lanes: 20 }'))!;
    expect(open.hi / 1e9).toBeCloseTo(gigabytes(4, 8), 9);
    expect(open.missing.map((lack) => lack.path)).toEqual(['parts.processor.chipset-link']);
  });

  it('is not there without a board', () => expect(uplink(build('  processor: { lanes: 20 }'))).toBeUndefined());
});

describe('chipsetDemand', () => {
  it('counts every disk of an entry', () => {
    const demandOf = (count: number): number => {
      const made = build(
        '  board: { chipset-link: { lanes: 4, generation: 4 } }\n' +
          `  drives: [{ bus: SATA, shape: 3.5 in, read: 250 MB/s, port: SATA_1, count: ${count} }]\n`,
      );
      return chipsetDemand(made, 'read')!.all.hi / 1e9;
    };
    expect(demandOf(1)).toBeCloseTo(0.25, 9);
    expect(demandOf(6)).toBeCloseTo(1.5, 9);
  });
});
