// Power connectors and outputs with their counts: `2 x 8-pin`, `8-pin x2 + 6-pin`, `3x DisplayPort 1.4a`.
import type { NamedField } from '../../parts/field';
import { DISPLAY_CONNECTOR_WORDS, type DisplayConnector } from '../../trade/display-connectors';
import { meanings, wordOf, type Vocabulary } from '../../trade/vocabulary';
import { wordSet } from '../clean';
import { closed } from './board-things';
import { nothing, plain, type Place, type Take, type Taken, type Taker } from '../taken';

/** `x 1 (2.1)`, `2 (1.4a)`: how many, and of which version. */
const VERSIONED = /^x? ?(\d{1,2}) ?x? ?\((v?\d\.\d[ab]?)\)$/i;

/** `Yes (2ea, HDMI 2.0)`, `Yes (1ea, ver 1.4)`. */
const YES = /^yes \((\d) ?ea(?:, ?[a-z. ]{0,12}(\d\.\d[ab]?))?\)$/i;

/** `DisplayPort x 3 (v1.4a)`. */
const VERSION_BEHIND = /^([a-z][a-z -]{1,20}?) ?[x×*] ?(\d) ?\((v?\d\.\d[ab]?)\)$/i;

const NUMBERS: Readonly<Record<string, number>> = {
  one: 1,
  single: 1,
  ein: 1,
  two: 2,
  dual: 2,
  double: 2,
  zwei: 2,
  three: 3,
  triple: 3,
  drei: 3,
  four: 4,
  quad: 4,
  vier: 4,
};

export interface Counted {
  /** Absent where the text names no number. */
  readonly count?: number;
  readonly name: string;
}

/** What stands between separators, with its count before or behind. */
export function countedIn(value: string): Counted[] {
  return closed(
    value
      .replace(/\s?\((?=[^()]{0,40}\b(?:cables?|kabel|mm|cm|each|je|adapter)\b)[^()]{0,40}\)/gi, '')
      .split(/\s?[,;•·\n&]\s?|\s(?:\+|\/|and|und|or)\s|(?<=\D)\/(?=\d ?x)/i),
  )
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '')
    .map(countOf);
}

function countOf(piece: string): Counted {
  const [, many, version] = VERSIONED.exec(piece) ?? [];
  if (many && version) return { count: Number(many), name: version };
  const [said, each, ofEach] = YES.exec(piece) ?? [];
  if (said !== undefined) return { count: Number(each), name: ofEach ?? '' };
  const [, kind, several, ofIt] = VERSION_BEHIND.exec(piece) ?? [];
  if (kind && several && ofIt) return { count: Number(several), name: `${kind} ${ofIt}` };
  const ahead = /^(\d{1,2}) ?[x×*] ?(?=\D|\d{1,2}[ +-]|\d{1,2}p)(.{2,60})$/i.exec(piece);
  if (ahead) return { count: Number(ahead[1]), name: ahead[2]!.trim() };
  const behind = /^(.{2,60}?) ?(?:[x×*] ?(\d{1,2})|\((\d{1,2})x?\)|: ?(\d{1,2})x?)$/i.exec(piece);
  if (behind) return { count: Number(behind[2] ?? behind[3] ?? behind[4]), name: behind[1]!.trim() };
  const [, word = '', rest = ''] = /^([a-z]{3,6})[ -](.{2,60})$/i.exec(piece) ?? [];
  const bare = /^(\d) (?=(?:HDMI|VGA|DVI|DisplayPort|DP|USB-C)\b)(.{2,60})$/i.exec(piece);
  if (bare) return { count: Number(bare[1]), name: bare[2]! };
  const number = NUMBERS[word.toLowerCase()];
  return number === undefined ? { name: piece } : { count: number, name: rest };
}

const noise =
  /\b(?:connectors?|plugs?|cables?|steckverbinder|stecker|anschlüsse|anschluss|kabel|sockets?|headers?|buchsen?)\b/gi;
const german = (text: string): string =>
  text
    .replace(/[- ]?(?:polig(?:er|e|en)?|pol\.?|pin(?:os|es))(?=\W|$)/gi, '-pin')
    .replace(/(\d)p\b/gi, '$1-pin')
    .replace(/\b(?:conector(?:es)? )?de (?:energ[ií]a|alimentação|alimentación)\b|\bde(?= \d)/gi, ' ')
    .replace(/\bEPS ?\/ ?ATX ?12V\b/i, 'EPS')
    .replace(/ ?\((?:(?:150|300|450|600) ?W|required|erforderlich|benötigt)\)/i, '');

/** The one kind that a name means, by itself or with the label of its line. */
export function kindOf(of: Vocabulary, name: string, label: string): string | undefined {
  const bare = german(name).replace(noise, ' ').replace(/\s+/g, ' ').trim();
  const above = german(label).replace(noise, ' ').replace(/\s+/g, ' ').trim();
  const inner = /\(([^()]{3,20})\)$/.exec(bare)?.[1] ?? '';
  for (const one of [bare, inner, `${above} ${bare}`, `${bare} ${above}`]) {
    const word = one.trim() === '' ? undefined : wordOf(of, one.trim());
    if (word !== undefined) return word;
  }
  return undefined;
}

const NONE = wordSet(
  'none|no|not required|none required|no connector|no external power|no external power required|keine|keiner|kein|' +
    'nicht erforderlich|not needed|keine erforderlich',
);

/** Connectors by kind; every one of the value must be read, and counted where a count is not plainly one. */
export const connectors: Taker = (value, place) => {
  const { names } = place.field as NamedField;
  if (!names) return nothing;
  if (
    NONE.has(
      value
        .replace(/ ?\([^()]{0,40}\)$/, '')
        .trim()
        .toLowerCase(),
    )
  )
    return place.kind === 'graphics' ? plain({ path: place.path, value: '{}' }) : nothing;
  return connectorsBy(names, value, place);
};

function connectorsBy(names: Vocabulary, value: string, place: Place): Take {
  const alone = /^(\d{1,2}) ?x?$/.exec(value.trim())?.[1];
  const pieces: readonly Counted[] = alone ? [{ count: Number(alone), name: '' }] : countedIn(value);
  const counts = new Map<string, number>();
  for (const { count, name } of pieces) {
    const kind = kindOf(names, name, place.label);
    const many = count ?? (place.kind === 'supply' ? undefined : 1);
    if (kind === undefined || many === undefined || many > 40) return nothing;
    counts.set(kind, (counts.get(kind) ?? 0) + many);
  }
  return plain(...[...counts].map(([kind, many]): Taken => ({ path: [...place.path, kind], value: String(many) })));
}

/** A line whose label is itself a kind of connector, as supplies list them. */
export function connectorLine(names: Vocabulary, label: string): boolean {
  const bare = german(label).replace(noise, ' ').replace(/\s+/g, ' ').trim();
  return bare !== '' && meanings(names, bare).length > 0;
}

const SHORT: Readonly<Record<DisplayConnector, string>> = {
  DisplayPort: 'DP',
  HDMI: 'HDMI',
  DVI: 'DVI',
  VGA: 'VGA',
  'USB-C': 'USB_C',
};

const OUTPUT =
  /^(mini dp|(?:mini )?displayport|dp|hdmi|(?:dl-)?dvi(?:-[di])?|vga|d-sub|(?:usb )?type-c|usb[ -]?c)(.{0,8})$/i;

const VERSION = /^ ?\(?(?:v?(\d\.\d)[ab]?)?\)?$/i;

interface Output {
  readonly connector: DisplayConnector;
  readonly count: number;
  readonly version?: string;
}

/** `3x DisplayPort 1.4a`, `HDMI 2.1 x 1`, `HDMI (2.0)`. */
function outputOf({ count = 1, name }: Counted, label: string): Output | undefined {
  const text = name
    .replace(/ (?:with|mit) FRL(?= |$)/i, '')
    .replace(/^((?:USB )?Type-C|USB[ -]?C)(?: \d\.\d)? ?\([^()]{0,60}\)$/i, '$1')
    .replace(/\s?\((?:HDCP|up to|supports?|max|bis)[^()]{0,60}\)/gi, '')
    .replace(/ ?\(iGPU\)/i, '')
    .replace(/ ?\((?:nur mit|only with|requires?|benötigt) [^()]{2,40}\)/i, '')
    .replace(/ ?\((?:\d{2,3} ?W|PD|DP alt|DSC|HDR|with)[^()]{0,30}\)/gi, '')
    .replace(/,? ?\(?HDCP [\d./ ]{1,8}\)?/i, '');
  const named = OUTPUT.exec(text.trim().replace(/ (?:ports?|outputs?|anschlüsse?|inputs?)$/i, ''));
  const found = named && VERSION.test(named[2]!) ? named : null;
  const bare = found ? undefined : /^\(?v?(\d\.\d)[ab]?\)?$/i.exec(text.trim())?.[1];
  const word =
    found?.[1] ??
    (bare === undefined && text !== ''
      ? undefined
      : label.replace(/^display port\b/i, 'DisplayPort').replace(/ (?:ports?|outputs?|inputs?|anschlüsse?)$/i, ''));
  const connector =
    word &&
    wordOf(DISPLAY_CONNECTOR_WORDS, word.replace(/^(?:dual-link |dl-)/i, '').replace(/^display port$/i, 'DisplayPort'));
  const version = (found && VERSION.exec(found[2]!)?.[1]) ?? bare;
  return connector ? { connector, count, ...(version ? { version } : {}) } : undefined;
}

/** Links that a version names by itself. Source: HDMI Specifications 1.4 and 2.0; of 2.1 the most it allows. */
const linkOf = ({ connector, version }: Output): string | undefined =>
  connector === 'HDMI' && version !== undefined && /^(?:1\.4|2\.0|2\.1)$/.test(version) ? `HDMI ${version}` : undefined;

/** `HDMI x 1 (Supports 4K@120Hz HDR as specified in HDMI 2.1a)`: of what it supports the version alone. */
const asSpecified = (value: string): string =>
  value.replace(/\((?:supports? [^()]{1,160} )?as specified in HDMI (\d\.\d)[ab]?(?:: [^()]{1,100})?\)/gi, '(v$1)');

/** `Yes x 3 (native DisplayPort 2.1)`: the count first, behind it what is counted; what is protected is no output. */
const nameBehind = (text: string): string =>
  text
    .replace(/[,;]? ?HDCP(?: support(?:ed)?)?:? ?(?:yes|no)?(?: ?\([\d./ ]{1,8}\))?$/i, '')
    .replace(/\b(?:yes )?x ?(\d{1,2}) ?\((?:native )?((?:HDMI|DisplayPort|DP|DVI|VGA|USB)[^()]{0,26})\)/gi, '$1 x $2');

/** Outputs or inputs by connector; several of one connector are numbered. */
export const outputs: Taker = (value, place) => {
  const alone = /^(\d{1,2}) ?x?$/.exec(value.trim())?.[1];
  const pieces: readonly Counted[] = alone
    ? [{ count: Number(alone), name: '' }]
    : countedIn(nameBehind(asSpecified(value.replace(/\bDisplay Port\b/gi, 'DisplayPort'))));
  const read = pieces.map((one) => outputOf(one, place.label));
  if (read.length === 0 || read.some((one) => one === undefined || one.count > 8 || one.count < 1)) return nothing;
  const packs = place.kind !== 'board' && /\(DSC\)/i.test(value);
  return plain(
    ...outputFacts(read as Output[], place.path),
    ...(packs ? [{ path: ['compression'], value: 'true' }] : []),
  );
};

export function outputFacts(read: readonly Output[], path: readonly string[]): Taken[] {
  const facts: Taken[] = [];
  for (const connector of new Set(read.map((one) => one.connector))) {
    const all = read.filter((one) => one.connector === connector).flatMap((one) => Array<Output>(one.count).fill(one));
    all.forEach((one, index) => {
      const name = all.length === 1 ? SHORT[connector] : `${SHORT[connector]}_${index + 1}`;
      const link = linkOf(one);
      facts.push(link ? { path: [...path, name, 'link'], value: link } : { path: [...path, name], value: '{}' });
    });
  }
  return facts;
}

/** A line whose label is itself a connector of displays: `HDMI: 1 (2.0)`. */
export const isOutputLabel = (label: string): boolean =>
  wordOf(
    DISPLAY_CONNECTOR_WORDS,
    label.replace(/^display port\b/i, 'DisplayPort').replace(/ (?:ports?|outputs?|inputs?)$/i, ''),
  ) !== undefined;

/** Of a board’s rear the connectors of displays alone are taken; all else there is left. */
export const rearOutputs: Taker = (value, place) => {
  const read = countedIn(value.replace(/\bDisplay Port\b/gi, 'DisplayPort'))
    .map((one) => outputOf(one, ''))
    .filter((one) => one !== undefined && one.connector !== 'USB-C') as Output[];
  return read.length === 0 ? nothing : plain(...outputFacts(read, place.path));
};
