// Slips read out of free text: what must be heard, and the near misses that must not.
import { describe, expect, it } from 'vitest';
import { findSlip, handlesCell, mayHoldSlip, speaksOf, type Hazard, type Slip } from '../../../server/src/core/trade/bench-words';

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
  ['processor pressed', 'Press the processor down firmly until it clicks.'],
  ['processor pressed', 'Pushing the CPU into the socket.'],
  ['processor pressed', 'The processor is pressed down gently.'],
  ['processor pressed', 'The CPU has to be pressed into its socket.'],
  ['processor pressed', 'Press processors down.'],
  ['processor pressed', 'Push the CPUs in.'],
  ['processor pressed', 'Press lightly on the processor.'],
  ['processor pressed', 'Press on the top of the processor.'],
  ['processor pressed', 'Press down with your thumb on the processor.'],
  ['processor pressed', 'Use a little force on the CPU.'],
  ['processor pressed', 'Apply gentle pressure to the processor.'],
  ['processor pressed', 'Squeeze the processor in'],
  ['processor pressed', 'Presses the processor in.'],
  ['processor pressed', 'Line it up and tap the processor in.'],
  ['processor pressed', 'Lean on the processor.'],
  ['processor pressed', 'Press the corners of the processor.'],
  ['processor pressed', 'Press each corner of the CPU.'],
  ['processor pressed', 'Wiggle and press the processor.'],
  ['processor pressed', 'Give the processor a push.'],
  ['processor pressed', 'Give the CPU a firm press'],
  ['contacts touched', 'Touch the contacts to feel they are clean.'],
  ['contacts touched', 'Hold it by the contacts.'],
  ['contacts touched', 'Hold the card by its gold contacts.'],
  ['contacts touched', 'Touches the pins briefly.'],
  ['contacts touched', 'The contacts are touched once.'],
  ['contacts touched', 'Grip the module at its contacts.'],
  ['contacts touched', 'Held by the pins.'],
  ['contacts touched', 'Rub the gold fingers with an eraser.'],
  ['contacts touched', 'Pick it up by the gold edge.'],
  ['contacts touched', 'Run a finger over the contacts.'],
  ['contacts touched', 'Feel the pins with a fingertip.'],
  ['contacts touched', 'Holding the board by its contacts'],
  ['vacuum cleaner', 'Vacuum the board.'],
  ['vacuum cleaner', 'Dust is vacuumed off.'],
  ['vacuum cleaner', 'Use a vacuum cleaner on low.'],
  ['vacuum cleaner', 'Hoover the fans'],
  ['vacuum cleaner', 'Vacuuming the heat sink helps.'],
  ['vacuum cleaner', 'Suck dust out with a vacuum.'],
  ['vacuum cleaner', 'Clean out dust with vacuum cleaners.'],
  ['bag as mat', 'Lay the board on its bag.'],
  ['bag as mat', 'Put the board on top of the antistatic bag.'],
  ['bag as mat', 'Rest the card on the bag it came in.'],
  ['bag as mat', 'Start it on its silver bag.'],
  ['bag as mat', 'Work on the anti-static bag.'],
  ['bag as mat', 'Boards lie on their bags.'],
  ['bag as mat', 'Use the bag as a mat.'],
  ['bag as mat', 'The bag serves as a mat.'],
  ['bag as mat', 'Place it upon the ESD bag'],
  ['bag as mat', 'Spread the bag under the board.'],
  ['bag as mat', 'Lay the board down on the shielding bag and plug in the leads.'],
  ['hot part touched', 'Touch the heat sink while it is hot.'],
  ['hot part touched', 'Pull the card right after the stress test.'],
  ['hot part touched', 'Remove the cooler while hot.'],
  ['hot part touched', 'Feel the cooler during the stress test.'],
  ['hot part touched', 'Reach in right after the stress test.'],
  ['hot part touched', 'Touch the heat sink straight after the stress test to feel how hot it is.'],
  ['hot part touched', 'Take out the drive while it is still hot.'],
  ['hot part touched', 'Pulls the hot card.'],
  ['hot part touched', 'Grab the hot drive.'],
  ['hot part touched', 'Feel if the heat pipes are hot.'],
  ['hot part touched', 'Change the module immediately after the load test.'],
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
  ['processor pressed', 'Never press on the CPU.'],
  ['processor pressed', 'Press the release lever beside the processor.'],
  ['processor pressed', 'Press the power button.'],
  ['processor pressed', 'Pressing down the lever clamps the processor.'],
  ['processor pressed', 'Press the lever down onto the processor frame.'],
  ['processor pressed', 'The processor must not be pressed.'],
  ['processor pressed', 'The processor is never pressed down.'],
  ['processor pressed', 'Press the processor fan plug in.'],
  ['processor pressed', 'Press the processor cooler down evenly.'],
  ['processor pressed', 'Push the CPU power plug home.'],
  ['processor pressed', 'Push the EPS lead in next to the processor.'],
  ['processor pressed', 'Lay the processor in without pressing it.'],
  ['processor pressed', 'The processor drops in; no force.'],
  ['processor pressed', 'Press the lever of the processor socket.'],
  ['processor pressed', 'Press the processor socket lever.'],
  ['processor pressed', 'Press memory in on both ends until it clicks.'],
  ['processor pressed', 'If it has to be pressed, the processor is turned the wrong way.'],
  ['processor pressed', 'Lower the frame; it presses the processor down.'],
  ['processor pressed', 'Close the lever, which presses the processor onto its contacts.'],
  ['processor pressed', 'The lever pushes the processor down.'],
  ['processor pressed', 'Let the lever press the processor home.'],
  ['processor pressed', 'Press down the lever until it locks, the processor is then held.'],
  ['processor pressed', 'No need to press the processor.'],
  ['processor pressed', 'You needn’t press the processor.'],
  ['processor pressed', 'Refrain from pressing the processor.'],
  ['processor pressed', 'It is wrong to press the processor.'],
  ['processor pressed', 'Whoever presses the processor bends pins.'],
  ['processor pressed', 'Don’t ever push the CPU in.'],
  ['processor pressed', 'Stop pressing the CPU'],
  ['processor pressed', 'Push the arm down beside the processor.'],
  ['processor pressed', 'Do not use force on the processor.'],
  ['processor pressed', 'Use zero pressure on the processor.'],
  ['processor pressed', 'Hold the processor by its edges and press the lever.'],
  ['processor pressed', 'Press the frame over the processor.'],
  ['processor pressed', 'Pressing the processor bends its pins.'],
  ['processor pressed', 'Pressing the processor will bend contacts.'],
  ['processor pressed', 'Pressing on the CPU is how pins get bent.'],
  ['processor pressed', 'Press the processor’s lever.'],
  ['processor pressed', 'Push the CPU’s retention arm aside.'],
  ['processor pressed', 'Push the processor tray aside.'],
  ['processor pressed', 'Press the processor holder until it clicks.'],
  ['processor pressed', 'Push the socket lever down and out, lay the processor in.'],
  ['processor pressed', 'Force is not needed.'],
  ['processor pressed', 'Press the heat sink onto the processor.'],
  ['processor pressed', 'Press the cooler onto the processor.'],
  ['processor pressed', 'Push the cooler’s pins through the board around the processor.'],
  ['processor pressed', 'Press the thermal pad onto the processor.'],
  ['processor pressed', 'Press the pad on the processor lid.'],
  ['processor pressed', 'Press the film off the processor.'],
  ['processor pressed', 'Push dust off the processor with a brush.'],
  ['processor pressed', 'Press the bag with the processor.'],
  ['contacts touched', 'Do not touch the contacts.'],
  ['contacts touched', 'Never touch the pins.'],
  ['contacts touched', 'Hold it by its edges, not by its contacts.'],
  ['contacts touched', 'Hold it by its edges, never the contacts.'],
  ['contacts touched', 'Hold the card by its edges; contacts stay clean.'],
  ['contacts touched', 'Touch bare metal before you handle the contacts.'],
  ['contacts touched', 'Hold it so that no finger touches the contacts.'],
  ['contacts touched', 'Touch the chassis, then hold it by its edges.'],
  ['contacts touched', 'Contacts must not be touched.'],
  ['contacts touched', 'Hold the board by its edges away from the pins.'],
  ['contacts touched', 'Keep fingers off the contacts.'],
  ['contacts touched', 'Grip the plug and align the pins.'],
  ['contacts touched', 'Hold the lead so its pins face up.'],
  ['contacts touched', 'Clean the contacts with alcohol.'],
  ['contacts touched', 'Hold it with your fingers.'],
  ['contacts touched', 'Touching the contacts leaves grease.'],
  ['contacts touched', 'Hold the module with two fingers by its edges.'],
  ['contacts touched', 'Wipe both lids and pads off.'],
  ['contacts touched', 'Wipe the lid with pads of lint-free cloth.'],
  ['contacts touched', 'Wipe the lid with alcohol pads.'],
  ['contacts touched', 'Wipe with pads.'],
  ['contacts touched', 'Wipe the thermal pads off.'],
  ['contacts touched', 'Take the cooler by its fins.'],
  ['contacts touched', 'Hold by the edges to avoid touching pins.'],
  ['contacts touched', 'Take the module from its bag by its edges.'],
  ['contacts touched', 'Pick the standoffs by the pattern.'],
  ['contacts touched', 'Rub your fingers on bare metal.'],
  ['contacts touched', 'Hold the cable ends in your fingers.'],
  ['contacts touched', 'Lift the lever by the pins.'],
  ['contacts touched', 'Hold the pump header pins clear.'],
  ['vacuum cleaner', 'Never use a vacuum cleaner.'],
  ['vacuum cleaner', 'Do not vacuum the board.'],
  ['vacuum cleaner', 'No vacuum.'],
  ['vacuum cleaner', 'Canned air, not a vacuum.'],
  ['vacuum cleaner', 'Vacuum cleaners are banned here.'],
  ['vacuum cleaner', 'Keep the vacuum cleaner away.'],
  ['vacuum cleaner', 'A vacuum cleaner charges up.'],
  ['vacuum cleaner', 'Vacuum the floor before you begin.'],
  ['vacuum cleaner', 'Vacuum the case filter outside.'],
  ['vacuum cleaner', 'Open the vacuum bag of the part.'],
  ['vacuum cleaner', 'Cut the vacuum-sealed bag open.'],
  ['vacuum cleaner', 'The vacuum pack is opened here.'],
  ['bag as mat', 'Do not lay the board on its bag.'],
  ['bag as mat', 'Never on the bag.'],
  ['bag as mat', 'Read the label on the bag.'],
  ['bag as mat', 'The serial number on the bag is written down.'],
  ['bag as mat', 'Put a label on the bag.'],
  ['bag as mat', 'Keep it in its bag.'],
  ['bag as mat', 'Lay the board in its bag.'],
  ['bag as mat', 'Put the bag on the mat.'],
  ['bag as mat', 'Fold the bag over the board.'],
  ['bag as mat', 'Slide it into the bag.'],
  ['bag as mat', 'Leave the warning on the bag.'],
  ['bag as mat', 'Write the date on the bag.'],
  ['bag as mat', 'Lay the board on the box, not on the bag.'],
  ['bag as mat', 'Read what stands on its bag.'],
  ['bag as mat', 'Lay it on wood instead of its bag.'],
  ['bag as mat', 'Tear the seal across the bag.'],
  ['bag as mat', 'Cut across the bag.'],
  ['bag as mat', 'Stick tape over the bag.'],
  ['hot part touched', 'Do not touch the heat sink while it is hot.'],
  ['hot part touched', 'Never pull a drive while the machine is running.'],
  ['hot part touched', 'Wait until it is cool.'],
  ['hot part touched', 'Do not reach in straight after the stress test.'],
  ['hot part touched', 'Remove the cover when the test is done.'],
  ['hot part touched', 'Take off the strap when the test is done.'],
  ['hot part touched', 'Remove the stick when the memory test ends.'],
  ['hot part touched', 'Take out the stick when the system is running.'],
  ['hot part touched', 'Pull the mains lead when the test is over.'],
  ['hot part touched', 'Feel the air from the rear fan while the test is running.'],
  ['hot part touched', 'Remove the panel when it is no longer hot.'],
  ['hot part touched', 'Feel whether the fan blows while it is running.'],
  ['hot part touched', 'Pull the film off while the lid is warm.'],
  ['hot part touched', 'Remove old paste while it is warm.'],
];

describe('slips', () => {
  it.each(heard)('%s: %s', (slip, text) => {
    expect(mayHoldSlip(text)).toBe(true);
    const found = findSlip(text, slip)!;
    expect(found).toBeDefined();
    expect(text.slice(found.start, found.end)).toBe(found.words);
  });
  it.each(unheard)('not %s: %s', (slip, text) => expect(findSlip(text, slip)).toBeUndefined());
});

describe('“it” in a step that fits the processor', () => {
  it.each([
    'Press it in firmly.', 'Lay it in and press down on it.', 'Seat it with gentle pressure.',
    'Seat the processor and push down until it clicks.',
    'Put the processor in and press firmly.',
    'Press it down until it clicks.',
    'Push it in.',
    'Press firmly.',
    'Apply light pressure.',
    'Use some force.',
    'Lift the lever, lay it in and press it down.',
    'Lift the lever. Press it into the socket.',
  ])('is the processor: %s', (text) => {
    expect(findSlip(text, 'processor pressed', true)).toBeDefined();
    expect(findSlip(text, 'processor pressed')).toBeUndefined();
  });
  it.each([
    'Lower the lever and press it home.', 'Let it drop in, do not press it.', 'It goes in with no pressure at all.',
    'Lay it in; the lever presses it down.',
    'Lift the lever by pushing it down and out, lay it in.',
    'Close the lever; it takes some force.',
    'Press the lever down until it clicks.',
    'The lever needs firm pressure.',
    'Close the frame and press it down.',
    'Press nothing.',
    'Lower the lever and press it under its hook.',
    'The lever takes firm pressure, that is normal.',
    'Push down the lever.',
    'With light pressure close the lever.',
  ])('is not: %s', (text) =>
    expect(findSlip(text, 'processor pressed', true)).toBeUndefined());
});

describe('hazards', () => {
  it.each<[Hazard, string, boolean]>([
    ['coin cell', 'The clock’s coin cell is small enough to be swallowed.', true], ['coin cell', 'Cell walls of the case are thin.', false],
    ['sharp edges', 'Cut sheet metal has sharp edges.', true], ['sharp edges', 'Hold the board by its edges.', false],
    ['hot parts', 'Coolers stay hot after a stress run.', true], ['hot parts', 'The shot is taken at full load.', false],
  ])('%s in “%s”: %s', (hazard, text, says) => expect(speaksOf(hazard, text)).toBe(says));

  it.each([['Take the coin cell out for a minute.', true], ['Change the CR2032.', true], ['Coin cells are swapped.', true], ['Leave the coin cell in.', false], ['Do not touch the button cell.', false], ['Short the CMOS battery holder.', true], ['Charge the battery of the UPS.', false], ['Cell walls are thin.', false]])(
    '“%s” handles a cell: %s', (text, does) => expect(handlesCell(text)).toBe(does));
});

describe('each word of the lists', () => {
  const negations = ['Do not', 'Never', 'No need to', 'Use zero force to', 'Fit it without having to', 'Avoid the urge to', 'Refrain; stop, and do not', 'It is wrong to', 'It is a mistake to', 'It is forbidden to', 'Lay it in instead  of trying to', 'Lay it in rather than',
    'Lay it in rather  than', ...['don', 'mustn', 'needn', 'shouldn', 'won', 'can', 'doesn'].flatMap((verb) => ['t', '’t', '\'t'].map((end) => `You ${verb}${end}`))];
  it.each(negations)('%s press the processor: denied', (said) => expect(findSlip(`${said} press the processor.`, 'processor pressed')).toBeUndefined());

  it.each(['is not right', 'are never right', 'must  not be', 'may not be', 'can not be', 'should not be', 'has not helped', 'have never helped', 'will not help', 'would  never help', 'is wrong', 'is forbidden', 'is banned', 'is how pins bend', 'shows how  contacts bend',
    ...['bend', 'ruin', 'harm', 'damage', 'destroy', 'kill', 'corrode'].flatMap((verb) => [`will ${verb} them`, `${verb}s them`]), 'will charge up', 'charges  up', 'will leave grease', 'leaves  marks', 'will stay out', 'stays  away',
  ])('touching the contacts %s: a warning', (said) => expect(findSlip(`Touching the contacts ${said}.`, 'contacts touched')).toBeUndefined());

  it.each(['Lay', 'The card lays', 'It is laid', 'It is lying', 'It lies', 'Let it lie', 'Put', 'It puts', 'Place', 'It places', 'It is placed', 'Set', 'It sets', 'Let it rest', 'It rests', 'Stand', 'It stands', 'Start', 'It starts', 'Work', 'It works',
    'Build', 'It builds', 'Sit', 'It sits', 'Run', 'It runs', 'Test', 'It tests', 'Power', 'Powered', 'Keep', 'It keeps', 'Leave', 'It leaves', 'It was left'])('%s it on the bag: a mat', (said) => expect(findSlip(`${said} it on the bag.`, 'bag as mat')?.words).toBe('on the bag'));
  it.each(['The moisture card on the bag is green.', 'A sticker hangs over the bag.', 'The zip goes across the bag.'])('not laid: %s', (said) => expect(findSlip(said, 'bag as mat')).toBeUndefined());
  it.each(['The board goes upon the bag.'])('laid in one word: %s', (said) => expect(findSlip(said, 'bag as mat')).toBeDefined());

  it.each(['lever', 'latch', 'arm', 'frame', 'load plate', 'load  plate', 'retention', 'cover', 'cap', 'cooler', 'memory', 'module', 'modules', 'bracket', 'pad', 'film', 'tape', 'heatsink', 'heat sink'])(
    'the %s presses the processor: no slip', (thing) => expect(findSlip(`Then the ${thing} presses the processor.`, 'processor pressed')).toBeUndefined());
  it.each(['Lever presses the processor.', 'Lever down; it presses the processor.', 'Lower the frame; it  presses the processor down.', 'The processor is pressed by the lever.', 'The processor is pressed  by  its frame.', ' If you press the processor.', 'Look.  Whoever presses the processor.'])(
    'no slip: %s', (said) => expect(findSlip(said, 'processor pressed')).toBeUndefined());
  it.each(['Lower the lever and press the processor.', 'Lower the lever AND press the processor.', 'The processor is pressed down; hold it by its edges.', 'Do not force it but press the processor.', 'Never lean on it then press the processor.',
    'Press the processor with no fear.', 'It bends a little when you press the processor.', 'Look at how it bends when you press the processor.', 'Lever up. Put it straight and press the processor.', 'It presses the processor.',
    'It presses the processor, then lower the lever.'])('a slip: %s', (said) => expect(findSlip(said, 'processor pressed')).toBeDefined());

  it.each(['processor', 'CPU', 'contacts', 'pin', 'gold', 'lands', 'vacuum', 'Hoover', 'bags', 'hot', 'stress', 'load', 'running', 'test'])('a note with “%s” may hold a slip', (word) => expect(mayHoldSlip(`Mind the ${word}.`)).toBe(true));

  it('a note without any of them holds none, unless its step fits the processor', () => {
    expect(mayHoldSlip('Tighten the screws.')).toBe(false);
    expect(mayHoldSlip('Press it in.', true)).toBe(true);
  });

  it('tells where the words stand, behind an aside too', () => {
    expect(findSlip('Not, mind you, gently: press the processor down.', 'processor pressed')).toEqual({ words: 'press the processor', start: 23, end: 42 });
  });

  it.each(['Touch the pin.', 'Hold it by the pins.'])('touched: %s', (said) => expect(findSlip(said, 'contacts touched')).toBeDefined());
  it.each(['Wipe the contacts with contact cleaner.', 'Wipe the contacts with contact  cleaner.', 'Wipe the contacts with alcohol.', 'Wipe the contacts with a swab.'])('cleaned: %s', (said) => expect(findSlip(said, 'contacts touched')).toBeUndefined());
  it.each(['Vacuum cleaners stay outside.', 'The vacuum cleaner stays outside.', 'The vacuum cleaner is kept outside.', 'He keeps the vacuum cleaner outside.'])('kept away: %s', (said) => expect(findSlip(said, 'vacuum cleaner')).toBeUndefined());

  it.each(['Lift the lever. Press it  down  into  the  socket.', 'Lift the lever. Press it in the socket.', 'Lift the lever. Press it into its socket.'])('into the socket: %s', (said) => expect(findSlip(said, 'processor pressed', true)).toBeDefined());
  it.each(['Lift the lever. Press it, and slide the memory into the socket.'])('elsewhere: %s', (said) => expect(findSlip(said, 'processor pressed', true)).toBeUndefined());

  it.each<[string, boolean]>([
    ['Swap the coincell.', true], ['Swap the coin-cell.', true], ['Swap the button batteries.', true], ['Swap the clock battery.', true], ['Swap the CMOS  battery.', true], ['Swap CMOS batteries.', true], ['Swap the CR20 clip.', false], ['Swap the CR2 cell.', false], ['Swap the CRxyzw cell.', false],
    ['The coin cells stay in.', false], ['The coin cell stays in.', false], ['The coin cell was left in.', false], ['He leaves the coin cell in.', false],
  ])('“%s” handles a cell: %s', (text, does) => expect(handlesCell(text)).toBe(does));
});
