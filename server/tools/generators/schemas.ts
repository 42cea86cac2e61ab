// The JSON Schemas under schemas/, made from the tables of fields that the reader itself uses.
import { roles, type Role } from '../../src/core/manifest/places';
import { asBuiltFile } from '../../src/core/manifest/as-built';
import { buildFile } from '../../src/core/manifest/build-file';
import { knownFile } from '../../src/core/manifest/known-file';
import { houseFile } from '../../src/core/manifest/house-file';
import type { ChoiceField, Field, Table } from '../../src/core/parts/field';
import { kindNames, kinds } from '../../src/core/parts/kinds';
import { dimensions, units, type Dimension } from '../../src/core/quantity';
import type { Vocabulary } from '../../src/core/trade/vocabulary';
import { wordPattern } from './word-patterns';
import type { Generator } from './index';

type Schema = Record<string, unknown>;

const draft = 'https://json-schema.org/draft/2020-12/schema';

/** One field as a schema, with its meaning, unit and example. */
function schemaOf(field: Field): Schema {
  const about = { description: described(field), ...(field.example ? { examples: [exampleOf(field)] } : {}) };
  switch (field.type) {
    case 'quantity':
      return field.sheet
        ? {
            ...about,
            anyOf: [{ $ref: `#/$defs/${field.dimension}` }, { type: 'string', pattern: '[0-9] ?[x×]|[x×] ?[0-9]' }],
          }
        : { ...about, $ref: `#/$defs/${field.dimension}` };
    case 'count':
      return { ...about, type: field.sheet ? ['integer', 'string'] : 'integer', minimum: field.least };
    case 'flag':
      return { ...about, type: field.sheet ? ['boolean', 'string'] : 'boolean' };
    case 'choice':
      return { ...about, anyOf: [{ enum: [...field.choices] }, otherWords(field)] };
    case 'date':
      return { ...about, type: 'string', pattern: '^\\d{4}-\\d{2}-\\d{2}$' };
    case 'version':
      return { ...about, type: 'string', minLength: 1 };
    case 'form':
      return { ...about, type: ['string', 'number'] };
    case 'text':
      return { ...about, type: ['string', 'number'] };
    case 'list':
      return { ...about, type: 'array', items: schemaOf(field.of) };
    case 'named':
      return { ...about, type: 'object', additionalProperties: schemaOf(field.of as Field) };
    case 'group':
      return field.bare === undefined
        ? { ...about, ...objectOf(field.fields) }
        : { ...about, anyOf: [schemaOf(field.fields[field.bare] as Field), objectOf(field.fields)] };
  }
}

const slugOf = ({ words }: Vocabulary): string =>
  `spelled-${words
    .join('-')
    .toLowerCase()
    .replace(/[^a-z]+/g, '-')}`
    .slice(0, 60)
    .replace(/-+$/, '');

/** Vocabularies of choices, each once. */
const vocabularies = new Map<string, Vocabulary>();
const collect = (field: Field): void => {
  if (field.type === 'choice' && field.spellings) vocabularies.set(slugOf(field.spellings), field.spellings);
  if (field.type === 'list' || field.type === 'named') collect(field.of as Field);
  if (field.type === 'group') for (const one of Object.values(field.fields)) collect(one as Field);
};
const tables = [buildFile, houseFile, knownFile, asBuiltFile, ...Object.values(kinds)];
for (const table of [...tables, ...Object.values(roles).map((role) => role.fields)])
  for (const field of Object.values(table)) collect(field as Field);

/** A word of the writer’s own, or another spelling of one of the choices. */
function otherWords(field: ChoiceField): Schema {
  if (field.own !== undefined || field.sheet) return { type: 'string' };
  if (!field.spellings) return { type: 'string', pattern: wordPattern(field.choices) };
  return { $ref: `#/$defs/${slugOf(field.spellings)}` };
}

function objectOf(table: Table): Schema {
  const properties = Object.fromEntries(
    Object.entries(table).map(([key, field]) => [key, orNothing(schemaOf(field as Field))]),
  );
  return { type: 'object', properties, additionalProperties: false };
}

/** A key with nothing after it is a fact not yet stated. */
function orNothing(schema: Schema): Schema {
  if (Array.isArray(schema.anyOf)) return { ...schema, anyOf: [...(schema.anyOf as unknown[]), { type: 'null' }] };
  const type = schema.type;
  if (schema.$ref) {
    const { $ref, ...about } = schema;
    return { ...about, anyOf: [{ $ref }, { type: 'null' }] };
  }
  return type === undefined
    ? schema
    : { ...schema, type: [...(Array.isArray(type) ? (type as string[]) : [type]), 'null'] };
}

function described(field: Field): string {
  const unit =
    field.type === 'quantity' ? ` With its unit, such as ${units.get(field.unit)?.spellings[0] ?? field.unit}.` : '';
  const printed = field.printed ? ` Usually printed: ${field.printed}` : '';
  return field.what + unit + printed;
}

function exampleOf(field: Field): unknown {
  if (field.type === 'count') return Number(field.example);
  if (field.type === 'flag') return field.example === 'true';
  return field.type === 'version' || field.type === 'text' ? field.example.replace(/^"(.*)"$/, '$1') : field.example;
}

const escapeForPattern = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');

/** Units as data sheets print them beside the spellings of the table, and whole texts without one. */
const SHEET_UNITS: Readonly<Partial<Record<Dimension, string>>> = {
  length: 'inch(?:es)?|MM|”|″',
  mass: '[kK][gG]s?|[kK]ilograms?|grams?|gr|G|lbs?|[pP]ounds?',
  power: '[wW]atts?',
  temperature: '[℃ºC˚]+|deg ?C',
  'data-rate': '[MG]B/S|[MG][Bb]ps|[MG][Bb]/sec|[MG]bit/s',
  'data-size': '[TP]BW|[GT]o',
  flow: 'm[³3]/(?:hr|hour)',
  pressure: 'mm[ /-]?(?:H[2₂][O0]|Aq)',
  'rotation-speed': 'R[.]?P[.]?M[.]?|r[.]?p[.]?m[.]?|[Ur]/min',
  'sound-level': 'dB[ -]?[(]?A[)]?',
  voltage: 'V ?(?:DC|AC|ac|=|~)',
  'transfer-rate': 'MTps|MT/sec',
};
const SHEET_TEXTS: Readonly<Partial<Record<Dimension, string>>> = {
  'data-size': 'TBW ?[0-9.]+',
  'transfer-rate': '(?:DDR[345][ -][0-9]{3,5}|PC[345]L?-[0-9]{4,5}(?:[A-Z]{1,2}(?:-[A-Z0-9]{2,4}){0,2})?)',
};

function quantityPattern(dimension: Dimension): string {
  const spellings = [...units.values()]
    .filter((unit) => unit.dimension === dimension)
    .flatMap((unit) => unit.spellings);
  const unit = dimension === 'money' ? '[A-Z]{3}' : `(?:${[...new Set(spellings)].map(escapeForPattern).join('|')})`;
  const number = '-?[0-9]+(?:\\.[0-9]+)?';
  const bound = '(?:(?:at most|at least|up to|≤|≥)\\s*)?';
  const strict = `^${bound}${number}\\s*${unit}?(?:\\s*(?:to|–)\\s*${number}\\s*${unit})?$`;
  const sheet = SHEET_UNITS[dimension];
  const printed = dimension === 'money' ? unit : `(?:${unit}${sheet ? `|${sheet}` : ''})`;
  const text = SHEET_TEXTS[dimension];
  return `${strict}|[0-9)%][\\s-]*${printed}(?![A-Za-z])${text ? `|^${text}$` : ''}`;
}

/** The dimensions and vocabularies that a schema refers to, each as the text that one of it is written in. */
function quantityDefs(schema: Schema): Schema {
  const used = new Set(JSON.stringify(schema).match(/(?<=#\/\$defs\/)[a-z-]+(?=")/g) ?? []);
  const named = (Object.keys(dimensions) as Dimension[]).filter((dimension) => used.has(dimension));
  return Object.fromEntries([
    ...named.map((dimension) => [dimension, { type: 'string', pattern: quantityPattern(dimension) }]),
    ...[...vocabularies]
      .filter(([slug]) => used.has(slug))
      .map(([slug, of]) => [slug, { type: 'string', pattern: wordPattern(of.words, of) }]),
  ]);
}

function roleSchema(role: Role): Schema {
  const facts: Table = kinds[role.kind];
  const properties = { ...(objectOf(facts).properties as Schema) };
  for (const [key, field] of Object.entries(role.fields)) {
    const own = orNothing(schemaOf(field as Field));
    properties[key] = Object.hasOwn(facts, key) ? { anyOf: [own, properties[key]] } : own;
  }
  const one: Schema = { description: role.what, type: 'object', properties, additionalProperties: false };
  return one;
}

/** A role that may hold several parts takes one by itself or a list of them. */
function oneOrSeveral(name: string, role: Role): Schema {
  const $ref = `#/$defs/one-of-${name}`;
  return role.several
    ? { description: role.what, anyOf: [{ $ref }, { type: 'array', items: { $ref } }, { type: 'null' }] }
    : { $ref };
}

function buildSchema(): Schema {
  const own = objectOf(buildFile);
  const parts: Schema = {
    description: 'The parts, each under its role.',
    type: ['object', 'null'],
    additionalProperties: false,
    properties: Object.fromEntries(Object.entries(roles).map(([name, role]) => [name, oneOrSeveral(name, role)])),
  };
  const $defs = Object.fromEntries(Object.entries(roles).map(([name, role]) => [`one-of-${name}`, roleSchema(role)]));
  return { ...own, properties: { ...(own.properties as Schema), parts }, $defs };
}

function partSchema(): Schema {
  return {
    type: 'object',
    required: ['kind'],
    properties: { kind: { description: 'Which kind of part this is.', examples: ['board'], enum: [...kindNames] } },
    allOf: kindNames.map((kind) => ({
      if: { properties: { kind: { const: kind } }, required: ['kind'] },
      // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
      then: {
        ...objectOf(kinds[kind]),
        properties: { ...(objectOf(kinds[kind]).properties as Schema), kind: { const: kind } },
      },
    })),
  };
}

function file(name: string, title: string, schema: Schema): [string, string] {
  const $defs = { ...quantityDefs(schema), ...((schema.$defs as Schema | undefined) ?? {}) };
  return [
    `schemas/${name}`,
    `${JSON.stringify({ $schema: draft, $id: `urn:fettle:${name}`, title, ...schema, $defs }, null, 1)}\n`,
  ];
}

export const schemas: Generator = {
  make: () =>
    new Map([
      file('build.schema.json', 'A build of a personal computer', buildSchema()),
      file('part.schema.json', 'The facts of one part', partSchema()),
      file('house.schema.json', 'House settings', objectOf(houseFile)),
      file('known.schema.json', 'Known findings', objectOf(knownFile)),
      file('asbuilt.schema.json', 'A machine as built', objectOf(asBuiltFile)),
    ]),
};
