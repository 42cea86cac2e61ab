// Answers about the lie of the land: folding, selection, links, symbols of the workspace, and who uses a part.
import {
  CallHierarchyIncomingCallsRequest,
  CallHierarchyOutgoingCallsRequest,
  CallHierarchyPrepareRequest,
  DocumentLinkRequest,
  FoldingRangeRequest,
  SelectionRangeRequest,
  WorkspaceSymbolRequest,
  type DocumentLink,
  type ServerCapabilities,
  type SymbolInformation,
  type SymbolKind,
} from 'vscode-languageserver/node';
import { callsOf, itemOf, partNamedAt, type CallItem } from '../features/call-outs';
import { fileAt, filesIn } from '../features/guide-uses';
import { foldingRanges } from '../features/folding';
import { addressLinks, fileLinks, partLinks } from '../features/links';
import { selectionRange } from '../features/selection-ranges';
import { matches, symbolsMatching } from '../features/workspace-symbols';
import type { Asker } from '../session/use-index';
import type { Across } from './across';
import type { Shared } from './findings';
import { guarded } from './guard';
import { reported } from './name-answers';

const mostFolds = 5_000;
const mostSymbols = 500;

/** What is offered to every client. */
export const outlineOffered: ServerCapabilities = {
  foldingRangeProvider: true,
  selectionRangeProvider: true,
  documentLinkProvider: {},
  workspaceSymbolProvider: { workDoneProgress: true },
  callHierarchyProvider: { workDoneProgress: true },
};

/** Registers the answers about one file. */
export function answerOutline({ connection, log }: Shared, across: Across): void {
  connection.onRequest(
    FoldingRangeRequest.type,
    guarded(FoldingRangeRequest.method, log, async ({ textDocument }) => {
      const file = await across.at(textDocument.uri);
      return file ? filesIn(file).flatMap(({ doc }) => foldingRanges(doc, mostFolds)) : null;
    }),
  );
  connection.onRequest(
    SelectionRangeRequest.type,
    guarded(SelectionRangeRequest.method, log, async ({ textDocument, positions }) => {
      const file = await across.at(textDocument.uri);
      return file ? positions.map((position) => selectionRange(fileAt(file, position).doc, position)) : null;
    }),
  );
  connection.onRequest(
    DocumentLinkRequest.type,
    guarded(DocumentLinkRequest.method, log, ({ textDocument }) => linksOf(across, textDocument.uri)),
  );
}

async function linksOf(across: Across, uri: string): Promise<DocumentLink[] | null> {
  const file = await across.at(uri);
  if (!file) return null;
  const links: DocumentLink[] = [];
  const { named, ties } = file.guide ?? {};
  if (named && ties?.build)
    links.push({
      range: file.doc.lines.rangeOf(ties.build.span),
      target: file.uriOf(named.doc),
      tooltip: named.doc.name,
    });
  for (const { file: name, span } of fileLinks(file.doc)) {
    const other = await across.fileNamed(file, name);
    if (other) links.push({ range: file.doc.lines.rangeOf(span), target: other.uri, tooltip: name });
  }
  for (const { doc } of filesIn(file)) {
    for (const { address, span } of addressLinks(doc)) links.push({ range: doc.lines.rangeOf(span), target: address });
    for (const { name, span } of partLinks(doc)) {
      const part = await across.partFile(file, name);
      if (part) links.push({ range: doc.lines.rangeOf(span), target: part.uri, tooltip: part.place.name });
    }
  }
  return links;
}

/** Registers the answers about a whole workspace; `folders` are those that the editor has open. */
export function answerWorkspace(shared: Shared, across: Across, folders: () => readonly string[]): void {
  const { connection, log } = shared;
  connection.onRequest(
    WorkspaceSymbolRequest.type,
    guarded(WorkspaceSymbolRequest.method, log, (params, token) =>
      reported(shared, params, token, shared.language.word('Looking for symbols'), (asker) =>
        symbolsOf(shared, across, folders(), params.query, asker),
      ),
    ),
  );
  connection.onRequest(
    CallHierarchyPrepareRequest.type,
    guarded(CallHierarchyPrepareRequest.method, log, async ({ textDocument, position }) => {
      const file = await across.at(textDocument.uri);
      if (!file) return null;
      const at = fileAt(file, position);
      const part = partNamedAt(at, at.doc.lines.offsetAt(position));
      const named = part === undefined ? file : await across.partFile(file, part);
      return named ? [protocolItem(itemOf(named))] : null;
    }),
  );
  connection.onRequest(
    CallHierarchyIncomingCallsRequest.type,
    guarded(CallHierarchyIncomingCallsRequest.method, log, (params, token) =>
      reported(shared, params, token, shared.language.word('Looking for builds'), async (asker) => {
        const file = await across.at(params.item.uri);
        if (file?.partName === undefined) return [];
        const calls = [];
        for await (const user of across.users(file, [file.partName], asker)) {
          const fromRanges = filesIn(user).flatMap((one) => callsOf(one, file.partName!));
          if (fromRanges.length > 0) calls.push({ from: protocolItem(itemOf(user)), fromRanges });
        }
        return calls;
      }),
    ),
  );
  connection.onRequest(
    CallHierarchyOutgoingCallsRequest.type,
    guarded(CallHierarchyOutgoingCallsRequest.method, log, async ({ item }) => {
      const file = await across.at(item.uri);
      if (!file) return null;
      const calls = [];
      const files = filesIn(file);
      for (const name of new Set(files.flatMap(({ doc }) => partLinks(doc).map((link) => link.name)))) {
        const part = await across.partFile(file, name);
        const fromRanges = files.flatMap((one) => callsOf(one, name));
        if (part) calls.push({ to: protocolItem(itemOf(part)), fromRanges });
      }
      return calls;
    }),
  );
}

const protocolItem = (item: CallItem): CallItem & { kind: SymbolKind } => item as CallItem & { kind: SymbolKind };

/** The names of files first decide which are read; of the rest, those are that hold the words. */
async function symbolsOf(
  { session }: Shared,
  across: Across,
  folders: readonly string[],
  query: string,
  asker: Asker,
): Promise<SymbolInformation[]> {
  const symbols: SymbolInformation[] = [];
  const words = query.toLowerCase();
  for (const uri of folders) {
    const host = session.hostFor(uri);
    const path = host?.pathOf(uri);
    if (!host || path === undefined) continue;
    const holds = (text: string): boolean => text.toLowerCase().includes(words);
    const files = await across.index.filesWhere(
      await across.index.filesBelow(host, path),
      (file) => {
        if (matches(file.name, query)) return true;
        const text = across.index.textOf(file);
        return text instanceof Promise ? text.then(holds) : holds(text);
      },
      asker,
    );
    for await (const file of across.readAll(files, asker)) {
      symbols.push(...(filesIn(file).flatMap((one) => symbolsMatching(one, query)) as SymbolInformation[]));
      if (symbols.length >= mostSymbols) return symbols.slice(0, mostSymbols);
    }
  }
  return symbols;
}
