// Whether the memory of a finished machine corrects its errors, where that is promised or paid for.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { at, atKey, outcome } from '../kit';
import { notShown } from './built-kit';

export default check({
  id: 'built-ecc-off',
  area: 'built',
  grade: 'shortfall',
  what: 'Errors of the memory are corrected where that is promised, or its modules carry the bits for it.',
  why: 'Modules and board may be able to, and the firmware still leave it off; nothing then corrects anything.',
  source: 'DMTF DSP0134, SMBIOS: type 16, Memory Error Correction',
  limits: ['The width of modules shows only that they could.'],
  examples: [
    {
      faulty: `
parts:
  memory: [{ capacity: 32 GB, ecc: true }]
expect: { memory: { ecc: true } }
#                        ^^^^
`,
      instead: 'Switch error correction on in the firmware, and read again.',
      beside: { 'example.asbuilt.yaml': '\nfrom: [dmidecode]\nmemory-ecc: false\n' },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    const { machine } = build;
    const { ecc } = build.file.expect.memory;
    const kit = build.parts.memory.find(
      ({ part }) => part.ecc.value === true && build.parts.board?.part.memory.ecc.value !== false,
    );
    if (ecc.value !== true && !kit) return;
    const target = ecc.value === true ? atKey(build, ecc) : at(kit!);
    const on = machine['memory-ecc'];
    const why = ecc.value === true ? 'that is promised' : 'its modules carry the bits for it';
    const broken =
      () => sentence`The machine says that errors of its memory are not corrected; ${why}. Switch it on in the
      firmware.`;
    if (on.value === undefined)
      return report(notShown(target, on, 'whether errors of its memory are corrected', { broken }));
    report(outcome(target, sure(on.value, on, ecc.node ? ecc : kit!.part.ecc), { broken }));
  },
});
