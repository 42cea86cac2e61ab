// Open files: opened, changed in steps, closed, saved; each step ends with what it means for findings.
import { TextDocument } from 'vscode-languageserver-textdocument';
import type {
  DidChangeTextDocumentParams,
  DidCloseTextDocumentParams,
  DidOpenTextDocumentParams,
} from 'vscode-languageserver/node';
import { Doc } from '../core/parts/doc';
import { changeBetween, Lines, type Change } from '../core/text';
import type { Ahead } from './ahead';
import type { Findings, Shared } from './findings';
import type { Grace } from './grace';
import type { Hosts } from './hosts';
import type { CursorWent } from './requests';
import type { WaitingChanges } from './waiting-changes';
import type { WorkspaceDiagnostics } from './workspace-diagnostics';

/** How the name of a file ends, by its language. */
const endings: ReadonlyMap<string, string> = new Map([
  ['fettle-build', '.pcbuild.yaml'],
  ['fettle-part', '.part.yaml'],
]);

export class Documents {
  private readonly open = new Map<string, TextDocument>();
  /** Changed files of which those that rest on them are to be told once the writer pauses. */
  private readonly untold = new Set<string>();
  /** Files whose text is already followed by another that waits for its turn: it is taken in and not judged. */
  private readonly overtaken = new Set<string>();

  constructor(
    private readonly shared: Shared,
    private readonly findings: Findings,
    private readonly whole: WorkspaceDiagnostics,
    private readonly grace: Grace,
    private readonly hosts: Hosts,
    private readonly ahead: Ahead,
    private readonly changes: WaitingChanges,
    /** Told of a text that came, before it is judged. */
    private readonly came: () => void,
  ) {}

  opened({ textDocument: { uri, languageId, version, text } }: DidOpenTextDocumentParams): void {
    const as = this.addressFor(uri, languageId);
    if (as !== undefined) this.shared.session.name(uri, as);
    this.take(TextDocument.create(uri, languageId, version, text));
    this.ahead.likely(uri);
  }

  /**
   * Where a file that was not saved yet may be taken to lie: in the first folder of the workspace, whose parts it
   * then finds. Undefined for any other file.
   */
  private addressFor(uri: string, languageId: string): string | undefined {
    const ending = endings.get(languageId);
    if (!uri.startsWith('untitled:') || ending === undefined || this.shared.session.kindAt(uri)) return undefined;
    const [folder = 'untitled:'] = this.hosts.folderUris;
    const name = uri.slice(uri.lastIndexOf('/') + 1).replace('untitled:', '');
    return `${folder.replace(/\/$/, '')}/${name}${ending}`;
  }

  changed({ textDocument: { uri, version }, contentChanges }: DidChangeTextDocumentParams): void {
    const isOvertaken = this.changes.taken(uri);
    const document = this.open.get(uri);
    if (!document) return this.shared.log(`textDocument/didChange: ${uri} is not open; the change is left out.`);
    const wasOvertaken = this.overtaken.delete(uri);
    if (isOvertaken) this.overtaken.add(uri);
    else if (!wasOvertaken) this.findings.note(uri);
    const before = document.getText();
    const after = TextDocument.update(document, contentChanges, version);
    const isWhole = contentChanges.some((change) => !('range' in change));
    this.take(after, isWhole ? [wholeChange(before, after.getText())] : (contentChanges as Change[]));
  }

  private take(document: TextDocument, changes: readonly Change[] = []): void {
    const { uri, version } = document;
    this.open.set(uri, document);
    this.shared.session.open(uri, version, document.getText());
    this.came();
    const doc = changes.length > 0 ? this.docOf(uri) : undefined;
    if (doc) this.grace.edited(uri, changes, doc);
    this.untold.add(uri);
    if (this.overtaken.has(uri)) return;
    this.findings.changed(uri);
    if (!this.grace.isTyping) this.tell();
  }

  private docOf(uri: string): Doc | undefined {
    const kind = this.shared.session.kindAt(uri);
    const text = this.open.get(uri)?.getText();
    return kind && text !== undefined ? (this.shared.session.docOf(uri) ?? new Doc(uri, kind, text)) : undefined;
  }

  /** The cursor went somewhere. */
  went({ uri, position }: CursorWent): void {
    if (this.grace.isTyping) this.grace.went(uri, position ?? undefined, this.docOf(uri));
    if (position) this.ahead.likely(uri, position);
  }

  /** Grace ended, for these files at least. */
  settled(uris: readonly string[]): void {
    this.findings.settled(uris);
    if (!this.grace.isTyping) this.tell();
  }

  private tell(): void {
    for (const uri of this.untold) this.whole.changed(uri);
    this.untold.clear();
  }

  closed({ textDocument: { uri } }: DidCloseTextDocumentParams): void {
    this.open.delete(uri);
    this.overtaken.delete(uri);
    this.shared.session.close(uri);
    this.findings.closed(uri);
    // What rests on the file rests on the saved text again.
    this.findings.changed(uri);
    this.whole.closed(uri);
  }
}

/** A text sent whole, as the change that it makes. */
function wholeChange(before: string, after: string): Change {
  const lines = new Lines(before);
  return changeBetween(before, after, (start, end) => lines.rangeOf({ start, end }));
}
