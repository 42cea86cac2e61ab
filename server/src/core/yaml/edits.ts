// Edits to a document: each touches its own field alone, or is not made at all.
export { appendItem, insertItem, moveItem, removeItem } from './edit-list';
export { insertEntry, insertTopLevel, removeEntry, renameKey } from './edit-map';
export { setValue } from './edit-value';
export type { Value } from './print';
