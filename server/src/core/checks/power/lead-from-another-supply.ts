// Modular leads that are not the supply’s own.
import type { Build, Placed } from '../../build/build';
import { isPowerPlug, plugOf, type Lead } from '../../figures/leads';
import { missing } from '../../figures/figure';
import { say } from '../../figures/say';
import { any, lacking, sure, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn } from '../kit';

export default check({
  id: 'lead-from-another-supply',
  area: 'power',
  grade: 'harm',
  what: 'Every lead that plugs into the supply was made for this supply.',
  why: 'Modular plugs of one shape differ in which contact carries what, even within one maker: a strange lead puts 12 V where 5 V or ground belongs.',
  source: 'common practice; no standard covers the plugs at the supply’s side',
  caution: 'adapter-fire',
  examples: [{
    faulty: `
parts:
  supply: { use: holm/s750, leads: holm/s650 }
#                                  ^^^^^^^^^
`,
    mended: `
parts:
  supply: { use: holm/s750, leads: own }
`,
  }],
  test(build, tell) {
    const { supply } = build.parts;
    if (!supply) return;
    const { leads } = supply.at;
    tell(outcome({ ...at(supply, leads), path: `${supply.path}.leads` }, ownLeads(supply), {
      broken: () => say`${supply.label} is used with the leads of ${leads}; only its own are known to fit it.`,
      fixes: () => [putOn(supply, 'leads', 'own', 'Use the supply’s own leads')],
    }));
    for (const lead of build.parts.leads) {
      const truth = madeForIt(supply, lead);
      if (truth) tell(outcome(at(lead), truth, {
        broken: () => say`${lead.label} was made for ${lead.part['made-for']}; the supply is ${supply.label}.`,
      }));
    }
  },
});

function ownLeads(supply: NonNullable<Build['parts']['supply']>): Truth {
  const { leads } = supply.at;
  const { modular } = supply.part;
  if (leads.value !== undefined) return sure(leads.value === 'own' || leads.value === supply.used?.name, leads);
  if (modular.value === 'fixed') return sure(true, modular);
  const whose = missing(leads, `whose leads ${supply.label} is used with`);
  return lacking(modular.value === undefined ? [whose, missing(modular, `whether the leads of ${supply.label} come off`)] : [whose], leads, modular);
}

/** Nothing for leads that carry no power, or that start at another lead’s plug. */
function madeForIt(supply: Placed<'supply'>, lead: Lead): Truth | undefined {
  const plug = plugOf(lead);
  if ('kind' in plug && !isPowerPlug(plug.kind)) return undefined;
  const { from, 'made-for': maker } = lead.part;
  if (from.value !== undefined) return sure(true, from);
  if (maker.value === undefined) return lacking([missing(maker, `which supply ${lead.label} was made for`), missing(from, `at which plug ${lead.label} starts`)]);
  const fits = sure(maker.value === supply.used?.name, maker);
  return 'lacks' in plug ? any(fits, lacking([plug.lacks])) : fits;
}
