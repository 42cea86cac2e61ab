// The supply’s leads against the paths they take through the case.
import type { Build, Placed } from '../../build/build';
import { counted, derive, figure, least, most, missing, number, times, total, unknown, type Figure, type Missing } from '../../figures/figure';
import { memo } from '../../figures/memo';
import { plugsWanted } from '../../figures/leads';
import { join, say } from '../../figures/say';
import { all, any, atLeast, atMost, lacking, type Truth } from '../../figures/truth';
import type { Plug } from '../../trade/plugs';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

interface Reach { readonly kind: Plug; readonly wanted: Figure; readonly reaching: Figure; readonly path: Figure; readonly longest: Figure | undefined; readonly truth: Truth }

interface Run { readonly length: Figure; readonly count: Figure; readonly lacks: readonly Missing[] }

/** The leads whose path the case decides: to the board. */
const boardPlugs: readonly Plug[] = ['24-pin', 'EPS 8-pin', 'EPS 4-pin'];

export default check({
  id: 'lead-too-short',
  area: 'case',
  grade: 'stop',
  what: 'As many leads to the board as it wants reach along their path through the case.',
  why: 'An EPS lead that is short by a hand is found out when everything else is in.',
  source: 'common practice',
  examples: [{
    faulty: `
parts:
  board: { power-inlets: { EPS 8-pin: 1 } }
  supply: { own-leads: [{ plug: EPS 8-pin, count: 2, length: 500 mm }] }
# ^^^^^^
  case: { lead-paths: { EPS 8-pin: 620 mm } }
`,
    instead: 'Choose a supply with an EPS lead of 620 mm or more, or add an extension made for it.',
  }],
  test(build, tell) {
    const { board, supply, case: box } = build.parts;
    if (!board || !supply || !box) return;
    const leads = supply.part['own-leads'];
    const reaches = reachesOf(build);
    const lacks = leads.value ? [] : [missing(leads, `leads of ${supply.label}`)];
    tell(outcome(at(supply), lacks.length > 0 ? lacking(lacks) : all(...reaches.map(({ truth }) => truth)), {
      broken: () => join(...reaches.filter(({ truth }) => truth.is === false).map(({ kind, wanted, reaching, path, longest }) => longest && longest.hi < path.lo
        ? say`The path of the ${kind} lead is ${path}; the longest that supply and leads bring is ${longest}.`
        : say`Of ${kind} leads ${wanted} must reach ${path}; of those in the build ${reaching} can.`)),
      fixes: () => [swap(supply), swap(box)],
    }));
  },
});

const reachesOf = memo((build: Build): readonly Reach[] =>
  boardPlugs.filter((kind) => plugsWanted(build).get(kind)!.hi > 0).map((kind) => reachOf(build, build.parts.supply!, build.parts.case!, kind)));

function reachOf(build: Build, supply: Placed<'supply'>, box: Placed<'case'>, kind: Plug): Reach {
  const path = pathOf(box, kind);
  const own = (supply.part['own-leads'].value ?? []).filter((row) => row.plug.value === undefined || row.plug.value === kind).map((row) => ({
    length: figure(row.length, `length of the ${kind} lead of ${supply.label}`), count: counted(row.count, `${kind} leads of ${supply.label}`),
    lacks: row.plug.value === undefined ? [missing(row.plug, `plug of a lead of ${supply.label}`)] : [],
  }));
  const bought = build.parts.leads.filter((lead) => (lead.part.plug.value ?? lead.at.kind.value) === kind).map((lead) => ({
    length: figure(lead.part.length, `length of ${lead.label}`), count: lead.at.count.entry ? counted(lead.at.count, `count of ${lead.label}`) : number(1, `count of ${lead.label}`), lacks: [] as Missing[],
  }));
  const leads: readonly Run[] = [...own, ...bought];
  // Leads that are not there at all are the finding of another check.
  const there = total(`${kind} leads of supply and build`, 'count', leads.map(({ count }) => count));
  const wanted = least(`${kind} leads in use`, [plugsWanted(build).get(kind)!, there]);
  const reaching = total(`${kind} leads that reach`, 'count', leads.map(({ length, count, lacks }) => times(reachesOne(length, path, lacks), count)));
  const longest = leads.length > 0 ? most(`longest ${kind} lead`, leads.map(({ length }) => length)) : undefined;
  return { kind, wanted, reaching, path, longest, truth: enough(wanted, reaching, leads, path) };
}

/** One lead is held against its path by length, so that the answer can say at which length it turns; several by their number. */
function enough(wanted: Figure, reaching: Figure, leads: readonly Run[], path: Figure): Truth {
  if (wanted.hi > 1) return atLeast(reaching, wanted);
  return any(atMost(wanted, number(0, 'no lead at all')), ...leads.map(({ length, lacks }) => (lacks.length > 0 ? all(atLeast(length, path), lacking(lacks)) : atLeast(length, path))));
}

function reachesOne(length: Figure, path: Figure, lacks: readonly Missing[]): Figure {
  const does = derive(`${length.label} reaches`, 'count', [length, path], '1 where the length is at least that of the path, else 0', (mm, way) => (mm! >= way! ? 1 : 0));
  return lacks.length > 0 ? { ...does, lo: 0, missing: [...does.missing, ...lacks] } : does;
}

function pathOf(box: Placed<'case'>, kind: Plug): Figure {
  const paths = box.part['lead-paths'];
  const one = paths.value?.get(kind);
  if (one) return figure(one, `path of the ${kind} lead in ${box.label}`);
  return unknown('length', `path of the ${kind} lead`, [{ ...missing(paths, `path of the ${kind} lead in ${box.label}`), path: `${paths.path}.${kind}` }]);
}
