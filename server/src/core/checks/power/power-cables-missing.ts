// Power connectors that board and cards want, kind by kind, against those that supply and cables bring.
import type { Build, Placed } from '../../build/build';
import { derive, total, type Figure } from '../../figures/figure';
import { epsCapacity } from '../../figures/connector-loads';
import { highestOf } from '../../figures/peaks';
import { boxedAdapters, connectorsBrought, connectorsWanted } from '../../figures/cables';
import { join, sentence, type Sentence } from '../../figures/sentence';
import { all, any, atMost, type Truth } from '../../figures/truth';
import type { Connector } from '../../trade/connectors';
import { check } from '../check';
import { at, outcome, some, swap, type Reporter } from '../kit';

interface Count {
  readonly words: string;
  readonly eps: boolean;
  readonly want: Figure;
  readonly have: Figure;
  readonly truth: Truth;
  /** Of two kinds counted together, what wants the smaller for certain. */
  readonly smaller?: Figure;
  readonly aside?: () => Sentence;
}

export default check({
  id: 'power-cables-missing',
  area: 'power',
  grade: 'stop',
  what: 'Supply and cables bring as many power connectors of each kind as board and cards want.',
  why:
    'A card without its connector does not start; a board with only one of its EPS connectors fed may hold ' +
    'its processor back.',
  source:
    'ATX Version 3 design guide, doc. 336521, section 2.2.1; connectors of 4+4 and 6+2 contacts serve both ' +
    'sizes: common practice',
  limits: [
    'A list of connectors is complete where it is stated: a kind that it leaves out is none.',
    'Where the EPS connectors fed carry the processor’s peak alone, the others stay empty: a note.',
    'A cable without `adapter: false`, `made-for:` or `from:` leaves open which connectors it takes up.',
  ],
  remarks: ['SATA power connectors are judged by `drive-power-short`.'],
  examples: [
    {
      faulty: `
parts:
  board: { power-connectors: { 24-pin: 1, EPS 8-pin: 1 } }
  graphics: { connectors: { PCIe 8-pin: 3 } }
  supply: { connectors: { 24-pin: 1, EPS 8-pin: 1, PCIe 8-pin: 2 } }
# ^^^^^^
`,
      instead: 'Choose a supply with three PCIe connectors, or get the third cable from the maker of this one.',
    },
  ],
  test(build, report) {
    const { supply } = build.parts;
    if (!supply) return;
    const counts = countsOf(build);
    const who = build.parts.cables.length > 0 ? 'supply and cables have' : 'the supply has';
    const short = counts.filter(({ truth }) => truth.is === false);
    const onlyMoreEps = short.length > 0 && short.every(({ eps, have }) => eps && have.lo >= 1);
    const fed = onlyMoreEps ? processorOnEps(build) : undefined;
    report(
      outcome(at(supply), all(...counts.map(({ truth }) => truth)), {
        ...(onlyMoreEps ? { grade: fed?.truth.is ? ('note' as const) : ('shortfall' as const) } : {}),
        broken: () =>
          join(
            // While nothing is known to want the smaller kind, the larger one by itself says it all.
            ...short
              .filter(({ smaller }) => smaller === undefined || smaller.lo > 0)
              .flatMap(({ words, want, have, aside }) => [
                sentence`The parts need ${want} ${words} ${some(want, 'connector', 'connectors')}; ${who} ${have}.`,
                ...(aside ? [aside()] : []),
              ]),
            ...(fed ? [fed.said] : []),
          ),
        fixes: () => [swap(supply)],
      }),
    );
    needsAdapter(build, supply, report);
  },
});

/** The processor at its highest against the EPS connectors that are fed; undefined while nobody knows. */
function processorOnEps(build: Build): { readonly truth: Truth; readonly said: Sentence } | undefined {
  const { processor } = build.parts;
  if (!processor) return undefined;
  const highest = highestOf(build, processor);
  const carried = epsCapacity(build);
  const truth = atMost(highest, carried);
  if (truth.is === undefined && highest.missing.length > 0) return undefined;
  const said = truth.is
    ? sentence`What it has carries the processor at its highest: ${highest}.`
    : sentence`The processor draws ${highest} at its highest; what it has carries ${carried}.`;
  return { truth, said };
}

/** A 16-pin connector that the supply lacks, while no file says that an adapter is at hand: worth saying. */
function needsAdapter(build: Build, supply: Placed<'supply'>, report: Reporter): void {
  const want = connectorsWanted(build, '16-pin');
  const have = connectorsBrought(build, '16-pin');
  const { count } = boxedAdapters(build);
  if (!(want.lo > have.hi) || count.lo > 0 || count.hi === 0) return;
  report(
    outcome(at(supply, undefined, '16-pin'), atMost(want, have), {
      grade: 'note',
      broken: () =>
        sentence`The cards need ${want} 16-pin ${some(want, 'connector', 'connectors')}; the supply has ${have}. See
          whether an adapter lies in the card’s box, or choose a supply with such a cable.`,
    }),
  );
}

/** Kind by kind; a smaller connector may also be served by what is left of the larger kind that splits. */
function countsOf(build: Build): Count[] {
  const count = (words: string, ...kinds: readonly Connector[]): Count => {
    const sum = (of: typeof connectorsWanted, verb: string): Figure => {
      const each = kinds.map((kind) => of(build, kind));
      return each.length === 1 ? each[0]! : total(`${words} ${verb}`, 'count', each);
    };
    const want = sum(connectorsWanted, 'wanted');
    const have = sum(connectorsBrought, 'brought');
    const smaller = kinds.length > 1 ? { smaller: connectorsWanted(build, kinds[0]!) } : {};
    return { words, eps: words.startsWith('EPS'), want, have, truth: atMost(want, have), ...smaller };
  };
  const counts = [
    count('24-pin', '24-pin'),
    count('EPS 8-pin', 'EPS 8-pin'),
    count('PCIe 8-pin', 'PCIe 8-pin'),
    byAdapter(build, count('16-pin', '16-pin')),
    count('peripheral 4-pin', 'peripheral 4-pin'),
  ];
  const isWanted = (kind: Connector): boolean => connectorsWanted(build, kind).hi > 0;
  for (const kind of ['10-pin', 'DC barrel'] as const) if (isWanted(kind)) counts.push(count(kind, kind));
  if (isWanted('EPS 4-pin')) counts.push(count('EPS 4-pin or 8-pin', 'EPS 4-pin', 'EPS 8-pin'));
  if (isWanted('PCIe 6-pin')) counts.push(count('PCIe 6-pin or 8-pin', 'PCIe 6-pin', 'PCIe 8-pin'));
  return counts;
}

/** A card’s own adapter gives its 16-pin connector too, where PCIe 8-pin connectors enough are left for it. */
function byAdapter(build: Build, sixteen: Count): Count {
  const { want, have, truth } = sixteen;
  const { count, joins } = boxedAdapters(build);
  if (truth.is === true || want.missing.length > 0 || want.hi === 0 || count.hi === 0) return sixteen;
  const brought = connectorsBrought(build, 'PCIe 8-pin');
  const all16 = total('16-pin brought, adapters of the cards’ boxes among them', 'count', [have, count]);
  const eights = derive(
    'PCIe 8-pin wanted, those of adapters among them',
    'count',
    [connectorsWanted(build, 'PCIe 8-pin'), want, have, joins],
    'PCIe 8-pin wanted + (16-pin wanted − 16-pin brought) × connectors of an adapter',
    (eight, wanted, has, each) => eight + Math.max(0, wanted - has) * each,
  );
  return {
    ...sixteen,
    truth: any(truth, all(atMost(want, all16), atMost(eights, brought))),
    aside: () =>
      sentence`With the adapter from the card’s box they need ${eights} PCIe 8-pin connectors in all; there are
        ${brought}.`,
  };
}
