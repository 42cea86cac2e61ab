// The YAML layer's public face: reading, places, and edits.
export { limits } from './limits';
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
export type { InsertOptions, Value } from './edits';
export { nodeAt } from './at';
export type { At } from './at';
