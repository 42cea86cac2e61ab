// A gallium paste on a base that gallium destroys.
import { sentence } from '../../figures/sentence';
import { any, fits, not } from '../../figures/truth';
import { galliumAttacks } from '../../trade/thermal-paste';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { holdsGallium } from './cooling-kit';

export default check({
  id: 'metal-paste-on-aluminium',
  area: 'cooling',
  grade: 'harm',
  what: 'No gallium paste touches a base of aluminium or brass.',
  why:
    'Gallium runs between the grains of aluminium within hours and turns it brittle; brass goes the same ' +
    'way, and scratched anodising counts as bare metal.',
  source:
    'grain-boundary penetration of gallium in aluminium, measured in film: 0.8 to 9 µm/s; makers of gallium alloys',
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
    const safe = fits(base, `base metal of ${cooler.label}`, (metal) => !galliumAttacks(metal));
    report(
      outcome(at(paste), any(not(holdsGallium(paste)), safe), {
        broken: () =>
          sentence`${paste.label} holds gallium, which destroys the base of ${cooler.label}: it is of ${base}.`,
        fixes: () => [swap(paste), swap(cooler)],
      }),
    );
  },
});
