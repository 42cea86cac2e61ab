// A text broken in every way that a copy, a terminal or a full disk breaks one: cut anywhere, letters changed.

/** The same numbers in every run. */
export function* randoms(seed = 1): Generator<number, never> {
  let state = seed;
  for (;;) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    yield state / 2 ** 32;
  }
}

/** How many mutations of a sample are tried; FETTLE_MUTATIONS sets another number, such as 10000. */
export const mutationsTried = Number(process.env.FETTLE_MUTATIONS ?? 300);

/** Beginnings of a text, about `most` of them, always those that end with a line. */
export function* truncations(text: string, most = 400): Generator<string> {
  const step = Math.max(1, Math.floor(text.length / most));
  for (let end = 0; end < text.length; end++) {
    if (end % step === 0 || text[end - 1] === '\n') yield text.slice(0, end);
  }
}

const put = [
  '\n',
  ' ',
  '\t',
  ':',
  '"',
  '{',
  ']',
  '|',
  '0',
  '9',
  'mm',
  '\u0000',
  '\ud83d',
  '\u202e',
  '<',
  '&#',
  ',',
  '×',
];

export function* mutations(text: string, count = mutationsTried): Generator<string> {
  const random = randoms(text.length);
  const next = (below: number): number => Math.floor(random.next().value * below);
  for (let done = 0; done < count; done++) {
    const at = next(text.length);
    const kind = next(4);
    const piece = put[next(put.length)]!;
    if (kind === 0) yield text.slice(0, at) + piece + text.slice(at + 1);
    else if (kind === 1) yield text.slice(0, at) + piece + text.slice(at);
    else if (kind === 2) yield text.slice(0, at) + text.slice(at + 1 + next(12));
    else yield text.slice(0, at) + text.slice(next(text.length)).slice(0, 40) + text.slice(at);
  }
}
