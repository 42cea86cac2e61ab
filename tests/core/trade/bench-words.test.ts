// Slips read out of free text: what must be heard, and the near misses that must not.
import { describe, expect, it } from 'vitest';
import { findSlip, handlesCell, speaksOf, type Hazard, type Slip } from '../../../server/src/core/trade/bench-words';

const heard: [Slip, string][] = [
  ['processor pressed', 'Press the processor down until it clicks.'],
  ['processor pressed', 'Line up the marks and push the CPU firmly into the socket'],
  ['processor pressed', 'gently press down on the processor'],
  ['processor pressed', 'Do not twist it; press the processor in.'],
  ['processor pressed', 'Apply light pressure to the processor while the lever closes.'],
  ['processor pressed', 'Never bend the lever, then press the processor home.'],
  ['contacts touched', 'Wipe the contacts with a finger.'],
  ['contacts touched', 'Hold the module by its gold contacts.'],
  ['contacts touched', 'Touch the pins to see whether one is bent'],
  ['contacts touched', 'Pick the card up by the contacts.'],
  ['vacuum cleaner', 'Vacuum the board before it goes in.'],
  ['vacuum cleaner', 'Clean the fins with a vacuum cleaner'],
  ['bag as mat', 'Lay the board on its antistatic bag.'],
  ['bag as mat', 'Put it on top of the bag and plug in the supply.'],
  ['bag as mat', 'Work on the empty silver bag'],
  ['hot part touched', 'Take off the cooler while it is hot.'],
  ['hot part touched', 'Feel the heat sink while the test is running.'],
];

const unheard: [Slip, string][] = [
  ['processor pressed', 'Do not press the processor.'],
  ['processor pressed', 'Never, under any circumstances, press the processor down.'],
  ['processor pressed', 'Lay the processor in without pressing the processor.'],
  ['processor pressed', 'Don’t push the CPU, it drops in by itself.'],
  ['processor pressed', 'Press the CPU fan lead onto its header.'],
  ['processor pressed', 'Press the cooler evenly onto the processor.'],
  ['processor pressed', 'Press the lever down.'],
  ['processor pressed', 'Push the CPU power plug in until its latch clicks.'],
  ['processor pressed', 'Nothing presses the processor.'],
  ['contacts touched', 'Hold it by its edges; do not touch the contacts.'],
  ['contacts touched', 'The contacts face down.'],
  ['contacts touched', 'Touch the bare chassis first.'],
  ['contacts touched', 'Hold the card by its edges, away from the contacts.'],
  ['vacuum cleaner', 'No vacuum cleaner near the board.'],
  ['vacuum cleaner', 'Use canned air instead of a vacuum cleaner.'],
  ['bag as mat', 'Take it out of the bag.'],
  ['bag as mat', 'Never lay it on the bag.'],
  ['bag as mat', 'The serial is on the bag label.'],
  ['bag as mat', 'Keep the module in its bag until its slot is free.'],
  ['hot part touched', 'Take off the cooler when it is cold.'],
  ['hot part touched', 'Do not touch the cooler while it is hot.'],
];

describe('slips', () => {
  it.each(heard)('%s: %s', (slip, text) => {
    const found = findSlip(text, slip)!;
    expect(found).toBeDefined();
    expect(text.slice(found.start, found.end)).toBe(found.words);
  });
  it.each(unheard)('not %s: %s', (slip, text) => expect(findSlip(text, slip)).toBeUndefined());
});

describe('“it” in a step that fits the processor', () => {
  it.each(['Press it in firmly.', 'Lay it in and press down on it.', 'Seat it with gentle pressure.'])('is the processor: %s', (text) => {
    expect(findSlip(text, 'processor pressed', true)).toBeDefined();
    expect(findSlip(text, 'processor pressed')).toBeUndefined();
  });
  it.each(['Lower the lever and press it home.', 'Let it drop in, do not press it.', 'It goes in with no pressure at all.'])('is not: %s', (text) =>
    expect(findSlip(text, 'processor pressed', true)).toBeUndefined());
});

describe('hazards', () => {
  it.each<[Hazard, string, boolean]>([
    ['coin cell', 'The clock’s coin cell is small enough to be swallowed.', true], ['coin cell', 'Cell walls of the case are thin.', false],
    ['sharp edges', 'Cut sheet metal has sharp edges.', true], ['sharp edges', 'Hold the board by its edges.', false],
    ['hot parts', 'Coolers stay hot after a stress run.', true], ['hot parts', 'The shot is taken at full load.', false],
  ])('%s in “%s”: %s', (hazard, text, says) => expect(speaksOf(hazard, text)).toBe(says));

  it.each([['Take the coin cell out for a minute.', true], ['Short the CMOS battery holder.', true], ['Charge the battery of the UPS.', false], ['Cell walls are thin.', false]])(
    '“%s” handles a cell: %s', (text, does) => expect(handlesCell(text)).toBe(does));
});
