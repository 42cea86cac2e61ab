// A build at its limits of number is judged within two seconds, and one past them says so (promises P1 and P24).
import { describe, expect, it } from 'vitest';
import { limits } from '../../server/src/core/parts/limits';
import { fettle } from '../support/command';
import { judge } from './support/judged';

const lines = (count: number, line: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => line(i)).join('');

const builds: readonly (readonly [string, number, (count: number) => string])[] = [
  [
    'cards',
    limits.partsOfRole,
    (count) =>
      'format: 1\nbuild: A\nparts:\n  board: { slots: { PCIE_1: { kind: PCIe } } }\n  graphics:\n' +
      lines(count, (i) => `    - { name: g${i}, slot: PCIE_1, length: 200 mm, link: PCIe 4 x16 }\n`),
  ],
  [
    'drives',
    limits.partsOfRole,
    (count) =>
      `format: 1\nbuild: A\nparts:\n  ` +
      `drives:\n${lines(count, (i) => `    - { name: d${i}, shape: 2.5 in, bus: SATA }\n`)}`,
  ],
  [
    'missing parts',
    limits.partsOfRole,
    (count) => `format: 1\nbuild: A\nparts:\n  drives:\n${lines(count, (i) => `    - { use: none/n${i} }\n`)}`,
  ],
  [
    'steps one after another',
    limits.items,
    (count) => `format: 1\nbuild: A\nsteps:\n${lines(count, (i) => `  - { do: fit board, after: [s${i + 1}] }\n`)}`,
  ],
];

describe('a build with many', () => {
  it.each(builds)('%s is judged at the limit', (_, most, text) => {
    judge(text(3));
    const started = process.cpuUsage();
    const { judgement } = judge(text(most));
    const { user, system } = process.cpuUsage(started);
    expect((user + system) / 1000).toBeLessThan(2000);
    expect(judgement.findings.map(({ id }) => id)).not.toContain('limits-reached');
  });

  it.each(builds)('%s past the limit says so, and does not end with 0', async (_, most, text) => {
    const { judgement } = judge(text(most + 1));
    expect(judgement.findings.filter(({ id }) => id === 'limits-reached').map(({ said }) => said.text)).toEqual([
      expect.stringContaining(`More than ${most} entries stand in`),
    ]);
    const { status } = await fettle({ 'a.pcbuild.yaml': text(most + 1) }, 'check', '--on', '2026-10-03');
    expect(status).toBeGreaterThan(0);
  });
});
