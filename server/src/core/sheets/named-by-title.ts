// Maker and model as the title names them, where no line does: what is left of it without all that is no name.
import type { Kind } from '../parts/kinds';
import { plainLine, wordSet } from './clean';
import type { Drafted } from './draft';
import type { Sheet } from './sheet';

/** What a title calls a kind of part, before its name or behind it. */
const CALLED: Readonly<Partial<Record<Kind, string>>> = {
  board: 'motherboard|mainboard|hauptplatine|board',
  processor: 'processor|prozessor|cpu|desktop processor',
  cooler:
    'cpu cooler|liquid cooler|liquid cpu cooler|cpu liquid cooler|air cooler|tower cooler|cooler|cpu-kühler|' +
    'prozessorkühler|wasserkühlung|aio|all-in-one liquid cooler|kühler',
  paste: 'thermal paste|thermal compound|wärmeleitpaste',
  memory: 'memory|memory module|memory kit|ram|arbeitsspeicher|speichermodul',
  drive: 'ssd|nvme ssd|sata ssd|m.2 ssd|m.2 nvme ssd|hdd|hard disk|hard drive|disk|festplatte|solid state drive',
  graphics: 'graphics card|grafikkarte|video card|gpu',
  card: 'network adapter|network card|host bus adapter|hba|adapter|card|netzwerkkarte|erweiterungskarte',
  supply: 'power supply|psu|netzteil|power supply unit',
  case: 'midi tower|mid tower|mid-tower|full tower|mini tower|tower|case|pc case|computer case|chassis|gehäuse',
  fan: 'fan|case fan|lüfter|gehäuselüfter|pwm fan',
  radiator: 'radiator',
  display: 'monitor|display|bildschirm',
  cable: 'cable|kabel',
  stick: 'usb stick|usb-stick|usb flash drive',
};
const ALWAYS =
  'data sheet|datasheet|product data sheet|datenblatt|produktdatenblatt|technisches datenblatt|spec|specs|' +
  'specification|specifications|technical specifications|technische daten|product specifications|overview|' +
  'product page|product brief|details';

/** A title that speaks of several, of what others think of it, or of what it costs. */
const NOT_OF_ONE: readonly RegExp[] = [
  /\b(?:series|serie|family|familie|range|bundle|kits|and|und)\b|[/&]/i,
  /\b(?:vs\.?|versus|review|test|compar\w{0,8}|vergleich|price|preis\w{0,6})\b/i,
];

/** Words that tell what it can do, and end no name plainly. */
const TELLS: readonly RegExp[] = [
  /\b\d{1,5}(?:[.,]\d{1,2})?[ -]?(?:[GT]B|W|mm|cm|MHz|MT\/s|Hz|V|A|in|inch|zoll|x|pin|slot|fach)\b|["”″®]/i,
  /\b(?:[48]K|DDR\d|(?:SO-?|[UR]-?)?DIMM|PC\d-\d|NVMe|SATA|PCIe|M\.2|USB|AM\d|LGA ?\d{3,4})\b/i,
  /\b(?:(?:micro-?|mini-?|e-?)?(?:ATX|ITX)|A?RGB|PWM|gold|bronze|platinum|modular|new|neu)\b/i,
];

const NAME = /^[\p{Lu}\d][\p{L}\d+.-]{0,19}(?: [\p{Lu}\d][\p{L}\d+.-]{0,19}){0,4}$/u;

/** What stands before the first mark that parts a title. */
const headOf = (title: string): string =>
  plainLine(title)
    .split(/ ?[|:;,([•·] ?| [-–—] /)[0]!
    .trim();

/** No phrase that a part is called by has more words. */
const longestPhrase = 5;

function withoutCalled(text: string, kind: Kind): string {
  const called = wordSet(`${CALLED[kind] ?? ''}|${ALWAYS}`);
  let words = text.split(' ');
  const isCalled = (from: number, to?: number): boolean =>
    words.length > 0 && called.has(words.slice(from, to).join(' ').toLowerCase());
  for (let count = longestPhrase; count > 0; count--) {
    const [ahead, behind] = [isCalled(0, count), isCalled(-count)];
    if (!ahead && !behind) continue;
    words = ahead ? words.slice(count) : words.slice(0, -count);
    count = longestPhrase + 1;
  }
  return words.join(' ');
}

/** The model, and the maker where the page is headed with its name and then the part’s; none that is not plain. */
export function namedByTitle({ title, page }: Sheet, kind: Kind, facts: readonly Drafted[]): readonly Drafted[] {
  const has = (key: string): boolean => facts.some(({ path }) => path.join() === key);
  if (title === undefined || has('model') || NOT_OF_ONE.some((words) => words.test(title))) return [];
  const known = facts.find(({ path }) => path.join() === 'maker')?.value;
  const maker = typeof known === 'string' ? known : makerOf(page, title);
  if (maker === undefined) return [];
  const whole = withoutCalled(headOf(title), kind);
  const isNamed = whole.toLowerCase().startsWith(`${maker.toLowerCase()} `);
  const model = withoutCalled(isNamed ? whole.slice(maker.length).trim() : whole, kind);
  const isName =
    NAME.test(model) &&
    !TELLS.some((words) => words.test(model)) &&
    (isNamed || /\d/.test(model)) &&
    !holds(model, maker);
  const said = plainLine(title);
  const fact = (key: string, value: string): Drafted => ({ path: [key], value, said });
  return isName ? [...(known === undefined ? [fact('maker', maker)] : []), fact('model', model)] : [];
}

const holds = (text: string, word: string): boolean => ` ${text} `.toLowerCase().includes(` ${word.toLowerCase()} `);

/** `Tidewell Sluice 360 liquid cooler | Tidewell`: whose page it is, where that and the part’s name head it. */
function makerOf(page: string | undefined, title: string): string | undefined {
  const pieces = plainLine(page ?? '').split(/ [|–—-] /);
  const site = pieces.length > 1 ? pieces.at(-1)! : undefined;
  const isPlain =
    site !== undefined && page !== title && /^\p{Lu}[\p{L}\d-]{2,19}$/u.test(site) && pieces[0]!.startsWith(`${site} `);
  return isPlain && holds(pieces[0]!, headOf(title)) ? site : undefined;
}
