// The record of a finished machine: what its outputs said, with the names that the build gives to what was found.
import type { Build, Placed } from '../build/build';
import { asBuiltFile } from '../manifest/as-built';
import type { Fact, Group } from '../parts/fact';
import type { Field, Table } from '../parts/field';
import { printFlow, type Value } from '../yaml';
import { anyPairs } from './built-pairs';

const HEAD = `# What the finished machine said of itself, by \`fettle verify --record\`; serial numbers are masked.
# A name set by hand decides which part of the build a thing is.
`;

/** Parts that no output shows. */
const UNSEEN = ['cooler', 'paste', 'supply', 'case', 'fans', 'cables'] as const;

/** The text of the record; empty for a build that is held against no machine. `name`: of the build’s file. */
export function recordText(build: Build, name: string): string {
  const { machine } = build;
  if (!machine) return '';
  const names = namesOf(build);
  const lines = [`format: 1`, `build: ${printFlow(name)}`];
  for (const [key, field] of Object.entries(asBuiltFile) as [keyof typeof asBuiltFile, Field][]) {
    if (key === 'format' || key === 'build' || key === 'unseen') continue;
    lines.push(...entryLines(key, field, machine[key] as unknown as Read, names));
  }
  const unseen = UNSEEN.filter((role) => build.of(role).length > 0);
  if (unseen.length > 0) lines.push(`unseen: ${printFlow(unseen)}`);
  return `${HEAD}${lines.join('\n')}\n`;
}

/** What the build calls the things that were found. */
function namesOf(build: Build): ReadonlyMap<unknown, string> {
  const names = new Map<unknown, string>();
  // Which of alike parts a thing is, whoever reads the record may write down.
  for (const { placed, found, alike } of anyPairs(build))
    if (alike.length === 1) for (const thing of found) names.set(thing, nameOf(placed));
  return names;
}

const nameOf = ({ path }: Placed): string => {
  const own = path.replace(/^parts\./, '');
  return own.startsWith('drives.') ? own.slice('drives.'.length) : own;
};

type Read = Fact<unknown> | Group<Table>;

/** A group on a line; of a list a line each, in an order that its own words give. */
function entryLines(key: string, field: Field, read: Read, names: ReadonlyMap<unknown, string>): string[] {
  const value = toValue(field, read, names);
  if (value === undefined) return [];
  if (!Array.isArray(value) || field.type !== 'list' || (field.of as Field).type !== 'group')
    return [`${key}: ${printFlow(value)}`];
  const items = value.map((one) => `  - ${printFlow(one as Value)}`).sort();
  return items.length === 0 ? [`${key}: []`] : [`${key}:`, ...items];
}

function toValue(field: Field, read: Read, names: ReadonlyMap<unknown, string>): Value | undefined {
  if (field.type === 'group') return groupValue(field.fields, read as Group<Table>, names);
  const fact = read as Fact<unknown>;
  if (field.type !== 'list') return fact.value === undefined ? undefined : scalar(field, fact);
  if (!Array.isArray(fact.value)) return undefined;
  const items = (fact.value as Read[]).flatMap((one) => toValue(field.of as Field, one, names) ?? []);
  return items as Value[];
}

const scalar = ({ type }: Field, { text, value }: Fact<unknown>): Value =>
  type === 'flag' ? (value as boolean) : type === 'count' ? (value as number) : text;

function groupValue(table: Table, group: Group<Table>, names: ReadonlyMap<unknown, string>): Value | undefined {
  const given = names.get(group);
  const entries = Object.entries(table).flatMap(([key, field]) => {
    const own = key === 'name' && given !== undefined ? given : toValue(field as Field, group[key] as Read, names);
    return own === undefined || (Array.isArray(own) && own.length === 0) ? [] : [[key, own] as const];
  });
  return entries.length === 0 ? undefined : Object.fromEntries(entries);
}
