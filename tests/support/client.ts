// A language client in memory: speaks to the server’s own code over streams, and remembers what it was sent.
import { languageFor } from '../../server/src/core/words/languages';
import { PassThrough } from 'node:stream';
import { setImmediate } from 'node:timers/promises';
import {
  createProtocolConnection,
  DidChangeTextDocumentNotification,
  DidOpenTextDocumentNotification,
  InitializeRequest,
  InitializedNotification,
  PublishDiagnosticsNotification,
  StreamMessageReader,
  StreamMessageWriter,
  type ClientCapabilities,
  type Diagnostic,
  type InitializeResult,
  type Position,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  type WorkspaceEdit,
} from 'vscode-languageserver-protocol/node';
import type { AddressedHost } from '../../server/src/host/addressed';
import { MemoryHost } from './memory-host';
import { serve, type Environment } from '../../server/src/language/serve';
import { applyEdits, Lines } from '../../server/src/core/text';
import { today } from './bench';

/** A file system in memory by `file:` addresses; texts can change while the server runs. */
export class MemoryAddresses extends MemoryHost implements AddressedHost {
  constructor(private readonly texts: Map<string, string>) {
    super(texts);
  }

  override list(root: string, folder: string): ReturnType<MemoryHost['list']> {
    return new MemoryHost(this.texts).list(root, folder);
  }

  override read(root: string, name: string): ReturnType<MemoryHost['read']> {
    return this.texts.get(root === '' ? name : `${root}/${name}`);
  }

  pathOf(uri: string): string | undefined {
    return uri.startsWith('file:///') ? decodeURIComponent(uri.slice('file:///'.length)) : undefined;
  }

  uriOf(path: string): string {
    return `file:///${path.split('/').map(encodeURIComponent).join('/')}`;
  }
}

const atOnce: Environment['after'] = (_, done) => {
  done();
  return () => undefined;
};

export class TestClient {
  readonly connection: ProtocolConnection;
  readonly published: PublishDiagnosticsParams[] = [];
  readonly logged: string[] = [];
  readonly files: Map<string, string>;
  /** The address of the workspace’s folder. */
  base = 'file:///ws';
  private arrived: () => void = () => undefined;
  private readonly texts = new Map<string, { version: number; text: string }>();

  /** `after`: the server’s clock; without one, no finding waits for its writer. */
  constructor(
    files: Record<string, string>,
    after?: Environment['after'],
    speaks: Environment['languageFor'] = languageFor,
  ) {
    this.files = new Map(Object.entries(files));
    const up = new PassThrough();
    const down = new PassThrough();
    serve(new StreamMessageReader(up), new StreamMessageWriter(down), {
      languageFor: speaks,
      makeHost: () => new MemoryAddresses(this.files),
      version: '0',
      today: () => today,
      pause: () => setImmediate(),
      after: after ?? atOnce,
    });
    this.connection = createProtocolConnection(new StreamMessageReader(down), new StreamMessageWriter(up));
    this.connection.onNotification(PublishDiagnosticsNotification.type, (params) => {
      this.published.push(params);
      this.arrived();
    });
    this.connection.onNotification(
      'window/logMessage',
      (params: { message: string }) => void this.logged.push(params.message),
    );
    this.connection.onRequest('client/registerCapability', () => null);
    this.connection.listen();
  }

  async start(capabilities: ClientCapabilities = {}, more: object = {}): Promise<InitializeResult> {
    const result = await this.connection.sendRequest(InitializeRequest.type, {
      processId: null,
      rootUri: null,
      workspaceFolders: [{ uri: this.base, name: 'ws' }],
      capabilities,
      ...more,
    });
    await this.connection.sendNotification(InitializedNotification.type, {});
    return result;
  }

  uri(name: string): string {
    if (name.startsWith('untitled:')) return name;
    return `${this.base}/${name}`;
  }

  async open(name: string, text = this.files.get(`ws/${name}`) ?? '', languageId = 'fettle-build'): Promise<void> {
    this.texts.set(name, { version: 1, text });
    await this.connection.sendNotification(DidOpenTextDocumentNotification.type, {
      textDocument: { uri: this.uri(name), languageId, version: 1, text },
    });
  }

  /** Puts a text at an offset, in place of `instead` units, as an incremental change. */
  async put(name: string, offset: number, by: string, instead = 0): Promise<void> {
    const { text, version } = this.texts.get(name)!;
    const range = new Lines(text).rangeOf({ start: offset, end: offset + instead });
    this.texts.set(name, { version: version + 1, text: text.slice(0, offset) + by + text.slice(offset + instead) });
    await this.connection.sendNotification(DidChangeTextDocumentNotification.type, {
      textDocument: { uri: this.uri(name), version: version + 1 },
      contentChanges: [{ range, text: by }],
    });
  }

  /** Replaces the first occurrence of a text, as an incremental change. */
  async type(name: string, old: string, by: string): Promise<void> {
    const start = this.text(name).indexOf(old);
    if (start < 0) throw new Error(`"${old}" is not in ${name}`);
    await this.put(name, start, by, old.length);
  }

  text(name: string): string {
    return this.texts.get(name)?.text ?? this.files.get(`ws/${name}`)!;
  }

  /** Where a text stands in an open file: `into` characters past its start. */
  at(name: string, text: string, into = 0): Position {
    const offset = this.text(name).indexOf(text);
    if (offset < 0) throw new Error(`"${text}" is not in ${name}`);
    return new Lines(this.text(name)).positionAt(offset + into);
  }

  /** The last diagnostics pushed for a file; waits for the server to have dealt with everything sent so far. */
  async findings(name: string): Promise<readonly Diagnostic[]> {
    await this.connection.sendRequest('textDocument/documentSymbol', { textDocument: { uri: this.uri(name) } });
    return this.published.findLast(({ uri }) => uri === this.uri(name))?.diagnostics ?? [];
  }

  /** What was pushed for an open file as its text stands now. */
  async shown(name: string): Promise<readonly Diagnostic[]> {
    const { version } = this.texts.get(name)!;
    for (;;) {
      const last = this.published.findLast(({ uri }) => uri === this.uri(name));
      if (last?.version === version) return last.diagnostics;
      await new Promise<void>((resolve) => (this.arrived = resolve));
    }
  }

  /** The text that an edit leads to. */
  applied(name: string, edit: WorkspaceEdit): string {
    const text = this.text(name);
    const lines = new Lines(text);
    const edits = (edit.documentChanges ?? []).flatMap((change) =>
      'edits' in change && change.textDocument.uri === this.uri(name) ? change.edits : [],
    );
    return applyEdits(
      text,
      edits.map((one) => ({
        span: { start: lines.offsetAt(one.range.start), end: lines.offsetAt(one.range.end) },
        text: (one as { newText: string }).newText,
      })),
    );
  }

  dispose(): void {
    this.connection.dispose();
  }
}
