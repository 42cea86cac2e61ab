// The first time with power: what is looked for when nothing happens, the likeliest first. One instruction a sentence.

/** Before anything of it: the mains out. Source: common practice; makers’ handbooks. */
export const NO_START: readonly string[] = [
  'Switch the supply off.',
  'Pull its cable out.',
  'Press the power button once.',
  'Equalise before hands go in.',
  'Push the 24-pin and EPS connectors in until they latch.',
  'Check the two contacts of the power button against the board’s handbook.',
  'Take out all memory but one module, which stands in the slot to be filled first.',
  'Read the board’s lights or beeps in its handbook.',
  'Start again with nothing connected that a start does not need.',
];

/** Source: common practice; memory is trained anew after every change to it. */
export const FIRST_PICTURE = 'The screen may stay black for minutes while the memory is trained. Leave the power on.';
