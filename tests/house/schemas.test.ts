// The published schemas alone: every sample passes plain ajv with them, and a slip does not.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv2020 from 'ajv/dist/2020';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { READ } from '../core/parts/sheet-spellings';
import { kindOfFile } from '../../server/src/core/parts/doc';

const root = join(__dirname, '../..');
const ajv = new Ajv2020({ allErrors: true, allowUnionTypes: true });
const validators = {
  build: ajv.compile(read('schemas/build.schema.json')),
  part: ajv.compile(read('schemas/part.schema.json')),
  house: ajv.compile(read('schemas/house.schema.json')),
};

function read(path: string): object {
  return JSON.parse(readFileSync(join(root, path), 'utf8')) as object;
}

/** Maps whose keys are the words: a schema takes any key. */
const names = new Set([
  'supply.connectors',
  'graphics.connectors',
  'supply.rails',
  'case.bays',
  'board.power-connectors',
]);

const samples = readdirSync(join(root, 'samples'), { recursive: true, encoding: 'utf8' }).filter((path) =>
  ['build', 'part', 'house'].includes(kindOfFile(path.replaceAll('\\', '/')) ?? ''),
);

describe('the published schemas', () => {
  it('are there for all samples', () => expect(samples.length).toBeGreaterThan(60));

  for (const path of samples) {
    it(`accept samples/${path}`, () => {
      const text = readFileSync(join(root, 'samples', path), 'utf8');
      const validate = validators[kindOfFile(path.replaceAll('\\', '/')) as keyof typeof validators];
      validate(parse(text));
      expect(validate.errors ?? []).toEqual([]);
    });
  }

  it('refuse an unknown key, a bare number and a word outside the list', () => {
    const refused = (part: object): boolean => !validators.part(part);
    expect(refused({ kind: 'cooler', hieght: '158 mm' })).toBe(true);
    expect(refused({ kind: 'cooler', height: 158 })).toBe(true);
    expect(refused({ kind: 'cooler', height: '158 W' })).toBe(true);
    expect(refused({ kind: 'cooler', base: 'gold' })).toBe(true);
    expect(refused({ kind: 'coolr' })).toBe(true);
    expect(refused({ kind: 'cooler', height: '158 mm', base: 'copper' })).toBe(false);
  });

  it.each(READ)('accept %s: %s as sheets print it', (path, _, spellings) => {
    const [kind, ...steps] = path.split('.');
    for (const one of spellings) {
      const nested = (value: unknown, from = 0): unknown =>
        steps.slice(from).reduceRight<unknown>((below, step) => ({ [step]: below }), value);
      const shapes = [
        nested(one),
        nested([one]),
        { [steps[0]!]: [nested(one, 1)] },
        { [steps[0]!]: [nested([one], 1)] },
      ];
      if (names.has(path)) continue;
      expect(
        shapes.some((shape) => validators.part({ kind, ...(shape as object) })),
        one,
      ).toBe(true);
    }
  });

  it('describe every field, with an example', () => {
    const bare: string[] = [];
    const visit = (schema: Record<string, unknown>, at: string): void => {
      for (const [key, one] of Object.entries((schema.properties ?? {}) as Record<string, Record<string, unknown>>)) {
        if (
          !('const' in one) &&
          !('anyOf' in one && !('description' in one)) &&
          !('$ref' in one && Object.keys(one).length === 1) &&
          !one.description
        )
          bare.push(`${at}.${key}`);
        visit(one, `${at}.${key}`);
      }
    };
    for (const name of ['build', 'part', 'house'] as const) {
      const schema = validators[name].schema as {
        allOf?: { then: Record<string, unknown> }[];
        $defs?: Record<string, Record<string, unknown>>;
      };
      visit(schema as Record<string, unknown>, name);
      schema.allOf?.forEach(({ then }) => visit(then, name));
      for (const [key, one] of Object.entries(schema.$defs ?? {})) visit(one, key);
    }
    expect(bare).toEqual([]);
  });
});
