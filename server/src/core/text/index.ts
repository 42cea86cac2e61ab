// The text layer's public face: spans, lines, edits, near words, and text made safe to show.
export { touches } from './span';
export type { Span } from './span';
export { endOfLines, Lines } from './lines';
export type { Position, Range } from './lines';
export { applyEdits, editsOverlap } from './edit';
export type { Edit } from './edit';
export { changeBetween, endOf, meet, shiftedRange } from './shift';
export type { Change } from './shift';
export { dayAt, isDay } from './day';
export { listed } from './listed';
export { compareTexts } from './order';
export { nearest } from './nearest';
export { quoted, visible, visibleInJson } from './escape';
export { htmlText } from './html';
export { markdownCode, markdownFence, markdownLine, markdownQuiet, markdownText } from './markdown';
