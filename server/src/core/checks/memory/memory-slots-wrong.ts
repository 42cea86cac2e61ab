// The slots that the memory goes into against the board’s order of filling, and their spread over the channels.
import type { Build, Placed } from '../../build/build';
import { missing, number, type Figure } from '../../figures/figure';
import { many, spoken, valuesOf } from '../../figures/lists';
import { memo } from '../../figures/memo';
import { boardSlots, channelsOf, filling, modules, slotsNamed } from '../../figures/memory';
import { sentence, type Sentence } from '../../figures/sentence';
import { all, any, lacking, sure, type Truth } from '../../figures/truth';
import { channelsFilled, modulesByChannel } from '../../trade/memory';
import type { Fact } from '../../parts/fact';
import { check } from '../check';
import { at, outcome } from '../kit';
import { moveMemory } from './memory-kit';

type Board = Placed<'board'>;

export default check({
  id: 'memory-slots-wrong',
  area: 'memory',
  grade: 'shortfall',
  what: 'The memory goes into the slots that the board fills first, spread evenly over its channels.',
  why:
    'Two modules in one channel halve the bandwidth; in the wrong slot of their channels they often fail at ' +
    'their rated speed.',
  source: 'common practice: the board’s handbook states which slots to fill first',
  limits: [
    'A build that names no slots is taken to fill them in the board’s order.',
    'Where the slots to fill first are all there are, they are filled in the order of that list.',
  ],
  examples: [
    {
      faulty: `
parts:
  board: { memory: { slots: [A1, A2, B1, B2], channels: { A: [A1, A2], B: [B1, B2] }, fill-first: [A2, B2] } }
  memory: [{ count: 2, slots: [A1, A2] }]
#                             ^^^^^^^^
`,
      mended: `
parts:
  board: { memory: { slots: [A1, A2, B1, B2], channels: { A: [A1, A2], B: [B1, B2] }, fill-first: [A2, B2] } }
  memory: [{ count: 2, slots: [A2, B2] }]
`,
    },
  ],
  test(build, report) {
    const { board, memory } = build.parts;
    const naming = memory.find(slotsNamed);
    if (!board || !naming) return;
    const { filled, order, spread } = filledSlots(build);
    const named = memory.flatMap((kit) => slotsNamed(kit) ?? []);
    report(
      outcome(at(naming, naming.at.slots), all(order, spread), {
        broken: () => (spread.is === false ? uneven(board, filled, named) : wrongOrder(board, filled, named)),
        fixes: () => [moveMemory(build)],
        ...(isByLetters(board, filled)
          ? { usual: () => `the letters of ${filled.join(' and ')} are channels, the last slot of each comes first` }
          : {}),
      }),
    );
  },
});

/** One module in the last slot of each letter, while the board says nothing of channels. Source: common practice. */
function isByLetters({ part: { memory } }: Board, filled: readonly string[]): boolean {
  if (memory.channels.node || memory['fill-first'].node) return false;
  const last = new Map((valuesOf(memory.slots) ?? []).map((name) => [name.charAt(0), name] as const));
  return last.size > 1 && filled.length === last.size && filled.every((name) => last.get(name.charAt(0)) === name);
}

const wrongOrder = (board: Board, filled: readonly string[], named: readonly Fact<string>[]): Sentence =>
  sentence`The modules sit in ${spoken(named)}; ${board.label} wants
    ${spoken(firstFor(board, filled.length))} filled first.`;

/** The slots that so many modules fill first: those listed, and of a list of all slots as many from its front. */
function firstFor(board: Board, many: number): readonly Fact<string>[] {
  const listed = board.part.memory['fill-first'].value ?? [];
  const { missing: unsaid, hi } = boardSlots(board);
  return unsaid.length === 0 && listed.length >= hi ? listed.slice(0, many) : listed;
}

/** Both modules of a pair in one channel run at half the rate: the one to move is named, and where to. */
function uneven(board: Board, filled: readonly string[], named: readonly Fact<string>[]): Sentence {
  const own = [...(channelsOf(board)?.values() ?? [])].filter((slots) => slots.some((slot) => filled.includes(slot)));
  if (filled.length !== 2 || own.length !== 1)
    return sentence`The modules in ${spoken(named)} fill ${channels(board, filled, 'used')} of
      ${many(channels(board, filled, 'all'), 'channel')}, and not evenly; spread them over all channels.`;
  const free = [...(board.part.memory['fill-first'].value ?? []), ...(board.part.memory.slots.value ?? [])].find(
    ({ value }) => value !== undefined && !own[0]?.includes(value),
  );
  return free
    ? sentence`Both modules sit in one channel (${spoken(named)}); move one to ${free}.`
    : sentence`Both modules sit in one channel (${spoken(named)}); move one to the other.`;
}

/** The slots that are filled, whether they are those to fill first, and whether they are spread evenly. */
const filledSlots = memo((build: Build) => {
  const board = build.parts.board!;
  const { byKit, missingFacts } = filling(build);
  const filled = byKit.flat();
  return missingFacts.length > 0
    ? { filled, order: lacking(missingFacts), spread: lacking(missingFacts) }
    : { filled, order: inOrder(build, board, filled), spread: evenly(board, filled) };
});

/**
 * Fewer modules than slots to fill first go among those; more of them fill all of those. Where all slots are filled,
 * none comes first.
 */
function inOrder(build: Build, board: Board, filled: readonly string[]): Truth {
  const { 'fill-first': fact } = board.part.memory;
  const every = modules(build);
  const full = boardSlots(board);
  const first = valuesOf(fact) && firstFor(board, filled.length).flatMap(({ value }) => value ?? []);
  const right =
    first === undefined
      ? lacking([missing(fact, `slots to fill first on ${board.label}`)], fact)
      : sure(
          filled.length <= first.length
            ? filled.every((slot) => first.includes(slot))
            : first.every((slot) => filled.includes(slot)),
          fact,
          ...(full.missing.length > 0 ? [] : [full]),
        );
  return any(full.missing.length > 0 ? lacking(full.missing) : sure(every.lo >= full.hi, every, full), right);
}

/** No channel holds two modules more than another. */
function evenly(board: Board, filled: readonly string[]): Truth {
  const fact = board.part.memory.channels;
  const by = channelsOf(board);
  const full = boardSlots(board);
  // A board whose slots are all filled leaves nothing to spread.
  if (!by && full.missing.length === 0 && filled.length >= full.hi) return sure(true, fact, full);
  if (!by) return lacking([missing(fact, `memory channels of ${board.label}`)], fact);
  const each = modulesByChannel(by, filled);
  return sure(Math.max(...each) - Math.min(...each) <= 1, fact);
}

function channels(board: Board, filled: readonly string[], which: 'used' | 'all'): Figure {
  const listed = channelsOf(board)!;
  return which === 'used'
    ? number(channelsFilled(listed, filled), 'channels used', 'the board’s channels with a module in them')
    : number(listed.size, 'channels', 'the board’s list of channels');
}
