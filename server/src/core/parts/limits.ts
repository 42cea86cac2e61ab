// How much one file may hold of what is compared with one another, so that judging it stays quick.

export const limits = {
  /** Entries under one role of `parts:`. */
  partsOfRole: 256,
  /** Items of one list, names of one map: steps, slots, promises, accepted findings. */
  items: 1000,
} as const;
