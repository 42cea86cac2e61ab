// A gallium paste on a base that gallium destroys.
import { sentence } from '../../figures/sentence';
import { any, fits, not } from '../../figures/truth';
import { galliumAttacks, galliumStains } from '../../trade/thermal-paste';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { holdsGallium } from './cooling-kit';

export default check({
  id: 'metal-paste-on-aluminium',
  area: 'cooling',
  grade: 'harm',
  what: 'No gallium paste touches aluminium or brass, nor bare copper, into which it soaks.',
  why:
    'Gallium runs between the grains of aluminium within hours and turns it brittle; brass goes the same ' +
    'way, and scratched anodising counts as bare metal.',
  source:
    'grain-boundary penetration of gallium in aluminium, measured in film: 0.8 to 9 µm/s; makers of gallium alloys',
  remarks: ['On bare copper it is a note: the paste soaks in and has to be brought on again.'],
  caution: 'gallium-paste',
  examples: [
    {
      faulty: `
parts:
  cooler: { base: aluminium }
  paste: { gallium: true, barrier: true }
# ^^^^^
`,
      instead: 'Use a paste without gallium, or a cooler with a base of nickel-plated copper.',
    },
  ],
  test({ parts: { cooler, paste } }, report) {
    if (!cooler || !paste) return;
    const { base } = cooler.part;
    const safe = fits(
      base,
      `base metal of ${cooler.label}`,
      (metal) => !galliumAttacks(metal) && !galliumStains(metal),
    );
    const soaks = base.value !== undefined && !galliumAttacks(base.value);
    report(
      outcome(at(paste), any(not(holdsGallium(paste)), safe), {
        broken: () =>
          soaks
            ? sentence`${paste.label} holds gallium, which soaks into the ${base} of ${cooler.label}; look after a
              year whether more has to be brought on.`
            : sentence`${paste.label} holds gallium, which destroys the ${base} of ${cooler.label}; use a paste without
              gallium or a base of nickel-plated copper.`,
        ...(soaks ? { grade: 'note' as const } : {}),
        fixes: () => [swap(paste), swap(cooler)],
      }),
    );
  },
});
