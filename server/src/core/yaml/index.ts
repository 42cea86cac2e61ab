// The YAML layer's public face: reading, places, and edits.
export { limits } from './limits';
export { parse } from './parse';
export type { Entry, ListNode, MapNode, Node, Parsed, Problem, ProblemCode, ScalarNode } from './nodes';
