// A value of a file as a comparison shows it.

/** Characters that are shown of one. */
const longest = 80;

/** On one line, and no longer than is read at a glance. */
export const shortValue = (text: string): string => [...text.replace(/\s+/g, ' ').trim()].slice(0, longest).join('');
