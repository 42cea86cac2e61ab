// What people write of place, bench and hand-over, as they write it in tickets and work orders (common practice).
import { describe, expect, it } from 'vitest';
import * as words from '../../../server/src/core/trade/work-words';
import { meanings, type Vocabulary } from '../../../server/src/core/trade/vocabulary';

const READ: readonly (readonly [of: Vocabulary, word: string, spellings: readonly string[]])[] = [
  [words.FLOOR_WORDS, 'vinyl', ['PVC', 'pvc floor', 'Vinyl flooring']],
  [words.FLOOR_WORDS, 'carpet', ['Carpet tiles', 'Teppichboden']],
  [words.SURFACE_WORDS, 'wood', ['wooden table', 'bare wood']],
  [words.SURFACE_WORDS, 'dissipative mat', ['ESD mat', 'anti-static mat']],
  [words.SURFACE_WORDS, 'antistatic bag', ['anti-static bag', 'ESD bag']],
  [words.DUST_WORDS, 'canned air', ['air duster']],
  [words.HELD_WORDS, 'edges', ['by the edges']],
  [words.STRAP_WORDS, 'cordless', ['wireless']],
  [words.CLIP_WORDS, 'supply case', ['PSU', 'power supply case']],
  [words.CLIP_WORDS, 'bare chassis', ['bare metal', 'unpainted chassis']],
  [words.EQUALISE_WORDS, 'strap', ['wrist strap', 'ESD wrist-strap']],
  [words.CORD_WORDS, 'plugged, switch off', ['plugged in, switched off']],
  [words.EARTH_CONTACT_WORDS, 'none', ['no']],
  [words.RULE_WORDS, '80 percent continuous', ['80 %', '80% rule']],
  // IEC 62040-3, classification of UPS.
  [words.BACKUP_WORDS, 'standby', ['VFD', 'offline']],
  [words.BACKUP_WORDS, 'line interactive', ['VI', 'line-interactive']],
  [words.BACKUP_WORDS, 'online', ['VFI', 'Double conversion']],
  [words.WAVE_WORDS, 'stepped', ['simulated sine wave', 'Modified sine wave']],
  [words.WAVE_WORDS, 'sine', ['pure sine wave']],
  [words.ROUTE_WORDS, 'management controller', ['BMC']],
  [words.ROUTE_WORDS, 'older processor', ['borrowed CPU']],
  [words.THROTTLING_WORDS, 'none', ['no', 'not allowed']],
  // smartctl(8) prints the ATA standard’s extended self-test as long and as extended.
  [words.DRIVE_TEST_WORDS, 'long self-test', ['SMART long test', 'extended self-test', 'Extended offline']],
  [words.LOGGED_WORDS, 'not logged', ['no']],
  [words.HANDED_WORDS, 'serials', ['serial numbers']],
  [words.HANDED_WORDS, 'firmware', ['BIOS version']],
  [words.TRANSPORT_WORDS, 'by carrier', ['parcel service', 'courier']],
];

describe('words of the bench', () => {
  it.each(READ)('%# %s', (of, word, spellings) => {
    for (const one of spellings) expect(meanings(of, one), one).toEqual([word]);
  });

  // Metal and paint, a bag and a mat: what decides whether somebody or something comes to harm is never taken for near.
  const open: readonly (readonly [of: Vocabulary, spellings: readonly string[]])[] = [
    [words.SURFACE_WORDS, ['mat', 'bag', 'table', 'workbench']],
    [words.CLIP_WORDS, ['chassis', 'case', 'radiator', 'earth']],
    [words.EQUALISE_WORDS, ['touching the chassis', 'touching the case', 'yes']],
    [words.CORD_WORDS, ['plugged', 'plugged in', 'off', 'switched off']],
    [words.WAVE_WORDS, ['AC', 'square']],
    [words.DUST_WORDS, ['compressed air', 'blower']],
    [words.TRANSPORT_WORDS, ['by train']],
  ];
  it.each(open)('%# asks about what leaves it open', (of, spellings) => {
    for (const one of spellings) expect(meanings(of, one), one).toEqual([]);
  });
});
