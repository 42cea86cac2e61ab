// How the values of cases are read: places for fans and radiators, bays, openings, what fits.
import { placeLabels } from '../../parts/sheet-labels-large';
import { BOARD_SIZE_WORDS } from '../../trade/board-words';
import { parseCaseOpenings } from '../../trade/slot-words';
import { SUPPLY_FORM_WORDS } from '../../trade/supply-sheet-words';
import { meanings, wordOf, type Vocabulary } from '../../trade/vocabulary';
import { labelKey } from '../clean';
import { doubtful, nothing, plain, together, type Take, type Taken, type Taker } from '../taken';
import { takeQuantity } from '../take-quantity';
import { measuresOf } from '../measures';
import { bays } from './bays';
import { anyTakers, onlyOne } from './common';
import { frontCables } from './front-cables';

const PLACES = new Map(
  Object.entries(placeLabels).flatMap(([place, words]) =>
    words.split(' | ').map((word): [string, string] => [labelKey(word), place]),
  ),
);
/** `Front`, `Front fans`, `Radiator front`, `Max radiator size (top)`. */
export const placeOf = (label: string): string | undefined => {
  const bare = label.replace(/\(.{0,20}\)/g, '');
  const turned = label
    .replace(
      /^(?:max\.? )?(?:fans?|lüfter|radiators?|radiatoren)(?: support| size| mount)?(?: [-–])? ?(?=[\p{L}(])[( ]?/iu,
      '',
    )
    .replace(/\)$/, '');
  return PLACES.get(labelKey(bare)) ?? (turned === label ? undefined : PLACES.get(labelKey(turned)));
};

/** `Front: 3 x 120 mm; Rear: 1 x 120 mm`: each place with what is said of it. */
function placesIn(value: string, label: string): readonly (readonly [place: string, said: string])[] {
  const own = placeOf(label);
  const found: [string, string][] = [];
  for (const piece of value.split(/\s?[;•\n]\s?|(?:,\s?| [/|] )(?=\p{L}{3,12}(?: \p{L}{3,8})?:)/u)) {
    if (own && found.length === 0) {
      found.push([own, piece.trim()]);
      continue;
    }
    const [, word, said] = /^(\p{L}{3,12}(?: \p{L}{3,8})?) ?[:–-] ?(.{1,120})$/u.exec(piece.trim()) ?? [];
    const place = word && placeOf(word);
    if (!place || !said) return [];
    found.push([place, said]);
  }
  return found;
}

const MOUNT =
  /(?:(\d) ?[x×*] ?)?((?:\d{2,3}(?: ?mm)?(?: ?[/&] ?|(?: or | oder ))){0,4}\d{2,3}) ?mm(?: ?[x×*] ?(\d))?/gi;
const SIZES: readonly number[] = [80, 92, 120, 140, 160, 180, 200, 230];

const FITTED =
  /(?<![\d.,])(\d) ?(?:[x×*] ?(?:\d{2,3} ?(?:mm )?)?)?(?:pcs |fans? |are ){0,2}(?:in[ck]l|(?:pre-?|vor)inst|enth|fit)/i;
const FITTED_BEHIND = /\((?:included|pre-?installed|vorinstalliert|davon|inkl\.):? (\d) ?x ?\d{2,3} ?mm\)$/i;
const ALL_FITTED = /\((?:included|pre-?installed|vorinstalliert|enthalten|inklusive)\)$/i;

interface Mount {
  readonly size: number;
  readonly count: number;
}

/** `3 x 120 mm / 2 x 140 mm`; undefined where words are left that may say more. */
function mountsIn(said: string): readonly Mount[] | undefined {
  const bare = said
    .replace(/\([^)]{0,50}\)|, ?\d fans? (?:included|pre-?installed|fitted)$/gi, ' ')
    .replace(/\b(?:up to|bis zu|max\.?)\s/gi, '');
  const rest = bare
    .replace(MOUNT, '')
    .replace(/\b(?:or|oder|fans?|lüfter|and|und|mm|included|vorinstalliert)\b/gi, '')
    .replace(/[\s,/|&+.-]/g, '');
  const mounts = [...bare.matchAll(MOUNT)].flatMap(([, ahead, sizes, behind]) =>
    sizes!
      .split(/\D+/)
      .filter(Boolean)
      .map((size) => ({ size: Number(size), count: Number(ahead ?? behind ?? 0) })),
  );
  const areKnown = mounts.every(({ size, count }) => SIZES.includes(size) && count >= 1);
  return mounts.length > 0 && rest === '' && areKnown ? mounts : undefined;
}

/** The sizes, how many of the largest, and how many are there already. */
function fanFacts(path: readonly string[], place: string, said: string): Take {
  const own = (key: string, value: string | readonly string[]): Taken => ({ path: [...path, place, key], value });
  const mounts = mountsIn(said);
  if (!mounts) return nothing;
  const sizes = [...new Set(mounts.map(({ size }) => size))].sort((a, b) => a - b);
  const largest = new Set(mounts.filter(({ size }) => size === sizes.at(-1)).map(({ count }) => count));
  const counts = new Set(mounts.map(({ count }) => count));
  const [most] = largest;
  const fitted =
    FITTED.exec(said)?.[1] ??
    FITTED_BEHIND.exec(said)?.[1] ??
    (counts.size === 1 && ALL_FITTED.test(said.trim()) ? String(most) : undefined);
  const inAll = [
    own(
      'sizes',
      sizes.map((size) => `${size} mm`),
    ),
    ...(fitted ? [own('fitted', fitted)] : []),
  ];
  return plain(...inAll, ...(largest.size === 1 ? [own('count', String(most))] : []));
}

const fanPlaces: Taker = (value, place) =>
  together(placesIn(value, place.label).map(([name, said]) => fanFacts(place.path, name, said)));

/** `Front 2 x 140 mm, rear 1 x 120 mm`, `2 x 140 mm (front)`; none where one of them has no place of its own. */
function fittedIn(value: string): readonly (readonly [place: string, said: string])[] {
  const found: [string, string][] = [];
  for (const piece of value.split(/\s?[,;+]\s?/)) {
    const [, ahead, first] = /^(\p{L}{3,12}) (\d ?[x×*] ?\d{2,3} ?mm)$/u.exec(piece) ?? [];
    const [, last, behind] =
      /^(\d ?[x×*] ?\d{2,3} ?mm)(?: fans?)? ?(?:\( ?|(?:in |at the )?)(\p{L}{3,12})\)?$/u.exec(piece) ?? [];
    const [place, said] = [placeOf(ahead ?? behind ?? ''), first ?? last];
    if (place === undefined || said === undefined || found.some(([name]) => name === place)) return [];
    found.push([place, said]);
  }
  return found;
}

/** Fans that are there already: `Rear: 1 x 120 mm`. */
const fittedFans: Taker = (value, place) => {
  const [root] = place.path;
  const places = placesIn(value, place.label);
  const found = (places.length > 0 ? places : fittedIn(value)).flatMap(([name, said]): Taken[] => {
    const count = /^(\d) ?(?:[x×*] ?\d{2,3} ?mm.{0,20})?$/i.exec(said.trim())?.[1];
    return count === undefined ? [] : [{ path: [root!, name, 'fitted'], value: count }];
  });
  return found.length > 0 ? plain(...found) : nothing;
};

const CLASSES = new Set(['120', '140', '180', '200', '240', '280', '360', '400', '420', '480', '560']);

/** `240 / 280 / 360 mm`: classes, which are no lengths; the most of them takes the smaller ones of its kind too. */
function radiatorFacts(path: readonly string[], place: string, said: string): Take {
  const isMost = /\b(?:up to|bis zu|max\.?|bis)\s/i.test(said);
  const bare = said.replace(
    /\b(?:up to|bis zu|max(?:imum)?\.?|bis|mm|radiators?|aio|or|oder|and|und)(?![\p{L}\d])/giu,
    ' ',
  );
  const classes = bare.split(/[\s,/|&]+/).filter(Boolean);
  if (classes.length === 0 || !classes.every((one) => CLASSES.has(one.replace(/mm$/i, '')))) return nothing;
  const fact: Taken = { path: [...path, place, 'classes'], value: classes.map((one) => one.replace(/mm$/i, '')) };
  return isMost && classes.length > 1 ? doubtful(fact) : plain(fact);
}
const radiatorPlaces: Taker = (value, place) =>
  together(placesIn(value, place.label).map(([name, said]) => radiatorFacts(place.path, name, said)));

/** Every word of a list; none where one is not known. */
const wordsOf =
  (of: Vocabulary, tidy: (piece: string) => string = (piece) => piece): Taker =>
  (value, { path }) => {
    const pieces = value
      .replace(/\([^()]{0,40}\)/g, ' ')
      .split(/\s?[,;/|•\n]\s?|\s(?:and|und|&|\+|or|oder)\s/)
      .map((piece) => tidy(piece.trim()));
    const read = pieces.filter((piece) => piece !== '').map((piece) => wordOf(of, piece) ?? meanings(of, piece)[1]);
    if (read.length === 0 || read.some((one) => one === undefined)) return nothing;
    return /\b(?:up to|bis zu|max\.?) (?!\d)/i.test(value)
      ? doubtful({ path, value: read as string[] })
      : plain({ path, value: [...new Set(read as string[])] });
  };

/** The rear edge of ATX and E-ATX. Source: ATX Specification 2.2. */
const FULL_REAR_MM = 304.8;

/** `E-ATX (up to 280 mm)`, `E-ATX (max. 12" x 10.7")`: such boards are as wide as any other, and so deep at most. */
const boardSizes: Taker = (value, place) => {
  const names = wordsOf(BOARD_SIZE_WORDS)(value, place) ?? nothing;
  const deepest = onlyOne(value, /\bE-?ATX ?\((?:up to|max\.?|bis(?: zu)?|≤) ?(\d{3}) ?mm(?: deep| tief)?\)/gi);
  const [, both] = /\bE-?ATX ?\((?:up to|max\.?|bis(?: zu)?|≤) ?([^()]{5,30})\)/i.exec(value) ?? [];
  const [rear = 0, front = 0] = (measuresOf(both ?? '')?.mm ?? []).toSorted((a, b) => b - a);
  const depth = deepest ?? (Math.abs(rear - FULL_REAR_MM) <= 1 && front > 244 ? String(front) : undefined);
  if (depth === undefined || names.facts.length === 0) return names;
  return together([names, plain({ path: ['board-depth'], value: `${depth} mm` })]);
};

const openings: Taker = (value, { path, label }) => {
  if (/vertical|vertikal/i.test(label)) return nothing;
  const text = value
    .trim()
    .replace(/\bhorizontal\b/i, '')
    .replace(/\((vertical|vertikal)\)/i, '$1')
    .replace(/\bvertikal\b/i, 'vertical')
    .replace(/\s+/g, ' ')
    .trim();
  const [plainSlots, upright] = [
    parseCaseOpenings(text.replace(/^(\d{1,2}) ?x$/, '$1')),
    /^\d{1,2}(?: slots?)? ?\(?\+ ?(\d)/i.exec(text)?.[1],
  ];
  if (plainSlots === undefined) return nothing;
  return plain(
    { path, value: String(plainSlots) },
    ...(upright && /vertical|vertikal/i.test(text) ? [{ path: ['vertical-openings'], value: upright }] : []),
  );
};

const GLASS = /tempered glass|hartglas|\btg\b|gehärtetes glas|sicherheitsglas/i;
const glass: Taker = (value, { path, label }) => {
  const text = value.trim();
  if (/optional|front|version|oder|\bor\b/i.test(text)) return nothing;
  const isOfSide = /side|seite|panel|window|fenster|glas/i.test(`${label} ${/material/i.test(label) ? text : ''}`);
  if (GLASS.test(text) && isOfSide) return plain({ path, value: 'true' });
  if (/glas/i.test(label) && /^(?:yes|ja|left|links|✓|right|rechts)(?: .{0,20})?$/i.test(text))
    return plain({ path, value: 'true' });
  if (/glas/i.test(label) && /^(?:no|nein)$/i.test(text)) return plain({ path, value: 'false' });
  return /side|seite/i.test(label) &&
    /^(?:solid )?(?:steel|stahl|mesh|metal|metall|aluminium|aluminum|acrylic|acryl)$/i.test(text)
    ? plain({ path, value: 'false' })
    : nothing;
};

/** The outline with a stroke in its name is no list of two. */
const inOneWord = (text: string): string =>
  text
    .replace(/\bPS\/2\b/gi, 'PS2')
    .replace(/(?:, | ?\()(?:nicht enthalten|not included|optional|ohne netzteil)\)?$/i, '');

/** `ATX, up to 180 mm`: beside forms one length, under no condition. */
const supplyDepth: Taker = (value, place) => {
  const only = /(?<![\d.,])\d{2,3} ?mm\b/gi;
  const found = value.match(only) ?? [];
  const rest = inOneWord(value)
    .replace(only, ' ')
    .replace(/\b(?:maximal|deep|tief)(?=\W|$)/gi, ' ')
    .replace(
      /\((?:max\.?|maximum)\)|\b(?:up to|bis(?: zu)?|max(?:imum)?\.?|length|depth|länge|tiefe?|long|lang)(?=\W|$)/gi,
      ' ',
    );
  if (found.length !== 1) return found.length === 0 ? takeQuantity(value, place) : nothing;
  const words = rest.split(/[\s,;/()|≤:]+/).filter(Boolean);
  const areForms = words.every(
    (word) =>
      /^(?:std\.?|standard|ps[/-]?2|psu|netzteil)$/i.test(word) || wordOf(SUPPLY_FORM_WORDS, word) !== undefined,
  );
  const fact = { path: place.path, value: `${Number.parseInt(found[0]!, 10)} mm` };
  return areForms ? plain(fact) : doubtful(fact);
};

/** `max. 160 mm Höhe`: the word for what the label asks for. */
const inWords =
  (words: RegExp): Taker =>
  (value, place) => {
    const bare = value.trim().replace(words, '');
    return bare === value.trim() ? undefined : takeQuantity(bare, place);
  };

/** Room for a card on an axis of `322 mm (L) x 145 mm (H) x 62 mm (W)`; a length alone is read as any. */
const cardRoom =
  (axes: RegExp): Taker =>
  (value, place) => {
    const measures = measuresOf(value, { ...(place.said.axes ? { axes: place.said.axes } : {}) });
    if (!measures) return /L/.test(axes.source) || !/size|größe|dimension/i.test(place.label) ? undefined : nothing;
    const at = measures.axes?.search(axes) ?? -1;
    return at < 0 || !/L/.test(measures.axes!) ? nothing : plain({ path: place.path, value: `${measures.mm[at]} mm` });
  };

export const caseTakers: Readonly<Record<string, Taker>> = {
  ...anyTakers,
  'board-sizes': boardSizes,
  'supply-forms': (value, place) =>
    /\d{2,3} ?mm/.test(value)
      ? wordsOf(SUPPLY_FORM_WORDS)(
          inOneWord(value).replace(/[,(]? ?(?:up to|max\.?|bis|≤)? ?\d{2,3} ?mm.{0,20}$/i, ''),
          place,
        )
      : wordsOf(SUPPLY_FORM_WORDS)(inOneWord(value), place),
  'supply-depth': supplyDepth,
  'cooler-height': inWords(/ (?:in )?(?:height|high|höhe|hoch)$/i),
  'card-length': (value, place) =>
    inWords(/ (?:in )?(?:length|long|länge|lang)$/i)(value, place) ?? cardRoom(/L/)(value, place),
  'card-height': cardRoom(/H/),
  'card-thickness': cardRoom(/[WD]/),
  openings,
  bays,
  'fan-places': fanPlaces,
  'fan-places.*.fitted': fittedFans,
  'radiator-places': radiatorPlaces,
  'front-cables': frontCables,
  'glass-panel': glass,
};
