// The editor's snippets, client/snippets/: made from the tables of fields. No snippet holds a value: what nobody has
// looked up must not come into a file by pressing the tabulator.
import { buildFile } from '../../src/core/manifest/build-file';
import { caution, step } from '../../src/core/manifest/steps';
import type { Field, GroupField } from '../../src/core/parts/field';
import { kindNames } from '../../src/core/parts/kinds';
import { english } from '../../src/core/words/languages';
import { newPart } from '../../src/features/first-part';
import type { Generator } from './index';

interface Snippet {
  readonly prefix: string;
  readonly description: string;
  readonly isFileTemplate?: true;
  readonly body: readonly string[];
}

const escaped = (text: string): string => text.replace(/[\\$]/g, '\\$&');
const inChoice = (text: string): string => text.replace(/[\\$},|]/g, '\\$&');

/** The roles that a first build names, in the order in which people choose. */
const firstRoles = ['board', 'processor', 'cooler', 'supply', 'case'];

const build: Snippet = {
  prefix: 'build',
  description: 'A whole build: its name, what it is for, and the parts that every machine has.',
  isFileTemplate: true,
  body: [
    'format: 1',
    'build: $1',
    'purpose: $2',
    '',
    'parts:',
    ...firstRoles.slice(0, 3).map((role, n) => `  ${role}: { use: $${n + 3} }`),
    '  memory: [{ use: $6 }]',
    '  drives: [{ use: $7 }]',
    ...firstRoles.slice(3).map((role, n) => `  ${role}: { use: $${n + 8} }`),
    '$0',
  ],
};

/** A key with a place behind it for its value: one of a few words, keys of its own, or anything. */
function stopFor(field: Field, next: () => number): string {
  if (field.type === 'choice' && field.own === undefined)
    return `\${${next()}|${[' ', ...field.choices].map(inChoice).join(',')}|}`;
  if (field.type !== 'group') return `$${next()}`;
  const keys = [...field.example.matchAll(/([a-z][a-z-]*):/g)].map(([, key]) => `${key!}: $${next()}`);
  return `{ ${keys.join(', ')} }`;
}

function groupLines(fields: Readonly<Record<string, Field>>, indent: string): string[] {
  let count = 0;
  return Object.entries(fields)
    .filter(([, { type }]) => type !== 'list' && type !== 'named')
    .map(([key, field]) => `${indent}${key}: ${stopFor(field, () => ++count)}`);
}

function group(key: string, { what, fields }: Pick<GroupField, 'what' | 'fields'>): Snippet {
  return { prefix: key, description: what, body: [`${key}:`, ...groupLines(fields as Record<string, Field>, '  ')] };
}

/** One entry of a list: its first key behind the dash. */
function item(prefix: string, what: string, fields: Readonly<Record<string, Field>>): Snippet {
  const [first, ...others] = groupLines(fields, '  ');
  return { prefix, description: what, body: [first!.replace(/^ {2}/, '- '), ...others] };
}

/** A part file of a kind, with a stop behind each key. */
function part(kind: (typeof kindNames)[number]): Snippet {
  let count = 0;
  const body = newPart(kind, english())
    .text.trimEnd()
    .split('\n')
    .map((line) => escaped(line).replace(/^( *(?!source)[\w-]+: )(?=$| +#)/, (key) => `${key}$${++count}`));
  return {
    prefix: `part ${kind}`,
    description: `A part file for a ${kind}, to be filled in.`,
    isFileTemplate: true,
    body,
  };
}

const { do: does, part: of, note } = step.fields;
const { for: _, ...words } = caution.fields;
const { finding, at, because, until } = buildFile.accept.of.fields;

const ofBuilds: Readonly<Record<string, Snippet>> = {
  'A build': build,
  'Where it will stand': group('place', buildFile.place),
  'A step': item('step', step.what, { do: { ...does, own: undefined }, part: of, note } as Record<string, Field>),
  'A caution': group('caution', { ...caution, fields: words }),
  'What a finished build must pass': group('acceptance', buildFile.acceptance),
  'A finding that is accepted': item('accepted finding', buildFile.accept.what, { finding, at, because, until }),
};

const printed = (snippets: object): string => `${JSON.stringify(snippets, undefined, 2)}\n`;

export const snippets: Generator = {
  owns: 'client/snippets',
  make: () =>
    new Map([
      ['client/snippets/build.json', printed(ofBuilds)],
      [
        'client/snippets/part.json',
        printed(Object.fromEntries(kindNames.map((kind) => [`Part: ${kind}`, part(kind)]))),
      ],
    ]),
};
