// Validators of what an editor sends: settings as client/package.json declares them, our own messages, and of the
// protocol’s messages what the server reads of them.
import Ajv from 'ajv';
import { papers } from '../../src/report/sheet/style';
import standalone from 'ajv/dist/standalone';
import type { Generator } from './index';

const text = { type: 'string' } as const;
const object = (properties: object, required: readonly string[] = Object.keys(properties)) => ({
  type: 'object',
  properties,
  required,
});

const list = (items: object) => ({ type: 'array', items });
const orNull = (schema: object) => ({ anyOf: [{ type: 'null' }, schema] });
const refused = object({ refused: { enum: ['no-file', 'link', 'large'] } });
const anything = object({}, []);
const whole = { type: 'integer' } as const;
const at = { line: { ...whole, minimum: 0 }, character: { ...whole, minimum: 0 } };
const range = object({ start: object(at), end: object(at) });
const document = { textDocument: object({ uri: text }) };
const folders = list(object({ uri: text }));

/**
 * The protocol’s messages by method: what the server, or the library beneath it, reads of their parameters. A message
 * of another shape never reaches either.
 */
export const protocolShapes: Readonly<Record<string, object>> = {
  initialize: object(
    {
      rootUri: orNull(text),
      workspaceFolders: orNull(folders),
      capabilities: object(
        {
          workspace: orNull(anything),
          textDocument: orNull(
            object(
              { hover: orNull(object({ contentFormat: orNull({ type: 'array' }) }, [])), completion: orNull(anything) },
              [],
            ),
          ),
        },
        [],
      ),
    },
    ['capabilities'],
  ),
  'textDocument/didOpen': object({ textDocument: object({ uri: text, languageId: text, version: whole, text }) }),
  'textDocument/didChange': object({
    textDocument: object({ uri: text, version: whole }),
    contentChanges: list(object({ range, text }, ['text'])),
  }),
  'textDocument/didClose': object(document),
  'textDocument/willSave': object({ ...document, reason: whole }),
  'textDocument/didSave': object(document),
  'workspace/didChangeWatchedFiles': object({ changes: list(object({ uri: text, type: whole })) }),
  'workspace/didChangeConfiguration': anything,
  'workspace/didChangeWorkspaceFolders': object({ event: object({ added: folders, removed: folders }) }),
  '$/cancelRequest': object({ id: { type: ['string', 'integer'] } }),
  '$/setTrace': object({ value: text }),
  'window/workDoneProgress/cancel': object({ token: { type: ['string', 'integer'] } }),
  'textDocument/hover': object({ ...document, position: object(at) }),
  'textDocument/definition': object({ ...document, position: object(at) }),
  'textDocument/references': object({
    ...document,
    position: object(at),
    context: object({ includeDeclaration: { type: 'boolean' } }),
  }),
  'textDocument/documentHighlight': object({ ...document, position: object(at) }),
  'textDocument/prepareRename': object({ ...document, position: object(at) }),
  'textDocument/rename': object({ ...document, position: object(at), newName: text }),
  'textDocument/foldingRange': object(document),
  'textDocument/selectionRange': object({ ...document, positions: list(object(at)) }),
  'textDocument/documentLink': object(document),
  'textDocument/prepareCallHierarchy': object({ ...document, position: object(at) }),
  'callHierarchy/incomingCalls': object({ item: object({ uri: text }) }),
  'callHierarchy/outgoingCalls': object({ item: object({ uri: text }) }),
  'workspace/symbol': object({ query: text }),
  'textDocument/inlayHint': object({ ...document, range }),
  'inlayHint/resolve': object({ position: object(at), data: object({ uri: text }) }),
  'textDocument/codeLens': object(document),
  'codeLens/resolve': object({ range, data: object({ uri: text }) }),
  'workspace/willRenameFiles': object({ files: list(object({ oldUri: text, newUri: text })) }),
  'workspace/didRenameFiles': object({ files: list(object({ oldUri: text, newUri: text })) }),
  'textDocument/formatting': object(document),
  'textDocument/onTypeFormatting': object({ ...document, position: object(at), ch: text }),
  'textDocument/completion': object({ ...document, position: object(at) }),
  'completionItem/resolve': object({ label: text, data: object({ uri: text, path: text, part: text }) }, ['label']),
  'textDocument/documentSymbol': object(document),
  'textDocument/codeAction': object({
    ...document,
    range,
    context: object({ diagnostics: list(anything), only: orNull(list(text)) }, ['diagnostics']),
  }),
  'codeAction/resolve': object({ title: text, data: object({ answer: whole, at: whole }) }, ['title']),
  'textDocument/diagnostic': object({ ...document, previousResultId: orNull(text) }, ['textDocument']),
  'workspace/diagnostic': object({ previousResultIds: list(object({ uri: text, value: text })) }),
  'workspace/executeCommand': object({ command: text }),
  'fettle/explain': object({ check: text }),
  'fettle/working': object({ uri: text, check: text, subject: text, ordinal: whole }),
  'fettle/sheet': object({ ...document, have: text, picturesFirst: { type: 'boolean' } }, ['textDocument']),
  'fettle/sheetPlace': object({ ...document, place: text, definition: { type: 'boolean' } }, ['textDocument', 'place']),
  'fettle/sheetPlaces': object({ ...document, position: object(at), build: text }, ['textDocument', 'position']),
  'fettle/sheetFile': object({ ...document, form: { enum: ['html', 'markdown'] }, paper: { enum: papers } }, [
    'textDocument',
    'form',
  ]),
  'fettle/new': object({ near: text, what: text, name: text }),
  'fettle/draftPart': object({ text, name: text, kind: text, variant: text }, ['text', 'name']),
  'fettle/partPlace': object({ near: text, name: text }),
  'fettle/cursor': object({ uri: text, position: orNull(object(at)) }),
};

/** The name of a method’s validator. */
const nameOf = (method: string): string => method.replace(/\W+(\w?)/g, (_, next: string) => next.toUpperCase());

/** One schema a validator; names are those of the functions made. */
export function messageSchemas(settings: object): Record<string, object> {
  return {
    settings,
    clientOptions: object(
      {
        explains: { type: 'boolean' },
        files: { type: 'boolean' },
        language: { type: 'string', pattern: '^[A-Za-z][A-Za-z0-9_.@-]*$' },
        lenses: { type: 'boolean' },
        hintsAbove: { type: 'boolean' },
        showsFindings: { type: 'boolean' },
        settings: { type: 'object' },
        pages: { type: 'string', pattern: '^[a-z][a-z0-9-]*$' },
        workings: { type: 'string', pattern: '^[^`\\\\\\p{Cc}]{1,80}$' },
        writesAt: { type: 'boolean' },
        guides: { type: 'boolean' },
        suggest: { type: 'string', pattern: '^[A-Za-z][A-Za-z0-9.]*$' },
        wholeOnRequest: { type: 'boolean' },
      },
      [],
    ),
    foundPath: orNull(object({ kind: { enum: ['file', 'folder'] }, bound: text })),
    readFile: { anyOf: [{ type: 'null' }, object({ base64: text }), refused] },
    listedFolder: {
      anyOf: [
        { type: 'null' },
        list(object({ name: text, kind: { enum: ['file', 'folder', 'link', 'other'] } })),
        refused,
      ],
    },
  };
}

interface Declared {
  readonly type: string;
  readonly enum?: unknown[];
  readonly minimum?: number;
  readonly maximum?: number;
}

/**
 * The settings that client/package.json declares, as the object that stands under `fettle`; those of the editor’s own
 * side are left out.
 */
function declaredSettings(manifest: string): object {
  const { contributes } = JSON.parse(manifest) as {
    contributes: { configuration: { properties: Record<string, Declared> } };
  };
  const own = Object.entries(contributes.configuration.properties).filter(
    ([name]) => !name.startsWith('fettle.trace.'),
  );
  const nested: Nested = { type: 'object', properties: {} };
  for (const [name, { type, enum: choices, minimum, maximum }] of own) {
    const steps = name.split('.').slice(1);
    const last = steps.pop()!;
    const holder = steps.reduce(
      (at, step) => (at.properties[step] ??= { type: 'object', properties: {} }) as Nested,
      nested,
    );
    holder.properties[last] = {
      type,
      ...(choices ? { enum: choices } : {}),
      ...(minimum === undefined ? {} : { minimum }),
      ...(maximum === undefined ? {} : { maximum }),
    };
  }
  return nested;
}

interface Nested {
  readonly type: 'object';
  readonly properties: Record<string, object>;
}

/** The validators as a table without a prototype: `constructor` is a method like any other. */
function methodTable(): string {
  const rows = Object.keys(protocolShapes).map((method) => `  '${method}': ${nameOf(method)},\n`);
  return `\nexport const byMethod = {\n  __proto__: null,\n${rows.join('')}};\n`;
}

export const messageValidators: Generator = {
  make(read) {
    const ajv = new Ajv({ code: { source: true, esm: true, lines: true }, strict: true, strictTypes: false });
    const protocol = Object.entries(protocolShapes).map(([method, schema]) => [nameOf(method), schema] as const);
    const schemas = {
      ...messageSchemas(declaredSettings(read('client/package.json')!)),
      ...(Object.fromEntries(protocol) as Record<string, object>),
    };
    for (const [name, schema] of Object.entries(schemas)) ajv.addSchema(schema, name);
    const head =
      '// Validators of what an editor sends. Generated from ' +
      '`server/tools/generators/message-validators.ts` and client/package.json by `npm run generate`; do not ' +
      'edit.\n';
    const names = Object.keys(schemas);
    const types = [
      'interface Validator { (value: unknown): boolean; errors?: readonly { readonly instancePath: string; ' +
        'readonly message?: string }[] | null }',
      ...names.map((name) => `export declare const ${name}: Validator;`),
      '/** Validators of the protocol’s parameters by method. */',
      'export declare const byMethod: Readonly<Record<string, Validator | undefined>>;',
      '',
    ];
    return new Map([
      [
        'server/src/language/shapes-valid.js',
        head + standalone(ajv, Object.fromEntries(names.map((name) => [name, name]))) + methodTable(),
      ],
      ['server/src/language/shapes-valid.d.ts', head + types.join('\n')],
    ]);
  },
};
