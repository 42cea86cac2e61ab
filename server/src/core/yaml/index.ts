// The YAML layer's public face: reading, places, and edits.
export { lineWithoutBlank } from './faulty-lines';
export { readJson } from './json';
export { parse } from './parse';
export type { Entry, ListNode, MapNode, Node, Parsed, Problem, ProblemCode, ScalarNode } from './nodes';
export {
  appendItem,
  insertEntry,
  insertItem,
  insertTopLevel,
  moveItem,
  removeEntry,
  removeItem,
  renameKey,
  setValue,
} from './edits';
export type { Value } from './edits';
export { printFlow, printScalar } from './print';
export { nodeAt } from './at';
export type { At } from './at';
export { relayout } from './relayout';
export { columnOfNew, writingAt } from './writing';
