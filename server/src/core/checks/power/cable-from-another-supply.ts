// Modular cables that are not the supply’s own.
import type { Build, Placed } from '../../build/build';
import { connectorOf, type Cable } from '../../figures/cables';
import { isPowerConnector } from '../../trade/connectors';
import { missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { any, given, lacking, sure, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn } from '../kit';

export default check({
  id: 'cable-from-another-supply',
  area: 'power',
  grade: 'harm',
  what: 'Every cable that plugs into the supply was made for this supply.',
  why:
    'Modular connectors of one shape differ in which contact carries what, even within one maker: a strange ' +
    'cable puts 12 V where 5 V or ground belongs.',
  source: 'common practice; no standard covers the connectors at the supply’s side',
  caution: 'adapter-fire',
  examples: [
    {
      faulty: `
parts:
  supply: { use: holm/s750, cables: holm/s650 }
#                                   ^^^^^^^^^
`,
      mended: `
parts:
  supply: { use: holm/s750, cables: own }
`,
    },
  ],
  test(build, report) {
    const { supply } = build.parts;
    if (!supply) return;
    const { cables } = supply.at;
    report(
      outcome(at(supply, cables, 'cables'), given(ownCables(supply), supply.at.use), {
        broken: () => sentence`${supply.label} is used with the cables of ${cables}; only its own are known to fit it.`,
        fixes: () => [putOn(supply, 'cables', 'own', 'Use the supply’s own cables')],
      }),
    );
    for (const cable of build.parts.cables) {
      const truth = madeForIt(supply, cable);
      if (truth)
        report(
          outcome(at(cable), given(truth, supply.at.use), {
            broken: () =>
              sentence`${cable.label} was made for ${cable.part['made-for']}; the supply is ${supply.label}.`,
          }),
        );
    }
  },
});

function ownCables(supply: NonNullable<Build['parts']['supply']>): Truth {
  const { cables } = supply.at;
  const { modular, form } = supply.part;
  if (cables.value !== undefined) return sure(cables.value === 'own' || cables.value === supply.used?.name, cables);
  if (modular.value === 'fixed') return sure(true, modular);
  // The cable of a brick outside the case is its own.
  if (!modular.node && form.value === 'external') return sure(true, form);
  const whose = missing(cables, `whose cables ${supply.label} is used with`);
  return lacking(
    modular.value === undefined ? [whose, missing(modular, `whether the cables of ${supply.label} come off`)] : [whose],
    cables,
    modular,
  );
}

/** Nothing for cables that carry no power, or that start at another cable’s connector. */
function madeForIt(supply: Placed<'supply'>, cable: Cable): Truth | undefined {
  const connector = connectorOf(cable);
  if ('kind' in connector && !isPowerConnector(connector.kind)) return undefined;
  const { from, 'made-for': maker } = cable.part;
  if (from.value !== undefined && isPowerConnector(from.value)) return sure(true, from);
  if (maker.value === undefined)
    return lacking([
      missing(maker, `which supply ${cable.label} was made for`),
      missing(from, `at which connector ${cable.label} starts`),
    ]);
  const fits = sure(maker.value === supply.used?.name, maker);
  return 'missingFacts' in connector ? any(fits, lacking([connector.missingFacts])) : fits;
}
