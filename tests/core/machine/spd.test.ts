// What modules say of themselves: prints of decode-dimms against what was put in.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { isSpdPrint, readSpd } from '../../../server/src/core/machine/spd';
import { itWithOracle, runOracle } from '../../published/oracle';
import { asDump, decodedDimm as print, makeSpd, type MadeModule } from '../../support/spd';

const valuesOf = (text: string): Record<string, unknown>[] =>
  readSpd(text).map(({ sound, ...module }) => ({
    sound,
    ...Object.fromEntries(Object.entries(module).map(([key, read]) => [key, read.value])),
  }));

const modules: readonly MadeModule[] = [
  { moduleType: 2, ranks: 2, density: 6, ecc: true, cycle: [5, 0], partNumber: 'LU-32G3200' },
  { moduleType: 3, ranks: 1, density: 5, ecc: false, cycle: [6, 0], partNumber: 'PA-8G2666' },
];

describe('a print of decode-dimms', () => {
  it('gives what it says, each with its line', () => {
    expect(isSpdPrint(print)).toBe(true);
    expect(valuesOf(print)).toEqual([
      {
        sound: true,
        device: '0-0050',
        maker: 'Lumen',
        partNumber: 'LU-32G3200',
        type: 'DDR4',
        moduleType: 'UDIMM',
        capacityMB: 32_768,
        ranks: 2,
        standardMTs: 3200,
        ecc: true,
        heightMm: 32,
      },
    ]);
    expect(readSpd(print)[0]!.capacityMB).toEqual({ value: 32_768, line: 13, said: 'Size: 32768 MB' });
  });

  it('is not believed where the module’s own check sum fails', () => {
    expect(readSpd(print.replace('OK (0x2D3D)', 'Bad'))).toEqual([{ sound: false }]);
  });

  itWithOracle('decode-dimms', 'gives what was put into the modules', () => {
    const folder = mkdtempSync(join(tmpdir(), 'fettle-spd-'));
    try {
      const files = modules.map((_module, index) => join(folder, `${index}-0050`));
      modules.forEach((module, index) => writeFileSync(files[index]!, asDump(makeSpd(module))));
      const { stdout } = runOracle('decode-dimms', ['-x', ...files]);
      const read = valuesOf(stdout).map(({ type, moduleType, ranks, ecc, capacityMB, standardMTs, partNumber }) =>
        [type, moduleType, ranks, ecc, capacityMB, standardMTs, partNumber].join(' '),
      );
      expect(read).toEqual(['DDR4 UDIMM 2 true 32768 3200 LU-32G3200', 'DDR4 SO-DIMM 1 false 8192 2666 PA-8G2666']);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
