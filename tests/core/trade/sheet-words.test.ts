// Every listed spelling reads as its canonical word in every field that has the vocabulary; near misses do not.
import { describe, expect, it } from 'vitest';
import { buildFile } from '../../../server/src/core/manifest/build-file';
import { roles } from '../../../server/src/core/manifest/places';
import type { Field, Table } from '../../../server/src/core/parts/field';
import { kinds } from '../../../server/src/core/parts/kinds';
import { readScalar } from '../../../server/src/core/parts/scalar';
import { parseLink } from '../../../server/src/core/trade/links';
import { ARRAY_WORDS, BADGE_WORDS, MODULAR_WORDS } from '../../../server/src/core/trade/sheet-words';
import { meanings, wordOf } from '../../../server/src/core/trade/vocabulary';

function fieldsIn(table: Table): Field[] {
  return Object.values(table).flatMap((field) => below(field as Field));
}

function below(field: Field): Field[] {
  if (field.type === 'group') return fieldsIn(field.fields);
  if (field.type === 'list') return below(field.of);
  return field.type === 'named' ? [field, ...below(field.of as Field)] : [field];
}

const tables: Table[] = [buildFile, ...Object.values(kinds), ...Object.values(roles).map(({ fields }) => fields)];
const all = tables.flatMap(fieldsIn);

describe('vocabularies of fields', () => {
  it('read every spelling as its word', () => {
    let seen = 0;
    for (const field of all) {
      const of =
        field.type === 'named'
          ? field.names
          : field.type === 'text' || field.type === 'choice'
            ? field.spellings
            : undefined;
      if (!of) continue;
      for (const word of of.words)
        for (const one of [word, word.toUpperCase(), ...(of.spellings[word] ?? [])]) {
          if (meanings(of, one).length > 1) continue;
          seen++;
          expect(wordOf(of, one), one).toBe(word);
          if (field.type === 'text' || field.type === 'choice') expect(readScalar(field, one).value, one).toBe(word);
        }
    }
    expect(seen).toBeGreaterThan(1000);
  });

  it('leave open or refuse what is not of them', () => {
    expect(meanings(MODULAR_WORDS, 'modular')).toEqual(['partly', 'fully']);
    for (const one of ['RAID 50', 'RAID 3', 'RAID', 'JBOD', 'span', 'RAID 01', 'parity 3', '', '10', 'mirror stripe'])
      expect(meanings(ARRAY_WORDS, one), one).toEqual([]);
    for (const one of [
      '80',
      'golden',
      '90 PLUS Gold',
      'copper',
      'gold plated',
      'PLUS',
      'diamond',
      '',
      '80 gold',
      'ruby',
    ])
      expect(meanings(BADGE_WORDS, one), one).toEqual([]);
  });
});

describe('links', () => {
  it.each([
    'SATA 4',
    'SATA IV',
    'USB 7Gbps',
    'Thunderbolt',
    'Thunderbolt 9',
    'PCIe 4.0',
    'M.2 NVMe',
    'NVMe',
    'PCIe x4',
    'USB',
  ])('%j is none', (written) => expect(parseLink(written)).toBeUndefined());
});
