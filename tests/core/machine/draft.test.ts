// Part files drafted from what a machine says: only of what names maker and model of its own.
import { describe, expect, it } from 'vitest';
import { distil } from '../../../server/src/core/machine/distill';
import { buildDraft } from '../../../server/src/core/machine/draft';
import { partDrafts } from '../../../server/src/core/machine/draft-parts';
import { Doc } from '../../../server/src/core/parts/doc';

const module = (slot: string, maker: string, more = ''): string =>
  `Handle 0x00${slot}, DMI type 17, 92 bytes\nMemory Device\n\tSize: 16 GB\n\tLocator: DIMM_${slot}\n\tType: DDR5\n` +
  `\tSpeed: 5600 MT/s\n\tManufacturer: ${maker}\n\tPart Number: D5-5600-16\n${more}\tConfigured Memory Speed: 4800 MT/s\n\n`;
const machineOf = (...modules: readonly string[]) =>
  distil([new Doc('out/dmidecode.txt', 'output', `# dmidecode 3.5\n${modules.join('')}`)], 'out', '2026-11-25').machine;

describe('drafted part files', () => {
  it('hold what a kit says of itself, and leave count, places and rate to the build', () => {
    const machine = machineOf(module('A2', 'Lumen'), module('B2', 'Lumen'));
    const [part, ...others] = partDrafts(machine, '2026-11-25');
    expect([part!.name, part!.kind, others]).toEqual(['lumen/d5-5600-16', 'memory', []]);
    expect(part!.text.split('\n').slice(1)).toEqual([
      'kind: memory',
      'maker: Lumen # out/dmidecode.txt:8',
      'model: D5-5600-16 # out/dmidecode.txt:9',
      'capacity: 16 GiB # out/dmidecode.txt:4',
      'standard-speed: 5600 MT/s # out/dmidecode.txt:7',
      'identified-by: [D5-5600-16]',
      'source: { title: What the machine said of itself, read: 2026-11-25 }',
      '',
    ]);
    expect(buildDraft(machine, 'Desk', new Set([part!.name]))).toContain(
      '    - { use: lumen/d5-5600-16, count: 2, slots: [A2, B2], speed: 4800 MT/s } # ',
    );
  });

  it('are none where no maker is told, or its number stands for it, or two of one name say different things', () => {
    for (const maker of ['Unknown', '80CE000080CE', '0x2C00', ''])
      expect(partDrafts(machineOf(module('A2', maker)), '2026-11-25')).toEqual([]);
    const unlike = module('B2', 'Lumen').replace('16 GB', '32 GB');
    expect(partDrafts(machineOf(module('A2', 'Lumen'), unlike), '2026-11-25')).toEqual([]);
    expect(buildDraft(machineOf(module('A2', 'Lumen')), 'Desk')).toContain('- { maker: Lumen, model: D5-5600-16,');
  });
});
