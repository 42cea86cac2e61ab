// The steps that a build’s parts cannot do without, and whether a rule of order binds this build.
import type { Build, Placed } from '../build/build';
import type { Fact } from '../parts/fact';
import type { StepKind } from '../trade/steps';
import type { Condition } from '../trade/work-order';
import { carriedIn, pinsOn } from '../trade/names';
import { boxHas } from './box-contents';
import { figure, missing } from './figure';
import { memo } from './memo';
import { pasteOnBase } from './paste';
import { all, any, atMost, fits, given, lacking, lessThan, not, sure, type Truth } from './truth';

/** A step that the parts ask for. `truth` is undecided where the fact that asks for it is missing. */
export interface AskedStep {
  readonly kind: StepKind;
  readonly part?: Placed;
  readonly truth: Truth;
  readonly instead?: readonly StepKind[];
}

type Drive = Placed<'drives'>;
const yes = sure(true);

/** Whether a rule binds this build, for the parts that the two steps are done to. */
export function binds(build: Build, when: Condition | undefined, before?: Placed, after?: Placed): Truth {
  const { cooler, board, case: box, radiators } = build.parts;
  switch (when) {
    case undefined:
      return yes;
    case 'firmware before processor':
      return fits(
        build.file.bench['firmware-update'].by,
        'how the firmware is updated',
        (by) => by === 'older processor' || by === 'service',
      );
    case 'firmware with this processor':
      return fits(
        build.file.bench['firmware-update'].by,
        'how the firmware is updated',
        (by) => by === 'with this processor',
      );
    case 'processor by itself':
      return sure(
        !board?.part.socket.value || !carriedIn(board.part.socket.value),
        ...(board ? [board.part.socket] : []),
      );
    case 'card in the board': {
      const risers = cardsOf(build, after).map((card) => card.at.riser);
      return given(sure(!risers.some((riser) => riser?.entry !== undefined)), ...risers);
    }
    case 'radiator on top':
      return any(sure(cooler?.at.mount.value === 'top'), ...radiators.map((one) => sure(one.at.mount.value === 'top')));
    case 'closed tray':
      return cooler && box
        ? all(
            fits(cooler.part['back-plate'], `back plate of ${cooler.label}`, (has) => has),
            not(fits(box.part['tray-opening'], `tray opening of ${box.label}`, (has) => has)),
          )
        : sure(false);
    case 'cooler over memory':
      // Asked the other way round, so that the value at which it turns is the one that clears a finding.
      return cooler && board
        ? not(
            lessThan(
              figure(cooler.part['overhang-memory'], `overhang of ${cooler.label} towards the memory`),
              figure(board.part['socket-to-memory'], `distance from socket to memory on ${board.label}`),
            ),
          )
        : sure(false);
    case 'module under cooler':
      return any(...modules(build, before).map((drive) => under(build, drive, coolerOver)));
    case 'module under card':
      return any(...modules(build, before).map((drive) => under(build, drive, cardsOver(build, after))));
  }
}

/** The drive a step names, or all that may be M.2 modules. */
function modules(build: Build, named: Placed | undefined): readonly Drive[] {
  return named?.role === 'drives'
    ? [named as Drive]
    : build.parts.drives.filter((drive) => drive.part.shape.value === 'M.2' || drive.part.shape.value === undefined);
}

/** What may lie over a slot: how the board calls it, and the facts that put it there. */
interface Cover {
  readonly name: string;
  readonly by: readonly Fact<unknown>[];
}

const coolerOver: readonly Cover[] = [{ name: 'cooler', by: [] }];

/** The card that a step names, or all of them. */
const cardsOf = (build: Build, card: Placed | undefined): readonly Placed<'graphics'>[] =>
  (card ? [card] : [...build.parts.graphics, ...build.parts.cards]) as readonly Placed<'graphics'>[];

/** The slots of the card that a step names, or of all cards. */
const cardsOver = (build: Build, card: Placed | undefined): readonly Cover[] =>
  cardsOf(build, card).flatMap(({ at: { slot, use } }) =>
    slot?.value === undefined ? [] : [{ name: slot.value, by: [slot, use] }],
  );

/** Whether a drive’s slot lies under one of these. */
function under(build: Build, drive: Drive, covers: readonly Cover[]): Truth {
  if (drive.at.slot.value === undefined)
    return drive.at.port.value === undefined
      ? lacking([missing(drive.at.slot, `slot of ${drive.label}`)])
      : sure(false);
  const { board } = build.parts;
  const slot = board?.part.slots.value?.get(drive.at.slot.value);
  if (!slot)
    return board ? lacking([missing(board.part.slots, `${drive.at.slot.text} of ${board.label}`)]) : sure(false);
  const over = covers.filter(({ name }) => slot.under.value?.some((one) => one.value === name));
  const truth = fits(slot.under, `what lies over ${drive.at.slot.text}`, () => over.length > 0);
  return given(truth, drive.at.slot, ...over.flatMap(({ by }) => by));
}

/** Whether the processor is soldered to its board: nobody fits it. */
export function soldered(build: Build): Truth {
  const socket = build.parts.board?.part.socket ?? build.parts.processor?.part.socket;
  return given(sure(socket?.value !== undefined && pinsOn(socket.value) === 'none'), socket);
}

/** Whether the I/O shield is fixed to the board: one that lies in its box is not. */
function shieldFitted(board: Placed<'board'>): Truth {
  const fixed = board.part['shield-fitted'];
  const boxed = boxHas(board, 'I/O shield');
  return fixed.value === undefined && boxed.is === true
    ? not(boxed)
    : fits(fixed, `whether the I/O shield is fixed to ${board.label}`, (is) => is);
}

/** The steps that this build’s parts cannot do without, each with whether they are known to ask for it. */
export const askedSteps = memo((build: Build): readonly AskedStep[] => {
  const {
    board,
    processor,
    cooler,
    paste,
    memory,
    drives,
    graphics,
    cards,
    supply,
    case: box,
    fans,
    radiators,
  } = build.parts;
  const asked: AskedStep[] = [];
  const ask = (kind: StepKind, truth: Truth, part?: Placed, instead?: readonly StepKind[]): void =>
    void asked.push({ kind, truth, ...(part ? { part } : {}), ...(instead ? { instead } : {}) });
  if (build.file.bench['firmware-update'].$.stated) ask('update firmware', yes);
  if (processor) ask('fit processor', not(soldered(build)));
  if (memory.length > 0) ask('fit memory', yes);
  for (const drive of drives)
    ask(
      drive.part.shape.value === 'M.2' ? 'fit M.2 drive' : drive.part.shape.value === 'card' ? 'fit card' : 'fit drive',
      given(yes, drive.part.shape, drive.at.name),
      drive,
      ['fit M.2 drive', 'fit drive', 'fit card'],
    );
  if (cooler)
    ask(
      'fit back plate',
      fits(cooler.part['back-plate'], `back plate of ${cooler.label}`, (has) => has),
    );
  if (paste) ask('apply paste', yes);
  else if (cooler) ask('apply paste', not(pasteOnBase(cooler)));
  if (cooler) ask('fit cooler', yes);
  if (supply && box) ask('fit supply', yes);
  if (fans.length > 0) {
    // Fans that sit on a radiator go in with it.
    const seats = new Set([cooler?.at.mount.value, ...radiators.map((one) => one.at.mount.value)]);
    const seated = fans.every((fan) => fan.at.mount.value !== undefined && seats.has(fan.at.mount.value));
    const mounts = fans.map((fan) => fan.at.mount);
    ask(
      'fit fans',
      given(yes, ...(seated ? mounts : [])),
      undefined,
      seated ? ['fit fans', 'fit radiator'] : undefined,
    );
  }
  if (board && box) {
    ask(
      'set standoffs',
      fits(box.part.standoffs.removable, `whether standoffs of ${box.label} come out`, (out) => out),
    );
    ask('fit I/O shield', not(shieldFitted(board)));
    ask('fit board', yes);
    ask(
      'connect front cables',
      fits(box.part['front-cables'], `front cables of ${box.label}`, (cables) => cables.length > 0),
    );
  }
  if (radiators.length > 0) for (const kind of ['fit radiator', 'fill loop'] as const) ask(kind, yes);
  if (drives.length > 0)
    ask(
      'connect drive cables',
      any(
        ...drives.map((drive) =>
          fits(drive.part.shape, `shape of ${drive.label}`, (shape) => shape === '2.5 in' || shape === '3.5 in'),
        ),
      ),
    );
  for (const card of cards) ask('fit card', yes, card, ['fit card', 'fit graphics']);
  for (const card of graphics) ask('fit graphics', yes, card, ['fit graphics', 'fit card']);
  const powered = [...graphics, ...cards].map((card) =>
    fits(
      card.part.connectors as Fact<ReadonlyMap<string, Fact<number>>>,
      `power connectors of ${card.label}`,
      (connectors) => [...connectors.values()].some((count) => count.value !== 0),
    ),
  );
  if (powered.length > 0) ask('connect card power', any(...powered));
  const held = [...graphics, ...cards].find((card) => card.at.support.value === true);
  if (held) ask('fit card support', given(yes, held.at.support));
  return asked;
});

/**
 * What a machine that has run asks for on the way to its hand-over: what its acceptance tests, and the profile that
 * its memory is set to.
 */
export const askedOnceRunning = memo((build: Build): readonly AskedStep[] => {
  const { acceptance, 'hand-over': handOver } = build.file;
  const { 'memory-test': memory, 'drive-tests': drives, 'stress-test': stress, noise } = acceptance;
  const tested = given(yes, memory.passes, memory.errors);
  const stressed = given(yes, stress.lasts, stress['until-rise'], stress.throttling, stress.margin);
  const handed = handOver.includes.value ?? [];
  const read = ['temperatures', 'noise', 'wall power'] as const;
  const promised = [acceptance['wall-power'], acceptance['processor-temperature'], noise.level, noise.at].filter(
    (fact) => fact.node,
  );
  const measured = [...promised, ...handed.filter(({ value }) => read.some((one) => one === value))];
  const written = handed.filter(({ value }) => value === 'settings');
  const asked: [StepKind, boolean, Truth][] = [
    ['memory test', memory.$.stated, tested],
    ['drive test', (drives.value?.length ?? 0) > 0, given(yes, drives)],
    ['stress test', stress.$.stated, stressed],
    ['measure', measured.length > 0, given(yes, ...measured)],
    ['record settings', written.length > 0, given(yes, ...written)],
  ];
  const kinds = asked.flatMap(([kind, is, truth]) => (is ? [{ kind, truth }] : []));
  return [...build.parts.memory.flatMap((kit) => profileStep(kit)), ...kinds];
});

/**
 * Whether a kit runs by its profile: said so without a speed, or set faster than it is known to run by itself;
 * undefined where the build says nothing of how it is set.
 */
export function runsByProfile({ at, part, label }: Placed<'memory'>): Truth | undefined {
  if (!at.speed.entry) return at.profile.value === 'used' ? given(yes, at.profile) : undefined;
  const [set, own] = [
    figure(at.speed, `speed of ${label}`),
    figure(part['standard-speed'], `standard speed of ${label}`),
  ];
  return not(atMost(set, own));
}

/** A kit that runs by its profile has it switched on. */
function profileStep(kit: Placed<'memory'>): AskedStep[] {
  const truth = runsByProfile(kit);
  return truth ? [{ kind: 'set profile', truth }] : [];
}
