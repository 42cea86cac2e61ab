// A build of a machine that stands already: what its outputs said plainly, each part spelled out where it stands.
import type { AsBuilt, BuiltModule } from '../manifest/as-built';
import type { Fact } from '../parts/fact';
import { isGraphicsClass } from '../trade/reported';
import { printFlow, type Value } from '../yaml';

const HEAD = `# Drafted from what the machine said of itself: look it over, and complete what no output shows.
# Parts that have part files take \`use:\` instead of the facts spelled out here.
`;

/** The text of a build file; undefined where nothing was told of any part. */
export function buildDraft(machine: AsBuilt, title: string): string | undefined {
  const single = [
    ['board', boardOf(machine)],
    ['processor', part([machine.processor.reports], { model: machine.processor.reports })],
  ] as const;
  const several = [
    ['memory', modulesOf(machine.memory.value ?? [])],
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
  const line = first.doc.lines.positionAt(first.node!.span.start).line + 1;
  return { text: printFlow(Object.fromEntries(entries)), from: `${first.doc.name}:${line}` };
}

const isFact = (one: Given[string]): one is Fact<unknown> =>
  typeof one === 'object' && one !== null && 'type' in one && one.type === 'fact';

const names = (...facts: readonly Fact<string>[]): Value | undefined => {
  const own = facts.flatMap(({ value }) => value ?? []);
  return own.length === 0 ? undefined : own;
};

const boardOf = ({ board: { reports, firmware } }: AsBuilt): Drafted | undefined =>
  part([reports, firmware], { model: reports, 'identified-by': names(reports), firmware });

const some = (drafted: readonly (Drafted | undefined)[]): readonly Drafted[] =>
  drafted.filter((one): one is Drafted => one !== undefined);

/** Modules that say the same of themselves are one entry with its count. */
function modulesOf(modules: readonly BuiltModule[]): readonly Drafted[] {
  const kits = new Map<string, BuiltModule[]>();
  for (const module of modules) {
    const { reports, capacity, standard, running } = module;
    const key = [reports, capacity, standard, running].map(({ text }) => text).join('\n');
    kits.set(key, [...(kits.get(key) ?? []), module]);
  }
  return some(
    [...kits.values()].map((all) => {
      const [{ reports, capacity, standard, running }] = all as [BuiltModule];
      const slots = all.flatMap(({ slot }) => slot.value ?? []);
      return part([reports, capacity], {
        model: reports,
        'identified-by': names(reports),
        capacity,
        'standard-speed': standard,
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
