// What Windows counts of its drives: hours, wear and temperature, each at the drive that its number names.
import { describe, expect, it } from 'vitest';
import { distil } from '../../../server/src/core/machine/distill';
import { Doc } from '../../../server/src/core/parts/doc';

const disk = (id: string, model: string): string =>
  `{ "DeviceId": ${id}, "Model": "${model}", "Size": 2000398934016, "BusType": 17, "HealthStatus": 0 }`;
const counter = (id: string, hours: string, wear: string, temperature: string): string =>
  `{ "DeviceId": ${id}, "PowerOnHours": ${hours}, "Wear": ${wear}, "Temperature": ${temperature} }`;

/** Of each drive model, hours and wear; then the temperatures. */
const read = (disks: readonly string[], counters: readonly string[]): { drives: string[]; temperatures: string[] } => {
  const doc = (name: string, all: readonly string[]): Doc =>
    new Doc(`out/${name}.json`, 'output', `[\n${all.join(',\n')}\n]\n`);
  const docs = [doc('MSFT_PhysicalDisk', disks), doc('MSFT_StorageReliabilityCounter', counters)];
  const { machine, unknown } = distil(docs, 'out', '2026-11-25');
  expect(unknown).toEqual([]);
  return {
    drives: (machine.drives.value ?? []).map(
      ({ reports, hours, worn }) => `${reports.text}: ${hours.text || '-'}, ${worn.text || '-'}`,
    ),
    temperatures: (machine.temperatures.value ?? []).map(
      ({ sensor, temperature, of }) => `${sensor.text}: ${temperature.text}, ${of.text}`,
    ),
  };
};

describe('the counters of drives', () => {
  it('are read at the drive of the same number, whatever their order', () => {
    expect(
      read(
        [disk('"0"', 'RAPID-2T'), disk('"1"', 'SLAB-2T')],
        [counter('"1"', '9829', '3', '41'), counter('"0"', '12', '1', '38')],
      ),
    ).toEqual({
      drives: ['RAPID-2T: 12 h, 1 %', 'SLAB-2T: 9829 h, 3 %'],
      temperatures: ['SLAB-2T: 41 °C, drive', 'RAPID-2T: 38 °C, drive'],
    });
  });

  it('say nothing where a drive keeps no count, or prints what none can be', () => {
    expect(
      read(
        [disk('"0"', 'RAPID-2T'), disk('"1"', 'SLAB-2T')],
        [counter('"0"', '0', 'null', '0'), counter('"1"', '-1', '900', '255')],
      ),
    ).toEqual({ drives: ['RAPID-2T: -, -', 'SLAB-2T: -, -'], temperatures: [] });
  });

  it('are nobody’s where the number is missing, is another, or stands twice', () => {
    const counters = [counter('"0"', '12', '1', '38')];
    for (const disks of [
      [disk('null', 'RAPID-2T')],
      [disk('"7"', 'RAPID-2T')],
      [disk('"0"', 'RAPID-2T'), disk('"0"', 'RAPID-2T')],
      [disk('"{5f1c-uid}"', 'RAPID-2T')],
    ])
      expect(read(disks, counters)).toEqual({ drives: disks.map(() => 'RAPID-2T: -, -'), temperatures: [] });
    expect(read([disk('"0"', 'RAPID-2T')], [...counters, ...counters]).drives).toEqual(['RAPID-2T: -, -']);
  });
});
