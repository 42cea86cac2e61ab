// A build of a machine that stands already: what its outputs said plainly, each part spelled out where it stands.
import type { AsBuilt, BuiltModule } from '../manifest/as-built';
import type { Fact } from '../parts/fact';
import { isGraphicsClass } from '../trade/reported';
import { printFlow, type Value } from '../yaml';

const HEAD = `# Drafted from what the machine said of itself: look it over, and complete what no output shows.
# Parts that have part files take \`use:\` instead of the facts spelled out here.
`;

/** A part that says maker and model of itself: its part file, by the name that a build uses. */
export interface PartDraft {
  readonly name: string;
  readonly kind: 'board' | 'memory';
  readonly text: string;
}

/** Part files of what is plain: two parts of one name that say different things are none. */
export function partDrafts(machine: AsBuilt, today: string): readonly PartDraft[] {
  const { maker, reports } = machine.board;
  const all = [
    partDraft('board', { maker, model: reports }, today),
    ...kitsOf(machine.memory.value ?? []).map(([{ maker, reports, capacity, standard }]) =>
      partDraft('memory', { maker, model: reports, capacity, 'standard-speed': standard }, today),
    ),
  ].filter((one): one is PartDraft => one !== undefined);
  const plain = new Map(all.map((one) => [`${one.name}\n${one.text}`, one]));
  return [...plain.values()].filter(({ name }) => [...plain.values()].filter((one) => one.name === name).length === 1);
}

type Stated = { readonly maker: Fact<string>; readonly model: Fact<string> } & Readonly<Record<string, Fact<unknown>>>;

function partDraft(kind: PartDraft['kind'], facts: Stated, today: string): PartDraft | undefined {
  const name = partNameOf(facts.maker, facts.model);
  if (name === undefined) return undefined;
  const lines = Object.entries(facts).flatMap(([key, fact]) =>
    fact.value === undefined ? [] : [`${key}: ${printFlow(fact.text)} # ${lineOf(fact)}`],
  );
  const text = [
    '# Drafted from what a machine said of itself: complete it from the maker’s sheet.',
    `kind: ${kind}`,
    ...lines,
    `identified-by: ${printFlow([facts.model.text])}`,
    `source: { title: What the machine said of itself, read: ${today} }`,
  ];
  return { name, kind, text: `${text.join('\n')}\n` };
}

/** `norrvik/b7-forge`; undefined where either is not told. */
function partNameOf(maker: Fact<string>, model: Fact<string>): string | undefined {
  const [folder, file] = [maker, model].map(({ value }) =>
    (value ?? '')
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, ''),
  );
  return folder && file ? `${folder}/${file}` : undefined;
}

/** The text of a build file; undefined where nothing was told of any part. `files`: parts that have part files. */
export function buildDraft(
  machine: AsBuilt,
  title: string,
  files: ReadonlySet<string> = new Set(),
): string | undefined {
  const single = [
    ['board', boardOf(machine, files)],
    ['processor', part([machine.processor.reports], { model: machine.processor.reports })],
  ] as const;
  const several = [
    ['memory', modulesOf(machine.memory.value ?? [], files)],
    ['drives', drivesOf(machine)],
    ['graphics', cardsOf(machine, true)],
    ['cards', cardsOf(machine, false)],
    ['displays', displaysOf(machine)],
  ] as const;
  const lines = [
    ...single.flatMap(([role, drafted]) => (drafted ? [`  ${role}: ${drafted.text} # ${drafted.from}`] : [])),
    ...several.flatMap(([role, all]) =>
      all.length === 0 ? [] : [`  ${role}:`, ...all.map(({ text, from }) => `    - ${text} # ${from}`)],
    ),
  ];
  return lines.length === 0
    ? undefined
    : `${HEAD}format: 1\nbuild: ${printFlow(title)}\n\nparts:\n${lines.join('\n')}\n`;
}

interface Drafted {
  readonly text: string;
  /** The output’s line. */
  readonly from: string;
}

type Given = Readonly<Record<string, Fact<unknown> | Value | undefined>>;

/** A part with the facts that were told; undefined where none of `telling` was. */
function part(telling: readonly Fact<unknown>[], given: Given): Drafted | undefined {
  const first = telling.find(({ node }) => node);
  if (!first) return undefined;
  const entries = Object.entries(given).flatMap(([key, one]) => {
    const value = isFact(one) ? (one.value === undefined ? undefined : one.text) : one;
    return value === undefined ? [] : [[key, value] as const];
  });
  return { text: printFlow(Object.fromEntries(entries)), from: lineOf(first) };
}

const lineOf = ({ doc, node }: Fact<unknown>): string =>
  `${doc.name}:${doc.lines.positionAt(node?.span.start ?? 0).line + 1}`;

const isFact = (one: Given[string]): one is Fact<unknown> =>
  typeof one === 'object' && one !== null && 'type' in one && one.type === 'fact';

const names = (...facts: readonly Fact<string>[]): Value | undefined => {
  const own = facts.flatMap(({ value }) => value ?? []);
  return own.length === 0 ? undefined : own;
};

function boardOf({ board: { maker, reports, firmware } }: AsBuilt, files: ReadonlySet<string>): Drafted | undefined {
  const use = partNameOf(maker, reports);
  return use !== undefined && files.has(use)
    ? part([reports], { use, firmware })
    : part([reports, firmware], { maker, model: reports, 'identified-by': names(reports), firmware });
}

const some = (drafted: readonly (Drafted | undefined)[]): readonly Drafted[] =>
  drafted.filter((one): one is Drafted => one !== undefined);

type Kit = readonly [BuiltModule, ...BuiltModule[]];

/** Modules that say the same of themselves. */
function kitsOf(modules: readonly BuiltModule[]): readonly Kit[] {
  const kits = new Map<string, BuiltModule[]>();
  for (const module of modules) {
    const { maker, reports, capacity, standard, running } = module;
    const key = [maker, reports, capacity, standard, running].map(({ text }) => text).join('\n');
    kits.set(key, [...(kits.get(key) ?? []), module]);
  }
  return [...kits.values()] as unknown as readonly Kit[];
}

/** A kit is one entry with its count. */
function modulesOf(modules: readonly BuiltModule[], files: ReadonlySet<string>): readonly Drafted[] {
  return some(
    kitsOf(modules).map((all) => {
      const [{ maker, reports, capacity, standard, running }] = all;
      const slots = all.flatMap(({ slot }) => slot.value ?? []);
      const use = partNameOf(maker, reports);
      const own =
        use !== undefined && files.has(use)
          ? { use }
          : { maker, model: reports, 'identified-by': names(reports), capacity, 'standard-speed': standard };
      return part([reports, capacity], {
        ...own,
        count: all.length,
        slots: slots.length === all.length ? slots : undefined,
        speed: running,
      });
    }),
  );
}

function drivesOf({ drives }: AsBuilt): readonly Drafted[] {
  return some(
    (drives.value ?? []).map(({ reports, bus, capacity, at }, i) =>
      part([reports, capacity, bus], {
        name: `drive-${i + 1}`,
        model: reports,
        'identified-by': names(reports),
        bus,
        capacity,
        slot: at,
      }),
    ),
  );
}

const cardsOf = ({ devices }: AsBuilt, graphics: boolean): readonly Drafted[] =>
  some(
    (devices.value ?? [])
      .filter(({ class: code }) => isGraphicsClass(code.value ?? '') === graphics)
      .map(({ id, reports, at }) => part([id, reports], { model: reports, 'identified-by': names(id), slot: at })),
  );

const displaysOf = ({ displays }: AsBuilt): readonly Drafted[] =>
  some(
    (displays.value ?? []).map(({ reports, id, modes }) =>
      part([reports, id], {
        model: reports,
        'identified-by': names(id),
        modes: modes.value?.length ? modes.value.map(({ text }) => text) : undefined,
      }),
    ),
  );
