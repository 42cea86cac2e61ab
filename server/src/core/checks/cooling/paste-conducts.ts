// A paste that conducts or stores charge, with nothing around it covered.
import { sentence } from '../../figures/sentence';
import { any, given, not, sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn, swap } from '../kit';
import { conducts, hasLid, storesOnly } from './cooling-kit';

export default check({
  id: 'paste-conducts',
  area: 'cooling',
  grade: 'harm',
  what: 'Around a paste that conducts or stores charge the surroundings are covered.',
  why:
    'What is pressed out over the edge bridges contacts and parts beside the lid, and ruins them at the ' +
    'first start.',
  source: 'common practice',
  remarks: ['A paste that only stores charge, on a processor with a lid, is a note.'],
  caution: 'conductive-paste',
  examples: [
    {
      faulty: `
parts:
  paste: { electrically: conductive }
# ^^^^^
`,
      mended: `
parts:
  paste: { electrically: conductive, barrier: true }
`,
    },
  ],
  test({ parts: { paste, processor } }, report) {
    if (!paste) return;
    const { barrier } = paste.at;
    // Between a lid and a cooler a paste that only stores charge meets no contact: what runs over is wiped off.
    const light = storesOnly(paste) && processor !== undefined && hasLid(processor);
    const covered = any(not(conducts(paste)), sure(barrier.value === true, barrier));
    const { area, width, depth } = processor?.part.lid ?? {};
    const lid = light ? [area, width, depth, processor.part.socket] : [];
    report(
      outcome(at(paste, barrier), given(covered, ...lid), {
        broken: () =>
          light
            ? sentence`${paste.label} stores charge; wipe off what runs over the edge of the lid.`
            : storesOnly(paste)
              ? sentence`${paste.label} stores charge, and nothing around the processor is covered; cover the contacts
                beside it.`
              : sentence`${paste.label} conducts electricity, and nothing around the processor is covered; cover the
                contacts beside it.`,
        ...(light ? { grade: 'note' as const } : {}),
        fixes: () => [putOn(paste, 'barrier', true, 'Cover the surroundings before the paste goes on'), swap(paste)],
      }),
    );
  },
});
