// What the client can do, read once from its `initialize`.
import type { InitializeParams, WorkspaceEdit as ProtocolEdit } from 'vscode-languageserver/node';
import type { WorkspaceEdit } from '../features/shapes';
import type { ClientOptions } from './requests';
import { isClientOptions } from './shapes';

export interface Client {
  readonly pullsDiagnostics: boolean;
  readonly refreshesDiagnostics: boolean;
  readonly related: boolean;
  readonly markdown: boolean;
  readonly snippets: boolean;
  /** A few words stand beside each item of a completion. */
  readonly labelDetails: boolean;
  /** What an item is, is asked for once it is looked at. */
  readonly resolvesItems: boolean;
  readonly treeSymbols: boolean;
  readonly versionedEdits: boolean;
  /** It moves files as part of an edit. */
  readonly renamesFiles: boolean;
  /** It tells of files that are moved in it. */
  readonly tellsOfMoves: boolean;
  /** It says before a save whether a person or a delay asks for it. */
  readonly tellsWhySaved: boolean;
  readonly preparesRename: boolean;
  readonly actionLiterals: boolean;
  /** An action’s edit is asked for once the action is chosen. */
  readonly resolvesEdits: boolean;
  readonly configuration: boolean;
  /** It asks for the tooltip of a hint once that is looked at. */
  readonly resolvesTips: boolean;
  readonly refreshesHints: boolean;
  readonly refreshesLenses: boolean;
  readonly watches: boolean;
  readonly workspaceFolders: boolean;
  readonly own: ClientOptions;
  readonly folders: readonly string[];
}

export function clientOf({ capabilities, initializationOptions, workspaceFolders, rootUri }: InitializeParams): Client {
  const textDocument = capabilities.textDocument ?? {};
  const workspace = capabilities.workspace ?? {};
  const own: unknown = initializationOptions ?? {};
  return {
    pullsDiagnostics: textDocument.diagnostic !== undefined,
    refreshesDiagnostics: workspace.diagnostics?.refreshSupport === true,
    related:
      textDocument.publishDiagnostics?.relatedInformation === true ||
      textDocument.diagnostic?.relatedInformation === true,
    markdown: (textDocument.hover?.contentFormat ?? []).includes('markdown'),
    snippets: textDocument.completion?.completionItem?.snippetSupport === true,
    labelDetails: textDocument.completion?.completionItem?.labelDetailsSupport === true,
    resolvesItems:
      textDocument.completion?.completionItem?.resolveSupport?.properties.includes('documentation') === true,
    treeSymbols: textDocument.documentSymbol?.hierarchicalDocumentSymbolSupport === true,
    versionedEdits: workspace.workspaceEdit?.documentChanges === true,
    renamesFiles:
      workspace.workspaceEdit?.documentChanges === true &&
      (workspace.workspaceEdit.resourceOperations ?? []).includes('rename'),
    tellsOfMoves: workspace.fileOperations?.willRename === true || workspace.fileOperations?.didRename === true,
    tellsWhySaved: textDocument.synchronization?.willSave === true,
    preparesRename: textDocument.rename?.prepareSupport === true,
    actionLiterals: textDocument.codeAction?.codeActionLiteralSupport !== undefined,
    resolvesEdits:
      textDocument.codeAction?.resolveSupport?.properties.includes('edit') === true &&
      textDocument.codeAction.dataSupport === true,
    configuration: workspace.configuration === true,
    resolvesTips: (textDocument.inlayHint?.resolveSupport?.properties ?? []).includes('tooltip'),
    refreshesHints: workspace.inlayHint?.refreshSupport === true,
    refreshesLenses: workspace.codeLens?.refreshSupport === true,
    watches: workspace.didChangeWatchedFiles?.dynamicRegistration === true,
    workspaceFolders: workspace.workspaceFolders === true,
    own: isClientOptions(own) ? own : {},
    folders: workspaceFolders?.map(({ uri }) => uri) ?? (rootUri ? [rootUri] : []),
  };
}

/** Clients of old take edits by file without versions. */
export function editForClient(edit: WorkspaceEdit, versioned: boolean): ProtocolEdit {
  if (versioned) return edit;
  const changes: ProtocolEdit['changes'] = {};
  for (const { textDocument, edits } of edit.documentChanges)
    changes[textDocument.uri] = [...(changes[textDocument.uri] ?? []), ...edits];
  return { changes };
}
