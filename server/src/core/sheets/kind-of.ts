// Of which kind of part a sheet speaks: by the words of its title, and by how many facts of each kind it holds.
import type { Kind } from '../parts/kinds';
import { draftFrom } from './draft';
import type { Indexes } from './label-index';
import type { Sheet } from './sheet';

const CARD =
  /\b(?:host|network|raid|sas|capture|sound)[ -](?:adapter|card)|\b(?:hba|nic|carrier)\b|(?:netzwerk|sound)karte/i;

const WORDS: Readonly<Partial<Record<Kind, RegExp>>> = {
  board: /motherboard|mainboard|hauptplatine|\bboard\b/i,
  cooler: /\bcooler\b|kühler|\baio\b|heatsink|liquid cooling|wasserkühlung/i,
  processor: /\bprocessor|prozessor|\bcpu\b/i,
  memory: /\bmemory\b|arbeitsspeicher|\b(?:u|r|so-?)?dimm\b|\bram\b|\bddr[345]\b|speichermodul/i,
  drive: /\bssds?\b|\bhdds?\b|hard drive|\bdisks?\b|festplatte|solid[- ]state/i,
  graphics: /graphics card|grafikkarte|video card|\bgpu\b|graphics/i,
  supply: /power supply|\bpsu\b|netzteil/i,
  case: /\bcase\b|chassis|gehäuse|\btower\b/i,
  fan: /\bfans?\b|lüfter/i,
  display: /\bmonitor\b|\bdisplay\b|bildschirm/i,
  radiator: /\bradiator\b/i,
  paste: /thermal (?:paste|grease|compound)|wärmeleitpaste/i,
  card: CARD,
  cable: /\b(?:cables?|leads?|splitter)\b|kabel/i,
  stick: /\busb[- ](?:stick|flash drive)\b/i,
  fixing: /\bscrews?\b|schraube/i,
};

const JUDGED = Object.keys(WORDS) as Kind[];

/** What a sheet of a kind would say something of; kinds that are not here are known by the title alone. */
const NEEDS: Readonly<Partial<Record<Kind, readonly string[]>>> = {
  board: ['socket', 'size', 'memory'],
  cooler: ['sockets', 'height', 'rated-power', 'base', 'radiator', 'pump'],
  processor: ['socket', 'power', 'graphics'],
  memory: ['type', 'rated-speed'],
  drive: ['capacity', 'shape', 'read'],
  graphics: ['outputs', 'power', 'length', 'connectors', 'openings'],
  supply: ['rating', 'badge', 'connectors', 'modular', 'rails'],
  case: ['board-sizes', 'card-length', 'cooler-height', 'fan-places'],
  fan: ['speed', 'airflow', 'size'],
  display: ['modes', 'inputs'],
  card: ['link', 'drive-ports'],
  cable: ['connector'],
  paste: ['conductivity', 'electrically'],
  stick: ['filesystem'],
  fixing: ['thread'],
};

/** Labels that sheets of one kind alone have. */
const SIGNS: Readonly<Partial<Record<Kind, RegExp>>> = {
  display: /refresh|resolution|response time|panel|auflösung|bildwieder/i,
  graphics:
    /boost clock|gddr|video memory|board power|tgp|maximum displays|grafikspeicher|recommended psu|empfohlenes netz/i,
  drive: /tbw|random read|mtbf|cache/i,
  processor: /# of cores|kerne|threads/i,
  card: /^(?:bracket|bifurcation|data rates?|ethernet|slotblech|number of ports|rj-?45)/im,
};

/** A word of the title is worth this many facts. */
const titleWorth = 4;

export interface Guess {
  /** Undefined where it is not plain. */
  readonly kind?: Kind;
  /** What it may be, best first. */
  readonly candidates: readonly Kind[];
}

/** Which kind a sheet is plainly of; a title decides before the number of facts does. */
export function kindOf(sheet: Sheet, indexes: Indexes): Guess {
  const title = sheet.title ?? '';
  const head = sheet.rows
    .filter(({ label }) => /^(?:type|product type|category|kategorie|produkttyp|produktart|art)$/i.test(label))
    .map(({ cells }) => cells[0] ?? '');
  const labels = sheet.rows.map(({ label }) => label).join('\n');
  const scores = JUDGED.map((kind) => {
    const isNamed = [title, ...head].some((text) => WORDS[kind]!.test(text));
    const first = draftFrom(sheet, kind, indexes);
    const draft = first.variants.length > 0 ? draftFrom(sheet, kind, indexes, first.variants[0]) : first;
    const read = [
      ...draft.facts.filter(({ line }) => line !== undefined),
      ...draft.disagreeing.flat(),
      ...draft.perhaps,
    ].map(({ path }) => path[0]!);
    const needs = NEEDS[kind] ?? [];
    const isOne = isNamed ? read.length > 0 : needs.some((key) => read.includes(key));
    const own = draft.facts.filter(
      ({ path, line }) => line !== undefined && !['maker', 'model', 'mass'].includes(path[0]!),
    ).length;
    return {
      kind,
      isOne,
      score:
        own +
        draft.perhaps.length / 2 +
        draft.disagreeing.length +
        (isNamed ? titleWorth : 0) +
        (SIGNS[kind]?.test(labels) ? 2 : 0),
    };
  })
    .filter(({ isOne }) => isOne)
    .toSorted((a, b) => b.score - a.score);
  const [first, second] = scores;
  const isPlain = first !== undefined && first.score >= 3 && first.score >= (second?.score ?? 0) + 1;
  return { ...(isPlain ? { kind: first.kind } : {}), candidates: scores.slice(0, 4).map(({ kind }) => kind) };
}
