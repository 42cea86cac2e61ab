// What changed between two records of one machine, fact by fact.
import { describe, expect, it } from 'vitest';
import { Doc } from '../../server/src/core/parts/doc';
import { recordChanges } from '../../server/src/review/records';

const record = `format: 1
build: desk.pcbuild.yaml
taken: 2026-11-25
from: [dmidecode 3.5, lsblk, lspci, smartctl 7.4]
board: { reports: B7 FORGE, firmware: "1.08" }
memory:
  - { slot: A1, reports: D5-6000-32, capacity: 32 GiB, running: 6000 MT/s, key: 11aa11 }
  - { slot: B1, reports: D5-6000-32, capacity: 32 GiB, running: 6000 MT/s, key: 22bb22 }
devices:
  - { name: graphics, at: PCIE_1, id: "1a2b:7480", address: "03:00.0", reports: G70, link: PCIe 4 x16 }
drives:
  - { name: scratch, at: M2_1, reports: RAPID-2T, capacity: 2 TB, hours: 120 h, worn: 1 %, key: 33cc33 }
  - { name: archive, reports: VAULT-10T, capacity: 10 TB, hours: 900 h, health: passed, key: 44dd44 }
temperatures:
  - { sensor: k10temp Tctl, temperature: 74 °C, read: load }
`;

/** Each change in a line: kind, thing, fact, before, after, difference, better or worse. */
const changes = (before: string, after: string): string[] => {
  const side = (text: string) => ({
    doc: new Doc('desk.asbuilt.yaml', 'asbuilt', text),
    shown: (doc: Doc) => doc.name,
  });
  return recordChanges(side(before), side(after)).changes.map(
    ({ kind, thing, fact, before: was, after: now, difference, isBetter }) =>
      `${kind} | ${thing}${fact ? `, ${fact}: ${was?.text ?? '-'} → ${now?.text ?? '-'}` : ''}` +
      `${difference ? ` (${difference})` : ''}${isBetter === undefined ? '' : isBetter ? ' better' : ' worse'}`,
  );
};
const changed = (...pairs: readonly (readonly [string, string])[]): string[] => {
  let after = record;
  for (const [from, to] of pairs) {
    expect(after).toContain(from);
    after = after.replace(from, to);
  }
  return changes(record, after);
};

describe('two records', () => {
  it('of the same facts say nothing, whatever their day, order and spelling', () => {
    expect(changes(record, record.replace('2026-11-25', '2027-01-03'))).toEqual([]);
    expect(changed(['capacity: 2 TB', 'capacity: 2000 GB'])).toEqual([]);
    const [first, second] = record.split('\n').filter((line) => line.includes('D5-6000')) as [string, string];
    expect(changed([`${first}\n${second}`, `${second}\n${first}`])).toEqual([]);
    expect(changed(['03:00.0', '04:00.0'])).toEqual([]);
  });

  it('say what a part tells of itself now: firmware, hours and wear, rates, links, health', () => {
    expect(
      changed(
        ['"1.08"', '"1.20"'],
        ['running: 6000', 'running: 4800'],
        ['PCIe 4 x16', 'PCIe 4 x8'],
        ['120 h, worn: 1 %', '502 h, worn: 3 %'],
        ['passed', 'failed'],
        ['74 °C', '71 °C'],
      ),
    ).toEqual([
      'changed | board, firmware: 1.08 → 1.20',
      'changed | memory D5-6000-32 in A1, running: 6000 MT/s → 4800 MT/s (−1200 MT/s) worse',
      'changed | card graphics, link: PCIe 4 x16 → PCIe 4 x8 worse',
      'changed | drive scratch, hours: 120 h → 502 h (+382 h)',
      'changed | drive scratch, worn: 1 % → 3 % (+2 %) worse',
      'changed | drive archive, health: passed → failed worse',
      'changed | temperature k10temp Tctl (load), temperature: 74 °C → 71 °C (−3 K) better',
    ]);
  });

  it('follow a module by its masked key, and say where it sits now', () => {
    expect(changed(['slot: A1', 'slot: A2'])).toEqual(['moved | memory D5-6000-32 in A2, slot: A1 → A2']);
    expect(changed(['slot: A1', 'slot: X'], ['slot: B1', 'slot: A1'], ['slot: X', 'slot: B1'])).toEqual([
      'moved | memory D5-6000-32 in B1, slot: A1 → B1',
      'moved | memory D5-6000-32 in A1, slot: B1 → A1',
    ]);
  });

  it('see a drive that was swapped for one of the same model, or of another, and weigh no hours of two drives', () => {
    expect(changed(['hours: 120 h', 'hours: 3 h'], ['33cc33', '55ee55'])).toEqual([
      'swapped | drive scratch, key: 33cc33 → 55ee55',
      'changed | drive scratch, hours: 120 h → 3 h',
    ]);
    expect(changed(['RAPID-2T', 'FLAT-2T'], ['33cc33', '55ee55'])).toEqual([
      'swapped | drive scratch, reports: RAPID-2T → FLAT-2T',
    ]);
    expect(changed(['id: "1a2b:7480"', 'id: "1a2b:7500"'])).toEqual([
      'swapped | card graphics, id: 1a2b:7480 → 1a2b:7500',
    ]);
  });

  it('say what is gone and what is new', () => {
    const line = '  - { slot: B1, reports: D5-6000-32, capacity: 32 GiB, running: 6000 MT/s, key: 22bb22 }\n';
    expect(changed([line, ''])).toEqual(['removed | memory D5-6000-32 in B1']);
    expect(changes(record.replace(line, ''), record)).toEqual(['added | memory D5-6000-32 in B1']);
  });

  it('take nothing for gone that was not looked for, and no fact for changed that is not shown', () => {
    const drive = /\n {2}- \{ name: archive.*/.exec(record)![0];
    expect(changed([', smartctl 7.4', ''], [drive, ''], [', worn: 1 %', ''])).toEqual([
      'changed | outputs read, from: smartctl 7.4 → none more',
      'not-shown | drive scratch, worn: 1 % → -',
      'not-shown | drive archive',
    ]);
    const section = record.slice(record.indexOf('drives:'), record.indexOf('temperatures:'));
    expect(changed([section, ''])).toEqual(['not-shown | drives']);
    expect(changes(record.replace(section, ''), record)).toEqual(['shown | drives']);
  });

  it('take none of several alike for another: without keys two of one model have not changed places', () => {
    const alike = record.replaceAll(/, key: \w+/g, '').replaceAll(/slot: \w\d, /g, '');
    expect(changes(alike, alike.replaceAll('6000 MT/s', '4800 MT/s'))).toEqual([
      'changed | memory D5-6000-32, running: 6000 MT/s → 4800 MT/s (−1200 MT/s) worse',
      'changed | memory D5-6000-32, running: 6000 MT/s → 4800 MT/s (−1200 MT/s) worse',
    ]);
  });

  it('weigh no link that idled against one under load', () => {
    expect(changed(['from: [', 'from: [lspci under load, '], ['PCIe 4 x16', 'PCIe 1 x16'])).toEqual([
      'changed | outputs read, from: none more → lspci under load',
      'changed | card graphics, link: PCIe 4 x16 → PCIe 1 x16',
    ]);
  });

  it('read what is no record as nothing', () => {
    expect(changes('', record)).not.toEqual([]);
    expect(changes('[', '{ memory: 3, drives: [x, { at: [] }] }')).toEqual(expect.any(Array));
  });
});
