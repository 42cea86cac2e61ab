// What the hand needs at each step: tools and means in the trade’s words, by the step that asks for them.
import type { StepKind } from './steps';

/** Source for all of them: common practice; makers’ handbooks. */
export const STEP_TOOLS: Readonly<Partial<Record<StepKind, readonly string[]>>> = {
  'open case': ['Cross-head screwdriver, size 2', 'Cut-resistant gloves', 'Trays for screws, one a size'],
  'wear strap': ['Wrist strap with a resistor in its cord'],
  'update firmware': ['Another machine, to write the stick'],
  'fit M.2 drive': ['Cross-head screwdriver, size 1'],
  'fit back plate': ['Cross-head screwdriver, size 2'],
  'clean surfaces': ['Isopropyl alcohol', 'Lint-free cloths'],
  'apply paste': ['Thermal paste, and what it is spread with'],
  'fit cooler': ['Cross-head screwdriver with a long shaft'],
  'bench start': ['Display and its cable', 'Keyboard'],
  'set standoffs': ['Nut driver for standoffs', 'Cross-head screwdriver, size 2'],
  'fit supply': ['Cross-head screwdriver, size 2'],
  'fit fans': ['Cross-head screwdriver, size 2'],
  'fit board': ['Cross-head screwdriver, size 2'],
  'connect front cables': ['Torch', 'Tweezers of plastic'],
  'fit drive': ['Cross-head screwdriver, size 2'],
  'connect drive cables': ['Cable ties'],
  'fill loop': ['Coolant', 'Filling bottle', 'Absorbent cloths'],
  'leak test': ['Absorbent cloths', 'Dry paper to show drops'],
  'change coin cell': ['New coin cell, of the type that the board’s handbook names', 'Tape for the old cell'],
  'check inside': ['Torch'],
  'first start': ['Display and its cable', 'Keyboard'],
  'memory test': ['Stick with the memory test'],
  'install system': ['Medium with the system'],
  measure: ['Power meter for the wall socket', 'Thermometer for the room'],
  'record settings': ['Label for the machine'],
};

/** What a measurement of noise is made with. Source: common practice. */
export const NOISE_TOOLS: readonly string[] = ['Sound level meter, A-weighted'];

/** What a glass panel is laid on. Source: common practice. */
export const GLASS_TOOLS: readonly string[] = ['Cloth to lay the glass panel on'];

/** What takes dust off, by the words of `bench.dust-removal`. Source: common practice. */
export const DUST_TOOLS: Readonly<Record<string, string>> = {
  'soft brush': 'Soft brush',
  'canned air': 'Canned air',
};
