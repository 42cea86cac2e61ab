// The supply’s cables against the paths they take through the case.
import type { Build, Placed } from '../../build/build';
import {
  copyWith,
  counted,
  decidedBy,
  derive,
  figure,
  least,
  missing,
  most,
  number,
  times,
  total,
  unknown,
  type Figure,
  type Missing,
} from '../../figures/figure';
import { memo } from '../../figures/memo';
import { connectorsWanted, type Cable } from '../../figures/cables';
import { howMany } from '../../figures/power';
import { join, sentence } from '../../figures/sentence';
import { all, any, atLeast, atMost, lacking, type Truth } from '../../figures/truth';
import { isPowerConnector, type Connector } from '../../trade/connectors';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

interface Reach {
  readonly kind: Connector;
  readonly wanted: Figure;
  readonly reaching: Figure;
  readonly path: Figure;
  readonly longest: Figure | undefined;
  readonly truth: Truth;
}

interface Run {
  readonly length: Figure;
  readonly count: Figure;
  readonly missingFacts: readonly Missing[];
}

/** The cables whose path the case decides: to the board. */
const boardConnectors: readonly Connector[] = ['24-pin', 'EPS 8-pin', 'EPS 4-pin'];

export default check({
  id: 'cable-too-short',
  area: 'case',
  grade: 'stop',
  what: 'As many leads to the board as it wants reach along their path through the case.',
  why: 'An EPS cable that is short by a hand is found out when everything else is in.',
  source: 'common practice',
  limits: [
    'Only cables to the board are judged: where a card or a drive stands, and so the path to it, no ' + 'file states.',
  ],
  examples: [
    {
      faulty: `
parts:
  board: { power-connectors: { EPS 8-pin: 1 } }
  supply: { own-cables: [{ connector: EPS 8-pin, count: 2, length: 500 mm }] }
# ^^^^^^
  case: { cable-paths: { EPS 8-pin: 620 mm } }
`,
      instead: 'Choose a supply with an EPS cable of 620 mm or more, or add an extension made for it.',
    },
  ],
  test(build, report) {
    const { board, supply, case: box } = build.parts;
    if (!board || !supply || !box) return;
    const cables = supply.part['own-cables'];
    const reaches = reachesOf(build);
    const missingFacts = cables.value ? [] : [missing(cables, `cables of ${supply.label}`)];
    report(
      outcome(at(supply), missingFacts.length > 0 ? lacking(missingFacts) : all(...reaches.map(({ truth }) => truth)), {
        broken: () =>
          join(
            ...reaches
              .filter(({ truth }) => truth.is === false)
              .map(({ kind, wanted, reaching, path, longest }) =>
                longest && longest.hi < path.lo
                  ? sentence`The path of the ${kind} cable is ${path}; the longest that supply and cables bring is
                    ${longest}.`
                  : sentence`Of ${kind} cables ${wanted} must reach ${path}; of those in the build ${reaching} can.`,
              ),
          ),
        fixes: () => [swap(supply), swap(box)],
        ...(!box.part['cable-paths'].node && isOfForm(supply, box)
          ? { usual: () => `the leads of a supply of form ${supply.part.form.value} reach in ${box.label}` }
          : {}),
      }),
    );
  },
});

/** Whether the case lists the supply’s form, whose leads are then made for such cases. Source: common practice. */
const isOfForm = ({ part: { form } }: Placed<'supply'>, { part: box }: Placed<'case'>): boolean =>
  form.value !== undefined && (box['supply-forms'].value ?? []).some(({ value }) => value === form.value);

const reachesOf = memo((build: Build): readonly Reach[] =>
  boardConnectors
    .filter((kind) => connectorsWanted(build, kind).hi > 0)
    .map((kind) => reachOf(build, build.parts.supply!, build.parts.case!, kind)),
);

function reachOf(build: Build, supply: Placed<'supply'>, box: Placed<'case'>, kind: Connector): Reach {
  const path = pathOf(box, kind);
  const own = (supply.part['own-cables'].value ?? [])
    .filter((row) => row.connector.value === undefined || row.connector.value === kind)
    .map((row) => ({
      length: figure(row.length, `length of the ${kind} cable of ${supply.label}`),
      count: decidedBy(counted(row.count, `${kind} cables of ${supply.label}`), row.connector),
      missingFacts:
        row.connector.value === undefined ? [missing(row.connector, `connector of a cable of ${supply.label}`)] : [],
    }));
  const ofKind = build.parts.cables.filter((cable) => (cable.part.connector.value ?? cable.at.kind.value) === kind);
  const straight: readonly Run[] = [
    ...own,
    ...ofKind.filter((cable) => !isExtension(cable)).map((cable) => adapted(supply, cable)),
  ];
  const cables = [...straight, ...ofKind.filter(isExtension).flatMap((cable) => extended(cable, straight, path) ?? [])];
  // Cables that are not there at all are the finding of another check.
  const there = total(
    `${kind} cables of supply and build`,
    'count',
    straight.map(({ count }) => count),
  );
  const wanted = least(`${kind} cables in use`, [connectorsWanted(build, kind), there]);
  const reaching = total(
    `${kind} cables that reach`,
    'count',
    cables.map(({ length, count, missingFacts }) => times(reachesOne(length, path, missingFacts), count)),
  );
  const longest =
    cables.length > 0
      ? most(
          `longest ${kind} cable`,
          cables.map(({ length }) => length),
        )
      : undefined;
  return { kind, wanted, reaching, path, longest, truth: enough(wanted, reaching, cables, path) };
}

const runOf = (cable: Cable): Run => ({
  length: figure(cable.part.length, `length of ${cable.label}`),
  count: decidedBy(howMany(cable), cable.part.from),
  missingFacts: [],
});

/** Whether a cable only lengthens another of its own kind. */
const isExtension = ({ part: { connector, from }, at: { kind } }: Cable): boolean =>
  from.value !== undefined && from.value === (connector.value ?? kind.value);

/** An extension on the longest cable that does not reach by itself; undefined where each of them does. */
function extended(cable: Cable, straight: readonly Run[], path: Figure): Run | undefined {
  const short = straight.filter(({ length }) => atLeast(length, path).is !== true);
  if (short.length === 0) return undefined;
  return behind(
    cable,
    short.map(({ length }) => length),
  );
}

/** A cable of its own; an adapter hangs on the longest cable of the supply that ends as it starts. */
function adapted(supply: Placed<'supply'>, cable: Cable): Run {
  const from = cable.part.from.value;
  if (from === undefined || !isPowerConnector(from)) return runOf(cable);
  const rows = (supply.part['own-cables'].value ?? []).filter(({ connector }) => connector.value === from);
  const label = `length of the ${from} cable of ${supply.label}`;
  return behind(
    cable,
    rows.length > 0
      ? rows.map(({ length }) => figure(length, label))
      : [unknown('length', label, [missing(supply.part['own-cables'], label)])],
  );
}

/** A cable on the longest of others. */
function behind(cable: Cable, others: readonly Figure[]): Run {
  const own = runOf(cable);
  const lengths = [most('length of the cable that it starts from', others), own.length];
  return { ...own, length: total(`length with ${cable.label}`, 'length', lengths, { unit: 'mm' }) };
}

/**
 * One cable is held against its path by length, so that the answer can say at which length it turns; several by their
 * number.
 */
function enough(wanted: Figure, reaching: Figure, cables: readonly Run[], path: Figure): Truth {
  if (wanted.hi > 1) return atLeast(reaching, wanted);
  return any(
    atMost(wanted, number(0, 'no cable at all')),
    ...cables.map(({ length, missingFacts }) =>
      missingFacts.length > 0 ? all(atLeast(length, path), lacking(missingFacts)) : atLeast(length, path),
    ),
  );
}

function reachesOne(length: Figure, path: Figure, missingFacts: readonly Missing[]): Figure {
  const does = derive(
    `${length.label} reaches`,
    'count',
    [length, path],
    '1 where the length is at least that of the path, else 0',
    (mm, way) => (mm >= way ? 1 : 0),
  );
  return missingFacts.length > 0 ? copyWith(does, { lo: 0, missing: [...does.missing, ...missingFacts] }) : does;
}

function pathOf(box: Placed<'case'>, kind: Connector): Figure {
  const paths = box.part['cable-paths'];
  const one = paths.value?.get(kind);
  if (one) return figure(one, `path of the ${kind} cable in ${box.label}`);
  return unknown('length', `path of the ${kind} cable`, [
    { ...missing(paths, `path of the ${kind} cable in ${box.label}`), path: `${paths.path}.${kind}` },
  ]);
}
