// Adapters that have burned or that mix up contacts: moulded SATA, 16-pin from too few plugs, EPS and PCIe confused.
import type { Build } from '../../build/build';
import { derive, figure, number, times, type Figure } from '../../figures/figure';
import { isPowerPlug, plugCount, plugOf, startOf, type Lead } from '../../figures/leads';
import { plugPower, slotPower } from '../../figures/plug-loads';
import { join, say, type Said } from '../../figures/say';
import { all, atMost, fits, lacking, sure, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

interface Risk { readonly truth: Truth; readonly said: () => Said }

export default check({
  id: 'adapter-risky',
  area: 'power',
  grade: 'harm',
  what: 'No adapter is of a kind that burns or puts 12 V on the wrong contact.',
  why: 'Moulded SATA plugs fail inside; a 16-pin plug fed from too few plugs overheats them; EPS and PCIe plugs have 12 V and ground on opposite sides.',
  source: 'ATX Version 3 design guide, doc. 336521, section 2.2.1 and table 3-5; moulded plugs: common practice',
  caution: 'adapter-fire',
  examples: [{
    faulty: `
parts:
  supply: { rating: 650 W }
  leads: [{ plug: SATA power, from: peripheral 4-pin, from-count: 1, moulded: true }]
#         ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
    instead: 'Use a SATA power lead of the supply itself, or an adapter whose plug is crimped, not moulded.',
  }],
  test(build, tell) {
    for (const lead of build.parts.leads) {
      const plug = plugOf(lead);
      const start = startOf(lead);
      if ('kind' in plug && !isPowerPlug(plug.kind) || 'at' in start && start.at === 'supply') continue;
      if ('lacks' in plug || 'lacks' in start) {
        tell(outcome(at(lead), lacking([plug, start].flatMap((one) => ('lacks' in one ? [one.lacks] : []))), { broken: () => say`` }));
        continue;
      }
      const risks = risksOf(build, lead, plug.kind, start.at, 'plugs' in start ? start.plugs : number(0, 'plugs'));
      tell(outcome(at(lead), all(...risks.map(({ truth }) => truth)), {
        broken: () => join(...risks.filter(({ truth }) => truth.is === false).map(({ said }) => said())),
        fixes: () => [swap(lead)],
      }));
    }
  },
});

function risksOf(build: Build, lead: Lead, plug: string, from: string, joined: Figure): Risk[] {
  const risks = [mixed(lead, plug, from)];
  if (plug === 'SATA power' && from === 'peripheral 4-pin') risks.push(moulded(lead));
  if (plug === '16-pin' && isPowerPlug(from)) {
    const carried = times(plugPower(from), joined, `${from} plugs that ${lead.label} joins`);
    for (const card of build.parts.graphics) {
      const wants = plugCount(card.part.plugs, '16-pin', card.label);
      if (wants.hi === 0) continue;
      const need = needOf(card);
      const truth = wants.missing.length > 0 ? lacking(wants.missing) : atMost(need, carried);
      risks.push({ truth, said: () => say`${card.label} draws ${need} through ${lead.label}; the ${from} plugs it joins carry ${carried}.` });
    }
  }
  return risks;
}

function mixed(lead: Lead, plug: string, from: string): Risk {
  const side = (kind: string): string => (kind.startsWith('EPS') ? 'EPS' : kind.startsWith('PCIe') || kind === '16-pin' ? 'PCIe' : 'other');
  const both = [side(plug), side(from)];
  return { truth: sure(!(both.includes('EPS') && both.includes('PCIe')), lead.part.from), said: () => say`${lead.label} makes ${plug} of ${from}; those two have supply and ground on opposite sides.` };
}

function moulded(lead: Lead): Risk {
  return {
    truth: fits(lead.part.moulded, `whether the plug of ${lead.label} is moulded`, (is) => !is),
    said: () => say`${lead.label} feeds a SATA plug from a peripheral plug and is moulded; such plugs have burned.`,
  };
}

/** What a card takes through its power plug when its slot gives all it may. */
function needOf(card: Build['parts']['graphics'][number]): Figure {
  const draw = figure(card.part.power.sustained, `sustained power of ${card.label}`);
  return derive(`power through the plug of ${card.label}`, 'power', [draw, slotPower(card)], 'sustained power − slot', (watts, slot) => Math.max(0, watts! - slot!), { unit: 'W' });
}
