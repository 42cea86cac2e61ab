// The floor for `keystroke.mjs`: a server that does no more than parse the text and run the compiled schema over it.
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const require = createRequire(import.meta.url);
const {
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} = require('vscode-languageserver-protocol/node');
const { TextDocument } = require('vscode-languageserver-textdocument');
const { parseDocument } = require('yaml');
const Ajv = require('ajv/dist/2020').default;

const schema = JSON.parse(
  readFileSync(fileURLToPath(new URL('../../schemas/build.schema.json', import.meta.url)), 'utf8'),
);
const validate = new Ajv({ allErrors: true, strict: false }).compile(schema);
const connection = createProtocolConnection(
  new StreamMessageReader(process.stdin),
  new StreamMessageWriter(process.stdout),
);
let document;

function publish() {
  const parsed = parseDocument(document.getText());
  validate(parsed.toJS());
  const diagnostics = (validate.errors ?? []).map(({ message, instancePath }) => ({
    range: { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } },
    message: `${instancePath} ${message}`,
  }));
  void connection.sendNotification('textDocument/publishDiagnostics', {
    uri: document.uri,
    version: document.version,
    diagnostics,
  });
}

connection.onRequest('initialize', () => ({ capabilities: { textDocumentSync: 2 } }));
connection.onNotification('textDocument/didOpen', ({ textDocument: { uri, languageId, version, text } }) => {
  document = TextDocument.create(uri, languageId, version, text);
  publish();
});
connection.onNotification('textDocument/didChange', ({ textDocument, contentChanges }) => {
  document = TextDocument.update(document, contentChanges, textDocument.version);
  publish();
});
connection.listen();
