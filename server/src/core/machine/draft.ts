// A build of a machine that stands already: what its outputs said plainly, each part by its file or spelled out.
import type { AsBuilt, BuiltModule } from '../manifest/as-built';
import type { Fact } from '../parts/fact';
import { printFlow, type Value } from '../yaml';
import {
  boardPart,
  cardPart,
  displayPart,
  drivePart,
  isCard,
  isFixed,
  isGraphics,
  lineOf,
  modulePart,
  processorPart,
  spelled,
  type ToldPart,
} from './draft-parts';

const HEAD = `# Drafted from what the machine said of itself: look it over, and complete what no output shows.
# Parts that have part files take \`use:\` instead of the facts spelled out here.
`;

const PERHAPS = `
# No output tells whether these are parts of the machine: list what is, and delete the rest.
`;

/** The text of a build file; undefined where nothing was told of any part. `files`: parts that have part files. */
export function buildDraft(
  machine: AsBuilt,
  title: string,
  files: ReadonlySet<string> = new Set(),
): string | undefined {
  const roles = new Drafting(machine, files);
  const single = [
    ['board', roles.board()],
    ['processor', roles.processor()],
  ] as const;
  const several = [
    ['memory', roles.memory()],
    ['drives', roles.drives()],
    ['graphics', roles.cards(true)],
    ['cards', roles.cards(false)],
    ['displays', roles.displays()],
  ] as const;
  const lines = [
    ...single.flatMap(([role, drafted]) => (drafted ? [`  ${role}: ${drafted.text} # ${drafted.from}`] : [])),
    ...several.flatMap(([role, all]) =>
      all.length === 0 ? [] : [`  ${role}:`, ...all.map(({ text, from }) => `    - ${text} # ${from}`)],
    ),
  ];
  const perhaps = roles
    .perhaps()
    .flatMap(([role, all, why]) =>
      all.length === 0 ? [] : [`# ${role}: # ${why}\n`, ...all.map(({ text, from }) => `#   - ${text} # ${from}\n`)],
    );
  return lines.length === 0
    ? undefined
    : `${HEAD}format: 1\nbuild: ${printFlow(title)}\n\nparts:\n${lines.join('\n')}\n` +
        (perhaps.length === 0 ? '' : `${PERHAPS}${perhaps.join('')}`);
}

interface Drafted {
  readonly text: string;
  /** The output’s line. */
  readonly from: string;
}

class Drafting {
  constructor(
    private readonly machine: AsBuilt,
    private readonly files: ReadonlySet<string>,
  ) {}

  board(): Drafted | undefined {
    const { reports, firmware } = this.machine.board;
    return this.part(boardPart(this.machine), [reports, firmware], { firmware });
  }

  processor(): Drafted | undefined {
    return this.part(processorPart(this.machine), [this.machine.processor.reports], {});
  }

  /** A kit is one entry with its count. */
  memory(): readonly Drafted[] {
    return some(
      kitsOf(this.machine.memory.value ?? []).map((all) => {
        const [first] = all;
        const slots = all.flatMap(({ slot }) => slot.value ?? []);
        return this.part(modulePart(first), [first.reports, first.capacity], {
          count: all.length,
          slots: slots.length === all.length ? slots : undefined,
          speed: first.running,
        });
      }),
    );
  }

  drives(): readonly Drafted[] {
    return some(
      (this.machine.drives.value ?? []).filter(isFixed).map((drive, i) => {
        const { reports, capacity, bus, at } = drive;
        return this.part(drivePart(drive), [reports, capacity, bus], { slot: at }, { name: `drive-${i + 1}` });
      }),
    );
  }

  cards(graphics: boolean): readonly Drafted[] {
    return some(
      (this.machine.devices.value ?? [])
        .filter((device) => isCard(this.machine, device) && isGraphics(device) === graphics)
        .map((device) => this.part(cardPart(device), [device.id, device.reports], { slot: device.at })),
    );
  }

  displays(): readonly Drafted[] {
    return some(
      (this.machine.displays.value ?? []).map((display) =>
        this.part(displayPart(display), [display.reports, display.id], {}),
      ),
    );
  }

  /** What is there and may be no part of the machine, by role, with the reason. */
  perhaps(): readonly (readonly [role: string, all: readonly Drafted[], why: string])[] {
    const loose = (this.machine.drives.value ?? []).filter((drive) => !isFixed(drive));
    const devices = (this.machine.devices.value ?? []).filter((device) => !isCard(this.machine, device));
    const cards = (graphics: boolean): readonly Drafted[] =>
      some(
        devices
          .filter((device) => isGraphics(device) === graphics)
          .map((device) => this.part(cardPart(device), [device.id, device.reports], {})),
      );
    return [
      [
        'drives',
        some(loose.map((drive) => this.part(drivePart(drive), [drive.reports, drive.capacity, drive.bus], {}))),
        'on USB',
      ],
      ['graphics', cards(true), 'perhaps built into the processor or the board'],
      ['cards', cards(false), 'perhaps built into the board'],
    ];
  }

  /** By its file where it has one, else with the facts that were told; undefined where none of `telling` was. */
  private part(
    part: ToldPart,
    telling: readonly Fact<unknown>[],
    given: Given,
    before: Named = {},
  ): Drafted | undefined {
    const first = telling.find(({ node }) => node);
    if (!first) return undefined;
    const here = Object.entries(given).flatMap(([key, one]) => {
      const value = isFact(one) ? (one.value === undefined ? undefined : one.text) : one;
      return value === undefined ? [] : [[key, value] as const];
    });
    const isFiled = part.name !== undefined && this.files.has(part.name);
    const value = { ...before, ...(isFiled ? { use: part.name } : spelled(part)), ...Object.fromEntries(here) };
    return { text: printFlow(value), from: lineOf(first) };
  }
}

type Named = Readonly<Record<string, Value>>;
type Given = Readonly<Record<string, Fact<unknown> | Value | undefined>>;

const isFact = (one: Given[string]): one is Fact<unknown> =>
  typeof one === 'object' && one !== null && 'type' in one && one.type === 'fact';

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
