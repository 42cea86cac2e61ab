// Validators of what an editor sends: settings as package.json declares them, and the shapes of our own messages.
import Ajv from 'ajv';
import standalone from 'ajv/dist/standalone';
import type { Generator } from './index';

const text = { type: 'string' } as const;
const object = (properties: object, required: readonly string[] = Object.keys(properties)) => ({
  type: 'object',
  properties,
  required,
});

/** One schema a validator; names are those of the functions made. */
export function messageSchemas(settings: object): Record<string, object> {
  return {
    settings: { type: 'object', properties: settings },
    clientOptions: object(
      { explains: { type: 'boolean' }, files: { type: 'boolean' }, wholeOnRequest: { type: 'boolean' } },
      [],
    ),
    explain: object({ check: text }),
    foundPath: { anyOf: [{ type: 'null' }, object({ kind: { enum: ['file', 'folder'] }, root: text, name: text })] },
    readFile: { anyOf: [{ type: 'null' }, object({ text }), object({ trouble: text })] },
    listedFolder: {
      anyOf: [
        { type: 'null' },
        { type: 'array', items: object({ name: text, kind: { enum: ['file', 'folder', 'link', 'other'] } }) },
      ],
    },
  };
}

/**
 * The settings that package.json declares, by their name without `fettle.`; those of the editor’s own side are left
 * out.
 */
function declaredSettings(manifest: string): object {
  const { contributes } = JSON.parse(manifest) as {
    contributes: { configuration: { properties: Record<string, { type: string; enum?: unknown[] }> } };
  };
  const own = Object.entries(contributes.configuration.properties).filter(
    ([name]) => !name.startsWith('fettle.trace.'),
  );
  return Object.fromEntries(
    own.map(([name, { type, enum: choices }]) => [
      name.slice('fettle.'.length),
      { type, ...(choices ? { enum: choices } : {}) },
    ]),
  );
}

export const messageValidators: Generator = {
  make(read) {
    const ajv = new Ajv({ code: { source: true, esm: true, lines: true }, strict: true, strictTypes: false });
    const schemas = messageSchemas(declaredSettings(read('package.json')!));
    for (const [name, schema] of Object.entries(schemas)) ajv.addSchema(schema, name);
    const head =
      '// Validators of what an editor sends. Generated from ' +
      '`server/tools/generators/message-validators.ts` and package.json by `npm run generate`; do not ' +
      'edit.\n';
    const names = Object.keys(schemas);
    const types = [
      'interface Validator { (value: unknown): boolean; errors?: readonly { readonly instancePath: string; ' +
        'readonly message?: string }[] | null }',
      ...names.map((name) => `export declare const ${name}: Validator;`),
      '',
    ];
    return new Map([
      [
        'server/src/language/shapes-valid.js',
        head + standalone(ajv, Object.fromEntries(names.map((name) => [name, name]))),
      ],
      ['server/src/language/shapes-valid.d.ts', head + types.join('\n')],
    ]);
  },
};
