// What each step of the work is done to, and where that goes: the lines beside it.
import type { Build, Placed } from '../../core/build/build';
import { holesOf, standoffsSet } from '../../core/figures/fit';
import { memorySpeed, setSpeed } from '../../core/figures/memory-speed';
import { show } from '../../core/figures/sentence';
import type { WorkStep } from '../../core/figures/work-order';
import type { Fact } from '../../core/parts/fact';
import { listed } from '../../core/text';
import type { StepKind } from '../../core/trade/steps';
import { plural } from '../layout';
import { partsOf } from '../order';
import { oneLine, type Line } from './model';
import { benchName, plugged, thing } from './parts';
import type { Places } from './places';

type Told = Pick<WorkStep, 'step' | 'part' | 'note'>;

/** The lines beside a step. */
export function thingsOf(build: Build, places: Places, step: Told): readonly Line[] {
  const own = lines[step.step];
  if (own) return step.note ? [] : own(build, places, step.part);
  return partsOf(build, step).map((part) => thing(places, part, seats));
}

/** Where a part sits; what is plugged in comes with the step that plugs it in. */
const seats = ['slot', 'slots', 'bay', 'mount', 'flow', 'tubes'];

type Telling = (build: Build, places: Places, part?: Placed) => readonly Line[];

const text = (fact: Fact<unknown>): string => oneLine(fact.text);

/** A fact of the build or of a part as a line; none where no file states it. */
const said = (places: Places, fact: Fact<unknown> | undefined, words: (text: string) => string): readonly Line[] =>
  fact?.node ? [{ text: words(text(fact)), place: places.key(fact) }] : [];

const lines: Readonly<Partial<Record<StepKind, Telling>>> = {
  'apply paste': ({ parts: { paste } }, places) =>
    paste
      ? [
          thing(places, paste, []),
          ...said(places, paste.at.amount, (amount) => `Amount: ${amount}`),
          ...said(places, paste.at.dose, (dose) => `Dose: ${dose}`),
        ]
      : [],
  'fit back plate': ({ parts: { cooler } }, places) => (cooler ? [plugged(places, cooler, [])] : []),
  'connect 24-pin': (build, places) => boardConnectors(build, places, (name) => name === '24-pin'),
  'connect EPS': (build, places) => boardConnectors(build, places, (name) => name.startsWith('EPS')),
  'connect fan cables': ({ parts: { cooler, fans } }, places) =>
    [...(cooler ? [cooler] : []), ...fans].map((one) => plugged(places, one as Placed, ['header'])),
  'connect pump cable': ({ parts: { cooler } }, places) => (cooler ? [plugged(places, cooler, ['pump-header'])] : []),
  'set standoffs': (build) => standoffLines(build),
  'fit board': (build, places) => {
    const { board } = build.parts;
    if (!board) return [];
    const holes = holesOf(board);
    const screws = 'holes' in holes ? [plural(holes.holes.length, 'screw', 'screws')] : [];
    return [thing(places, board, [], screws)];
  },
  'connect drive cables': ({ parts: { drives } }, places) =>
    drives.filter(({ at }) => at.port.node).map((drive) => plugged(places, drive, ['port'])),
  'connect card power': ({ parts: { graphics, cards } }, places) =>
    [...graphics, ...cards].flatMap((card) => cardConnectors(card as Placed, places)),
  'connect front cables': ({ parts: { case: box } }, places) => (box ? [plugged(places, box, [])] : []),
  'plug in mains': ({ file, parts: { supply } }, places) => [
    ...said(places, file.place.mains.voltage, (volts) => `Mains: ${volts}`),
    ...said(places, supply?.at.selector, (volts) => `Voltage switch of the supply: ${volts}`),
  ],
  'first start': ({ parts: { displays } }, places) => displays.map((one) => plugged(places, one, ['port'])),
  'set profile': profileLines,
};

function standoffLines({ parts: { case: box, board } }: Build): readonly Line[] {
  if (!box) return [];
  const set = standoffsSet(box, board);
  const own = box.at['standoffs-at'];
  const wanted = board && holesOf(board);
  const where = wanted && 'holes' in wanted ? wanted.holes : 'holes' in set ? set.holes : undefined;
  return where
    ? [
        {
          text: `Holes ${listed(where)}: ${plural(where.length, 'standoff', 'standoffs')}`,
          place: own.node ? own.path : 'parts.board',
        },
      ]
    : [{ text: 'Only where the board has a hole', place: box.path }];
}

/** The power connectors of the board, each with how many there are. */
function boardConnectors({ parts: { board } }: Build, places: Places, is: (name: string) => boolean): readonly Line[] {
  return [...(board?.part['power-connectors'].value ?? [])]
    .filter(([name, count]) => is(name) && count.value !== 0)
    .map(([name, count]) => ({ text: times(name, count.value), place: places.key(count) }));
}

function cardConnectors(card: Placed, places: Places): readonly Line[] {
  const { connectors } = card.part as unknown as { connectors: Fact<ReadonlyMap<string, Fact<number>>> };
  const held = [...(connectors.value ?? [])].filter(([, count]) => count.value !== 0);
  if (held.length === 0) return [];
  const names = held.map(([name, count]) => times(name, count.value));
  return [
    {
      text: `${benchName(card)}: ${listed(names)}`,
      place: card.path,
      findings: places.findingsAt(`${card.path}.connectors`),
    },
  ];
}

const times = (name: string, count: number | undefined): string =>
  oneLine(count === undefined || count === 1 ? name : `${count} × ${name}`);

function profileLines(build: Build, places: Places): readonly Line[] {
  const runs = memorySpeed(build);
  return build.parts.memory.map((kit) => ({
    text: `${benchName(kit)}: set to ${show(setSpeed(kit))}${runs ? `; all together: ${show(runs)}` : ''}`,
    place: kit.path,
    findings: places.findingsAt(`${kit.path}.speed`, `${kit.path}.profile`),
  }));
}
