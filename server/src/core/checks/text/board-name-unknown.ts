// Slots, ports and firmware versions that a board’s part file speaks of and does not list.
import { referencesIn } from '../../build/references';
import { fileCheck } from '../check';
import { reportName } from './names-kit';

export default fileCheck({
  id: 'board-name-unknown',
  area: 'text',
  grade: 'stop',
  what: 'Every slot, port and firmware version that a board’s part file speaks of is one that it lists.',
  why: 'What a slot takes away from a misspelled port is taken away from nothing, in every build with this board.',
  source: 'the format’s own rule',
  examples: [
    {
      file: 'parts/norrvik/b7-forge.part.yaml',
      faulty: `
kind: board
slots: { M2_2: { kind: M.2, takes-from: [SATA_55] } }
#                                        ^^^^^^^
ports: { SATA_5: {}, SATA_6: {} }
`,
      mended: `
kind: board
slots: { M2_2: { kind: M.2, takes-from: [SATA_5] } }
ports: { SATA_5: {}, SATA_6: {} }
`,
    },
  ],
  test({ doc }, report) {
    if (doc.kind !== 'part') return;
    for (const reference of referencesIn(doc)) reportName(doc, reference, report);
  },
});
