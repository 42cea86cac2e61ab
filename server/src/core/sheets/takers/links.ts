// PCIe and SATA links as sheets print them; a card’s connector may be longer than the link that it runs.
import { doubtful, nothing, plain, type Taker } from '../taken';

/** What an interface is compatible with is not what it is. */
export const withoutCompatible = (value: string): string =>
  value
    .replace(/ ?\((?:fits|suits|works in|passt in|für|for) [^()]{0,40}\)/gi, ' ')
    .replace(/[([,;]?\s?[^([,;]{0,40}(?:backwards?|abwärts)?[ -]?(?:compatible|kompatibel)[^)\],;]{0,40}[)\]]?/gi, ' ');

/** Whether a text writes a width with a fraction, `x16.3`: no link has one, and which figure is wrong is not plain. */
export const hasBrokenWidth = (text: string): boolean => /(?<!\d)x(?:16|[1248])[.,]\d/i.test(text);

/** The only PCIe link, or the only SATA generation, that a text names. */
export function linkIn(value: string): string | undefined {
  const text = withoutCompatible(value).replace(/[×*]/g, 'x');
  if (hasBrokenWidth(text)) return undefined;
  const found = new Set<string>();
  for (const [, generation, lanes] of text.matchAll(
    /\bPCI(?:e|-?E|-? ?Express)[ -]{0,2}(?:Gen(?:eration)?[ .-]?)?([1-6])(?:\.\d)?,? ?(?:x ?(\d{1,2})|(?=[^\dx]|$))/gi,
  ))
    found.add(lanes ? `PCIe ${generation} x${lanes}` : 'open');
  for (const [, generation, lanes] of text.matchAll(/(?<!\w)Gen ?([1-6])(?:\.0)? ?x ?(\d{1,2})\b/gi))
    found.add(`PCIe ${generation} x${lanes}`);
  if (/\bSATA\b|serial ata/i.test(text)) {
    if (
      /\b6(?:\.0)? ?G(?:b|bit)|\bSATA ?(?:III|3(?:\.\d)?|Rev(?:ision)?\.? 3(?:\.\d)?)(?!\.?\d| ?Gb)\b|SATA-600/i.test(
        text,
      )
    )
      found.add('SATA 3');
    else if (/\b3(?:\.0)? ?Gb|\bSATA ?II\b|SATA-300/i.test(text)) found.add('SATA 2');
    else found.add('open');
  }
  const [only] = found;
  return found.size === 1 && only !== 'open' ? only : undefined;
}

const ELECTRICAL: readonly RegExp[] = [
  /\b(?:uses?|runs?|runs? (?:at|in|with)|running (?:at|in)|operat(?:es|ing) (?:at|in)|mode:?) ?x ?(16|8|4|2|1)\b/gi,
  /\bx ?16 ?\( ?x ?(8|4|1) ?\)/gi,
  /\b(?:electrical(?:ly)?:?|elektrisch:?|wired(?: as)?|only|nur|angebunden mit|läuft mit|lanes:?) ?x ?(16|8|4|2|1)\b/gi,
  /\bx ?(16|8|4|2|1) ?\(?(?:mode|modus|electrical|elektrisch|wired|lanes|link|speed|bandwidth|bandbreite|angebund)/gi,
];
const MECHANICAL: readonly RegExp[] = [
  /\b(?:physical|mechanical|mechanisch|physisch):? ?x ?\d{1,2}\b/gi,
  /\bx ?\d{1,2} ?\(?-?(?:physical|mechani|physisch|connector|slot|form|bauform|steckplatz|size)\w{0,6}/gi,
];
const withoutMechanical = (text: string): string => MECHANICAL.reduce((rest, words) => rest.replace(words, ' '), text);

const widthsIn = (text: string): Set<string> =>
  new Set(
    [...text.matchAll(/(?:\bx ?(16|8|4|2|1)\b|(?<![\w.])(16|8|4|2|1)x\b)/gi)].map(([, one, other]) => one ?? other!),
  );

/** `PCI Express 5.0 (x8 electrical)`: one generation, and the one width stands apart. */
function electricalIn(text: string): string | undefined {
  const [, generation] = /^PCI(?:e|[ -]?Express) ?(?:Gen ?)?([1-6])(?:\.0)? ?\(/i.exec(text.trim()) ?? [];
  const [lanes] = widthsIn(text);
  const isElectrical = ELECTRICAL.some((words) => text.search(words) >= 0);
  return generation !== undefined && widthsIn(text).size === 1 && isElectrical
    ? `PCIe ${generation} x${lanes}`
    : undefined;
}

/** The link that runs: where a text names two widths, that which it calls electrical; else in doubt. */
export const link: Taker = (value, { path, label, kind }) => {
  const own = /PCI/i.test(label) && /^(?:gen ?)?[1-6](?:\.0)? x ?\d/i.test(value) ? `PCIe ${value}` : value;
  const text = withoutCompatible(own).replace(/[×*]/g, 'x');
  const found = linkIn(text) ?? linkIn(withoutMechanical(text)) ?? electricalIn(text);
  if (found === undefined) return nothing;
  const widths = widthsIn(text);
  if (!found.startsWith('PCIe') || widths.size <= 1) return plain({ path, value: found });
  const generation = found.split(' x')[0]!;
  const electrical = new Set(ELECTRICAL.flatMap((words) => [...text.matchAll(words)].map(([, lanes]) => lanes!)));
  const rest = electrical.size === 1 ? electrical : widthsIn(withoutMechanical(text));
  const [only] = rest;
  if (rest.size !== 1) return doubtful({ path, value: found });
  const [longest = ''] = [...widths].toSorted((a, b) => Number(b) - Number(a));
  const isEdge =
    kind !== 'drive' && widths.size === 2 && Number(longest) > Number(only) && /^(?:4|8|16)$/.test(longest);
  const runs = { path, value: `${generation} x${only}` };
  return isEdge ? plain(runs, { path: ['edge'], value: `x${longest}` }) : plain(runs);
};
