// Open answers whose facts are not exact, each with the reason why.
import type { Case } from './unknown-cases';

/**
 * What a check is excused: `one way`, that no value breaks it or none lets it hold, and so that the fact turns nothing;
 * `idle`, that among several facts one turns nothing; `more`, that a value put in brings a question with it; `range`,
 * that it is left open by a range alone; `other`, that a fact decides it that it does not name.
 */
type Excuse = 'one way' | 'idle' | 'more' | 'range' | 'other';

const reasons: readonly {
  readonly because: string;
  readonly checks: readonly string[];
  readonly from: readonly Excuse[];
}[] = [
  {
    because:
      'what a card or a board takes, and which cables feed it, is known only with its list: whether all that could ' +
      'stand there would be carried is not tried',
    checks: [
      'bend-too-tight',
      'cable-overloaded',
      'cable-too-short',
      'voltage-drop-high',
      'sixteen-pin-power-level',
      'drive-power-short',
      'power-cables-missing',
    ],
    from: ['one way', 'idle', 'more'],
  },
  {
    because: 'a slot is known only with its entry: which of its facts the parts in it then ask for goes by its kind',
    checks: [
      'buried-part-late',
      'card-edge-too-long',
      'card-lanes-fewer',
      'card-slot-missing',
      'card-too-thick',
      'cards-overlap',
      'cooler-over-slot',
      'drive-in-slow-slot',
      'drive-slower-than-promised',
      'eightfold-slip',
      'lanes-oversubscribed',
      'link-generation-lower',
      'm2-heat-sink-wrong',
      'm2-key-differs',
      'm2-length-unsupported',
      'm2-too-thick',
      'slot-takes-lanes',
      'slot-takes-ports',
      'ports-short',
    ],
    from: ['one way', 'idle', 'more'],
  },
  {
    because: 'outside the loads of a measurement, and in a filled case, only a range is known: it may lie on one side',
    checks: [
      'airflow-short',
      'backup-too-short',
      'circuit-overloaded',
      'cooler-capacity-short',
      'drive-too-hot',
      'heat-into-room',
      'running-cost-over',
      'supply-overloaded',
      'wall-power-over',
    ],
    from: ['one way', 'idle', 'range', 'more'],
  },
  {
    because: 'a size that no standard knows leaves holes and depths to be stated: of a known one nobody needs them',
    checks: ['board-too-big', 'box-leaves-short', 'fan-holes-differ', 'standoff-missing', 'standoff-under-bare-board'],
    from: ['one way', 'more'],
  },
  {
    because: 'where outputs are not listed, either list of the build may hold the one that is named',
    checks: ['display-mode-beyond-link', 'display-on-board', 'display-ports-short'],
    from: ['one way', 'idle', 'more'],
  },
  {
    because: 'a processor is found in a list by its name: which line it then has, and what that asks for, goes by it',
    checks: [
      'firmware-arriving-unstated',
      'firmware-drops-processor',
      'firmware-target-too-old',
      'firmware-too-old-for-processor',
      'processor-not-listed',
    ],
    from: ['one way', 'idle', 'more', 'other'],
  },
  {
    because: 'speeds are listed by number and ranks of modules: a list without the row that is fitted says nothing',
    checks: ['bandwidth-short', 'memory-speed-over-population', 'memory-slower-than-promised', 'memory-slots-wrong'],
    from: ['one way', 'idle', 'more'],
  },
  {
    because: 'a number of fans and what each draws bound each other: some values of the one leave the other idle',
    checks: ['airflow-one-way', 'header-overloaded', 'fan-places-short', 'step-missing'],
    from: ['one way', 'idle'],
  },
  {
    because: 'any of several boxes may hold what is looked for, and a list of classes may stand for the one',
    checks: ['box-leaves-short', 'm2-screw-missing', 'memory-class-unsupported'],
    from: ['idle', 'more'],
  },
  {
    because: 'how long a peak lasts says which draws it meets: those are asked for once it is known',
    checks: ['excursion-beyond-supply'],
    from: ['idle', 'more'],
  },
  {
    because: 'of many masses those that may be the widest are asked for first',
    checks: ['too-heavy-to-lift-alone'],
    from: ['more'],
  },
  {
    because: 'what the build states by itself stands before what the part file states, which is not missing',
    checks: ['airflow-short', 'paste-claim-implausible'],
    from: ['other'],
  },
  {
    because: 'a support, an open side or a thickness that is stated puts the question otherwise',
    checks: ['airflow-one-way', 'card-too-thick', 'card-unsupported'],
    from: ['one way', 'idle', 'other'],
  },
];

export const isExcused = (check: string, from: Excuse): boolean =>
  reasons.some(({ checks, from: of }) => of.includes(from) && checks.includes(check));

/** Whether a fact is asked for by the value put in alone: one of the thing that it names. */
export const follows = ({ missing }: Case, path: string): boolean =>
  path.includes('.') && missing.some(({ fact }) => fact !== undefined && 'refersTo' in fact.field);
