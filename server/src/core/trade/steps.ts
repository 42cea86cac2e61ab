// The steps of a build in the trade's words, in the order that settles what the rules leave open.
import type { CautionId } from './cautions';

/**
 * Every kind of step, in the order in which work that nothing else decides is done. Source: common practice; makers'
 * handbooks.
 */
export const STEP_KINDS = [
  'read handbooks',
  'let parts warm up',
  'unplug mains',
  'drain residual charge',
  'open case',
  'equalise',
  'wear strap',
  'take parts from bags',
  'update firmware',
  'fit processor',
  'take off socket cover',
  'fit memory',
  'fit M.2 drive',
  'fit back plate',
  'clean surfaces',
  'remove film',
  'apply paste',
  'fit cooler',
  'connect 24-pin',
  'connect EPS',
  'connect fan cables',
  'connect pump cable',
  'bench start',
  'set standoffs',
  'fit I/O shield',
  'fit supply',
  'fit fans',
  'fit board',
  'fit radiator',
  'connect front cables',
  'fit drive',
  'connect drive cables',
  'fit card',
  'fit graphics',
  'fit card support',
  'connect card power',
  'fill loop',
  'leak test',
  'change coin cell',
  'check inside',
  'close case',
  'take off strap',
  'plug in mains',
  'first start',
  'wait for memory training',
  'default settings',
  'memory test',
  'set profile',
  'drive test',
  'install system',
  'stress test',
  'measure',
  'record settings',
  'hand over',
] as const;

export type StepKind = (typeof STEP_KINDS)[number];

/** Steps with a hand on parts or inside the case. Source: common practice. */
export const HANDLING: ReadonlySet<StepKind> = new Set<StepKind>([
  'take parts from bags',
  'take off socket cover',
  'fit processor',
  'fit memory',
  'fit M.2 drive',
  'fit back plate',
  'clean surfaces',
  'apply paste',
  'fit cooler',
  'connect 24-pin',
  'connect EPS',
  'connect fan cables',
  'connect pump cable',
  'fit supply',
  'fit fans',
  'fit board',
  'fit radiator',
  'connect front cables',
  'fit drive',
  'connect drive cables',
  'fit card',
  'fit graphics',
  'fit card support',
  'connect card power',
  'fill loop',
  'change coin cell',
]);

/**
 * Handling steps whose part a discharge can harm; a fan, a radiator or a housing bears it, and a bag is judged by
 * itself. Source: common practice.
 */
export const STATIC_SENSITIVE: ReadonlySet<StepKind> = new Set<StepKind>([
  'take off socket cover',
  'fit processor',
  'fit memory',
  'fit M.2 drive',
  'fit cooler',
  'connect 24-pin',
  'connect EPS',
  'fit board',
  'connect front cables',
  'fit drive',
  'fit card',
  'fit graphics',
  'change coin cell',
]);

/** Steps after which the supply is on the mains. Source: common practice. */
export const ENERGISING: ReadonlySet<StepKind> = new Set<StepKind>(['bench start', 'plug in mains', 'first start']);

/** Steps that bring a person and the machine to one potential. Source: ANSI/ESD S20.20; common practice. */
export const EQUALISING: ReadonlySet<StepKind> = new Set<StepKind>(['equalise', 'wear strap']);

/** Steps that put a part in or plug a cable in: all of them come before the case is closed. */
export const ASSEMBLING: readonly StepKind[] = STEP_KINDS.filter((kind) =>
  /^(?:fit|connect|set standoffs|fill|change)/.test(kind),
);

/** What can only be done on a machine that runs. */
export const RUNNING: readonly StepKind[] = [
  'wait for memory training',
  'default settings',
  'memory test',
  'set profile',
  'install system',
  'stress test',
  'drive test',
];

/** Cautions that stand before a step whatever the parts are. Source: `CAUTIONS`. */
export const STEP_CAUTIONS: Readonly<Partial<Record<StepKind, readonly CautionId[]>>> = {
  'open case': ['sharp-edges'],
  'unplug mains': ['powered-inside'],
  'wear strap': ['strap-on-energised'],
  'take parts from bags': ['static-to-parts'],
  'fit processor': ['socket-contacts'],
  'set standoffs': ['board-on-metal'],
  'fit I/O shield': ['sharp-edges'],
  'fit board': ['board-on-metal'],
  'fit supply': ['mains-inside-supply'],
  'connect card power': ['adapter-fire'],
  'connect drive cables': ['adapter-fire'],
  'leak test': ['liquid-leak'],
  'change coin cell': ['coin-cell'],
  'plug in mains': ['circuit-overload'],
  'stress test': ['hot-parts'],
};

/**
 * A stress test shows nothing settled before it could show a rise under 1 K within ten minutes. Source: common
 * practice.
 */
export const STRESS_LEAST_S = 600;
