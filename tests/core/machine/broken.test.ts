// Every reader of a machine’s outputs against its samples cut off anywhere and changed anyhow.
import { describe, expect, it } from 'vitest';
import { distil } from '../../../server/src/core/machine/distill';
import { Doc } from '../../../server/src/core/parts/doc';
import { mutations, mutationsTried, truncations } from '../../support/broken';
import { outputsOf } from '../../support/machines';
import { wrongDesk } from '../../machines/made';

/** Everything that is told of a machine: the field and its text, at its place. */
function facts(name: string, text: string): string[] {
  const { machine } = distil([new Doc(`out/${name}`, 'output', text)], 'out', '2026-11-29');
  const found: string[] = [];
  const waiting: unknown[] = Object.entries(machine).flatMap(([key, value]) =>
    ['$', 'from', 'taken'].includes(key) ? [] : [value],
  );
  for (let one = waiting.pop(); one; one = waiting.pop()) {
    const fact = one as {
      type?: string;
      value?: unknown;
      key?: string;
      text?: string;
      node?: { span: { start: number } };
    };
    if (Array.isArray(one)) waiting.push(...(one as unknown[]));
    else if (fact.type !== 'fact')
      waiting.push(...Object.entries(one).flatMap(([key, value]) => (key === '$' ? [] : [value])));
    else if (Array.isArray(fact.value)) waiting.push(...(fact.value as unknown[]));
    else if (fact.node) {
      expect(fact.node.span.start).toBeLessThanOrEqual(text.length);
      found.push(`${fact.key}: ${fact.text}`);
    }
  }
  return found;
}

const windows: Record<string, string> = {
  'Win32_PhysicalMemory.json':
    '\r\n{ "BankLabel": "P0 CHANNEL A", "DeviceLocator": "DIMM 1", "Capacity": 34359738368, "PartNumber": "D5-6000 ", "Speed": 4800, "ConfiguredClockSpeed": 6000 }\r\n',
  'Win32_BIOS.json': '{ "SMBIOSBIOSVersion": "1.20", "ReleaseDate": "\\/Date(1768176000000)\\/" }\n',
  'MSFT_StorageReliabilityCounter.json': '[{ "DeviceId": "1", "PowerOnHours": 9829, "Wear": 3, "Temperature": 41 }]\n',
  'MSFT_PhysicalDisk.json':
    '[{ "DeviceId": "1", "Model": "Rapid 2T", "Size": 2000398934016, "BusType": 17, "HealthStatus": 0 }]\n',
  'WmiMonitorID.json':
    '{ "UserFriendlyName": [80, 51, 50, 0], "ManufacturerName": [80, 72, 82, 0], "ProductCodeID": [49, 50, 51, 52] }\n',
};

const { 'smartctl-sdb.json': _, ...linux } = outputsOf(wrongDesk);
const samples: Record<string, string> = { ...linux, ...windows };

it('reads what Windows prints', () => {
  expect(Object.entries(windows).flatMap(([name, text]) => facts(name, text).sort())).toEqual([
    'capacity: 32 GiB',
    'locator: DIMM 1',
    'reports: D5-6000',
    'running: 6000 MT/s',
    'slot: A2',
    'standard: 4800 MT/s',
    'dated: 2026-01-12',
    'firmware: 1.20',
    'bus: NVMe',
    'capacity: 2.0004 TB',
    'health: passed',
    'reports: Rapid 2T',
    'id: PHR1234',
    'reports: P32',
  ]);
});

describe.each(Object.keys(samples))('%s', (name) => {
  const text = samples[name]!;

  it('invents nothing when it is cut off', () => {
    const whole = facts(name, text);
    // Counters alone are no facts, nor are paths: they tell of a drive, and paths where it hangs, that another output names.
    expect(whole.length > 0).toBe(!['block.txt', 'MSFT_StorageReliabilityCounter.json'].includes(name));
    // Of a slot’s name in two parts the first may be lost.
    const known = (fact: string): boolean =>
      whole.includes(fact) || whole.some((one) => fact.startsWith('locator: ') && one.endsWith(fact.slice(8)));
    for (const cut of truncations(text, 20)) expect(facts(name, cut).filter((one) => !known(one))).toEqual([]);
  });

  it('throws at nothing, and lets no serial number through', () => {
    for (const changed of mutations(text, Math.ceil(mutationsTried / 20)))
      expect(facts(name, changed).join('\n')).not.toContain('SECRET');
  });
});
