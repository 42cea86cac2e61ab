// How data sheets write the openings of cards and cases, the splits of a slot, and the generation of a riser.

const NUMBER_WORDS: ReadonlyMap<string, number> = new Map([
  ['single', 1],
  ['one', 1],
  ['dual', 2],
  ['double', 2],
  ['two', 2],
  ['triple', 3],
  ['three', 3],
  ['quad', 4],
  ['four', 4],
]);

/**
 * `2`, `2.5 slots`, `2.5-slot`, `dual slot`, `3-slot`: the openings of a card, halves and all; undefined for anything
 * else, and for more than any card has.
 */
export function parseCardOpenings(text: string): number | undefined {
  const [, written] =
    /^(\d(?:[.,]\d{1,2})?|[a-z]{3,6})(?:[ -]?(?:slots?|openings?)(?:[ -]?(?:wide|width|thick|design))?)?$/i.exec(
      text.trim(),
    ) ?? [];
  if (written === undefined) return undefined;
  const openings = NUMBER_WORDS.get(written.toLowerCase()) ?? Number(written.replace(',', '.'));
  return openings >= 1 && openings <= 6 ? openings : undefined;
}

/** `7`, `7 slots`, `7+2`, `7 (+2 vertical)`: the plain openings of a case, those beside them left out. */
export function parseCaseOpenings(text: string): number | undefined {
  const [, plain] =
    /^(\d{1,2})(?: ?(?:slots?|openings?))?(?: ?\(?\+ ?\d(?: ?(?:vertical|v))?(?: slots?)?\)?)?$/i.exec(text.trim()) ??
    [];
  return plain === undefined ? undefined : Number(plain);
}

const WIDTHS: readonly number[] = [1, 2, 4, 8, 16];

/**
 * A way in which a slot is split, as the widths of its links: `4x4` is four links of four lanes, `x8/x8`, `8+4+4` and
 * `x4x4x4x4` name each. Undefined for anything else, and for more lanes than a slot has.
 */
export function parseSplit(text: string): readonly number[] | undefined {
  const plain = text.trim().toLowerCase().replaceAll('×', 'x').replaceAll(' ', '');
  const [, many, each] = /^(\d)x(\d{1,2})$/.exec(plain) ?? [];
  const product = many && each ? Array.from({ length: Number(many) }, () => Number(each)) : [];
  const named = plain
    .replace(/^x/, '')
    .split(/[/+,]x?|x/)
    .map(Number);
  return [product, named].find(
    (widths) =>
      widths.length > 0 &&
      widths.every((width) => WIDTHS.includes(width)) &&
      widths.reduce((sum, width) => sum + width, 0) <= WIDTHS.at(-1)!,
  );
}

/** `PCIe 4`, `PCIe 4.0 x16`, `PCIe Gen4`, `Gen 4`: the generation of a riser that has all lanes. */
export function parseRiser(text: string): number | undefined {
  const [, generation] =
    /^(?:(?:pcie?|pci-e|pci express)[ -]?(?:gen ?)?|gen ?)([1-6])(?:\.0)?(?: ?x ?16)?$/i.exec(
      text.trim().replaceAll('×', 'x').replace('®', ''),
    ) ?? [];
  return generation === undefined ? undefined : Number(generation);
}
